package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
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

/** Selectivity of overcurrent devices (536.4.1): breakers, fuses and what a maker declares. */
class SelectivityTest {
  /** B32, class 3, 6 kA behind a device, with this greatest fault current. */
  private static Scenario behind(String upstream, double current) {
    return Scenario.of(
            """
            {"edition": "bs7671-2018-a4", "stage": "design",
             "supply": {"phases": 1, "ownership": "public", "basis": "declared"},
             "liveConductors": ["L1", "N"],
             "device": {"standard": "IEC 60898-1", "characteristic": "B", "ratedCurrentA": 32,
                        "breakingCapacityA": 6000, "energyClass": 3, "poles": 1},
             "requirements": {"selectivity": "required"}}
            """)
        .with("/supply/maximumFaultCurrentA", current)
        .withJson("/upstreamDevice", upstream.replace('\'', '"'));
  }

  private static String breaker(String letter, int rated) {
    return "{'standard': 'IEC 60898-1', 'characteristic': '%s', 'ratedCurrentA': %d}"
        .formatted(letter, rated);
  }

  private static String fuse(int rated) {
    return "{'standard': 'BS 88-2', 'utilizationCategory': 'gG', 'ratedCurrentA': %d}"
        .formatted(rated);
  }

  private static Finding of(Scenario scenario) {
    return scenario.finding(CheckName.SELECTIVITY);
  }

  /** IEC 60898-1 table 7: C63 does not trip at once up to 5·63 = 315 A, 3·63 = 189 A as type B. */
  @ParameterizedTest
  @CsvSource({"C, 314.9, 315", "C, 315, 315", "B, 189, 189", "D, 630, 630"})
  void upToTheUpstreamThresholdOnlyTheDownstreamBreakerOpens(
      String letter, double current, double threshold) {
    Finding found = complies(of(behind(breaker(letter, 63), current)));
    actual(current, found);
    limit(threshold, found);
    assertEquals(Strength.GUIDANCE, found.strength());
    assertTrue(remarks(found).contains(NoteCode.FULL_SELECTIVITY));
    assertTrue(remarks(found).contains(NoteCode.SELECTIVE_ON_OVERLOAD));
  }

  /** Above the threshold the downstream device may still break sooner: not failed, and Is told. */
  @ParameterizedTest
  @CsvSource({"C, 315.1, 315", "C, 1550, 315", "B, 189.1, 189", "D, 6000, 630"})
  void aboveTheThresholdItIsOpenUpToIs(String letter, double current, double threshold) {
    Finding found = of(behind(breaker(letter, 63), current));
    openBecause(Reason.BETWEEN_BOUNDS, open(found, "/device/selectivity"));
    limit(threshold, found);
    assertTrue(remarks(found).contains(NoteCode.PARTIAL_SELECTIVITY));
  }

  /**
   * Times promised by both standards: a B10 opens within 0.1 s from 50 A on, a C63 carries 71 A for
   * good and holds 0.1 s up to 315 A. So much is proved, at sign-off too; of the B16 (80 A) not.
   */
  @Test
  void farApartItIsProvedByTheTimesOfTheTests() {
    Scenario apart = behind(breaker("C", 63), 315).with("/stage", "sign-off");
    assertEquals(Strength.RULE, complies(of(apart.with("/device/ratedCurrentA", 10))).strength());
    openBecause(Reason.PROOF_WANTED, of(apart.with("/device/ratedCurrentA", 16)));
    // Up to what the upstream device carries for good it is proved all the same: 1.13·63 = 71.19 A.
    Scenario low = apart.with("/device/ratedCurrentA", 16);
    complies(of(low.with("/supply/maximumFaultCurrentA", 71)));
    openBecause(Reason.PROOF_WANTED, of(low.with("/supply/maximumFaultCurrentA", 72)));
  }

  /**
   * 1.45·In below, 1.13·In above: 46.4 A against 45.2 A of a 40 A device and 56.5 A of a 50 A one.
   */
  @ParameterizedTest
  @CsvSource({"40, false", "50, true"})
  void onOverloadTheConventionalCurrentsDecide(int rated, boolean selective) {
    Finding found = of(behind(breaker("D", rated), 300));
    assertEquals(
        selective ? Verdict.COMPLIES : Verdict.NOT_DETERMINED, found.verdict(), found::toString);
    assertEquals(
        selective, remarks(found).contains(NoteCode.SELECTIVE_ON_OVERLOAD), found::toString);
    assertEquals(!selective, remarks(found).contains(NoteCode.NOT_SELECTIVE_ON_OVERLOAD));
  }

