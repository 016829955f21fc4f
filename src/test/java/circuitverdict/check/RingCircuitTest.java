package circuitverdict.check;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ring final circuits (433.1.204): 30 or 32 A, copper, 2.5 mm² or more, each leg 20 A or more. */
class RingCircuitTest {
  private static final CheckName CHECK = CheckName.OVERLOAD_PROTECTION;

  /** Ratings of 2.5 mm² flat twin by Table 4D5: A 20 A is just enough, 101 and 103 are not. */
  @ParameterizedTest
  @CsvSource({
    "C, 27, true",
    "100, 21, true",
    "102, 21, true",
    "A, 20, true",
    "101, 17, false",
    "103, 13.5, false"
  })
  void eachLegCarriesTwentyAmperes(String method, double rating, boolean holds) {
    Finding found = ring().with("/cable/installation/referenceMethod", method).finding(CHECK);
    judged(holds, found);
    assertEquals(20, found.comparisons().get(1).actual().value());
    assertEquals(rating, found.comparisons().get(1).limit().value());
    assertTrue(clauses(found).contains("433.1.204"));
    assertTrue(remarks(found).contains(NoteCode.RING_RULE));
  }

  /** Table 4B1: 20 A by method A falls to 0.94·20 = 18.8 A at 35 °C. */
  @Test
  void legIsRatedAsInstalled() {
    Finding found =
        ring()
            .with("/cable/installation/referenceMethod", "A")
            .with("/cable/installation/ambientTemperatureC", 35)
            .finding(CHECK);
    fails(found);
    assertEquals(18.8, found.governing().limit().value(), 1e-9);
    fails(
        ring()
            .with("/cable/installation/referenceMethod", "A")
            .with("/cable/installation/ambientTemperatureC", 35)
            .finding(CheckName.CONDUCTOR_RATING));
  }

  /** 433.1.204 with conductor-rating: 20/(1.03·0.8) A of 27 A, the worked example E05. */
  @Test
  void conductorRatingAsksForTwentyAmperesToo() {
    Finding found =
        ring()
            .with("/cable/installation/ambientTemperatureC", 25)
            .with("/cable/installation/groupedCircuits", 2)
            .with("/cable/installation/groupArrangement", "bunched")
            .finding(CheckName.CONDUCTOR_RATING);
    complies(found);
    assertEquals(20 / (1.03 * 0.8), step("It,req", found), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"30, true", "32, true", "31, false", "40, false", "20, false"})
  void onlyThirtyAndThirtyTwoAmperesCount(double rated, boolean covered) {
    Finding found = ring().with("/device/ratedCurrentA", rated).finding(CHECK);
    assertEquals(covered, remarks(found).contains(NoteCode.RING_RULE));
    assertEquals(covered ? 20 : rated, found.comparisons().get(1).actual().value());
  }

  /** Off the rule a ring is held as a single cable: 40 A on 27 A, and 20 A on 27 A. */
  @Test
  void ringOffTheRuleIsHeldAsOneCable() {
    fails(ring().with("/device/ratedCurrentA", 40).finding(CHECK));
    complies(ring().with("/device/ratedCurrentA", 20).finding(CHECK));
  }

  @ParameterizedTest
  @CsvSource({"1.5, false", "2.5, true", "4, true"})
  void legsAreTwoAndAHalfOrMore(double size, boolean covered) {
    Finding found = ring().with("/cable/lineCsaMm2", size).finding(CHECK);
    assertEquals(covered, remarks(found).contains(NoteCode.RING_RULE));
    judged(covered, found);
  }

  /** 433.1.204 names 1.5 mm² for mineral cables; their ratings are not in the data. */
  @ParameterizedTest
  @CsvSource({"1, false", "1.5, true"})
  void mineralLegsMayBeOneAndAHalf(double size, boolean covered) {
    Finding found =
        ring()
            .with("/cable/construction", "mineral")
            .with("/cable/insulation", "mineral-70")
            .with("/cable/lineCsaMm2", size)
            .finding(CHECK);
    open(found);
    assertEquals(covered, remarks(found).contains(NoteCode.RING_RULE));
  }

  @Test
  void aluminiumIsOutsideTheRule() {
    Finding found = ring().with("/cable/conductor", "aluminium").finding(CHECK);
    assertFalse(remarks(found).contains(NoteCode.RING_RULE));
    open(found, "/cable/conductor");
  }

