package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
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

/** The greatest current where the device sits against Icn or Icu (434.5.1). */
class BreakingCapacityCheckTest {
  private static final CheckName CHECK = CheckName.BREAKING_CAPACITY;

  /** 434.5.1: equality complies. */
  @ParameterizedTest
  @CsvSource({"5999, true", "6000, true", "6001, false"})
  void currentDoesNotExceedTheCapacity(double current, boolean holds) {
    Finding found = at(current).finding(CHECK);
    judged(holds, found);
    actual(current, found);
    limit(6000, found);
    assertEquals("Icn", found.governing().limit().symbol());
    assertTrue(clauses(found).contains("434.5.1"));
  }

  /** A reading is widened by its uncertainty: 5 700·1.05 = 5 985, 5 720·1.05 = 6 006 A. */
  @ParameterizedTest
  @CsvSource({"5700, true", "5720, false"})
  void readingIsWidened(double current, boolean holds) {
    Finding found = at(current).with("/supply/basis", "measured-cold").finding(CHECK);
    judged(holds, found);
    actual(current * 1.05, found);
  }

  /**
   * Ics of 60898-1: Icn to 6 kA, 0.75 but 6 kA at least to 10 kA, 0.5 but 7.5 kA at least above.
   */
  @ParameterizedTest
  @CsvSource({
    "6000, 6000, false",
    "10000, 7500, false",
    "10000, 7501, true",
    "10000, 10000, true",
    "7000, 6000, false",
    "7000, 6001, true",
    "15000, 7500, false",
    "15000, 7501, true",
    "25000, 12500, false",
    "25000, 12501, true"
  })
  void aboveTheServiceCapacityItIsRemarked(double icn, double current, boolean remarked) {
    Finding found = at(current).with("/device/breakingCapacityA", icn).finding(CHECK);
    complies(found);
    assertEquals(remarked, remarks(found).contains(NoteCode.ABOVE_SERVICE_CAPACITY));
  }

  /** Of 60947-2 Ics is what its maker states, and Icu is compared. */
  @ParameterizedTest
  @CsvSource({"5000, 5001, true", "5000, 5000, false", ", 9000, false"})
  void statedServiceCapacityCounts(Double service, double current, boolean remarked) {
    Scenario breaker =
        at(current).with("/device/standard", "IEC 60947-2").with("/device/breakingCapacityA", 9000);
    Finding found =
        (service == null ? breaker : breaker.with("/device/serviceBreakingCapacityA", service))
            .finding(CHECK);
    complies(found);
    assertEquals("Icu", found.governing().limit().symbol());
    assertEquals(remarked, remarks(found).contains(NoteCode.ABOVE_SERVICE_CAPACITY));
  }

  /** A stated Ics is taken before the standard's rule; above Icn there is nothing to remark. */
  @Test
  void statedServiceCapacityComesBeforeTheRule() {
    Scenario breaker = at(5500).with("/device/serviceBreakingCapacityA", 5000);
    assertTrue(remarks(complies(breaker.finding(CHECK))).contains(NoteCode.ABOVE_SERVICE_CAPACITY));
    Finding over = fails(at(6100).finding(CHECK));
    assertFalse(remarks(over).contains(NoteCode.ABOVE_SERVICE_CAPACITY));
  }

  /** The standard's own capacity of a fuse of 32 A, before sign-off only. */
  @ParameterizedTest
  @CsvSource({
    "BS 88-2, 50000",
    "BS 88-3, 16000",
    "BS 1361, 16500",
    "BS 3036, 1000",
    "BS 1362, 6000"
  })
  void fuseMayBeTakenByItsStandardInADesign(String standard, double capacity) {
    Scenario fuse =
        at(capacity).with("/device/standard", standard).without("/device/breakingCapacityA");
    open(fuse.finding(CHECK), "/device/breakingCapacityA");
    Finding design = complies(fuse.with("/stage", "design").finding(CHECK));
    limit(capacity, design);
    assertTrue(assumptions(design).contains(NoteCode.ASSUMED_BREAKING_CAPACITY));
    openBecause(
        Reason.STAND_IN_FAILS,
        fuse.with("/stage", "design")
            .with("/supply/maximumFaultCurrentA", capacity + 1)
            .finding(CHECK));
  }