  /** The upper limit of the one above the lower limit of the other: 160 A and 3·50 = 150 A. */
  @Test
  void theMagneticBandsMayNotOverlap() {
    Finding found = of(behind(breaker("B", 50), 100));
    openBecause(Reason.BETWEEN_BOUNDS, found);
    assertTrue(remarks(found).contains(NoteCode.NOT_SELECTIVE_ON_OVERLOAD));
  }

  /** D32 holds 0.1 s up to 320 A; a B25 trips within 0.1 s from 125 A on. */
  @Test
  void itFailsWhereTheUpstreamDeviceOpensForCertain() {
    Scenario wrong = behind(breaker("B", 25), 125).with("/device/characteristic", "D");
    Finding found = fails(of(wrong));
    actual(320, found);
    limit(125, found);
    assertTrue(remarks(found).contains(NoteCode.UPSTREAM_OPENS));
    // A current that cannot flow opens nothing.
    openBecause(Reason.BETWEEN_BOUNDS, of(wrong.with("/supply/maximumFaultCurrentA", 124)));
  }

  /** On overload: 1.13·32 = 36.16 A is carried, 1.45·20 = 29 A opens the one upstream. */
  @Test
  void aSmallerBreakerUpstreamFailsOnOverloadAlready() {
    Finding found = fails(of(behind(breaker("B", 20), 1550)));
    actual(36.16, found);
    limit(29, found);
    // Neither order is certain of two alike.
    openBecause(Reason.BETWEEN_BOUNDS, of(behind(breaker("B", 32), 1550)));
  }

  /**
   * EN 60898-1 annex ZA, class 3, 6 kA, B32: 45 000 A²s (from memory), against the least pre-arcing
   * energy of gG fuses: the lesser of IEC 60269-1 table 7 and of the points of IEC 60269-2 (both
   * from memory): 125 A 36 000, 160 A 64 000 A²s.
   */
  @Test
  void theClassAgainstThePreArcingEnergyOfAFuse() {
    Finding full = complies(of(behind(fuse(160), 6000).with("/stage", "sign-off")));
    limit(6000, full);
    assertEquals(Strength.RULE, full.strength());
    assertTrue(
        full.comparisons().stream()
            .anyMatch(each -> each.actual().value() == 45000 && each.limit().value() == 64000));
    // By the lower rows, guidance: 32 000 A²s at 4.5 kA of the 125 A fuse, and no further.
    Finding lower = complies(of(behind(fuse(125), 4500)));
    limit(4500, lower);
    assertEquals(Strength.GUIDANCE, lower.strength());
    openBecause(Reason.BETWEEN_BOUNDS, of(behind(fuse(125), 4501)));
    openBecause(Reason.BETWEEN_BOUNDS, of(behind(fuse(125), 4501).with("/stage", "sign-off")));
    // The greatest current of the breaker itself is the end of what it promises.
    openBecause(Reason.BETWEEN_BOUNDS, of(behind(fuse(160), 6001)));
  }

  /** IEC 60269-1 table 3 (from memory): a 63 A gG fuse holds 0.1 s up to 450 A. */
  @Test
  void theGateOfTheFuseHoldsAgainstABreakerWithoutAClass() {
    Scenario bare = behind(fuse(63), 450).without("/device/energyClass");
    limit(450, complies(of(bare)));
    openBecause(Reason.BETWEEN_BOUNDS, of(bare.with("/supply/maximumFaultCurrentA", 451)));
  }

  /** The maker's curve settles both ways: 9 000 A²s is the least, 27 000 A²s the most of 63 A. */
  @ParameterizedTest
  @CsvSource({
    "8999, COMPLIES",
    "9001, NOT_DETERMINED",
    "26999, NOT_DETERMINED",
    "27001, DOES_NOT_COMPLY"
  })
  void theMakersLetThroughSettlesItBehindAFuse(double energy, Verdict verdict) {
    Scenario told =
        behind(fuse(63), 3000)
            .withJson(
                "/device/letThrough",
                "[{\"prospectiveCurrentA\": 100, \"energyA2s\": %s},".formatted(energy)
                    + " {\"prospectiveCurrentA\": 6000, \"energyA2s\": %s}]".formatted(energy));
    assertEquals(verdict, of(told).verdict(), () -> of(told).toString());
  }

