package circuitverdict.check;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may stand behind a device above its own capacity, and that nothing else may (434.5.1). */
class BackUpRuleTest {
  private static final CheckName CHECK = CheckName.BREAKING_CAPACITY;

  /**
   * Worked example D11: 8 kA on a 6 kA device in a consumer unit behind a service fuse of 100 A.
   */
  @Test
  void conditionalRatingHolds() {
    Finding found = complies(unit(8000).finding(CHECK));
    limit(16000, found);
    assertTrue(remarks(found).contains(NoteCode.CONDITIONAL_RATING));
    assertTrue(clauses(found).contains("536.4.201"));
  }

  @ParameterizedTest
  @CsvSource({"15999, true", "16000, true", "16001, false"})
  void conditionalRatingEndsAtSixteenKiloampere(double current, boolean holds) {
    Finding found = unit(current).with("/assembly/conditionalRatingA", 20000).finding(CHECK);
    judged(holds, found);
    limit(holds ? 16000 : 6000, found);
    assertEquals(holds, remarks(found).contains(NoteCode.CONDITIONAL_RATING));
  }

  @ParameterizedTest
  @CsvSource({"10000, true", "10001, false"})
  void conditionalRatingIsTheAssemblysOwn(double current, boolean holds) {
    Finding found = unit(current).with("/assembly/conditionalRatingA", 10000).finding(CHECK);
    judged(holds, found);
    limit(holds ? 10000 : 6000, found);
  }

  /** Each condition of 536.4.201 broken in turn: the device's own Icn decides. */
  @ParameterizedTest
  @CsvSource({
    "/assembly/standard, \"IEC 61439-2\"",
    "/assembly/deviceDeclared, false",
    "/supply/phases, 3",
    "/upstreamDevice/ratedCurrentA, 101",
    "/upstreamDevice/standard, \"BS 88-2\"",
    "/upstreamDevice/standard, \"BS 3036\"",
    "/upstreamDevice/standard, \"IEC 60898-1\"",
    "/assembly/maximumUpstreamFuseA, 80"
  })
  void everyConditionIsKept(String pointer, String value) {
    Finding found = unit(8000).withJson(pointer, value).finding(CHECK);
    limit(6000, fails(found));
    assertFalse(remarks(found).contains(NoteCode.CONDITIONAL_RATING));
    assertFalse(clauses(found).contains("536.4.201"));
  }

  @Test
  void otherVoltageBreaksTheCondition() {
    fails(
        unit(8000)
            .with("/supply/ownership", "private")
            .with("/supply/lineToEarthVoltageV", 240)
            .finding(CHECK));
  }

  @ParameterizedTest
  @CsvSource({
    "BS 88-3, 100, , true",
    "BS 88-3, 80, 80, true",
    "BS 88-3, 100, 125, true",
    "BS 88-3, 125, 125, false"
  })
  void fuseIsNoLargerThanRuleAndAssemblyAllow(
      String standard, double rated, Double most, boolean holds) {
    Scenario unit =
        unit(8000)
            .with("/upstreamDevice/standard", standard)
            .with("/upstreamDevice/ratedCurrentA", rated);
    judged(
        holds,
        (most == null ? unit : unit.with("/assembly/maximumUpstreamFuseA", most)).finding(CHECK));
  }

  /** 536.4.201 names a BS 1361 fuse of type II, 33 kA: type I, 16.5 kA, is not granted. */
  @ParameterizedTest
  @CsvSource({
    "BS 1361, 16500, false",
    "BS 1361, 32999, false",
    "BS 1361, 33000, true",
    "BS 88-3, 16000, true"
  })
  void fuseOfBs1361IsOfTypeTwo(String standard, double capacity, boolean holds) {
    Finding found =
        unit(8000)
            .with("/upstreamDevice/standard", standard)
            .with("/upstreamDevice/breakingCapacityA", capacity)
            .finding(CHECK);
    limit(holds ? 16000 : 6000, judged(holds, found));
  }

  /** Not stated it is asked for at sign-off; before, type II is taken and listed. */
  @ParameterizedTest
  @CsvSource({
    "BS 1361, sign-off, false",
    "BS 1361, design, true",
    "BS 1361, quotation, true",
    "BS 88-3, sign-off, false",
    "BS 88-3, design, true"
  })
  void capacityOfTheServiceFuseMustBeKnown(String standard, String stage, boolean holds) {
    Scenario unit =
        unit(8000)
            .with("/stage", stage)
            .with("/upstreamDevice/standard", standard)
            .without("/upstreamDevice/breakingCapacityA");
    if (holds) {
      Finding found = complies(unit.finding(CHECK));
      assertTrue(assumptions(found).contains(NoteCode.ASSUMED_BREAKING_CAPACITY));
    } else {
      assertEquals(
          1, open(unit.finding(CHECK), "/upstreamDevice/breakingCapacityA").missing().size());
    }
    Finding open = unit.without("/assembly/deviceDeclared").finding(CHECK);
    open(open, "/assembly/deviceDeclared");
    assertEquals(holds ? 1 : 2, open.missing().size());
  }

