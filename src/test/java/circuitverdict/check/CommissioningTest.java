package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the tester should read; informative (643, Appendix 3, common practice). */
class CommissioningTest {
  private static final CheckName CHECK = CheckName.COMMISSIONING;

  /** IEC 60228: 22 m of 3.08 + 7.41 mΩ/m at 20 °C. */
  private static final double COLD = 0.23078;

  /** The same at 70 °C: times 1.20. */
  private static final double HOT = 0.276936;

  /** BS 7671, 411.4.4: 0.95·230/160 = 1.365625 Ω for B32. */
  private static final double GREATEST = 1.365625;

  /** The reading expected is the supply's as read and the cable cold: no factor is in it. */
  @Test
  void readingIsToldCold() {
    Finding found = complies(Scenario.oven().finding(CHECK));
    assertEquals(COLD, step("R1R2,20", found), 1e-9);
    assertEquals(0.28 + COLD, step("Zs,20", found), 1e-9);
    assertEquals(230 / (0.28 + COLD), step("Ipf", found), 1e-6);
    actual(0.28 + COLD, found);
    limit(0.8 * GREATEST, found);
    assertTrue(clauses(found).contains("643"));
    assertTrue(remarks(found).isEmpty());
  }

  /** 0.8·1.365625 = 1.0925 Ω: the loop read at the origin may be 0.86172 Ω. */
  @ParameterizedTest
  @CsvSource({"0.8617, false", "0.8618, true"})
  void readingAboveTheShareIsRemarked(double read, boolean remarked) {
    Finding found = complies(loop(read).finding(CHECK));
    assertEquals(remarked, remarks(found).contains(NoteCode.READING_NOT_FAILURE));
    limit(remarked ? GREATEST : 0.8 * GREATEST, found);
    actual(remarked ? 1.05 * read + HOT : read + COLD, found);
  }

  /**
   * A reading above it fails only where the loop at operating temperature does: 1.05·Zm + 0.277.
   */
  @ParameterizedTest
  @CsvSource({"1.0368, true", "1.0369, false"})
  void loopAtOperatingTemperatureDecidesThen(double read, boolean holds) {
    Finding found = loop(read).finding(CHECK);
    assertTrue(remarks(found).contains(NoteCode.READING_NOT_FAILURE));
    if (holds) {
      complies(found);
    } else {
      fails(found);
    }
    assertEquals(1.37, found.governing().printed().number());
  }

  /** The 0.8 is never applied to conductors already hot: a hot loop is held against all of Zs. */
  @Test
  void shareIsNotAppliedToAHotLoop() {
    Finding found = loop(0.95).finding(CHECK);
    assertTrue(0.95 * 1.05 + HOT > 0.8 * GREATEST);
    complies(found);
    assertEquals("Zs", found.governing().actual().symbol());
    limit(GREATEST, found);
  }

  /** Informative: counted nowhere, whatever it says. */
  @ParameterizedTest
  @CsvSource({"0.28, COMPLIES", "1.2, DOES_NOT_COMPLY"})
  void itIsNeverCounted(double read, Verdict verdict) {
    Finding found = loop(read).finding(CHECK);
    assertEquals(verdict, found.verdict());
    assertFalse(found.counted());
    assertEquals(Reason.NOTHING_COUNTED, Result.of(List.of(found)).reason());
  }

  /** 411.5.3, Table 41.5: 50 V/30 mA = 1 666.67 Ω, printed 1 667; a share of it matters nothing. */
  @ParameterizedTest
  @CsvSource({"TN-C-S, 1.2", "TT, 200"})
  void whereTheResidualDeviceDisconnectsItsLimitIsRead(String earthing, double read) {
    Finding found =
        residual()
            .with("/supply/earthing", earthing)
            .with("/supply/loopImpedanceOhm", read)
            .finding(CHECK);
    complies(found);
    limit(50 / 0.03, found);
    actual(1.05 * read + HOT, found);
    assertEquals(1667, found.governing().printed().number());
    assertTrue(remarks(found).contains(NoteCode.RESIDUAL_GOVERNS));
    assertFalse(remarks(found).contains(NoteCode.READING_NOT_FAILURE));
  }

  @Test
  void loopBeyondTheResidualDeviceFails() {
    fails(residual().with("/supply/loopImpedanceOhm", 1600).finding(CHECK));
  }

  /** Where the breaker disconnects, its own limit is read, residual function or not. */
  @Test
  void whereTheBreakerDisconnectsItsLimitIsRead() {
    limit(0.8 * GREATEST, complies(residual().finding(CHECK)));
  }

  @ParameterizedTest
  @CsvSource({
    "/device",
    "/supply/loopImpedanceOhm",
    "/cable/lengthM",
    "/supply/earthing",
    "/device/characteristic"
  })
  void whatTheReadingNeedsIsAskedFor(String pointer) {
    Finding found = open(Scenario.oven().without(pointer).finding(CHECK), pointer);
    assertEquals(null, found.governing());
  }

  private static Scenario loop(double read) {
    return Scenario.oven().with("/supply/loopImpedanceOhm", read);
  }

  private static Scenario residual() {
    return Scenario.oven()
        .with("/device/standard", "IEC 61009-1")
        .with("/device/residual/operatingCurrentA", 0.03);
  }
}
