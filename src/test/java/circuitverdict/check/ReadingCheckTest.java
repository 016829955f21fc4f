package circuitverdict.check;

import static circuitverdict.check.OvenReadings.OVEN;
import static circuitverdict.check.OvenReadings.loop;
import static circuitverdict.check.OvenReadings.of;
import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.missing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings of the tester (643, Appendix 3) on the deck oven: B32, 6/2.5 mm², 22 m, Ze 0.35 Ω. */
class ReadingCheckTest {
  /** Only from a line to the protective conductor is it the earth fault loop. */
  @ParameterizedTest
  @CsvSource({"L1, N", "N, PE", "L1, L2", "PE, PE"})
  void betweenOthersItIsLeftOpen(String one, String other) {
    String between = ", 'between': ['" + one + "', '" + other + "'], 'resistanceOhm': 0.5";
    Finding found = loop(between);
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
    assertEquals(NoteCode.READING_NOT_JUDGED, found.missing().get(0).code());
    complies(loop(", 'between': ['PE', 'L1'], 'resistanceOhm': 0.5"));
  }

  /** No parallel path takes the line conductor away: 22 m of 6 mm² have 0.068 Ω. */
  @ParameterizedTest
  @CsvSource({
    "loop-impedance, resistanceOhm, 0",
    "loop-impedance, resistanceOhm, 0.03",
    "r1-plus-r2, resistanceOhm, 0",
    "fault-current, currentA, 0",
    "insulation, resistanceOhm, 0",
  })
  void whatCannotBeIsImplausible(String kind, String member, double value) {
    Finding found = of(OVEN, "[{'kind': '%s', '%s': %s}]".formatted(kind, member, value));
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
    assertEquals(NoteCode.READING_IMPLAUSIBLE, found.missing().get(0).code());
  }

  /** What is said to be unsatisfactory is so, whatever its figure. */
  @Test
  void anUnsatisfactoryTestFails() {
    fails(of(OVEN, "[{'kind': 'insulation', 'resistanceOhm': 1e8, 'satisfactory': false}]"));
  }

  /**
   * What was read above the design's greatest current leaves the design open; far off it is less.
   */
  @Test
  void aFaultCurrentAboveTheDesignLeavesItOpen() {
    Scenario designed = OVEN.without("/assembly").with("/supply/maximumFaultCurrentA", 1550);
    complies(of(designed, "[{'kind': 'fault-current', 'place': 'board', 'currentA': 1550}]"));
    Finding above = of(designed, "[{'kind': 'fault-current', 'place': 'board', 'currentA': 1551}]");
    assertEquals(NoteCode.READING_ABOVE_DESIGN, above.missing().get(0).code());
    Finding far = of(designed, "[{'kind': 'fault-current', 'place': 'oven', 'currentA': 600}]");
    assertEquals(NoteCode.READING_NOT_JUDGED, far.missing().get(0).code());
  }

  /**
   * IEC 61008-1 (from memory): type S waits 0.13 s at IΔn; a delay that is not stated is asked for.
   */
  @Test
  void theDelayOfAResidualDeviceIsHeldToo() {
    Scenario selective =
        OVEN.with("/device/standard", "IEC 61009-1")
            .withJson(
                "/device/residual",
                "{\"operatingCurrentA\": 0.3, \"type\": \"A\", \"delay\": \"S\"}");
    String read = "[{'kind': 'residual-trip-time', 'testMultiple': 1, 'timeS': %s}]";
    fails(of(selective, read.formatted(0.12)));
    complies(of(selective, read.formatted(0.13)));
    complies(of(selective, read.formatted(0.5)));
    fails(of(selective, read.formatted(0.51)));
    Finding open = of(selective.without("/device/residual/delay"), read.formatted(0.2));
    assertEquals(List.of("/device/residual/delay"), missing(open));
  }

  /** 0.35 + 1.20·R within 1.365625 Ω: R up to 0.846 Ω; below 22 m of 6 mm² alone implausible. */
  @ParameterizedTest
  @CsvSource({
    "0.23, COMPLIES",
    "0.846, COMPLIES",
    "0.847, DOES_NOT_COMPLY",
    "0.03, NOT_DETERMINED"
  })
  void continuityIsHeldAgainstTheLoop(double read, Verdict verdict) {
    Finding found = of(OVEN, "[{'kind': 'r1-plus-r2', 'resistanceOhm': " + read + "}]");
    assertEquals(verdict, found.verdict(), found::toString);
    if (verdict == Verdict.NOT_DETERMINED) {
      assertEquals(NoteCode.READING_IMPLAUSIBLE, found.missing().get(0).code());
    }
  }

  /** R2 alone, with R1 of the design: 22·3.08·1.20/1000 = 0.0813 Ω. */
  @Test
  void theProtectiveConductorAlone() {
    actual(
        0.35 + 22 * 3.08 * 1.2 / 1000 + 0.2 * 1.2,
        complies(of(OVEN, "[{'kind': 'r2', 'resistanceOhm': 0.2}]")));
  }

  /** Table 64 (from memory): 1 MΩ. */
  @ParameterizedTest
  @CsvSource({"1000000, true", "999999, false"})
  void insulationHasALeast(double read, boolean holds) {
    Finding found = of(OVEN, "[{'kind': 'insulation', 'resistanceOhm': " + read + "}]");
    assertEquals(holds ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY, found.verdict());
  }

