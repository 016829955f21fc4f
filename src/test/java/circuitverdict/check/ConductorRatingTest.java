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
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rating required of a conductor, and the least sizes of Table 52.3. */
class ConductorRatingTest {
  private static final CheckName CHECK = CheckName.CONDUCTOR_RATING;

  /** 6 mm², method C, Table 4D5: 47 A. */
  @ParameterizedTest
  @CsvSource({"46.99, true", "47, true", "47.01, false"})
  void requiredRatingDoesNotExceedTheTabulatedOne(double rated, boolean holds) {
    Finding found = Scenario.oven().with("/device/ratedCurrentA", rated).finding(CHECK);
    judged(holds, found);
    actual(rated, found);
    limit(47, found);
  }

  /** Worked example E02: 32 A at 35 °C asks 32/0.94 = 34.04 A. */
  @Test
  void factorsRaiseWhatIsRequired() {
    Finding found =
        Scenario.oven().with("/cable/installation/ambientTemperatureC", 35).finding(CHECK);
    assertEquals(32 / 0.94, step("It,req", complies(found)), 1e-9);
  }

  /** Worked example E01: 25 A, 35 °C, two circuits, 0.4 m of insulation: 65.19 A; 64 A is short. */
  @Test
  void worstPlaceHoldsAllFactorsAtOnce() {
    Finding found = heater(10, 0.4).finding(CHECK);
    fails(found);
    assertEquals(65.19, step("It,req", found), 0.01);
    limit(64, found);
  }

  /**
   * Table 52.2 ends at 10 mm²; from 0.5 m on 523.9 gives 0.5: 25/(0.94·0.8·0.5) = 66.5 A of 85 A.
   */
  @Test
  void largerConductorIsJudgedOnlyWhereItsFactorIsKnown() {
    open(heater(16, 0.4).finding(CHECK), "/cable/installation/insulationLengthM");
    Finding found = complies(heater(16, 0.5).finding(CHECK));
    assertEquals(66.489, step("It,req", found), 0.001);
  }

  private static Scenario heater(double size, double insulated) {
    return Scenario.oven()
        .with("/device/ratedCurrentA", 25)
        .with("/load/designCurrentA", 21.74)
        .with("/cable/lineCsaMm2", size)
        .with("/cable/installation/ambientTemperatureC", 35)
        .with("/cable/installation/groupedCircuits", 2)
        .with("/cable/installation/groupArrangement", "bunched")
        .with("/cable/installation/insulationLengthM", insulated);
  }