  /** The clause names BS 3036 beside the devices of 433.1.201, and no others. */
  @ParameterizedTest
  @CsvSource({
    "BS 3036, true",
    "BS 88-3, true",
    "BS 88-2, true",
    "IEC 61009-1, true",
    "BS 1362, false"
  })
  void deviceIsOneThatTheClauseNames(String standard, boolean covered) {
    Finding found =
        ring()
            .with("/device/standard", standard)
            .with("/device/utilizationCategory", "gG")
            .finding(CHECK);
    assertEquals(covered, remarks(found).contains(NoteCode.RING_RULE));
  }

  /** The clause is one of final circuits. */
  @ParameterizedTest
  @CsvSource({"final, true", "distribution, false"})
  void distributionCircuitIsOutsideTheRule(String kind, boolean covered) {
    judged(covered, ring().with("/circuitKind", kind).finding(CHECK));
  }

  /** The one named exception: Ib := In at every stage, listed. */
  @ParameterizedTest
  @CsvSource({"quotation", "design", "sign-off"})
  void withoutAStatedLoadTheRatingIsTheDesignCurrent(String stage) {
    Finding found = complies(ring().with("/stage", stage).finding(CHECK));
    assertTrue(assumptions(found).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
    assertEquals(32, found.comparisons().get(0).actual().value());
  }

  @Test
  void socketCircuitWithoutAStatedLoadDoesSoToo() {
    Finding found =
        Scenario.oven()
            .with("/load/kind", "socket-outlets")
            .without("/load/designCurrentA")
            .finding(CHECK);
    assertTrue(assumptions(complies(found)).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
  }

  @Test
  void statedLoadOfARingIsTaken() {
    Finding found = ring().with("/load/designCurrentA", 33).finding(CHECK);
    fails(found);
    assertEquals(33, found.governing().actual().value());
    assertFalse(assumptions(found).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
  }

  /** A spur by the figure of its ring is guidance: it carries a design, not a sign-off. */
  @Test
  void spurRestsOnGuidance() {
    Finding design = complies(spurred().with("/stage", "design").finding(CHECK));
    assertEquals(Dossier.Strength.GUIDANCE, design.strength());
    assertTrue(remarks(design).contains(NoteCode.SPUR_GUIDANCE));
    assertTrue(remarks(design).contains(NoteCode.BY_GUIDANCE));
    openBecause(Reason.PROOF_WANTED, spurred().finding(CHECK));
    complies(spurred().with("/requirements/evidence", "guidance").finding(CHECK));
    openBecause(
        Reason.PROOF_WANTED,
        spurred().with("/stage", "design").with("/requirements/evidence", "proved").finding(CHECK));
  }

  /** 433.3.1 needs no guidance: a spur that carries what its load can draw, and no more, is met. */
  @Test
  void spurOfALoadThatCannotOverloadCarriesIb() {
    Scenario light =
        spurred()
            .with("/load/kind", "resistive")
            .with("/load/count", 4)
            .with("/load/canOverload", false)
            .with("/load/designCurrentA", 26);
    Finding found = complies(light.finding(CHECK));
    assertEquals(Dossier.Strength.RULE, found.strength());
    assertTrue(clauses(found).contains("433.3.1"));
    openBecause(Reason.PROOF_WANTED, light.with("/load/designCurrentA", 28).finding(CHECK));
  }

  @Test
  void spurBelowTwentyAmperesFails() {
    Finding found =
        spurred().with("/stage", "design").withJson("/furtherCables", spur("101")).finding(CHECK);
    fails(found);
    assertEquals("/furtherCables/0", found.governing().subject());
  }

  static Scenario ring() {
    return Scenario.oven()
        .with("/cable/arrangement", "ring")
        .with("/load/ratedCurrentA", 13)
        .with("/cable/lineCsaMm2", 2.5)
        .with("/cable/protectiveCsaMm2", 1.5)
        .with("/cable/lengthM", 60)
        .with("/load/connection", "socket-outlet")
        .with("/load/kind", "socket-outlets")
        .without("/load/designCurrentA");
  }

  private static Scenario spurred() {
    return ring().withJson("/furtherCables", spur("C"));
  }

  private static String spur(String method) {
    return """
        [{"construction": "flat-twin-and-earth", "conductor": "copper",
          "insulation": "thermoplastic-70", "lineCsaMm2": 2.5, "protectiveCsaMm2": 1.5,
          "lengthM": 5, "installation": {"referenceMethod": "%s", "ambientTemperatureC": 30,
          "groupedCircuits": 1}}]
        """
        .formatted(method);
  }
}
