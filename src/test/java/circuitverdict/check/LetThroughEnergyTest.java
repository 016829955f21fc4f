package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Let-through energy against k²S² of line and neutral over the whole range of currents (434.5.2).
 */
class LetThroughEnergyTest {
  private static final CheckName CHECK = CheckName.LET_THROUGH_ENERGY;

  /** k = 115 (Table 43.1): 115²·6² = 476 100 A²s; the maker's data settle it both ways. */
  @ParameterizedTest
  @CsvSource({"476099, true", "476100, true", "476101, false"})
  void energyDoesNotExceedWhatTheConductorStands(double energy, boolean holds) {
    Finding found = oven(3000).withJson("/device/letThrough", flat(energy)).finding(CHECK);
    judged(holds, found);
    assertEquals(Strength.RULE, found.strength());
    actual(energy, found);
    limit(476100, found);
  }

  /**
   * One point of the maker's within the range settles it there, before the class (45 000 A²s) that
   * would let it pass: 115²·6² = 476 100 A²s. Outside the range it says nothing.
   */
  @ParameterizedTest
  @CsvSource({
    "2000, 476101, false",
    "3000, 476101, false",
    "3000, 476100, true",
    "3001, 476101, true"
  })
  void onePointWithinTheRangeSettlesItThere(double current, double energy, boolean holds) {
    String point = "[{\"prospectiveCurrentA\": %s, \"energyA2s\": %s}]".formatted(current, energy);
    Finding found = oven(3000).withJson("/device/letThrough", point).finding(CHECK);
    judged(holds, found);
    assertEquals(Strength.RULE, found.strength());
    if (!holds) {
      actual(energy, found);
    }
  }

  /**
   * EN 60898-1 annex ZA, B32, 6 kA, class 3: 45 000 A²s, up to Icn, the neutral beside the line.
   */
  @Test
  void classOfTheOwnCapacityProvesIt() {
    Finding found = complies(oven(6000).finding(CHECK));
    actual(45000, found);
    assertEquals(Strength.RULE, found.strength());
    // The line by both faults it carries, and the neutral.
    assertEquals(3, found.comparisons().size());
    assertTrue(clauses(found).contains("434.5.2"));
  }

  /** Without a class I²·0.1 s of test e: 0.1·2 181.97² = 476 100 A²s. */
  @ParameterizedTest
  @CsvSource({"2181, true", "2183, false"})
  void promisedTimeProvesItWithoutAClass(double current, boolean proved) {
    Finding found = oven(current).without("/device/energyClass").finding(CHECK);
    if (proved) {
      actual(0.1 * current * current, complies(found));
    } else {
      openBecause(Reason.BETWEEN_BOUNDS, found);
      assertTrue(wanted(found).contains(NoteCode.MAKER_DATA_NEEDED));
      assertEquals(current, found.missing().get(1).figures().get(0).value());
    }
  }

  /** A smaller neutral is the weaker path: 115²·1.5² = 29 756 A²s. */
  @ParameterizedTest
  @CsvSource({"29756, true", "29757, false"})
  void neutralIsHeldToo(double energy, boolean holds) {
    Finding found =
        oven(3000)
            .with("/cable/construction", "multicore")
            .with("/cable/neutralCsaMm2", 1.5)
            .withJson("/device/letThrough", flat(energy))
            .finding(CHECK);
    judged(holds, found);
    limit(29756.25, found);
  }