  @Test
  void breakerHasNoCapacityButItsOwn() {
    Scenario breaker = at(1000).without("/device/breakingCapacityA").with("/stage", "quotation");
    Finding found = open(breaker.finding(CHECK), "/device/breakingCapacityA");
    assertEquals(Reason.MISSING_INPUT, found.reason());
  }

  /** Which current: the greatest of the kinds that can flow in the way. */
  @ParameterizedTest
  @CsvSource({
    "'[\"L1\", \"N\"]', 1, 5200",
    "'[\"L1\", \"N\"]', 2, 5200",
    "'[\"L1\", \"L2\", \"L3\"]', 3, 5900",
    "'[\"L1\", \"L2\", \"L3\", \"N\"]', 4, 5900"
  })
  void currentFollowsTheWay(String live, int poles, double current) {
    Finding found =
        at(7000)
            .without("/supply/phases")
            .withJson("/liveConductors", live)
            .with("/device/poles", poles)
            .with("/supply/faultCurrents/lineToNeutral/maximumA", 5000)
            .with("/supply/faultCurrents/lineToEarth/maximumA", 5200)
            .with("/supply/faultCurrents/threePhase/maximumA", 5900)
            .finding(CHECK);
    actual(current, complies(found));
  }

  /** One pole breaks a fault to neutral or to earth, however many poles there are. */
  @ParameterizedTest
  @CsvSource({
    "'[\"L1\", \"N\"]', 2, 3000, 6500, 6500",
    "'[\"L1\", \"N\"]', 2, 6500, 3000, 6500",
    "'[\"L1\", \"L2\", \"L3\", \"N\"]', 4, 6400, 900, 6400",
    "'[\"L1\", \"L2\", \"L3\", \"N\"]', 4, 900, 6400, 6400",
    "'[\"L1\", \"L2\", \"L3\"]', 3, 900, 6400, 6400"
  })
  void faultOfOnePoleExceedsTheCapacity(
      String live, int poles, double neutral, double earth, double current) {
    Finding found =
        kinds(neutral, earth, 5800.0, null)
            .withJson("/liveConductors", live)
            .with("/device/poles", poles)
            .finding(CHECK);
    actual(current, fails(found));
  }

