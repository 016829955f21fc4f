package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
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
 * The energy of a device with another behind it, and of what lies beyond its own capacity (434.5.1,
 * 434.5.2).
 */
class LetThroughPairTest {
  private static final CheckName CHECK = CheckName.LET_THROUGH_ENERGY;

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

  private static Scenario oven(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current);
  }
}