  /** Three lines without neutral: the lines alone are held. */
  @Test
  void withoutNeutralTheLinesAloneAreHeld() {
    Finding found =
        oven(3000)
            .with("/supply/faultCurrents/threePhase/maximumA", 3000)
            .with("/cable/construction", "multicore")
            .without("/supply/lineToNeutralLoopImpedanceOhm")
            .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\"]")
            .finding(CHECK);
    assertEquals(2, complies(found).comparisons().size());
  }

  /**
   * Beyond the oven's cable less than the 6 kA of the board flow: what the maker shows there fails
   * a further cable of 1.5 mm² (115²·1.5² = 29 756 A²s) only if the least current does too.
   */
  @ParameterizedTest
  @CsvSource({"20000, open", "29757, fails"})
  void furtherCableIsNotCondemnedByTheCurrentOfTheBoard(double atLeast, String verdict) {
    Finding found =
        oven(6000)
            .withJson(
                "/device/letThrough",
                """
                [{"prospectiveCurrentA": 50, "energyA2s": %s},
                 {"prospectiveCurrentA": 900, "energyA2s": %s},
                 {"prospectiveCurrentA": 6000, "energyA2s": 60000}]
                """
                    .formatted(atLeast, atLeast))
            .withJson(
                "/furtherCables",
                """
                [{"construction": "flat-twin-and-earth", "conductor": "copper",
                  "insulation": "thermoplastic-70", "lineCsaMm2": 1.5, "protectiveCsaMm2": 1,
                  "lengthM": 2, "arrangement": "radial", "installation": {"referenceMethod": "C",
                  "ambientTemperatureC": 30, "groupedCircuits": 1}}]
                """)
            .finding(CHECK);
    if (verdict.equals("fails")) {
      fails(found);
    } else {
      openBecause(Reason.BETWEEN_BOUNDS, found);
    }
  }

  /** Guidance reads the class row of the smallest capacity not below the current: never proof. */
  @ParameterizedTest
  @CsvSource({"3000, 15000", "3001, 25000", "4500, 25000", "4501, 0"})
  void lowerClassRowsAreGuidance(double current, double row) {
    Scenario lamps =
        oven(current)
            .with("/stage", "design")
            .with("/device/ratedCurrentA", 6)
            .with("/load/designCurrentA", 4)
            .with("/cable/lineCsaMm2", 1.5)
            .with("/cable/protectiveCsaMm2", 1)
            .with("/cable/parallelCables", 2)
            .with("/load/use", "lighting");
    Finding found = lamps.finding(CHECK);
    if (row == 0) {
      openBecause(Reason.BETWEEN_BOUNDS, found);
      return;
    }
    actual(row, complies(found));
    assertEquals(Strength.GUIDANCE, found.strength());
    openBecause(Reason.PROOF_WANTED, lamps.with("/stage", "sign-off").finding(CHECK));
  }

  /** The weakest cable in series is held. */
  @Test
  void everyCableInSeriesIsHeld() {
    Finding found =
        oven(3000)
            .withJson("/device/letThrough", flat(30000))
            .withJson(
                "/furtherCables",
                """
                [{"construction": "flat-twin-and-earth", "conductor": "copper",
                  "insulation": "thermoplastic-70", "lineCsaMm2": 1.5, "protectiveCsaMm2": 1,
                  "lengthM": 2}]
                """)
            .finding(CHECK);
    limit(29756.25, fails(found));
    assertEquals("/furtherCables/0", found.governing().subject());
    assertEquals(6, found.comparisons().size());
  }

  @ParameterizedTest
  @CsvSource({
    "/device",
    "/cable/insulation",
    "/cable/lineCsaMm2",
    "/cable/conductor",
    "/liveConductors",
    "/supply/maximumFaultCurrentA",
    "/device/breakingCapacityA"
  })
  void whatTheComparisonNeedsIsAskedFor(String pointer) {
    Finding found = oven(3000).without(pointer).finding(CHECK);
    open(found, pointer);
    assertEquals(Reason.MISSING_INPUT, found.reason());
  }

  @Test
  void makerDataAreNotAskedForWithoutACurrent() {
    Finding found = oven(1).without("/supply/maximumFaultCurrentA").finding(CHECK);
    assertFalse(missing(found).contains("/device/letThrough"));
  }

  @ParameterizedTest
  @CsvSource({"IEC 61008-1", "IEC 60947-3"})
  void otherDevicesAreNotJudged(String standard) {
    openBecause(
        Reason.DEVICE_NOT_JUDGED, oven(3000).with("/device/standard", standard).finding(CHECK));
  }

  static Scenario oven(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current);
  }

  static String flat(double energy) {
    return "[{\"prospectiveCurrentA\": 50, \"energyA2s\": %s}, {\"prospectiveCurrentA\": 20000,"
            .formatted(energy)
        + " \"energyA2s\": %s}]".formatted(energy);
  }
}
