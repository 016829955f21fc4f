package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Voltage drop of loads on one line of three, and of final circuits of private supplies. */
class OneLineTest {
  private static final CheckName CHECK = CheckName.VOLTAGE_DROP;
  private static final String FOUR = "[\"L1\", \"L2\", \"L3\", \"N\"]";

  /**
   * IEC 60364-5-52 annex G, note 3: 4 600 W at 230 V draw 20 A through line and neutral: 18 mV/A/m
   * (Table 4D2B) over 30 m are 10.8 V of 230 V; at 400 V the three lines carry it.
   */
  @ParameterizedTest
  @CsvSource({"230, 30, 10.8, 230", "400, 30, 2.98779, 400"})
  void loadOnOneLineDropsThroughItsNeutral(
      double rated, double length, double volts, double nominal) {
    Finding found = complies(three(length, rated).finding(CHECK));
    actual(100 * volts / nominal, found);
    fails(three(230 * 0.05 / 0.018 / 20 + 0.1, 230).finding(CHECK));
  }

  /** How parts share the lines is not known: all on one may pass, more is asked for. */
  @ParameterizedTest
  @CsvSource({"30, true", "33, false"})
  void partsOnOneLineAreTakenTogether(double length, boolean holds) {
    Finding found =
        three(length, 230)
            .without("/load/ratedPowerW")
            .without("/load/ratedVoltageV")
            .with("/load/kind", "mixed")
            .withJson(
                "/load/parts",
                "[{\"kind\": \"resistive\", \"ratedPowerW\": 2300, \"ratedVoltageV\": 230},"
                    + " {\"kind\": \"resistive\", \"designCurrentA\": 10}]")
            .finding(CHECK);
    if (holds) {
      complies(found);
    } else {
      open(found, "/load/parts");
      assertTrue(wanted(found).contains(NoteCode.SHARE_OF_LINES));
    }
  }

  /** Table 4Ab, note: a final circuit of a private supply keeps to 3 and 5 % by itself. */
  @ParameterizedTest
  @CsvSource({
    "other, final, 2.9, 4.9, complies, 5",
    "other, final, 2.9, 5.1, fails, 5",
    "other, , 2.9, 5.1, fails, 5",
    "lighting, final, 2, 2.9, complies, 3",
    "lighting, final, 2, 3.1, fails, 3",
    "other, distribution, 2.9, 5.1, complies, 8",
    "other, final, 3.2, 4.9, fails, 8",
    ", final, 0, 3.1, open, 3",
    ", final, 0, 5.1, fails, 5"
  })
  void finalCircuitOfAPrivateSupplyKeepsToItsOwnLimit(
      String use, String kind, double before, double own, String verdict, double limit) {
    Scenario circuit =
        uncorrected()
            .with("/load/powerFactor", 1)
            .with("/load/designCurrentA", 32)
            .with("/supply/ownership", "private")
            .with("/supply/voltageDropPercent", before)
            .with("/cable/lengthM", own * 2.3 / (7.3 * 32 / 1000))
            .without("/load/use");
    circuit = use == null ? circuit : circuit.with("/load/use", use);
    Finding found = (kind == null ? circuit : circuit.with("/circuitKind", kind)).finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> limit(limit, fails(found));
      default -> open(found, "/load/use");
    }
  }

  /** Items that share the lines drop as the stated current has it: 15·5·70/1000 of 400 V. */
  @ParameterizedTest
  @CsvSource({"30, 1.3125", "1, 2.73913"})
  void itemsThatShareTheLinesDropBetweenThem(int count, double percent) {
    Finding found =
        three(70, 230).with("/load/designCurrentA", 5).with("/load/count", count).finding(CHECK);
    actual(percent, complies(found));
  }

  /**
   * Rated for another voltage than it gets, 10 % aside, a load draws what its power does not say: a
   * resistance for 115 V twice as much on 230 V.
   */
  @ParameterizedTest
  @CsvSource({
    "resistive, 400, false",
    "resistive, 254, false",
    "resistive, 253, true",
    "resistive, 210, true",
    "resistive, 209, false",
    "resistive, 115, false",
    "electronic, 253, true",
    "electronic, 400, false"
  })
  void loadRatedForAnotherVoltageIsNotBelieved(String kind, double rated, boolean believed) {
    Finding found =
        Scenario.oven()
            .without("/load/designCurrentA")
            .with("/load/kind", kind)
            .with("/load/ratedPowerW", 6000)
            .with("/load/ratedVoltageV", rated)
            .finding(CheckName.OVERLOAD_PROTECTION);
    if (believed) {
      complies(found);
      actual(6000 / (kind.equals("resistive") ? rated : 230), found);
    } else {
      open(found, "/load/ratedVoltageV");
      assertTrue(wanted(found).contains(NoteCode.VOLTAGE_BEYOND_CIRCUIT));
    }
  }

  /** Without a neutral nothing is between line and earth for it. */
  @ParameterizedTest
  @CsvSource({"'[\"L1\", \"L2\"]'", "'[\"L1\", \"L2\", \"L3\"]'"})
  void loadForOneLineNeedsANeutral(String live) {
    Finding found = three(10, 230).withJson("/liveConductors", live).finding(CHECK);
    open(found, "/load/ratedVoltageV");
  }

  /** All of In at one point is the worst that outlets draw: 90 m fail by it, and hold by 26 A. */
  @ParameterizedTest
  @CsvSource({"60, complies", "90, stand-in", "90, fails", "90, holds"})
  void ratingForOutletsCarriesNoFailure(double length, String verdict) {
    Scenario ring =
        RingCircuitTest.ring()
            .with("/cable/lengthM", length)
            .with("/load/powerFactor", 1)
            .with("/supply/voltageDropPercent", 0);
    switch (verdict) {
      case "complies" -> complies(ring.finding(CHECK));
      case "stand-in" -> {
        Finding found = open(ring.finding(CHECK), "/load/designCurrentA");
        assertEquals(Reason.STAND_IN_FAILS, found.reason());
      }
      case "fails" -> fails(ring.with("/load/designCurrentA", 32).finding(CHECK));
      default -> complies(ring.with("/load/designCurrentA", 26).finding(CHECK));
    }
  }

  /** Behind BS 3036 no cooler conductor is counted. */
  private static Scenario uncorrected() {
    return Scenario.oven().with("/device/standard", "BS 3036");
  }

  private static Scenario three(double length, double rated) {
    return uncorrected()
        .with("/supply/phases", 3)
        .with("/supply/voltageDropPercent", 0)
        .withJson("/liveConductors", FOUR)
        .without("/load/designCurrentA")
        .with("/load/powerFactor", 1)
        .with("/load/ratedPowerW", 4600)
        .with("/load/ratedVoltageV", rated)
        .with("/cable/construction", "multicore")
        .with("/cable/protectiveMeans", "core")
        .with("/cable/lineCsaMm2", 2.5)
        .with("/cable/neutralCsaMm2", 2.5)
        .with("/cable/lengthM", length);
  }
}
