package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.open;

import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Items on a ring by what they draw (433.1.204): accessories to BS 1363 are rated 13 A. A power is
 * stated for some voltage of the supply's +10 %: 1.1·13 A·230 V = 3 289 W is the most, so that the
 * 3 kW of the trade (13.04 A at 230 V) is none too large. On 2.5 mm² with 27 A a leg only the rule
 * for rings admits 32 A.
 */
class RingItemTest {
  private static final CheckName CHECK = CheckName.OVERLOAD_PROTECTION;

  /** 5 000 W on 230 V draw 21.7 A at one point. */
  @ParameterizedTest
  @CsvSource({"2000, true", "3000, true", "3289, true", "3290, false", "5000, false"})
  void itemLargerByItsPowerIsNotCovered(double watts, boolean covered) {
    Scenario part =
        ringOf(
            """
            {"kind": "resistive", "connection": "socket-outlet", "ratedPowerW": %s}
            """
                .formatted(watts));
    for (CheckName check : new CheckName[] {CHECK, CheckName.CONDUCTOR_RATING}) {
      judged(covered, part.finding(check));
      judged(covered, single(watts).finding(check));
      judged(covered, single(watts).with("/load/kind", "resistive").finding(check));
    }
    Scenario strong = part.with("/cable/lineCsaMm2", 4).with("/cable/protectiveCsaMm2", 2.5);
    complies(strong.finding(CHECK));
  }

  /** The contract: ratedPowerW is that of one item, of however many. */
  @ParameterizedTest
  @CsvSource({"1000, 6, true", "3000, 2, true", "5000, 1, false", "5000, 2, false"})
  void powerIsThatOfOneItem(double watts, int count, boolean covered) {
    judged(covered, single(watts).with("/load/count", count).finding(CHECK));
  }

  /** 2 300 W/(230·0.8·0.8) = 15.6 A; 2 000 W so 13.6 A. Less than 14.3 A settles nothing yet. */
  @ParameterizedTest
  @CsvSource({"2300, false", "2000, true"})
  void powerFactorAndEfficiencyCount(double watts, boolean covered) {
    Scenario motor =
        single(watts)
            .with("/load/kind", "motor")
            .with("/load/powerFactor", 0.8)
            .with("/load/efficiencyPercent", 80);
    judged(covered, motor.finding(CHECK));
    open(motor.without("/load/powerFactor").finding(CHECK), "/load/powerFactor");
    open(motor.without("/load/efficiencyPercent").finding(CHECK), "/load/efficiencyPercent");
    Scenario large = motor.with("/load/ratedPowerW", 5000);
    fails(large.without("/load/powerFactor").finding(CHECK));
    fails(large.without("/load/efficiencyPercent").finding(CHECK));
  }

  /** 3 000 W draw 15 A at 200 V; on a voltage above the supply's they are not made less. */
  @ParameterizedTest
  @CsvSource({"3000, 240, true", "3000, 220, true", "3000, 200, false", "5000, 400, false"})
  void ratedVoltageCounts(double watts, double volts, boolean covered) {
    judged(covered, single(watts).with("/load/ratedVoltageV", volts).finding(CHECK));
  }

  @Test
  void powerWithoutAVoltageSettlesNothing() {
    Scenario unknown =
        single(3000).without("/supply/ownership").without("/supply/lineToEarthVoltageV");
    open(unknown.finding(CheckName.CONDUCTOR_RATING), "/supply/lineToEarthVoltageV");
  }

  /** Equal items share the stated current: 30 A of two are 15 A each. */
  @ParameterizedTest
  @CsvSource({
    "socket-outlets, 30, 1, false",
    "socket-outlets, 30, 2, false",
    "socket-outlets, 30, 3, true",
    "socket-outlets, 30, , true",
    "resistive, 30, 2, false",
    "resistive, 28.6, 2, true",
    "resistive, 30, 3, true",
    "resistive, 14.3, , true",
    "resistive, 13, 1, true"
  })
  void itemLargerByItsCurrentIsNotCovered(
      String kind, double current, Integer count, boolean covered) {
    Scenario load =
        RingLoadTest.feeding(kind, "socket-outlet").with("/load/designCurrentA", current);
    Scenario counted = count == null ? load : load.with("/load/count", count);
    judged(covered, counted.finding(CHECK));
    judged(covered, counted.finding(CheckName.CONDUCTOR_RATING));
  }

  /** Of equipment by its kind a current above 13 A may be one item's, or that of several. */
  @ParameterizedTest
  @CsvSource({"resistive", "motor", "led", "electronic"})
  void numberOfItemsIsAskedFor(String kind) {
    Scenario load = RingLoadTest.feeding(kind, "socket-outlet");
    for (CheckName check : new CheckName[] {CHECK, CheckName.CONDUCTOR_RATING}) {
      open(load.finding(check), "/load/count");
      fails(load.with("/cable/installation/referenceMethod", "101").finding(check));
      complies(load.with("/cable/lineCsaMm2", 4).finding(check));
      fails(load.with("/load/count", 1).finding(check));
    }
    Scenario part =
        ringOf(
            """
            {"kind": "%s", "connection": "socket-outlet", "designCurrentA": 20}
            """
                .formatted(kind));
    open(part.finding(CHECK), "/load/parts/1/count");
  }

  /** Equipment of which no current follows may be of any size, whatever the whole draws. */
  @Test
  void currentOfEachItemIsAskedFor() {
    Scenario part = ringOf("{\"kind\": \"resistive\", \"connection\": \"socket-outlet\"}");
    open(part.finding(CHECK), "/load/parts/1/designCurrentA");
    open(part.finding(CheckName.CONDUCTOR_RATING), "/load/parts/1/designCurrentA");
  }

  private static Scenario single(double watts) {
    return RingLoadTest.feeding("socket-outlets", "socket-outlet")
        .with("/load/powerFactor", 1)
        .with("/load/ratedPowerW", watts)
        .with("/load/designCurrentA", Math.min(watts / 230, 13));
  }

  private static Scenario ringOf(String part) {
    return RingLoadTest.feeding("mixed", null)
        .withJson(
            "/load/parts", "[{\"kind\": \"socket-outlets\", \"ratedCurrentA\": 13}, " + part + "]");
  }
}