  /** Log-log from 1000 A²s at 100 A to 100 000 A²s at 10 kA: 9 000 A²s at 900 A. */
  @Test
  void betweenTwoPointsTheLimitIsInterpolated() {
    Scenario told =
        behind(fuse(63), 2000)
            .with("/device/breakingCapacityA", 10000)
            .withJson(
                "/device/letThrough",
                "[{\"prospectiveCurrentA\": 100, \"energyA2s\": 1000},"
                    + " {\"prospectiveCurrentA\": 10000, \"energyA2s\": 100000}]");
    limit(900, of(told));
    complies(of(told.with("/supply/maximumFaultCurrentA", 899.9)));
  }

  /**
   * IEC 60269-2, system A (from memory): from 16 A on ratings in the ratio 1:1.6, two steps of the
   * series, are selective in full: the greatest operating energy of the one is the least pre-arcing
   * energy of the other. System A is not that of BS 88-2: guidance.
   */
  @ParameterizedTest
  @CsvSource({
    "16, 25, true",
    "16, 20, false",
    "25, 40, true",
    "25, 32, false",
    "63, 100, true",
    "63, 80, false",
    "100, 160, true",
    "100, 125, false"
  })
  void fusesTwoStepsApartAreSelective(int lower, int upper, boolean selective) {
    Scenario fuses =
        behind(fuse(upper), 16000)
            .withJson("/device", fuse(lower).replace('\'', '"'))
            .with("/device/breakingCapacityA", 80000);
    Finding found = of(fuses);
    assertEquals(
        selective ? Verdict.COMPLIES : Verdict.NOT_DETERMINED, found.verdict(), found::toString);
    assertEquals(selective ? Strength.GUIDANCE : Strength.RULE, found.strength(), found::toString);
  }

  /** A larger fuse behind a smaller one: at 2 kA 9 000 A²s at least against 5 000 A²s at most. */
  @Test
  void aSmallerFuseUpstreamMeltsForCertain() {
    fails(
        of(
            behind(fuse(32), 2000)
                .withJson("/device", fuse(63).replace('\'', '"'))
                .with("/device/breakingCapacityA", 80000)));
  }

  /** A 16 A gG fuse opens within 0.1 s from 150 A on (from memory), a C63 waits up to 315 A. */
  @Test
  void aFuseBehindABreaker() {
    Scenario fused =
        behind(breaker("C", 63), 315)
            .withJson("/device", fuse(16).replace('\'', '"'))
            .with("/device/breakingCapacityA", 80000);
    limit(315, complies(of(fused)));
    openBecause(Reason.BETWEEN_BOUNDS, of(fused.with("/supply/maximumFaultCurrentA", 316)));
    // A plug fuse of 13 A lets no more than 95²·0.4 A²s through: 190 A take 0.1 s at most.
    Scenario plug =
        fused.withJson(
            "/device",
            "{\"standard\": \"BS 1362\", \"ratedCurrentA\": 13, \"breakingCapacityA\": 6000}");
    complies(of(plug));
    // Of a rewireable fuse nothing bounds the time there.
    Scenario rewireable =
        plug.with("/device/standard", "BS 3036").with("/device/ratedCurrentA", 15);
    assertEquals(Verdict.NOT_DETERMINED, of(rewireable).verdict());
  }

  /** IEC 60947-2: ±20 % of the settings (from memory). Ii 1000 A holds up to 800 A. */
  @Test
  void anAdjustableBreakerUpstreamBySettings() {
    String set =
        "{'standard': 'IEC 60947-2', 'ratedCurrentA': 160, 'settings': {'longTimeA': 100,"
            + " 'instantaneousA': 1000}}";
    limit(800, complies(of(behind(set, 800))));
    openBecause(Reason.BETWEEN_BOUNDS, of(behind(set, 801)));
    // A short-time release ends it at 0.8·500 A, unless it waits as long as the breaker takes.
    Scenario timed = behind(set, 800).with("/upstreamDevice/settings/shortTimeA", 500);
    limit(400, openBecause(Reason.BETWEEN_BOUNDS, of(timed)));
    complies(of(timed.with("/upstreamDevice/settings/shortTimeDelayS", 0.1)));
    limit(400, of(timed.with("/upstreamDevice/settings/shortTimeDelayS", 0.09)));
  }

  /** Nothing is assumed of settings upstream: a lower one would hold less. */
  @Test
  void settingsUpstreamAreAskedFor() {
    String bare = "{'standard': 'IEC 60947-2', 'ratedCurrentA': 160}";
    open(
        of(behind(bare, 300)),
        "/upstreamDevice/settings/longTimeA",
        "/upstreamDevice/settings/instantaneousA");
  }

