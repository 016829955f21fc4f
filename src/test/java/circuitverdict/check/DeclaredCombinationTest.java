package circuitverdict.check;

import static circuitverdict.check.BackUpRuleTest.backed;
import static circuitverdict.check.BackUpRuleTest.unit;
import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A declared combination with a named upstream device (434.5.1). */
class DeclaredCombinationTest {
  private static final CheckName CHECK = CheckName.BREAKING_CAPACITY;

  /** A declared combination with a named upstream device holds up to its rating. */
  @ParameterizedTest
  @CsvSource({"9999, true", "10000, true", "10001, false"})
  void declaredCombinationHoldsUpToItsRating(double current, boolean holds) {
    Finding found = backed(current).finding(CHECK);
    judged(holds, found);
    limit(holds ? 10000 : 6000, found);
    assertEquals(holds, remarks(found).contains(NoteCode.BACKED_UP));
  }

  /** Without its evidence, its rating or the named device it is worth nothing. */
  @ParameterizedTest
  @CsvSource({"/backUp/evidence", "/backUp/combinationRatingA", "/upstreamDevice", "/backUp"})
  void combinationWithoutEvidenceIsNone(String pointer) {
    fails(backed(8000).without(pointer).finding(CHECK));
  }

  /** 434.5.1: the device upstream has the necessary breaking capacity itself; equality serves. */
  @ParameterizedTest
  @CsvSource({"7999, false", "8000, true", "20000, true"})
  void deviceUpstreamBreaksTheCurrentItself(double capacity, boolean holds) {
    for (String standard : List.of("BS 88-3", "IEC 60898-1", "IEC 60947-2")) {
      Finding found =
          backed(8000)
              .with("/upstreamDevice/standard", standard)
              .with("/upstreamDevice/breakingCapacityA", capacity)
              .finding(CHECK);
      judged(holds, found);
      limit(holds ? Math.min(10000, capacity) : 6000, found);
      assertEquals(holds, remarks(found).contains(NoteCode.BACKED_UP));
    }
  }

  /**
   * After a fault above its Ics the device upstream may have to be replaced: 0.5·15 000 A (IEC
   * 60898-1 Table 18), or as stated.
   */
  @ParameterizedTest
  @CsvSource({
    "IEC 60898-1, 15000, , true",
    "IEC 60898-1, 16001, , false",
    "IEC 60947-2, 10000, , false",
    "IEC 60947-2, 10000, 7999, true",
    "IEC 60947-2, 10000, 8000, false"
  })
  void serviceCapacityUpstreamIsRemarked(
      String standard, double capacity, Double service, boolean remarked) {
    Scenario pair =
        backed(8000)
            .with("/upstreamDevice/standard", standard)
            .with("/upstreamDevice/breakingCapacityA", capacity);
    Scenario stated =
        service == null ? pair : pair.with("/upstreamDevice/serviceBreakingCapacityA", service);
    Finding found = complies(stated.finding(CHECK));
    assertEquals(remarked, remarks(found).contains(NoteCode.ABOVE_SERVICE_CAPACITY));
  }

  /** No back-up by what breaks no short-circuit current, or is not known to. */
  @ParameterizedTest
  @CsvSource({"IEC 61008-1", "IEC 60947-3", "BS 3871-1"})
  void onlyAnOvercurrentDeviceBacksUp(String standard) {
    limit(6000, fails(backed(8000).with("/upstreamDevice/standard", standard).finding(CHECK)));
  }

  /** Not stated, it is asked for; of a fuse its standard's own serves before sign-off, listed. */
  @ParameterizedTest
  @CsvSource({
    "sign-off, BS 88-3, false",
    "sign-off, IEC 60898-1, false",
    "design, BS 88-3, true",
    "design, BS 88-2, true",
    "design, BS 3036, false",
    "design, IEC 60898-1, false",
    "quotation, IEC 60947-2, false"
  })
  void capacityUpstreamMustBeKnown(String stage, String standard, boolean holds) {
    Finding found =
        backed(8000)
            .with("/stage", stage)
            .with("/upstreamDevice/standard", standard)
            .without("/upstreamDevice/breakingCapacityA")
            .finding(CHECK);
    if (holds) {
      limit(10000, complies(found));
      assertTrue(assumptions(found).contains(NoteCode.ASSUMED_BREAKING_CAPACITY));
    } else {
      open(found, "/upstreamDevice/breakingCapacityA");
      assertEquals(1, found.missing().size());
    }
  }

  /** Above the combination's own rating nothing is asked for: it could not hold it. */
  @Test
  void capacityUpstreamIsNotAskedForInVain() {
    fails(backed(10001).without("/upstreamDevice/breakingCapacityA").finding(CHECK));
  }

  /** The unit's conditional rating holds it, whatever is not known of a declared combination. */
  @Test
  void conditionalRatingNeedsNoCombination() {
    Scenario both =
        unit(8000)
            .with("/backUp/limitedLetThroughA2s", 20000)
            .with("/backUp/evidence", "declared by both makers");
    limit(16000, complies(both.finding(CHECK)));
    open(both.without("/assembly/deviceDeclared").finding(CHECK), "/assembly/deviceDeclared");
  }

  @Test
  void weakCombinationLeavesTheConditionalRating() {
    Finding found =
        unit(12000)
            .with("/backUp/combinationRatingA", 10000)
            .with("/backUp/evidence", "declared")
            .finding(CHECK);
    limit(16000, complies(found));
  }
}
