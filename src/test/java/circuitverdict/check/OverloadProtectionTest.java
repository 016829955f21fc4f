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
import org.junit.jupiter.params.provider.ValueSource;

/** Ib ≤ In ≤ Iz and I2 ≤ 1.45·Iz (433.1.1), what settles the last of them, and the omission. */
class OverloadProtectionTest {
  private static final CheckName CHECK = CheckName.OVERLOAD_PROTECTION;

  /** 433.1.1(i): equality complies. */
  @ParameterizedTest
  @CsvSource({"31.999, true", "32, true", "32.001, false"})
  void designCurrentDoesNotExceedTheRating(double design, boolean holds) {
    Finding found = Scenario.oven().with("/load/designCurrentA", design).finding(CHECK);
    judged(holds, found);
    actual(design, found);
    limit(32, found);
  }

  /** 433.1.1(ii): 6 mm² by method A of Table 4D5 carries 32 A. */
  @ParameterizedTest
  @CsvSource({"31.99, true", "32, true", "32.01, false"})
  void ratingDoesNotExceedWhatTheConductorCarries(double rated, boolean holds) {
    Finding found = inLoft().with("/device/ratedCurrentA", rated).finding(CHECK);
    judged(holds, found);
    assertEquals(32, found.comparisons().get(1).limit().value(), 1e-9);
  }

  /** 433.1.202: 2·In ≤ 1.45·47 A, so In ≤ 0.725·47 = 34.075 A. */
  @ParameterizedTest
  @CsvSource({"34.07, true", "34.075, true", "34.08, false"})
  void rewireableFuseIsHeldByItsFusingFactor(double rated, boolean holds) {
    Finding found = fuse("BS 3036").with("/device/ratedCurrentA", rated).finding(CHECK);
    judged(holds, found);
    assertTrue(clauses(found).contains("433.1.202"));
    assertEquals(2 * rated, found.comparisons().get(2).actual().value(), 1e-9);
    assertEquals(68.15, found.comparisons().get(2).limit().value(), 1e-9);
  }

  /** 433.1.201: for these In ≤ Iz settles I2, even where I2 = 1.6·In would exceed 1.45·Iz. */
  @ParameterizedTest
  @CsvSource({"BS 88-2", "BS 88-3", "BS 1361"})
  void cartridgeFusesNamedByTheClauseNeedNoConventionalCurrent(String standard) {
    Finding found =
        inLoft()
            .with("/device/standard", standard)
            .with("/device/ratedCurrentA", 32)
            .with("/device/utilizationCategory", "gG")
            .without("/device/characteristic")
            .finding(CHECK);
    complies(found);
    assertEquals(2, found.comparisons().size());
    assertTrue(clauses(found).contains("433.1.201"));
  }

  /** Only BS 88-2 has motor fuses: there the category is needed, and for a design listed. */
  @ParameterizedTest
  @CsvSource({"BS 88-2, true", "BS 88-3, false", "BS 1361, false"})
  void categoryOfAFuseIsNeededWhereThereAreOthers(String standard, boolean needed) {
    Scenario fused = fuse(standard).with("/device/ratedCurrentA", 32);
    Scenario unsaid = fused.without("/device/utilizationCategory");
    if (needed) {
      open(unsaid.finding(CHECK), "/device/utilizationCategory");
    } else {
      complies(unsaid.finding(CHECK));
    }
    Finding design = complies(unsaid.with("/stage", "design").finding(CHECK));
    assertEquals(needed, assumptions(design).contains(NoteCode.ASSUMED_GENERAL_PURPOSE));
  }

  /** BS 1362 is not named: 1.9·13 = 24.7 A ≤ 1.45·Iz needs Iz ≥ 17.04 A (Table 4D5). */
  @ParameterizedTest
  @CsvSource({"1.5, A, 14.5, false", "2.5, 101, 17, false", "4, 103, 17.5, true"})
  void plugFuseIsHeldByItsConventionalCurrent(
      double size, String method, double rating, boolean holds) {
    Finding found =
        fuse("BS 1362")
            .with("/device/ratedCurrentA", 13)
            .with("/load/designCurrentA", 10)
            .with("/cable/lineCsaMm2", size)
            .with("/cable/installation/referenceMethod", method)
            .finding(CHECK);
    judged(holds, found);
    assertEquals(24.7, found.comparisons().get(2).actual().value(), 1e-9);
    assertEquals(1.45 * rating, found.comparisons().get(2).limit().value(), 1e-9);
  }

