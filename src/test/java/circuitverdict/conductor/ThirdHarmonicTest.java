package circuitverdict.conductor;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Third harmonics of three-phase circuits with a neutral (523.6.3, Appendix 4 section 5.5). */
class ThirdHarmonicTest {
  private static final CheckName CHECK = CheckName.CONDUCTOR_RATING;

  /** Appendix 4: 1, 0.86, then by the neutral's current 3·h·Ib: 0.86 and 1. */
  @ParameterizedTest
  @CsvSource({
    "0, 1",
    "15, 1",
    "15.1, 0.86",
    "33, 0.86",
    "33.4, 0.8582834331337326",
    "45, 0.6370370370370371",
    "45.1, 0.7390983000739098",
    "60, 0.5555555555555556"
  })
  void factorFollowsTheHarmonic(double percent, double factor) {
    Finding found = fourWire("led").with("/load/thirdHarmonicPercent", percent).finding(CHECK);
    assertEquals(factor, step("F", found), 1e-9);
  }

  /**
   * Between 33 % and 33⅓ % the neutral carries no more than the lines: no credit is given for it.
   */
  @Test
  void neutralNeverImprovesTheFactor() {
    Finding found = fourWire("led").with("/load/thirdHarmonicPercent", 33.2).finding(CHECK);
    assertEquals(0.86, step("F", found), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"led", "discharge", "electronic", "mixed", "socket-outlets", "vehicle-charging"})
  void harmonicOfLampsAndElectronicsMustBeStated(String kind) {
    Scenario unknown = fourWire(kind);
    open(unknown.finding(CHECK), "/load/thirdHarmonicPercent");
    open(unknown.with("/stage", "design").finding(CHECK), "/load/thirdHarmonicPercent");
    Finding quoted = complies(unknown.with("/stage", "quotation").finding(CHECK));
    assertTrue(assumptions(quoted).contains(NoteCode.ASSUMED_THIRD_HARMONIC));
    assertEquals(1, step("F", quoted));
  }

  @ParameterizedTest
  @CsvSource({"resistive", "motor", "filament", "transformer"})
  void otherLoadsNeedNone(String kind) {
    assertEquals(1, step("F", complies(fourWire(kind).finding(CHECK))));
  }

  @Test
  void loadOfUnknownKindIsAskedFor() {
    open(fourWire("led").without("/load/kind").finding(CHECK), "/load/kind");
  }

  @Test
  void onePartThatMakesHarmonicsIsEnough() {
    Scenario parts =
        fourWire("led")
            .without("/load/kind")
            .withJson("/load/parts", "[{\"kind\": \"resistive\"}, {\"kind\": \"led\"}]");
    open(parts.finding(CHECK), "/load/thirdHarmonicPercent");
    complies(
        fourWire("led")
            .without("/load/kind")
            .withJson("/load/parts", "[{\"kind\": \"resistive\"}]")
            .finding(CHECK));
  }

  /** Without a neutral, or on one phase, third harmonics have no path of their own. */
  @Test
  void harmonicsCountOnlyWithThreePhasesAndNeutral() {
    Scenario threeWire = fourWire("led").withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\"]");
    assertEquals(1, step("F", complies(threeWire.finding(CHECK))));
    Scenario single = fourWire("led").withJson("/liveConductors", "[\"L1\", \"N\"]");
    assertEquals(
        1, step("F", complies(single.with("/load/thirdHarmonicPercent", 40).finding(CHECK))));
  }

  private static Scenario fourWire(String kind) {
    return Scenario.oven()
        .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\", \"N\"]")
        .with("/load/kind", kind)
        .with("/cable/construction", "multicore")
        .with("/cable/lineCsaMm2", 25);
  }
}