  /** What is not stated could cure it: not determined, naming it. */
  @ParameterizedTest
  @CsvSource({
    "/assembly/deviceDeclared",
    "/supply/phases",
    "/upstreamDevice",
    "/upstreamDevice/standard",
    "/upstreamDevice/ratedCurrentA",
    "/assembly/maximumUpstreamFuseA"
  })
  void unknownConditionIsAskedFor(String pointer) {
    Finding found = open(unit(8000).without(pointer).finding(CHECK), pointer);
    assertEquals(Reason.MISSING_INPUT, found.reason());
    assertTrue(clauses(found).contains("536.4.201"));
    assertEquals(1, found.missing().size());
  }

  /** Several at once are asked for at once. */
  @Test
  void unknownConditionsAreAskedForTogether() {
    Finding found =
        unit(8000)
            .without("/upstreamDevice/standard")
            .without("/upstreamDevice/ratedCurrentA")
            .without("/assembly/maximumUpstreamFuseA")
            .without("/assembly/deviceDeclared")
            .finding(CHECK);
    open(
        found,
        "/upstreamDevice/standard",
        "/upstreamDevice/ratedCurrentA",
        "/assembly/maximumUpstreamFuseA",
        "/assembly/deviceDeclared");
    open(
        unit(8000)
            .without("/upstreamDevice")
            .without("/assembly/maximumUpstreamFuseA")
            .finding(CHECK),
        "/upstreamDevice",
        "/assembly/maximumUpstreamFuseA");
  }

  /** 536.4.201: no fuse above 100 A or above the assembly's own figure, whatever its standard. */
  @ParameterizedTest
  @CsvSource({
    "/upstreamDevice/ratedCurrentA, 101, /upstreamDevice/standard",
    "/upstreamDevice/ratedCurrentA, 101, /assembly/maximumUpstreamFuseA",
    "/assembly/maximumUpstreamFuseA, 80, /upstreamDevice/standard",
    "/upstreamDevice/breakingCapacityA, 7999, /upstreamDevice/standard",
    "/upstreamDevice/breakingCapacityA, 7999, /upstreamDevice/ratedCurrentA"
  })
  void brokenConditionOfTheFuseOutranksAnUnknownOne(String broken, double value, String unknown) {
    limit(6000, fails(unit(8000).with(broken, value).without(unknown).finding(CHECK)));
  }

  @Test
  void unknownVoltageIsAskedFor() {
    open(
        unit(8000)
            .without("/supply/ownership")
            .without("/supply/lineToEarthVoltageV")
            .finding(CHECK),
        "/supply/lineToEarthVoltageV");
  }

  /** Three lines are no single-phase unit, whatever else is not stated. */
  @ParameterizedTest
  @CsvSource({"'[\"L1\", \"L2\", \"L3\"]', true", "'[\"L1\", \"N\"]', false"})
  void threeLinesAreNoSinglePhaseUnit(String live, boolean fails) {
    Finding found =
        unit(8000).without("/supply/phases").withJson("/liveConductors", live).finding(CHECK);
    if (fails) {
      fails(found);
    } else {
      open(found, "/supply/phases");
    }
  }

  /** One broken condition decides, whatever another is. */
  @Test
  void brokenConditionOutranksAnUnknownOne() {
    fails(
        unit(8000)
            .without("/assembly/deviceDeclared")
            .with("/upstreamDevice/ratedCurrentA", 125)
            .finding(CHECK));
    fails(
        unit(8000)
            .without("/upstreamDevice/ratedCurrentA")
            .with("/assembly/deviceDeclared", false)
            .finding(CHECK));
  }

  /** No conditional rating is asked for where the device's own capacity serves. */
  @Test
  void ownCapacityNeedsNoConditionalRating() {
    Finding found = complies(unit(6000).without("/assembly/deviceDeclared").finding(CHECK));
    limit(6000, found);
    assertFalse(remarks(found).contains(NoteCode.CONDITIONAL_RATING));
  }

  /** Worked example D12: a 315 A fuse upstream is no back-up by itself. */
  @Test
  void upstreamFuseAloneIsNoBackUp() {
    Finding found =
        unit(7000)
            .without("/assembly")
            .with("/device/breakingCapacityA", 3000)
            .with("/upstreamDevice/standard", "BS 88-2")
            .with("/upstreamDevice/ratedCurrentA", 315)
            .finding(CHECK);
    limit(3000, fails(found));
  }

  /** Up to its own Icn, equality and binary rounding included, nothing stands behind the device. */
  @ParameterizedTest
  @CsvSource({"5999.99, 6000", "6000, 6000", "6000.000000000001, 6000", "6000.01, 10000"})
  void backUpCountsAboveTheOwnCapacityOnly(double current, double limit) {
    Finding found = complies(backed(current).finding(CHECK));
    limit(limit, found);
    assertEquals(limit > 6000, remarks(found).contains(NoteCode.BACKED_UP));
  }

  static Scenario backed(double current) {
    return unit(current)
        .without("/assembly")
        .with("/upstreamDevice/breakingCapacityA", 33000)
        .with("/backUp/combinationRatingA", 10000)
        .with("/backUp/evidence", "declared by both makers");
  }

  static Scenario unit(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .with("/supply/phases", 1)
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current)
        .with("/upstreamDevice/ratedCurrentA", 100)
        .with("/upstreamDevice/breakingCapacityA", 33000)
        .withJson(
            "/assembly",
            "{\"standard\": \"IEC 61439-3\", \"conditionalRatingA\": 16000,"
                + " \"maximumUpstreamFuseA\": 125, \"deviceDeclared\": true}");
  }
}
