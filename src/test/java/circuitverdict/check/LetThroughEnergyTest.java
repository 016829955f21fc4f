package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.assumptions;
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

  /** Single-pole or not, the greater of line–neutral and line–earth flows in the line. */
  @Test
  void greatestOfBothKindsCounts() {
    Finding found =
        oven(6000)
            .without("/device/energyClass")
            .with("/device/poles", 2)
            .with("/supply/faultCurrents/lineToNeutral/maximumA", 1000)
            .with("/supply/faultCurrents/lineToEarth/maximumA", 2000)
            .finding(CHECK);
    actual(0.1 * 2000 * 2000, complies(found));
  }

  /**
   * The greatest of any kind may be a line–earth fault, which is not stated: what its energy alone
   * exceeds is not determined. What a stated kind exceeds fails.
   */
  @ParameterizedTest
  @CsvSource({"2000, ", "5000, false"})
  void kindThatIsNotStatedDecides(double neutral, Boolean holds) {
    Finding found =
        oven(6000)
            .with("/supply/faultCurrents/lineToNeutral/maximumA", neutral)
            .withJson(
                "/device/letThrough",
                "[{\"prospectiveCurrentA\": 50, \"energyA2s\": 1000},"
                    + " {\"prospectiveCurrentA\": 2000, \"energyA2s\": 1000},"
                    + " {\"prospectiveCurrentA\": 5000, \"energyA2s\": 500000},"
                    + " {\"prospectiveCurrentA\": 6000, \"energyA2s\": 500000}]")
            .finding(CHECK);
    if (holds == null) {
      open(found, "/supply/faultCurrents/lineToEarth/maximumA");
    } else {
      judged(holds, found);
    }
  }

  /**
   * Below 5·In only 60 s are promised: 160²·60 exceeds k²S². An earth fault of 150 A counts in the
   * line, unless a residual function clears it, which does not see line to neutral.
   */
  @Test
  void smallEarthFaultCountsUnlessAResidualDeviceClearsIt() {
    Scenario weak = oven(3000).with("/supply/loopImpedanceOhm", 1.2).with("/device/energyClass", 1);
    openBecause(Reason.BETWEEN_BOUNDS, weak.finding(CHECK));
    complies(
        oven(2000)
            .with("/supply/loopImpedanceOhm", 1.2)
            .without("/device/energyClass")
            .with("/device/standard", "IEC 61009-1")
            .with("/device/residual/operatingCurrentA", 0.03)
            .finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS,
        oven(2000)
            .with("/supply/loopImpedanceOhm", 1.2)
            .without("/device/energyClass")
            .finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS,
        oven(2000)
            .with("/supply/lineToNeutralLoopImpedanceOhm", 1.3)
            .without("/device/energyClass")
            .with("/device/standard", "IEC 61009-1")
            .with("/device/residual/operatingCurrentA", 0.03)
            .finding(CHECK));
  }

  /**
   * In TT the earth fault is the residual device's; the line–neutral loop is needed all the same.
   */
  @Test
  void ttCountsTheLineToNeutralFaultAlone() {
    Scenario tt =
        oven(2000)
            .with("/supply/earthing", "TT")
            .with("/supply/loopImpedanceOhm", 21)
            .without("/device/energyClass");
    complies(tt.finding(CHECK));
    open(
        tt.without("/supply/lineToNeutralLoopImpedanceOhm").finding(CHECK),
        "/supply/lineToNeutralLoopImpedanceOhm");
  }

  /** 435.1 covers the live conductors: the line–neutral loop is not needed then. */
  @Test
  void loopIsNotNeededWhereTheCombinedDeviceCovers() {
    Finding found = oven(3000).without("/supply/lineToNeutralLoopImpedanceOhm").finding(CHECK);
    complies(found);
    assertEquals(Strength.DEEMED, found.strength());
  }

  /** Without the least current the upper end can fail the check, never pass it. */
  @ParameterizedTest
  @CsvSource({"476101, true", "1000, false"})
  void withoutLeastCurrentOnlyFailureIsCertain(double energy, boolean fails) {
    Scenario unknown =
        oven(3000)
            .without("/supply/lineToNeutralLoopImpedanceOhm")
            .with("/device/energyClass", 1)
            .withJson("/device/letThrough", flat(energy));
    if (fails) {
      fails(unknown.finding(CHECK));
    } else {
      open(unknown.finding(CHECK), "/supply/lineToNeutralLoopImpedanceOhm");
    }
  }

  /**
   * Whatever the greatest current is, the least one is among those that flow: what the device is
   * shown to let through there, over 115²·6² = 476 100 A²s, fails the check.
   */
  @ParameterizedTest
  @CsvSource({"476101, true", "476100, false", "1000, false"})
  void withoutGreatestCurrentOnlyFailureIsCertain(double energy, boolean fails) {
    Scenario unknown =
        oven(3000)
            .without("/supply/maximumFaultCurrentA")
            .withJson("/device/letThrough", flat(energy));
    if (fails) {
      actual(energy, fails(unknown.finding(CHECK)));
      fails(unknown.with("/supply/maximumFaultCurrentA", 3000).finding(CHECK));
    } else {
      open(unknown.finding(CHECK), "/supply/maximumFaultCurrentA");
    }
  }

  /** At quotation a typical current stands for it, which carries no failure. */
  @Test
  void aTypicalLoopCarriesNoFailureWithoutGreatestCurrent() {
    Finding found =
        oven(3000)
            .with("/stage", "quotation")
            .without("/supply/maximumFaultCurrentA")
            .without("/supply/loopImpedanceOhm")
            .without("/supply/lineToNeutralLoopImpedanceOhm")
            .withJson("/device/letThrough", flat(476101))
            .finding(CHECK);
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
  }

  /** Above its Icn a device promises nothing without evidence of the pair. */
  @Test
  void aboveTheCapacityThePairsEvidenceIsNeeded() {
    Scenario over = oven(8000);
    Finding found = openBecause(Reason.BETWEEN_BOUNDS, over.finding(CHECK));
    assertTrue(wanted(found).contains(NoteCode.BACK_UP_EVIDENCE_NEEDED));
    Scenario backed =
        over.with("/upstreamDevice/breakingCapacityA", 8000)
            .with("/backUp/limitedLetThroughA2s", 40000)
            .with("/backUp/combinationRatingA", 8000)
            .with("/backUp/evidence", "both makers");
    actual(45000, complies(backed.finding(CHECK)));
    actual(50000, complies(backed.with("/backUp/limitedLetThroughA2s", 50000).finding(CHECK)));
    openBecause(Reason.BETWEEN_BOUNDS, backed.without("/backUp/evidence").finding(CHECK));
    openBecause(Reason.BETWEEN_BOUNDS, backed.without("/backUp/combinationRatingA").finding(CHECK));
    openBecause(Reason.BETWEEN_BOUNDS, backed.without("/upstreamDevice").finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS,
        backed.with("/upstreamDevice/standard", "IEC 61008-1").finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS,
        backed.with("/upstreamDevice/breakingCapacityA", 7999).finding(CHECK));
    Scenario unstated = backed.without("/upstreamDevice/breakingCapacityA");
    open(unstated.finding(CHECK), "/upstreamDevice/breakingCapacityA");
    Finding design = complies(unstated.with("/stage", "design").finding(CHECK));
    assertTrue(assumptions(design).contains(NoteCode.ASSUMED_BREAKING_CAPACITY));
    Finding within =
        unstated.with("/stage", "design").with("/supply/maximumFaultCurrentA", 6000).finding(CHECK);
    assertFalse(assumptions(within).contains(NoteCode.ASSUMED_BREAKING_CAPACITY));
    openBecause(
        Reason.BETWEEN_BOUNDS, backed.with("/backUp/limitedLetThroughA2s", 476101).finding(CHECK));
    assertFalse(
        wanted(oven(6000).with("/device/energyClass", 1).finding(CHECK))
            .contains(NoteCode.BACK_UP_EVIDENCE_NEEDED));
  }

  /**
   * The maker's curve of the device alone exceeds 115²·6² = 476 100 A²s at 8 kA; the pair's
   * declared let-through, which counts above 6 kA and up to its rating, keeps below.
   */
  @Test
  void aPairThatLimitsMoreThanTheDeviceAloneIsHeard() {
    Scenario alone =
        oven(8000)
            .withJson(
                "/device/letThrough",
                """
                [{"prospectiveCurrentA": 50, "energyA2s": 1000},
                 {"prospectiveCurrentA": 6000, "energyA2s": 400000},
                 {"prospectiveCurrentA": 8000, "energyA2s": 500000}]
                """);
    actual(500000, fails(alone.finding(CHECK)));
    Scenario paired =
        alone
            .with("/upstreamDevice/breakingCapacityA", 33000)
            .with("/backUp/limitedLetThroughA2s", 450000)
            .with("/backUp/combinationRatingA", 8000)
            .with("/backUp/evidence", "both makers");
    actual(450000, complies(paired.finding(CHECK)));
    openBecause(
        Reason.BETWEEN_BOUNDS, paired.with("/backUp/limitedLetThroughA2s", 476101).finding(CHECK));
    actual(400000, complies(paired.with("/backUp/limitedLetThroughA2s", 300000).finding(CHECK)));
    fails(paired.with("/backUp/limitedLetThroughA2s", 500000).finding(CHECK));
    fails(paired.with("/backUp/combinationRatingA", 7999).finding(CHECK));
    fails(paired.with("/device/breakingCapacityA", 8000).finding(CHECK));
    fails(paired.without("/backUp/evidence").finding(CHECK));
    // Without its rating a pair passes nothing at sign-off; that it may be enough is not denied.
    Scenario unrated = paired.without("/backUp/combinationRatingA");
    Finding open = openBecause(Reason.BETWEEN_BOUNDS, unrated.finding(CHECK));
    assertTrue(wanted(open).contains(NoteCode.BACK_UP_EVIDENCE_NEEDED));
    complies(unrated.with("/stage", "design").finding(CHECK));
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

  /** Both checks end at Icn, equality included: 6 kA, and 6 kA but for binary rounding. */
  @ParameterizedTest
  @CsvSource({"5999.99, true", "6000, true", "6000.000000000001, true", "6000.01, false"})
  void thePromiseEndsWhereTheBreakingCapacityDoes(double current, boolean within) {
    Finding found = oven(current).finding(CHECK);
    judged(within, oven(current).finding(CheckName.BREAKING_CAPACITY));
    if (within) {
      actual(45000, complies(found));
      assertEquals(Strength.RULE, found.strength());
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

  private static Scenario oven(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current);
  }

  private static String flat(double energy) {
    return "[{\"prospectiveCurrentA\": 50, \"energyA2s\": %s}, {\"prospectiveCurrentA\": 20000,"
            .formatted(energy)
        + " \"energyA2s\": %s}]".formatted(energy);
  }
}