  /** 433.1.1(iii) of a breaker: 1.45·In; of IEC 60947-2: 1.30·Ir. */
  @Test
  void breakersShowTheirConventionalCurrent() {
    Finding breaker = complies(Scenario.oven().finding(CHECK));
    assertEquals(46.4, breaker.comparisons().get(2).actual().value(), 1e-9);
    Finding adjustable =
        complies(
            Scenario.oven()
                .with("/device/standard", "IEC 60947-2")
                .with("/device/ratedCurrentA", 100)
                .with("/device/settings/longTimeA", 40)
                .finding(CHECK));
    assertEquals(52, adjustable.comparisons().get(2).actual().value(), 1e-9);
    assertEquals(40, adjustable.comparisons().get(0).limit().value(), 1e-9);
  }

  /** 433.1.203: 10 mm² armoured in ducts carries 60 A (Table 4D4A, D1), so In ≤ 0.9·60 = 54 A. */
  @ParameterizedTest
  @CsvSource({"53.99, true", "54, true", "54.01, false"})
  void buriedCableIsHeldToNineTenths(double rated, boolean holds) {
    Finding found = buried().with("/device/ratedCurrentA", rated).finding(CHECK);
    judged(holds, found);
    assertTrue(clauses(found).contains("433.1.203"));
    assertEquals(rated / 0.9, found.comparisons().get(1).actual().value(), 1e-9);
    assertEquals(60, found.comparisons().get(1).limit().value(), 1e-9);
  }

  /** 433.3.1: a load that cannot overload asks only Ib ≤ Iz = 47 A (Table 4D5, method C). */
  @ParameterizedTest
  @CsvSource({"46.9, true", "47, true", "47.1, false"})
  void loadThatCannotOverloadIsHeldByItsOwnCurrent(double design, boolean holds) {
    Finding found =
        Scenario.oven()
            .with("/device/ratedCurrentA", 63)
            .with("/load/canOverload", false)
            .with("/load/designCurrentA", design)
            .finding(CHECK);
    judged(holds, found);
    assertTrue(clauses(found).contains("433.3.1"));
    assertTrue(remarks(found).contains(NoteCode.OVERLOAD_OMITTED));
    assertEquals(2, found.comparisons().size());
  }

  @Test
  void loadThatCanOverloadHasNoSuchOmission() {
    Finding found =
        Scenario.oven()
            .with("/device/ratedCurrentA", 63)
            .with("/load/canOverload", true)
            .finding(CHECK);
    fails(found);
    assertEquals(63, found.comparisons().get(1).actual().value(), 1e-9);
    assertEquals(47, found.comparisons().get(1).limit().value(), 1e-9);
    assertEquals(Verdict.DOES_NOT_COMPLY, found.comparisons().get(1).verdict());
  }

  /** 433.1.201 speaks of gG: motor fuses are not judged, whatever their In. */
  @ParameterizedTest
  @ValueSource(strings = {"aM", "gM"})
  void motorFuseIsNotJudged(String category) {
    Finding found =
        Scenario.oven()
            .with("/device/standard", "BS 88-2")
            .with("/device/utilizationCategory", category)
            .finding(CHECK);
    openBecause(Reason.DEVICE_NOT_JUDGED, open(found, "/device/utilizationCategory"));
  }

  /**
   * 433.3.1, 552.1.2: where the load cannot overload, overload protection may be omitted whatever
   * the fuse: Ib ≤ In, and Ib ≤ Iz = 47 A (Table 4D5, method C).
   */
  @ParameterizedTest
  @CsvSource({
    "aM, 63, 46.9, true",
    "aM, 63, 47, true",
    "aM, 63, 47.1, false",
    "aM, 32, 32, true",
    "aM, 32, 32.1, false",
    "gM, 63, 47, true",
    ", 63, 47, true",
    ", 63, 47.1, false",
    ", 32, 32.1, false"
  })
  void motorFuseServesALoadThatCannotOverload(
      String category, double rated, double design, boolean holds) {
    Finding found =
        bs88(category, rated)
            .with("/load/canOverload", false)
            .with("/load/designCurrentA", design)
            .finding(CHECK);
    judged(holds, found);
    assertTrue(clauses(found).contains("433.3.1"));
    assertFalse(clauses(found).contains("433.1.201"));
    assertTrue(remarks(found).contains(NoteCode.OVERLOAD_OMITTED));
    assertEquals(2, found.comparisons().size());
    assertEquals(design, found.comparisons().get(1).actual().value());
    assertEquals(47, found.comparisons().get(1).limit().value(), 1e-9);
  }