  private static Scenario declared(double limit) {
    return behind(breaker("C", 63), 1550)
        .with("/stage", "sign-off")
        .with("/upstreamDevice/id", "Q1")
        .withJson(
            "/device/selectivity",
            "[{\"upstreamId\": \"Q0\", \"limitCurrentA\": 9000},"
                + " {\"upstreamId\": \"Q1\", \"limitCurrentA\": %s}]".formatted(limit));
  }

  @ParameterizedTest
  @CsvSource({"1549, false", "1550, true", "2500, true"})
  void whatTheMakerDeclaresCountsForItsOwnPair(double limit, boolean holds) {
    Finding found = of(declared(limit));
    assertEquals(holds ? Verdict.COMPLIES : Verdict.NOT_DETERMINED, found.verdict());
    limit(limit, found);
    assertTrue(remarks(found).contains(NoteCode.DECLARED_SELECTIVITY));
    assertEquals(Strength.RULE, found.strength());
    // It is declared of devices as rated and set: unstated, they may be others.
    open(
        of(declared(limit).without("/upstreamDevice/ratedCurrentA")),
        "/upstreamDevice/ratedCurrentA");
    // Under another name it says nothing of this device.
    Finding other = of(declared(limit).with("/upstreamDevice/id", "Q2"));
    assertFalse(remarks(other).contains(NoteCode.DECLARED_SELECTIVITY));
    assertEquals(Verdict.NOT_DETERMINED, other.verdict());
  }

  /** It ranks before guidance: what the maker ends at 200 A is not carried on to 315 A. */
  @Test
  void whatTheMakerDeclaresRanksBeforeGuidance() {
    Scenario little = declared(200).with("/supply/maximumFaultCurrentA", 300);
    limit(200, openBecause(Reason.BETWEEN_BOUNDS, of(little.with("/stage", "design"))));
  }

  /** A fault current that is not stated, and devices that are not. */
  @Test
  void whatIsMissingIsNamed() {
    open(
        of(behind(fuse(160), 1).without("/supply/maximumFaultCurrentA")),
        "/supply/maximumFaultCurrentA");
    open(
        of(behind(fuse(160), 1550).without("/upstreamDevice").without("/device/ratedCurrentA")),
        "/upstreamDevice",
        "/device/ratedCurrentA");
    open(
        of(
            behind(fuse(160), 1550)
                .without("/upstreamDevice/standard")
                .without("/device")
                .without("/supply/maximumFaultCurrentA")),
        "/upstreamDevice/standard",
        "/device",
        "/supply/maximumFaultCurrentA");
    open(
        of(behind(fuse(160), 1550).without("/device/breakingCapacityA")),
        "/device/breakingCapacityA");
    open(
        of(behind(breaker("C", 63), 300).without("/upstreamDevice/characteristic")),
        "/upstreamDevice/characteristic");
    open(
        of(
            behind(fuse(160), 1550)
                .with("/stage", "sign-off")
                .without("/upstreamDevice/utilizationCategory")),
        "/upstreamDevice/utilizationCategory");
  }

  /** How long a BS 88-3 fuse holds is in no table that was read. */
  @Test
  void fusesWithoutDataAreNotDetermined() {
    Finding found = of(behind("{'standard': 'BS 88-3', 'ratedCurrentA': 80}", 1550));
    open(found, "/upstreamDevice/standard", "/device/selectivity");
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
    assertTrue(remarks(found).contains(NoteCode.NO_SELECTIVITY));
    Finding motor = of(behind(fuse(160), 1550).with("/upstreamDevice/utilizationCategory", "aM"));
    assertEquals(Verdict.NOT_DETERMINED, motor.verdict());
  }

  @ParameterizedTest
  @CsvSource({"required, true", "preferred, false"})
  void itCountsWhereItIsRequired(String wish, boolean counted) {
    Scenario scenario = behind(breaker("B", 20), 1550).with("/requirements/selectivity", wish);
    assertEquals(counted, of(scenario).counted());
    assertEquals(Verdict.DOES_NOT_COMPLY, of(scenario).verdict());
    assertFalse(of(scenario.without("/requirements/selectivity")).counted());
    Check asked = new Selectivity(true);
    assertTrue(CircuitCheck.one(asked, scenario.circuit(), scenario.edition(), true).counted());
  }
}