  /** 6 kA: as read on one phase; of three lines up to 3 kA, beyond 6 kA for certain not. */
  @ParameterizedTest
  @CsvSource({
    "1, 6000, COMPLIES",
    "1, 6001, DOES_NOT_COMPLY",
    "3, 3000, COMPLIES",
    "3, 3001, NOT_DETERMINED",
    "3, 6001, DOES_NOT_COMPLY"
  })
  void theFaultCurrentStaysWithinWhatTheDeviceBreaks(int phases, double read, Verdict verdict) {
    Scenario circuit =
        OVEN.without("/assembly")
            .without("/backUp")
            .without("/supply/maximumFaultCurrentA")
            .with("/supply/phases", phases);
    Scenario wired =
        phases == 1
            ? circuit
            : circuit.withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\", \"N\"]");
    Finding found = of(wired, "[{'kind': 'fault-current', 'currentA': " + read + "}]");
    assertEquals(verdict, found.verdict(), found::toString);
  }

  /** IEC 61009-1: 0.3 s at IΔn, 0.04 s at five times. */
  @ParameterizedTest
  @CsvSource({"1, 0.3, true", "1, 0.301, false", "5, 0.04, true", "5, 0.041, false"})
  void theTripTimeIsThatOfTheStandard(double multiple, double time, boolean holds) {
    Scenario rcbo =
        OVEN.with("/device/standard", "IEC 61009-1")
            .withJson(
                "/device/residual",
                "{\"operatingCurrentA\": 0.03, \"type\": \"A\", \"delay\": \"general\"}");
    String read = "[{'kind': 'residual-trip-time', 'testMultiple': %s, 'timeS': %s}]";
    Finding found = of(rcbo, read.formatted(multiple, time));
    assertEquals(holds ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY, found.verdict());
    Finding without = of(OVEN, read.formatted(multiple, time));
    assertEquals(List.of("/residualDevice"), missing(without));
    Finding half = of(rcbo, read.formatted(0.5, 0.01));
    assertEquals(Verdict.NOT_DETERMINED, half.verdict());
  }

  /** 411.5.3: 50 V over 30 mA, 1 666.67 Ω, with 22 m of protective conductor, 0.20 Ω. */
  @ParameterizedTest
  @CsvSource({"1666.4, true", "1666.5, false"})
  void theElectrodeWithTheResidualFunction(double read, boolean holds) {
    Scenario rcbo =
        OVEN.with("/device/standard", "IEC 61009-1")
            .withJson(
                "/device/residual",
                "{\"operatingCurrentA\": 0.03, \"type\": \"A\", \"delay\": \"general\"}");
    Finding found = of(rcbo, "[{'kind': 'earth-electrode', 'resistanceOhm': " + read + "}]");
    assertEquals(holds ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY, found.verdict());
  }

  @Test
  void polarityIsAsStated() {
    assertEquals(
        Verdict.COMPLIES, of(OVEN, "[{'kind': 'polarity', 'satisfactory': true}]").verdict());
    assertEquals(
        Verdict.DOES_NOT_COMPLY,
        of(OVEN, "[{'kind': 'polarity', 'satisfactory': false}]").verdict());
    assertEquals(List.of("/readings/0/satisfactory"), missing(of(OVEN, "[{'kind': 'polarity'}]")));
  }

  /** What is not read is asked for at its place. */
  @ParameterizedTest
  @CsvSource({
    "loop-impedance, resistanceOhm",
    "r1-plus-r2, resistanceOhm",
    "insulation, resistanceOhm",
    "fault-current, currentA",
  })
  void aReadingWithoutItsFigureIsAskedFor(String kind, String member) {
    Finding found = of(OVEN, "[{'kind': '" + kind + "'}]");
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
    assertTrue(missing(found).contains("/readings/0/" + member), found::toString);
  }

  /** Ends of a ring on a radial circuit mean nothing. */
  @Test
  void aRadialCircuitHasNoRingToRead() {
    assertEquals(
        Verdict.NOT_APPLICABLE, of(OVEN, "[{'kind': 'ring-r1', 'resistanceOhm': 0.5}]").verdict());
  }

  /**
   * A B40 with what it connects not stated: 0.4 s or 5 s, for a type B the same current; a 50 A
   * link to BS 88-2 has 0.6 Ω at 0.4 s and 0.99 Ω at 5 s (Tables 41.2 and 41.4): between, it is
   * asked for.
   */
  @ParameterizedTest
  @CsvSource({"0.8, NOT_DETERMINED", "1.3, DOES_NOT_COMPLY"})
  void betweenTwoTimesTheConnectionIsAskedFor(double read, Verdict verdict) {
    Scenario fuse =
        OVEN.without("/load/connection")
            .withJson(
                "/device",
                "{\"standard\": \"BS 88-2\", \"ratedCurrentA\": 50, \"utilizationCategory\": \"gG\"}");
    Finding found =
        of(fuse, "[{'kind': 'r1-plus-r2', 'resistanceOhm': " + (read - 0.35) / 1.2 + "}]");
    assertEquals(verdict, found.verdict(), found::toString);
    if (verdict == Verdict.NOT_DETERMINED) {
      assertEquals(List.of("/load/connection"), missing(found));
    } else {
      // The number that decides is worked out where it is shown.
      double limit = found.governing().limit().value();
      assertTrue(found.working().stream().anyMatch(step -> step.result().value() == limit));
    }
  }
}
