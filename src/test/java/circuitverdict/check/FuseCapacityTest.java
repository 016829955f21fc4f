package circuitverdict.check;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a fuse breaks where it is not stated: of two types the lesser, unless its rating shows the
 * greater. BS 1361 type I, 5 to 45 A, 16.5 kA, type II 33 kA (fault ratings table of a guide to the
 * 17th Edition); BS 88-3 type I 16 kA, type II 31.5 kA (from memory).
 */
class FuseCapacityTest {
  private static final CheckName CHECK = CheckName.BREAKING_CAPACITY;
  private static final String CAPACITY = "/device/breakingCapacityA";
  private static final String UPSTREAM = "/upstreamDevice/breakingCapacityA";

  @ParameterizedTest
  @CsvSource({
    "BS 1361, 5, 16500",
    "BS 1361, 45, 16500",
    "BS 1361, 60, 33000",
    "BS 1361, 100, 33000",
    "BS 1361, , 16500",
    "BS 88-3, 32, 16000",
    "BS 88-3, 45, 16000",
    "BS 88-3, 63, 31500",
    "BS 88-3, , 16000"
  })
  void theLesserTypeIsTaken(String standard, Double rated, double capacity) {
    Scenario fuse = unstated(standard, rated, capacity);
    limit(capacity, complies(fuse.finding(CHECK)));
    assertTrue(assumptions(fuse.finding(CHECK)).contains(NoteCode.ASSUMED_BREAKING_CAPACITY));
  }

  /** The fuse at hand may be of the greater type: nothing fails by what stands in for it. */
  @ParameterizedTest
  @CsvSource({"BS 1361, 32, 16501", "BS 88-3, 32, 16001", "BS 3036, 30, 1001"})
  void whatStandsInCarriesNoFailure(String standard, double rated, double current) {
    Scenario fuse = unstated(standard, rated, current);
    Finding found = openBecause(Reason.STAND_IN_FAILS, fuse.finding(CHECK));
    open(found, CAPACITY);
    open(fuse.with("/supply/faultCurrents/lineToNeutral/maximumA", current).finding(CHECK));
    complies(fuse.with(CAPACITY, current).finding(CHECK));
    assertEquals(Verdict.DOES_NOT_COMPLY, fuse.with(CAPACITY, current - 1).verdict(CHECK));
  }

  /** 536.4.201 names type II: the rating or the stated capacity must show it, at every stage. */
  @ParameterizedTest
  @CsvSource({
    "BS 1361, 45, , false",
    "BS 1361, 60, , true",
    "BS 1361, 45, 33000, true",
    "BS 88-3, 45, , false",
    "BS 88-3, 63, , true",
    "BS 88-3, 45, 16000, true"
  })
  void theConditionalRatingIsNotGrantedByTheAssumption(
      String standard, double rated, Double capacity, boolean holds) {
    Scenario unit =
        Scenario.oven()
            .with("/stage", "design")
            .with("/supply/basis", "declared")
            .with("/supply/phases", 1)
            .without("/supply/faultCurrents")
            .with("/supply/maximumFaultCurrentA", 8000)
            .with("/upstreamDevice/standard", standard)
            .with("/upstreamDevice/ratedCurrentA", rated)
            .withJson(
                "/assembly",
                "{\"standard\": \"IEC 61439-3\", \"conditionalRatingA\": 16000,"
                    + " \"maximumUpstreamFuseA\": 125, \"deviceDeclared\": true}");
    Finding found = (capacity == null ? unit : unit.with(UPSTREAM, capacity)).finding(CHECK);
    if (holds) {
      limit(16000, complies(found));
    } else {
      open(found, UPSTREAM);
      assertEquals(1, found.missing().size());
    }
  }

  /** Nor does the assumption carry a declared pair further than the lesser type breaks. */
  @ParameterizedTest
  @CsvSource({"32, 16000, true", "32, 16001, false", "63, 16001, true"})
  void norAPair(double rated, double current, boolean holds) {
    Scenario pair =
        Scenario.oven()
            .with("/stage", "design")
            .with("/supply/basis", "declared")
            .without("/supply/faultCurrents")
            .with("/supply/maximumFaultCurrentA", current)
            .with("/upstreamDevice/ratedCurrentA", rated)
            .with("/backUp/combinationRatingA", 25000)
            .with("/backUp/evidence", "declared by both makers");
    if (holds) {
      complies(pair.finding(CHECK));
    } else {
      open(pair.finding(CHECK), UPSTREAM);
    }
  }

  /** BS 1362 has one rating, 6 kA: what is stated above it is not counted, nor held against it. */
  @ParameterizedTest
  @CsvSource({
    "sign-off, 6000, 80000, true",
    "sign-off, 6001, 80000, false",
    "design, 6001, 80000, false",
    "design, 6001, , false"
  })
  void aPlugFuseBreaksWhatItsStandardSays(
      String stage, double current, Double stated, boolean holds) {
    Scenario unstated = unstated("BS 1362", 13.0, current).with("/stage", stage);
    Scenario fuse = stated == null ? unstated : unstated.with(CAPACITY, stated);
    Finding found = fuse.finding(CHECK);
    if (holds) {
      limit(6000, complies(found));
    } else {
      open(found, CAPACITY);
    }
    assertEquals(stated != null, remarks(found).contains(NoteCode.STANDARD_CAPACITY_COUNTS));
  }

  @Test
  void aLesserStatedCapacityOfAPlugFuseCounts() {
    Finding found = unstated("BS 1362", 13.0, 5000).with(CAPACITY, 5000).finding(CHECK);
    limit(5000, complies(found));
    assertFalse(remarks(found).contains(NoteCode.STANDARD_CAPACITY_COUNTS));
  }

  private static Scenario unstated(String standard, Double rated, double current) {
    Scenario fuse =
        Scenario.oven()
            .with("/stage", "design")
            .with("/supply/basis", "declared")
            .without("/supply/faultCurrents")
            .with("/supply/maximumFaultCurrentA", current)
            .with("/device/standard", standard)
            .without(CAPACITY);
    return rated == null
        ? fuse.without("/device/ratedCurrentA")
        : fuse.with("/device/ratedCurrentA", rated);
  }
}