  /** Between three lines no fault to neutral flows. */
  @Test
  void withoutNeutralNoFaultFlowsToIt() {
    Finding found =
        kinds(9000.0, 3000.0, 3000.0, null)
            .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\"]")
            .finding(CHECK);
    actual(3000, complies(found));
  }

  /**
   * Of the kinds stated none is the greatest of any kind: one that is not stated may be. Up to the
   * capacity that holds it; above, the kinds not stated decide, unless a stated one fails itself.
   */
  @ParameterizedTest
  @CsvSource({"3000, 6000, true", "3000, 6001, ", "6500, 9000, false"})
  void greatestOfAnyKindMayBeOneThatIsNotStated(double stated, double any, Boolean holds) {
    Finding found =
        kinds(null, 3000.0, stated, any)
            .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\", \"N\"]")
            .with("/device/poles", 4)
            .finding(CHECK);
    if (holds == null) {
      open(found, "/supply/faultCurrents/lineToNeutral/maximumA");
      assertEquals(1, found.missing().size());
      assertEquals(Reason.MISSING_INPUT, found.reason());
      actual(any, found);
    } else {
      judged(holds, found);
      actual(holds ? any : stated, found);
    }
  }

  /** Every kind that is not stated is asked for at once. */
  @Test
  void kindsNotStatedAreAskedForTogether() {
    open(
        kinds(3000.0, null, null, 7000.0)
            .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\", \"N\"]")
            .finding(CHECK),
        "/supply/faultCurrents/threePhase/maximumA",
        "/supply/faultCurrents/lineToEarth/maximumA");
    open(
        kinds(3000.0, 3000.0, 3000.0, 7000.0)
            .withJson("/liveConductors", "[\"L1\", \"L2\"]")
            .finding(CHECK),
        "/supply/faultCurrents/twoPhase/maximumA");
  }

  /** A stated kind above the capacity fails, whatever the kinds are that nothing is known of. */
  @ParameterizedTest
  @CsvSource({"6000, ", "6001, false"})
  void statedKindAboveTheCapacityFailsByItself(double neutral, Boolean holds) {
    Finding found = kinds(neutral, null, null, null).finding(CHECK);
    if (holds == null) {
      open(found, "/supply/maximumFaultCurrentA");
    } else {
      actual(neutral, fails(found));
    }
  }

  /** Twice the line–neutral current bounds from above: only a stated kind fails by itself. */
  @ParameterizedTest
  @CsvSource({"2900, complies", "3100, open", "6100, fails"})
  void twiceTheCurrentToNeutralCarriesNoFailure(double neutral, String verdict) {
    Finding found =
        kinds(neutral, null, null, null)
            .with("/stage", "design")
            .with("/supply/phases", 3)
            .with("/supply/lineToNeutralLoopImpedanceOhm", 0.28)
            .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\", \"N\"]")
            .with("/device/poles", 4)
            .finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> actual(neutral, fails(found));
      default ->
          assertEquals(
              Reason.STAND_IN_FAILS,
              open(found, "/supply/faultCurrents/threePhase/maximumA").reason());
    }
  }

  /** Live conductors unknown: on a single-phase supply line and neutral, else the greatest. */
  @ParameterizedTest
  @CsvSource({"1, 5000", "3, ", ", "})
  void unknownLiveConductorsFollowTheSupply(Integer phases, Double current) {
    Scenario kinds = kinds(5000.0, 5000.0, null, null).without("/liveConductors");
    Finding found =
        (phases == null ? kinds.without("/supply/phases") : kinds.with("/supply/phases", phases))
            .finding(CHECK);
    if (current == null) {
      open(found, "/supply/maximumFaultCurrentA");
    } else {
      actual(current, complies(found));
    }
  }

  /** Worked example D10: 7 667 A exceed 6 kA. */
  @Test
  void lowImpedanceServiceExceedsSixKiloampere() {
    actual(7667, fails(at(7667).finding(CHECK)));
  }

  @Test
  void currentIsNeeded() {
    Finding found = at(1).without("/supply/maximumFaultCurrentA").finding(CHECK);
    open(found, "/supply/maximumFaultCurrentA");
    assertEquals(Reason.MISSING_INPUT, found.reason());
  }

  @Test
  void deviceIsNeeded() {
    open(at(1000).without("/device").finding(CHECK), "/device");
  }

  /** An RCCB breaks residual currents only (536.4.3.2). */
  @ParameterizedTest
  @CsvSource({"IEC 61008-1", "BS 3871-1"})
  void otherDevicesAreNotJudged(String standard) {
    Finding found = at(1000).with("/device/standard", standard).finding(CHECK);
    assertEquals(Reason.DEVICE_NOT_JUDGED, open(found, "/device/standard").reason());
  }

  private static Scenario kinds(Double neutral, Double earth, Double three, Double any) {
    Scenario supply = at(1).without("/supply/maximumFaultCurrentA");
    String kinds = "/supply/faultCurrents/";
    supply = neutral == null ? supply : supply.with(kinds + "lineToNeutral/maximumA", neutral);
    supply = earth == null ? supply : supply.with(kinds + "lineToEarth/maximumA", earth);
    supply = three == null ? supply : supply.with(kinds + "threePhase/maximumA", three);
    return any == null ? supply : supply.with("/supply/maximumFaultCurrentA", any);
  }

  private static Scenario at(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current);
  }
}