  /**
   * Worked example E03: 30 A BS 3036 at 35 °C: 30/(0.94·0.725) = 44.02 A; 41 A of 6 mm² is short.
   */
  @ParameterizedTest
  @CsvSource({"6, 41, false", "10, 57, true"})
  void rewireableFuseAsksMore(double size, double rating, boolean holds) {
    Finding found =
        Scenario.oven()
            .withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\"]")
            .with("/device/standard", "BS 3036")
            .with("/device/ratedCurrentA", 30)
            .with("/cable/construction", "multicore")
            .with("/cable/lineCsaMm2", size)
            .with("/cable/installation/ambientTemperatureC", 35)
            .finding(CHECK);
    judged(holds, found);
    assertEquals(44.02, step("It,req", found), 0.01);
    assertEquals(0.725, step("Cc", found), 1e-12);
    assertEquals(rating, found.comparisons().get(0).limit().value());
  }

  /** Appendix 4: 0.9 in the ground; with BS 3036 0.725·0.9 = 0.6525. */
  @ParameterizedTest
  @CsvSource({"IEC 60898-1, 0.9", "BS 3036, 0.6525"})
  void groundAsksMore(String standard, double factor) {
    Finding found = buried().with("/device/standard", standard).finding(CHECK);
    assertEquals(factor, step("Cc", found), 1e-12);
    assertEquals(32 / factor, step("It,req", found), 1e-9);
  }

  /** 60 A of Table 4D4A (10 mm², D1) is just what 54 A asks at 0.9. */
  @ParameterizedTest
  @CsvSource({"53.9, true", "54, true", "54.1, false"})
  void buriedCableIsHeldAtItsLimit(double rated, boolean holds) {
    judged(holds, buried().with("/device/ratedCurrentA", rated).finding(CHECK));
  }

  /** 433.3.1: what is carried is Ib, not In. */
  @Test
  void loadThatCannotOverloadAsksItsOwnCurrent() {
    Finding found =
        Scenario.oven()
            .with("/load/canOverload", false)
            .with("/device/ratedCurrentA", 63)
            .with("/cable/installation/ambientTemperatureC", 35)
            .finding(CHECK);
    assertEquals(26.1 / 0.94, step("It,req", complies(found)), 1e-9);
  }

  /** 523.7 with Table 4C1: two cables in parallel are two circuits grouped: 63/(2·0.8) = 39.4 A. */
  @Test
  void cablesInParallelShareAndGroup() {
    Finding found =
        Scenario.oven()
            .with("/cable/parallelCables", 2)
            .with("/device/ratedCurrentA", 63)
            .with("/cable/installation/groupArrangement", "bunched")
            .finding(CHECK);
    assertEquals(63 / 1.6, step("It,req", complies(found)), 1e-9);
  }

  /** Table 52.3: lighting 1.0 mm², power 1.5 mm². */
  @ParameterizedTest
  @CsvSource({"1, lighting, true", "0.75, lighting, false", "1.5, other, true", "1, other, false"})
  void conductorIsNoSmallerThanItsUseAllows(double size, String use, boolean holds) {
    Finding found = small(size).with("/load/use", use).finding(CHECK);
    if (size < 1) {
      // No rating is tabled for it, yet its size alone condemns it.
      fails(found);
      limit(1, found);
    } else {
      judged(holds, found);
      assertEquals(use.equals("other") ? 1.5 : 1, found.comparisons().get(1).limit().value());
    }
    assertTrue(clauses(found).contains("Table 52.3"));
  }

  /** Use unknown: 1.5 mm² meets both, 1 mm² one of them, 0.75 mm² none. */
  @Test
  void unknownUseIsAskedForOnlyWhereItDecides() {
    complies(small(1.5).without("/load/use").finding(CHECK));
    open(small(1).without("/load/use").finding(CHECK), "/load/use");
    assertFalse(missing(small(1.5).without("/load/use").finding(CHECK)).contains("/load/use"));
    fails(small(0.75).without("/load/use").finding(CHECK));
  }

  /** 512.1.5: 90 °C cable by the 70 °C table, 85 A for 107 A, unless its ends stand 90 °C. */
  @ParameterizedTest
  @CsvSource({", 85", "70, 85", "89, 85", "90, 107"})
  void terminalsHoldAHotCableToTheCoolTable(Double terminal, double rating) {
    Scenario hot = hot();
    Finding found =
        (terminal == null ? hot : hot.with("/cable/terminalTemperatureC", terminal)).finding(CHECK);
    boolean held = terminal == null || terminal < 90;
    // Table 4D2A 16 mm² method C, two cores: 85 A; Table 4E2A: 107 A.
    assertEquals(rating, found.comparisons().get(0).limit().value());
    assertEquals(held, remarks(found).contains(NoteCode.TERMINALS_LIMIT));
    assertEquals(terminal == null, clauses(found).contains("512.1.5"));
  }

  /** Table 4B1: held by its terminals it takes the 70 °C factor too: 0.87, else 0.91. */
  @ParameterizedTest
  @CsvSource({"70, 0.87", "90, 0.91"})
  void terminalsDecideTheAmbientFactorToo(double terminal, double factor) {
    Finding found =
        hot()
            .with("/cable/terminalTemperatureC", terminal)
            .with("/cable/installation/ambientTemperatureC", 40)
            .finding(CHECK);
    assertEquals(factor, step("Ca", found), 1e-12);
  }

  /**
   * 433.1.201 speaks of gG: a motor fuse, or a device that knows no overload, sets no limit to what
   * the conductor carries, so that its In shows nothing, be it small or great.
   */
  @ParameterizedTest
  @CsvSource({
    "BS 88-2, aM, 32, /device/utilizationCategory",
    "BS 88-2, aM, 63, /device/utilizationCategory",
    "BS 88-2, gM, 32, /device/utilizationCategory",
    "IEC 61008-1, , 40, /device/standard",
    "IEC 60947-3, , 63, /device/standard"
  })
  void ratingOfADeviceThatKnowsNoOverloadDecidesNothing(
      String standard, String category, double rated, String asked) {
    Finding found = open(behind(standard, category, rated).finding(CHECK), asked);
    assertEquals(Reason.DEVICE_NOT_JUDGED, found.reason());
  }

  /** 523.1: whatever protects it, a conductor carries Ib: 47 A of 6 mm², method C (Table 4D5). */
  @ParameterizedTest
  @CsvSource({"aM, 47, false", "aM, 47.01, true", ", 47, false", ", 47.01, true"})
  void conductorTooSmallForItsLoadFailsBehindAMotorFuse(
      String category, double design, boolean fails) {
    Finding found =
        behind("BS 88-2", category, 63).with("/load/designCurrentA", design).finding(CHECK);
    if (fails) {
      limit(47, fails(found));
      actual(design, found);
    } else {
      open(found, "/device/utilizationCategory");
    }
  }

  /** 433.3.1, 552.1.2: behind the load's own relay Ib decides alone: Table 4D5, 47 A. */
  @ParameterizedTest
  @CsvSource({"aM, 47, true", "aM, 47.01, false", ", 47, true"})
  void loadThatCannotOverloadIsRatedByItsOwnCurrent(String category, double design, boolean holds) {
    Finding found =
        behind("BS 88-2", category, 63)
            .with("/load/canOverload", false)
            .with("/load/designCurrentA", design)
            .finding(CHECK);
    judged(holds, found);
    actual(design, found);
    assertTrue(clauses(found).contains("433.3.1"));
    assertTrue(remarks(found).contains(NoteCode.OVERLOAD_OMITTED));
  }

  /** IEC 60269-1: BS 88-2 has categories besides gG; until sign-off gG is assumed, listed. */
  @Test
  void categoryOfAFuseIsNeededAtSignOff() {
    Scenario unsaid = behind("BS 88-2", null, 32);
    assertEquals(
        Reason.MISSING_INPUT, open(unsaid.finding(CHECK), "/device/utilizationCategory").reason());
    Finding assumed = complies(unsaid.with("/stage", "design").finding(CHECK));
    assertTrue(assumptions(assumed).contains(NoteCode.ASSUMED_GENERAL_PURPOSE));
    complies(behind("BS 88-2", "gG", 32).finding(CHECK));
    complies(behind("BS 88-3", null, 32).finding(CHECK));
  }

  /** 433.1.204: 27 A of 2.5 mm² (Table 4D5) serves a ring of 32 A, if the fuse is gG. */
  @Test
  void ringIsNotFailedByALegBelowItsLoadBeforeTheCategoryIsKnown() {
    Scenario ring =
        behind("BS 88-2", null, 32)
            .with("/cable/arrangement", "ring")
            .with("/load/ratedCurrentA", 13)
            .with("/cable/lineCsaMm2", 2.5)
            .with("/load/kind", "socket-outlets")
            .without("/load/designCurrentA");
    open(ring.finding(CHECK), "/device/utilizationCategory");
    open(ring.with("/load/canOverload", false).finding(CHECK), "/device/utilizationCategory");
    complies(ring.with("/device/utilizationCategory", "gG").finding(CHECK));
  }

  @Test
  void circuitWithoutDeviceIsNotDetermined() {
    Finding found = Scenario.oven().without("/device").finding(CHECK);
    open(found, "/device");
    assertFalse(found.comparisons().isEmpty(), "the least size is judged all the same");
  }

  private static Scenario behind(String standard, String category, double rated) {
    Scenario device =
        Scenario.oven().with("/device/standard", standard).with("/device/ratedCurrentA", rated);
    return category == null ? device : device.with("/device/utilizationCategory", category);
  }

  private static Scenario small(double size) {
    return Scenario.oven()
        .with("/cable/lineCsaMm2", size)
        .with("/device/ratedCurrentA", 6)
        .with("/load/designCurrentA", 2);
  }

  private static Scenario hot() {
    return Scenario.oven()
        .with("/cable/construction", "multicore")
        .with("/cable/insulation", "thermosetting-90")
        .with("/cable/lineCsaMm2", 16);
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
