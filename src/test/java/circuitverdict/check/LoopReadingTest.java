package circuitverdict.check;

import static circuitverdict.check.OvenReadings.OVEN;
import static circuitverdict.check.OvenReadings.loop;
import static circuitverdict.check.OvenReadings.of;
import static circuitverdict.check.OvenReadings.withOrigin;
import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings of loop impedance against the design (643.7.3, Appendix 3 of BS 7671). */
class LoopReadingTest {
  /** 0.8·0.95·230/160 = 1.0925 Ω: up to there it complies by that alone. */
  @Test
  void withinFourFifthsItComplies() {
    Finding at = complies(loop(", 'resistanceOhm': 1.0925"));
    actual(1.0925, at);
    limit(1.0925, at);
    assertFalse(remarks(at).contains(NoteCode.READING_NOT_FAILURE));
  }

  /** Above it 0.35 + 1.20·(Zm − 0.35) decides against 1.365625 Ω: turns at 1.196354 Ω. */
  @ParameterizedTest
  @CsvSource({"1.0926, true", "1.1963, true", "1.1964, false"})
  void aboveFourFifthsTheOperatingTemperatureDecides(double read, boolean holds) {
    Finding found = withOrigin(", 'resistanceOhm': " + read);
    actual(0.35 + 1.2 * (read - 0.35), holds ? complies(found) : fails(found));
    limit(1.365625, found);
    assertTrue(remarks(found).contains(NoteCode.READING_NOT_FAILURE));
  }

  /**
   * With the conductors' temperature the 0.8 plays no part: at 20 °C as above, at 70 °C nothing is
   * added, at 10 °C (0.96) more.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 1.1963, true",
    "20, 1.1964, false",
    "70, 1.3656, true",
    "70, 1.3657, false",
    "10, 1.1624, true",
    "10, 1.1626, false",
  })
  void aStatedTemperatureIsCorrectedFrom(double celsius, double read, boolean holds) {
    Finding found =
        withOrigin(", 'conductorTemperatureC': " + celsius + ", 'resistanceOhm': " + read);
    assertEquals(holds ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY, found.verdict());
    limit(1.365625, found);
    assertFalse(remarks(found).contains(NoteCode.READING_NOT_FAILURE));
  }

  /**
   * A declared Ze may be more than there is: without a reading of it, 1.20·Zm complies, what
   * exceeds with all of the declared 0.35 Ω fails, and between the two Ze is asked for; R1 + R2 as
   * read tells too: 0.35 + 1.20·R.
   */
  @ParameterizedTest
  @CsvSource({
    "1.138, , COMPLIES", "1.1381, , NOT_DETERMINED", "1.1963, , NOT_DETERMINED",
    "1.1964, , DOES_NOT_COMPLY", "1.19, 0.846, COMPLIES", "1.19, 0.847, NOT_DETERMINED",
    "1.19, 0.1, NOT_DETERMINED", "1.3, 0.3, DOES_NOT_COMPLY", "1.8, 0.846, DOES_NOT_COMPLY",
  })
  void aDeclaredOriginIsABound(double read, Double both, Verdict verdict) {
    String parts = both == null ? "" : ", {'kind': 'r1-plus-r2', 'resistanceOhm': " + both + "}";
    Finding found =
        of(OVEN, "[{'kind': 'loop-impedance', 'resistanceOhm': " + read + "}" + parts + "]");
    assertEquals(verdict, found.verdict(), found::toString);
    if (verdict == Verdict.NOT_DETERMINED) {
      assertEquals(NoteCode.READING_OF_ORIGIN, found.missing().get(0).code());
    }
  }

  /** Beyond a board by 1.28, as of 90 °C before it. */
  @Test
  void beyondABoardItIsCorrectedAsOfNinetyDegrees() {
    Scenario board = OVEN.with("/supply/point", "board").with("/supply/basis", "measured-cold");
    Finding found =
        of(
            board
                .with("/supply/instrumentUncertaintyPercent", 0)
                .with("/supply/originLoopImpedanceOhm", 0.3),
            "[{'kind': 'loop-impedance', 'resistanceOhm': 1.1}]");
    actual(0.3 + 1.28 * 0.8, complies(found));
  }

