package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.wanted;
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

  /** 11 kW at 400 V on 230 V: what it draws there its power does not say; 240 V lie within 10 %. */
  @ParameterizedTest
  @CsvSource({"400, false", "254, false", "253, true", "240, true"})
  void loadRatedBeyondTheCircuitIsNotBelieved(double rated, boolean believed) {
    Finding found =
        Scenario.oven()
            .without("/load/designCurrentA")
            .with("/load/kind", "electronic")
            .with("/load/ratedPowerW", 6000)
            .with("/load/ratedVoltageV", rated)
            .finding(CheckName.OVERLOAD_PROTECTION);
    if (believed) {
      complies(found);
    } else {
      open(found, "/load/ratedVoltageV");
      assertTrue(wanted(found).contains(NoteCode.VOLTAGE_BEYOND_CIRCUIT));
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
