package circuitverdict.conductor;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ib as stated, from power at the load's own voltage, or as a charging point declares it. */
class DesignCurrentTest {
  private static final CheckName CHECK = CheckName.OVERLOAD_PROTECTION;

  private static final double EXACT = 1e-9;

  /** Worked examples E01 and E02: P/U on one phase; E03: P/(√3·U) on three. */
  @ParameterizedTest
  @CsvSource({
    "5000, '[\"L1\", \"N\"]', 21.73913043478261",
    "6000, '[\"L1\", \"N\"]', 26.08695652173913",
    "16000, '[\"L1\", \"L2\", \"L3\"]', 23.094010767585033",
    "16000, '[\"L1\", \"L2\"]', 40"
  })
  void powerGivesTheCurrent(double watts, String live, double current) {
    Finding found = power(watts).withJson("/liveConductors", live).finding(CHECK);
    assertEquals(current, found.comparisons().get(0).actual().value(), EXACT);
  }

  /** Power to current at the load's own rated voltage: 6 000 W at 240 V draw 25 A. */
  @Test
  void ownRatedVoltageCounts() {
    assertEquals(25, ib(power(6000).with("/load/ratedVoltageV", 240)), EXACT);
  }

  /**
   * On 230/400 V an item rated 230 V stands between a line and neutral, where 6 000 W draw 26.1 A;
   * one rated 400 V or 415 V draws from all lines. How several 230 V items share them is not known.
   */
  @ParameterizedTest
  @CsvSource({
    "230, 26.08695652173913",
    "240, 25",
    "400, 8.660254037844386",
    "415, 8.347232807560856"
  })
  void itemForLineAndNeutralLoadsOneLine(double voltage, double current) {
    Scenario item =
        power(6000)
            .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\", \"N\"]")
            .with("/load/ratedVoltageV", voltage);
    assertEquals(current, item.finding(CHECK).comparisons().get(0).actual().value(), EXACT);
    if (voltage < 300) {
      open(item.with("/load/count", 2).finding(CHECK), "/load/designCurrentA");
    }
  }

  /** 2·3 000 W·0.5/(230·0.8) = 16.3 A. */
  @Test
  void countDiversityAndPowerFactorCount() {
    Scenario load =
        power(3000)
            .with("/load/count", 2)
            .with("/load/diversityFactor", 0.5)
            .with("/load/powerFactor", 0.8);
    assertEquals(3000 / (230 * 0.8), ib(load), EXACT);
  }

  /** 2 300 W/(230·0.8·0.5) = 25 A: a motor's power is that of its shaft. */
  @Test
  void motorNeedsItsEfficiency() {
    Scenario motor = power(2300).with("/load/kind", "motor").with("/load/powerFactor", 0.8);
    open(motor.finding(CHECK), "/load/efficiencyPercent");
    assertEquals(25, ib(motor.with("/load/efficiencyPercent", 50)), EXACT);
    assertEquals(
        12.5, ib(power(2300).with("/load/powerFactor", 0.8)), EXACT, "others' power is drawn");
  }

  /** A resistance draws its current in phase, at every stage; of other kinds it is asked for. */
  @ParameterizedTest
  @CsvSource({
    "resistive, design, true",
    "filament, design, true",
    "resistive, sign-off, true",
    "filament, sign-off, true",
    "led, design, false",
    "led, sign-off, false"
  })
  void powerFactorOfResistiveLoadsIsOne(String kind, String stage, boolean assumed) {
    Finding found =
        power(2300)
            .with("/load/kind", kind)
            .with("/stage", stage)
            .without("/load/powerFactor")
            .finding(CHECK);
    assertEquals(assumed, assumptions(found).contains(NoteCode.ASSUMED_UNITY_POWER_FACTOR));
    if (assumed) {
      assertEquals(10, found.comparisons().get(0).actual().value(), EXACT);
    } else {
      open(found, "/load/powerFactor");
    }
  }

  /**
   * 20 kW on 230 V draw 86.96 A or more, whatever the power factor, the efficiency and the kind.
   */
  @ParameterizedTest
  @CsvSource({"led", "motor", ","})
  void powerBeyondTheDeviceFailsWhateverElseIsMissing(String kind) {
    for (String arrangement : new String[] {"radial", "ring"}) {
      Finding found =
          unfactored(20_000, kind).with("/cable/arrangement", arrangement).finding(CHECK);
      fails(found);
      assertEquals(20_000 / 230.0, found.governing().actual().value(), EXACT);
    }
    open(unfactored(7360, kind).finding(CHECK), "/load/powerFactor");
    fails(unfactored(7361, kind).finding(CHECK));
    open(unfactored(20_000, kind).without("/liveConductors").finding(CHECK), "/load/powerFactor");
  }

  /** 3·4 000 W at half together: 26.1 A at the least; at 0.7 36.5 A. A stated factor counts. */
  @Test
  void leastCurrentKeepsWhatIsStated() {
    Scenario three = unfactored(4000, "led").with("/load/count", 3);
    open(three.with("/load/diversityFactor", 0.5).finding(CHECK), "/load/powerFactor");
    fails(three.with("/load/diversityFactor", 0.7).finding(CHECK));
    Scenario motor = unfactored(4000, "motor").with("/load/count", 1);
    open(motor.with("/load/powerFactor", 0.8).finding(CHECK), "/load/efficiencyPercent");
    fails(motor.with("/load/powerFactor", 0.5).finding(CHECK));
    fails(motor.with("/load/efficiencyPercent", 50).finding(CHECK));
  }

  /** A part whose current is not known draws none at the least: 40 A beside it are too many. */
  @Test
  void knownPartsMayAlreadyBeTooMany() {
    String parts = "[{\"kind\": \"resistive\", \"designCurrentA\": %s}, {\"kind\": \"led\"}]";
    Scenario mixed = power(1).without("/load/ratedPowerW").with("/load/kind", "mixed");
    fails(mixed.withJson("/load/parts", parts.formatted(40)).finding(CHECK));
    open(
        mixed.withJson("/load/parts", parts.formatted(30)).finding(CHECK),
        "/load/parts/1/designCurrentA");
  }

  /** 9 000 W on 230 V draw 39.1 A: a stated 10 A decides, and is remarked on. */
  @ParameterizedTest
  @CsvSource({"10, true", "39, true", "39.2, false", "45, false"})
  void statedCurrentBelowThePowerIsRemarkedOn(double stated, boolean remarked) {
    Scenario load = power(9000).with("/load/designCurrentA", stated);
    for (CheckName check : new CheckName[] {CHECK, CheckName.VOLTAGE_DROP}) {
      Finding found = load.finding(check);
      assertEquals(remarked, remarks(found).contains(NoteCode.DESIGN_CURRENT_BELOW_LOAD));
    }
    Finding found = load.finding(CHECK);
    judged(stated < 32, found);
    assertEquals(stated, found.comparisons().get(0).actual().value());
  }

  /** What is stated of diversity justifies it; of what is missing the least counts. */
  @Test
  void statedDiversityIsCounted() {
    Scenario load = power(9000).with("/load/designCurrentA", 20);
    assertTrue(below(load));
    assertFalse(below(load.with("/load/diversityFactor", 0.5)));
    assertTrue(below(load.with("/load/diversityFactor", 0.5).with("/load/count", 2)));
    Scenario lamps = load.with("/load/kind", "led").with("/load/ratedPowerW", 4600);
    assertFalse(below(lamps.without("/load/powerFactor")));
    assertTrue(below(lamps.with("/load/powerFactor", 0.9)));
    assertFalse(below(load.without("/load/ratedPowerW")));
  }

  /**
   * Charging points by their currents, never by their rounded power; mixed loads by their parts.
   */
  @Test
  void pointsAndPartsAreHeldToo() {
    Scenario point =
        power(7400).with("/load/kind", "vehicle-charging").with("/load/designCurrentA", 32);
    assertFalse(below(point));
    assertFalse(below(point.with("/load/ratedCurrentA", 32)));
    assertTrue(below(point.with("/load/ratedCurrentA", 32).with("/load/count", 2)));
    String parts = "[{\"designCurrentA\": 10, \"ratedPowerW\": %s, \"powerFactor\": 1}]";
    Scenario mixed = power(1).without("/load/ratedPowerW").with("/load/kind", "mixed");
    assertTrue(below(mixed.withJson("/load/parts", parts.formatted(9000))));
    assertFalse(below(mixed.withJson("/load/parts", parts.formatted(2000))));
    assertTrue(
        below(
            mixed.with("/load/designCurrentA", 9).withJson("/load/parts", parts.formatted(2000))));
  }

  @Test
  void loadWithoutCurrentOrPowerIsAskedFor() {
    open(Scenario.oven().without("/load/designCurrentA").finding(CHECK), "/load/designCurrentA");
    open(Scenario.oven().without("/load").finding(CHECK), "/load/designCurrentA");
  }

  @Test
  void withoutLiveConductorsPowerGivesNoCurrent() {
    open(power(2300).without("/liveConductors").finding(CHECK), "/liveConductors");
  }

  private static boolean below(Scenario scenario) {
    return remarks(scenario.finding(CHECK)).contains(NoteCode.DESIGN_CURRENT_BELOW_LOAD);
  }

  private static Scenario unfactored(double watts, String kind) {
    Scenario load = power(watts).without("/load/powerFactor");
    return kind == null ? load.without("/load/kind") : load.with("/load/kind", kind);
  }

  /** On 4 mm², whose legs carry the whole 32 A. */
  static Scenario ring(String kind) {
    return power(1)
        .without("/load/ratedPowerW")
        .with("/load/kind", kind)
        .with("/cable/lineCsaMm2", 4)
        .with("/cable/arrangement", "ring");
  }

  static Scenario power(double watts) {
    return Scenario.oven().without("/load/designCurrentA").with("/load/ratedPowerW", watts);
  }

  static double ib(Scenario scenario) {
    Finding found = scenario.finding(CHECK);
    double compared = found.comparisons().get(0).actual().value();
    assertEquals(compared, step("Ib", found), EXACT);
    return compared;
  }
}