  /** 50 V over 30 mA is 1 667 Ω, far above what the overcurrent device asks for. */
  @Test
  void aResidualFunctionDecidesWhereTheOvercurrentDeviceDoesNot() {
    Scenario rcbo =
        OVEN.with("/device/standard", "IEC 61009-1")
            .withJson(
                "/device/residual",
                "{\"operatingCurrentA\": 0.03, \"type\": \"A\", \"delay\": \"general\"}");
    Finding found = of(rcbo, "[{'kind': 'loop-impedance', 'resistanceOhm': 100}]");
    assertTrue(remarks(complies(found)).contains(NoteCode.RESIDUAL_GOVERNS));
    fails(of(rcbo, "[{'kind': 'r1-plus-r2', 'resistanceOhm': 2000}]"));
  }

  /** The instrument's uncertainty widens it; a reading without one is taken as exact, listed. */
  @Test
  void theUncertaintyWidensIt() {
    Finding found = withOrigin(", 'resistanceOhm': 1.1, 'instrumentUncertaintyPercent': 10");
    actual(0.35 + 1.2 * (1.1 * 1.1 - 0.35), fails(found));
    assertTrue(
        loop(", 'resistanceOhm': 1").assumptions().stream()
            .anyMatch(note -> note.code() == NoteCode.ASSUMED_EXACT_READING));
  }

  /** 22 m of 3.08 and 7.41 Ω/km have 0.231 Ω: 0.40 Ω in all is better than they allow. */
  @Test
  void betterThanTheConductorsIsRemarkedOn() {
    assertTrue(
        remarks(complies(loop(", 'resistanceOhm': 0.40"))).contains(NoteCode.READING_BETTER));
    assertFalse(
        remarks(complies(loop(", 'resistanceOhm': 0.6"))).contains(NoteCode.READING_BETTER));
  }

  @Test
  void atTheOriginItIsHeldAgainstTheDesign() {
    complies(loop(", 'place': 'origin', 'resistanceOhm': 0.35"));
    fails(loop(", 'place': 'origin', 'resistanceOhm': 0.351"));
  }

  /** A design's loop at a board is hot: 0.28 Ω read cold is 0.358 Ω then. */
  @Test
  void aReadingAtTheBoardIsBroughtToWhatTheDesignMeans() {
    Scenario board =
        OVEN.with("/supply/point", "board")
            .with("/supply/basis", "calculated-hot")
            .with("/supply/loopImpedanceOhm", 0.28);
    String read = "[{'kind': 'loop-impedance', 'place': 'Board', 'resistanceOhm': %s}]";
    fails(of(board, read.formatted(0.28)));
    complies(of(board, read.formatted(0.2187)));
    String origin = "[{'kind': 'loop-impedance', 'place': 'origin', 'resistanceOhm': 0.1}]";
    assertEquals(List.of("/supply/originLoopImpedanceOhm"), missing(of(board, origin)));
  }

  /** More of a loop never turns a failure into a pass. */
  @Test
  void aGreaterReadingNeverComplies() {
    boolean failed = false;
    for (double read = 0.3; read < 2; read += 0.001) {
      Verdict verdict = loop(", 'resistanceOhm': " + read).verdict();
      assertFalse(failed && verdict == Verdict.COMPLIES, "at " + read);
      failed |= verdict == Verdict.DOES_NOT_COMPLY;
    }
    assertTrue(failed);
  }

  /** Ze that was measured within 10 % may be 0.315 Ω: the rest, and its heating, is more then. */
  @Test
  void aMeasuredOriginIsTakenAtItsLeast() {
    Scenario measured =
        OVEN.with("/supply/basis", "measured-cold")
            .with("/supply/instrumentUncertaintyPercent", 10);
    Finding found = of(measured, "[{'kind': 'loop-impedance', 'resistanceOhm': 1.1}]");
    actual(0.315 + 1.2 * (1.1 - 0.315), complies(found));
  }

  /** 0.8 is room for 1.20, not for the 1.28 of 90 °C: 1.28·1.09 exceeds 1.365625 Ω. */
  @Test
  void ofNinetyDegreesFourFifthsAreNotEnough() {
    Scenario hot =
        OVEN.with("/cable/construction", "multicore").with("/cable/insulation", "thermosetting-90");
    Finding found = of(hot, "[{'kind': 'loop-impedance', 'resistanceOhm': 1.09}]");
    assertEquals(NoteCode.READING_OF_ORIGIN, found.missing().get(0).code());
    complies(of(hot, "[{'kind': 'loop-impedance', 'resistanceOhm': 1.0668}]"));
  }
}
