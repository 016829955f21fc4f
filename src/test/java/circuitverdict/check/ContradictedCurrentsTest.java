package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A greatest current below the least contradicts itself; the pair's let-through against the
 * maker's.
 */
class ContradictedCurrentsTest {
  private static final CheckName CHECK = CheckName.BREAKING_CAPACITY;

  /** 0.95·230/0.28 = 780.36 A flow at least at the supply point. */
  @ParameterizedTest
  @CsvSource({"780, true", "781, false"})
  void greatestCurrentIsNoLessThanTheLeast(double current, boolean contradicted) {
    Finding found = at(current).without("/supply/lineToNeutralLoopImpedanceOhm").finding(CHECK);
    if (contradicted) {
      open(found, "/supply/maximumFaultCurrentA");
      assertEquals(780.357, found.remarks().get(0).figures().get(0).value(), 0.001);
    } else {
      complies(found);
    }
    assertEquals(contradicted, remarks(found).contains(NoteCode.CURRENTS_CONTRADICT));
  }

  /** Nor than what a stated loop of line and neutral lets flow: 0.95·230/0.26 = 840.38 A. */
  @ParameterizedTest
  @CsvSource({"840, true", "841, false"})
  void greatestCurrentIsNoLessThanTheLeastToNeutral(double current, boolean contradicted) {
    Finding found = at(current).finding(CHECK);
    if (contradicted) {
      open(found, "/supply/maximumFaultCurrentA");
    } else {
      complies(found);
    }
    assertEquals(contradicted, remarks(found).contains(NoteCode.CURRENTS_CONTRADICT));
    Finding anyKind =
        at(current).without("/liveConductors").without("/supply/phases").finding(CHECK);
    assertEquals(contradicted, remarks(anyKind).contains(NoteCode.CURRENTS_CONTRADICT));
  }

