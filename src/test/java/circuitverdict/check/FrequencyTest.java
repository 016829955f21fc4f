package circuitverdict.check;

import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Facts;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The tables hold for 50 Hz: at another frequency nothing complies and nothing fails by them. */
class FrequencyTest {

  @ParameterizedTest
  @MethodSource("circuitverdict.check.CheckName#ofCircuits")
  void sixtyHertzGivesNoVerdict(CheckName check) {
    Finding found = charging().with("/supply/frequencyHz", 60).finding(check);
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
    assertEquals(Reason.MISSING_INPUT, found.reason());
    assertTrue(missing(found).contains("/supply/frequencyHz"));
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
  }

  /** Nor a failure by figures. */
  @ParameterizedTest
  @CsvSource({
    "OVERLOAD_PROTECTION, /load/designCurrentA, 33",
    "CONDUCTOR_RATING, /device/ratedCurrentA, 63",
    "VOLTAGE_DROP, /cable/lengthM, 400",
    "EARTH_FAULT_DISCONNECTION, /cable/lengthM, 400",
    "BREAKING_CAPACITY, /device/breakingCapacityA, 1000",
    "INRUSH, /load, '{\"kind\": \"motor\", \"designCurrentA\": 26, \"inrush\": {\"starting\":"
        + " \"direct-on-line\", \"currentMultiple\": 8, \"durationS\": 3}}'",
    "COMMISSIONING, /cable/lengthM, 400"
  })
  void sixtyHertzGivesNoFailure(CheckName check, String pointer, String value) {
    Scenario broken = charging().withJson(pointer, value);
    assertEquals(Verdict.DOES_NOT_COMPLY, broken.verdict(check));
    assertEquals(Verdict.NOT_DETERMINED, broken.with("/supply/frequencyHz", 60).verdict(check));
  }

  /**
   * What is broken by facts alone rests on no table: 722.411.4.1 names no frequency (from memory),
   * and a broken PEN conductor kills at any.
   */
  @Test
  void sixtyHertzCuresNoDutyBrokenByFacts() {
    Scenario broken = charging().with("/supply/openPenProtection", false);
    Facts.fails(broken.finding(CheckName.EARTHING_ARRANGEMENT));
    Scenario sixty = broken.with("/supply/frequencyHz", 60);
    Facts.fails(sixty.finding(CheckName.EARTHING_ARRANGEMENT));
    assertEquals(Verdict.DOES_NOT_COMPLY, sixty.result().verdict());
  }

  @ParameterizedTest
  @MethodSource("circuitverdict.check.CheckName#ofCircuits")
  void fiftyHertzIsWhatTheTablesHoldFor(CheckName check) {
    assertEquals(
        charging().finding(check).verdict(),
        charging().with("/supply/frequencyHz", 50).finding(check).verdict());
    assertFalse(
        missing(charging().with("/supply/frequencyHz", 50).finding(check))
            .contains("/supply/frequencyHz"));
  }

  @Test
  void wholeCircuitIsNotDetermined() {
    Result result = charging().with("/supply/frequencyHz", 60).result();
    assertEquals(Verdict.NOT_DETERMINED, result.verdict());
    assertEquals(Reason.CHECK_NOT_DETERMINED, result.reason());
  }

  /** A charging point outdoors, so that every check applies. */
  private static Scenario charging() {
    return Scenario.oven()
        .with("/load/kind", "vehicle-charging")
        .withJson("/premises/locations", "[\"outdoors\"]")
        .with("/supply/openPenProtection", true);
  }
}