  /** The omission is of the load that cannot overload: not where it can, nor where nothing says. */
  @Test
  void motorFuseIsNotJudgedForALoadThatMayOverload() {
    Scenario motor = bs88("aM", 32).with("/load/designCurrentA", 60);
    openBecause(Reason.DEVICE_NOT_JUDGED, motor.finding(CHECK));
    openBecause(Reason.DEVICE_NOT_JUDGED, motor.with("/load/canOverload", true).finding(CHECK));
  }

  /**
   * 433.1.1 asks In ≤ Iz of a gG fuse alone, but Ib ≤ Iz = 47 A whatever protects (Table 4D5): only
   * that fails without the category.
   */
  @ParameterizedTest
  @CsvSource({
    "63, 26.1, false",
    "32, 32.1, false",
    "63, 47, false",
    "63, 47.1, true",
    "32, 47.1, true"
  })
  void withoutItsCategoryAFuseFailsOnlyWhereNoneCouldCureIt(
      double rated, double design, boolean fails) {
    Finding found = bs88(null, rated).with("/load/designCurrentA", design).finding(CHECK);
    if (fails) {
      fails(found);
      actual(design, found);
      limit(47, found);
    } else {
      openBecause(Reason.MISSING_INPUT, open(found, "/device/utilizationCategory"));
    }
  }

  /** 433.1.204: a leg of 20 A serves a ring of 32 A behind a gG fuse, so none fails without it. */
  @Test
  void ringIsNotFailedByALegBelowItsLoad() {
    Scenario ring =
        bs88(null, 32)
            .with("/cable/arrangement", "ring")
            .with("/load/ratedCurrentA", 13)
            .with("/cable/lineCsaMm2", 2.5)
            .with("/load/kind", "socket-outlets")
            .without("/load/designCurrentA");
    open(ring.finding(CHECK), "/device/utilizationCategory");
    open(ring.with("/load/canOverload", false).finding(CHECK), "/device/utilizationCategory");
    complies(ring.with("/device/utilizationCategory", "gG").finding(CHECK));
  }

  /** 433.1: an RCCB has no overload release. */
  @Test
  void residualCurrentCircuitBreakerIsNotJudged() {
    openBecause(
        Reason.DEVICE_NOT_JUDGED,
        Scenario.oven().with("/device/standard", "IEC 61008-1").finding(CHECK));
    openBecause(Reason.MISSING_INPUT, Scenario.oven().without("/device/standard").finding(CHECK));
  }

  @Test
  void circuitWithoutDeviceIsNotDetermined() {
    open(Scenario.oven().without("/device").finding(CHECK), "/device");
  }

  /** Every cable in series is held, each named by its own pointer. */
  @Test
  void weakestCableInSeriesGoverns() {
    Finding found =
        Scenario.oven()
            .withJson(
                "/furtherCables",
                """
                [{"construction": "flat-twin-and-earth", "conductor": "copper",
                  "insulation": "thermoplastic-70", "lineCsaMm2": 4, "protectiveCsaMm2": 1.5,
                  "lengthM": 2, "installation": {"referenceMethod": "100",
                  "ambientTemperatureC": 30, "groupedCircuits": 1}}]
                """)
            .finding(CHECK);
    fails(found);
    limit(27, found);
    assertEquals("/furtherCables/0", found.governing().subject());
  }

  private static Scenario inLoft() {
    return Scenario.oven().with("/cable/installation/referenceMethod", "A");
  }

  private static Scenario bs88(String category, double rated) {
    Scenario fuse = fuse("BS 88-2").with("/device/ratedCurrentA", rated);
    return category == null ? fuse : fuse.with("/device/utilizationCategory", category);
  }

  private static Scenario fuse(String standard) {
    return Scenario.oven()
        .with("/device/standard", standard)
        .without("/device/characteristic")
        .without("/device/energyClass");
  }

  private static Scenario buried() {
    return Scenario.oven()
        .with("/cable/construction", "armoured-multicore")
        .with("/cable/lineCsaMm2", 10)
        .withJson(
            "/cable/installation",
            """
            {"referenceMethod": "D1", "ambientTemperatureC": 20, "groupedCircuits": 1,
             "soilThermalResistivityKMPerW": 2.5, "burialDepthM": 0.7}
            """);
  }
}