  /** Nor is that of any kind less than what a neutral loop at the same point lets flow. */
  @ParameterizedTest
  @CsvSource({"840, true", "841, false"})
  void greatestOfAnyKindIsNoLessThanTheLeastToNeutral(double current, boolean contradicted) {
    Finding found =
        at(current)
            .with("/supply/phases", 3)
            .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\"]")
            .finding(CHECK);
    assertEquals(contradicted, remarks(found).contains(NoteCode.CURRENTS_CONTRADICT));
    assertEquals(contradicted, found.verdict() == Verdict.NOT_DETERMINED);
  }

  /** Nor does the energy rest on such a current, though less flows at the far end. */
  @ParameterizedTest
  @CsvSource({
    "LET_THROUGH_ENERGY, 840, true",
    "LET_THROUGH_ENERGY, 841, false",
    "PROTECTIVE_CONDUCTOR, 780, true",
    "PROTECTIVE_CONDUCTOR, 781, false"
  })
  void energyRestsOnNoContradictedCurrent(CheckName check, double current, boolean contradicted) {
    Finding found = at(current).finding(check);
    if (contradicted) {
      open(found, "/supply/maximumFaultCurrentA");
    } else {
      complies(found);
    }
    assertEquals(contradicted, remarks(found).contains(NoteCode.CURRENTS_CONTRADICT));
  }

  /** What fails by the least current fails whatever the greatest is said to be. */
  @Test
  void energyOfTheLeastCurrentFailsBesideAContradictedOne() {
    Scenario fused =
        at(780)
            .withJson(
                "/device",
                "{\"standard\": \"BS 88-2\", \"utilizationCategory\": \"gG\", \"ratedCurrentA\": 100,"
                    + " \"breakingCapacityA\": 80000}")
            .with("/cable/lineCsaMm2", 1);
    Finding found = fails(fused.finding(CheckName.LET_THROUGH_ENERGY));
    assertTrue(remarks(found).contains(NoteCode.CURRENTS_CONTRADICT));
  }

  @Test
  void energyIsNotJudgedByContradictoryCurrents() {
    Finding found = at(300).finding(CheckName.PROTECTIVE_CONDUCTOR);
    assertTrue(remarks(found).contains(NoteCode.CURRENTS_CONTRADICT));
    open(found, "/supply/maximumFaultCurrentA");
  }

  /** Nor is anything deemed by them: 435.1 speaks of a capacity that is not exceeded. */
  @Test
  void nothingIsDeemedByContradictoryCurrents() {
    Finding found = at(500).finding(CheckName.LET_THROUGH_ENERGY);
    assertTrue(remarks(found).contains(NoteCode.CURRENTS_CONTRADICT));
    open(found, "/supply/maximumFaultCurrentA");
  }

  /** Nor against the maker's data, at whatever current they speak: 6 mm² stands 476 100 A²s. */
  @ParameterizedTest
  @CsvSource({"476000, true", "477000, false"})
  void nothingIsDeemedAgainstTheMakersData(double energy, boolean deemed) {
    Scenario unknownLeast =
        Scenario.oven()
            .without("/supply/loopImpedanceOhm")
            .without("/supply/lineToNeutralLoopImpedanceOhm")
            .withJson(
                "/device/letThrough",
                "[{\"prospectiveCurrentA\": 900, \"energyA2s\": " + energy + "}]");
    Finding found = unknownLeast.finding(CheckName.LET_THROUGH_ENERGY);
    if (deemed) {
      complies(found);
    } else {
      open(found, "/supply/loopImpedanceOhm");
    }
  }

  /** Without a stated loop, or a stated current, nothing contradicts. */
  @Test
  void whatIsNotStatedContradictsNothing() {
    complies(
        at(300)
            .without("/supply/loopImpedanceOhm")
            .without("/supply/lineToNeutralLoopImpedanceOhm")
            .finding(CHECK));
    assertFalse(
        remarks(at(300).without("/supply/maximumFaultCurrentA").finding(CHECK))
            .contains(NoteCode.CURRENTS_CONTRADICT));
  }

  /** Above Icn the pair lets through no more than the maker shows at Icn: 50 000 A²s. */
  @ParameterizedTest
  @CsvSource({"49999, true", "50000, true", "50001, false"})
  void pairLetsThroughNoMoreThanTheDeviceStands(double energy, boolean holds) {
    Finding found = withMakersFigures(backed(energy)).with("/stage", "design").finding(CHECK);
    if (holds) {
      actual(energy, complies(found));
      limit(50000, found);
    } else {
      limit(6000, fails(found));
    }
    assertEquals(holds, remarks(found).contains(NoteCode.BACKED_UP));
  }

  /** At sign-off nothing but the rating of the pair says up to which current that is declared. */
  @Test
  void pairNeedsItsRatingAtSignOff() {
    Scenario unrated = withMakersFigures(backed(40000));
    open(unrated.finding(CHECK), "/backUp/combinationRatingA");
    limit(10000, complies(unrated.with("/backUp/combinationRatingA", 10000).finding(CHECK)));
    limit(6000, fails(withMakersFigures(backed(50001)).finding(CHECK)));
  }

  /** Above its rating the pair is good for nothing, whatever it lets through up to there. */
  @ParameterizedTest
  @CsvSource({"sign-off", "design", "quotation"})
  void pairIsGoodForNothingAboveItsRating(String stage) {
    Scenario rated = withMakersFigures(backed(40000)).with("/backUp/combinationRatingA", 7999);
    limit(6000, fails(rated.with("/stage", stage).finding(CHECK)));
  }

  /** Nor behind a device that cannot break the current itself, or is not known to. */
  @Test
  void pairIsGoodForNothingBehindWhatCannotBreak() {
    Scenario design = withMakersFigures(backed(40000)).with("/stage", "design");
    String capacity = "/upstreamDevice/breakingCapacityA";
    complies(design.with(capacity, 8000).finding(CHECK));
    limit(6000, fails(design.with(capacity, 7999).finding(CHECK)));
    limit(6000, fails(design.with("/upstreamDevice/standard", "IEC 61008-1").finding(CHECK)));
    open(
        design.with("/upstreamDevice/standard", "IEC 60898-1").without(capacity).finding(CHECK),
        capacity);
    Scenario signOff = design.with("/stage", "sign-off").without(capacity);
    open(signOff.finding(CHECK), capacity, "/backUp/combinationRatingA");
    Scenario unshown = backed(40000).with("/stage", "design");
    fails(unshown.with(capacity, 7999).finding(CHECK));
    open(
        unshown.with("/upstreamDevice/standard", "IEC 60947-2").without(capacity).finding(CHECK),
        capacity,
        "/device/letThrough");
  }

  /** What current the pair would have to hold is not known: nothing is granted by its energy. */
  @Test
  void pairHoldsNoUnknownCurrent() {
    Scenario design = withMakersFigures(backed(40000)).with("/stage", "design");
    open(
        design.without("/supply/maximumFaultCurrentA").finding(CHECK),
        "/supply/maximumFaultCurrentA");
  }

  /** Without the maker's figure at Icn nothing says what the device stands. */
  @Test
  void makersFigureIsAskedFor() {
    Finding found = open(backed(1000).finding(CHECK), "/device/letThrough");
    assertTrue(wanted(found).contains(NoteCode.MAKER_DATA_NEEDED));
  }

  private static Scenario withMakersFigures(Scenario backed) {
    return backed.withJson(
        "/device/letThrough",
        "[{\"prospectiveCurrentA\": 1000, \"energyA2s\": 10000},"
            + " {\"prospectiveCurrentA\": 6000, \"energyA2s\": 50000}]");
  }

  private static Scenario backed(double energy) {
    return at(8000)
        .with("/upstreamDevice/breakingCapacityA", 33000)
        .with("/backUp/limitedLetThroughA2s", energy)
        .with("/backUp/evidence", "declared by both makers");
  }

  private static Scenario at(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current);
  }
}
