package circuitverdict.conductor;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.step;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rating factors of Appendix 4: the next less favourable row counts, beyond a table nothing. */
class RatingFactorsTest {
  private static final CheckName CHECK = CheckName.CONDUCTOR_RATING;
  private static final String LAID = "/cable/installation/";

  /** Table 4B1, 70 °C: between rows the next hotter; below its first row that row. */
  @ParameterizedTest
  @CsvSource({"20, 1.03", "25, 1.03", "25.1, 1", "30, 1", "31, 0.94", "35, 0.94", "60, 0.5"})
  void ambientTakesTheNextHotterRow(double ambient, double factor) {
    assertEquals(factor, step("Ca", air("ambientTemperatureC", ambient)), 1e-12);
  }

  @Test
  void ambientBeyondTheTableIsNotKnown() {
    Finding found = air("ambientTemperatureC", 60.1);
    open(found, LAID + "ambientTemperatureC");
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
  }

  /** Appendix 4: 30 °C may be taken in a design, never at sign-off. */
  @Test
  void ambientIsAssumedInADesignOnly() {
    Scenario unknown = Scenario.oven().without(LAID + "ambientTemperatureC");
    open(unknown.finding(CHECK), LAID + "ambientTemperatureC");
    Finding design = complies(unknown.with("/stage", "design").finding(CHECK));
    assertTrue(assumptions(design).contains(NoteCode.ASSUMED_AMBIENT));
    assertEquals(1, step("Ca", design));
  }

  /** Table 4B2: in the ground 20 °C is the reference, by its own columns. */
  @ParameterizedTest
  @CsvSource({
    "thermoplastic-70, 20, 1",
    "thermoplastic-70, 21, 0.95",
    "thermoplastic-70, 60, 0.45",
    "thermosetting-90, 25, 0.96"
  })
  void groundHasItsOwnTable(String insulation, double ground, double factor) {
    Finding found =
        buried()
            .with("/cable/insulation", insulation)
            .with("/cable/terminalTemperatureC", 90)
            .with(LAID + "ambientTemperatureC", ground)
            .finding(CHECK);
    assertEquals(factor, step("Ca", found), 1e-12);
  }

  @Test
  void groundOfADesignIsTakenAtTwentyDegrees() {
    Finding found =
        buried().with("/stage", "design").without(LAID + "ambientTemperatureC").finding(CHECK);
    assertEquals(1, step("Ca", found));
    assertTrue(assumptions(found).contains(NoteCode.ASSUMED_AMBIENT));
  }

  /** Table 4C1: bunched 0.8, 0.7 …; between 9 and 12 the row of 12. */
  @ParameterizedTest
  @CsvSource({
    "1, bunched, C, 1",
    "2, bunched, C, 0.8",
    "3, , C, 0.7",
    "9, bunched, C, 0.5",
    "10, bunched, C, 0.45",
    "12, bunched, C, 0.45",
    "20, bunched, C, 0.38",
    "2, touching, C, 0.85",
    "4, touching, C, 0.75",
    "2, touching, E, 0.87",
    "3, touching, E, 0.82",
    "4, touching, E, 0.77",
    "2, touching, B, 0.8",
    "6, spaced, C, 1"
  })
  void groupsTakeTheNextLargerNumber(int circuits, String arrangement, String method, double f) {
    Scenario grouped =
        Scenario.oven()
            .with("/cable/construction", "multicore")
            .with(LAID + "referenceMethod", method)
            .with(LAID + "groupedCircuits", circuits);
    Scenario laid =
        arrangement == null ? grouped : grouped.with(LAID + "groupArrangement", arrangement);
    Finding found = laid.finding(CHECK);
    assertEquals(f, step("Cg", found), 1e-12);
    assertEquals(
        circuits > 1 && arrangement == null,
        assumptions(found).contains(NoteCode.ASSUMED_BUNCHED),
        "a missing arrangement counts as bunched, listed");
  }

  @Test
  void groupsBeyondTheTableAreNotKnown() {
    open(air("groupedCircuits", 21), LAID + "groupedCircuits");
  }

  @Test
  void groupingIsAssumedInAQuotationOnly() {
    Scenario unknown = Scenario.oven().without(LAID + "groupedCircuits");
    open(unknown.with("/stage", "design").finding(CHECK), LAID + "groupedCircuits");
    Finding quoted = complies(unknown.with("/stage", "quotation").finding(CHECK));
    assertTrue(assumptions(quoted).contains(NoteCode.ASSUMED_SINGLE_CIRCUIT));
  }

  /** Table 4C3, ducts touching: spacing is not told apart, so the nil column counts. */
  @ParameterizedTest
  @CsvSource({"1, , 1", "2, , 0.85", "3, spaced, 0.75", "6, touching, 0.6"})
  void ductsHaveTheirOwnTable(int circuits, String arrangement, double factor) {
    Scenario grouped = buried().with(LAID + "groupedCircuits", circuits);
    Scenario laid =
        arrangement == null ? grouped : grouped.with(LAID + "groupArrangement", arrangement);
    assertEquals(factor, step("Cg", laid.finding(CHECK)), 1e-12);
  }

  /** Table 52.2: between rows the next longer one, beyond 0.5 m the row of 0.5 m. */
  @ParameterizedTest
  @CsvSource({"0, 1", "0.05, 0.88", "0.06, 0.78", "0.1, 0.78", "0.3, 0.51", "0.5, 0.5", "2, 0.5"})
  void insulationTakesTheNextLongerRow(double length, double factor) {
    assertEquals(factor, step("Ci", air("insulationLengthM", length)), 1e-12);
  }

  /** Methods 100 to 103 already contain their insulation. */
  @ParameterizedTest
  @CsvSource({"100", "101", "102", "103"})
  void insulationIsNotCountedTwice(String method) {
    Finding found =
        Scenario.oven()
            .with(LAID + "referenceMethod", method)
            .with(LAID + "insulationLengthM", 0.5)
            .finding(CHECK);
    assertEquals(1, step("Ci", found));
  }

  /** Table 52.2 speaks up to 10 mm²; 523.9 gives 0.5 from 0.5 m on for every size. */
  @ParameterizedTest
  @CsvSource({"10, 0.4, true", "16, 0.4, false", "16, 0.5, true", "16, 0.6, true"})
  void insulationTableEndsAtTenSquareMillimetres(double size, double length, boolean known) {
    Finding found =
        Scenario.oven()
            .with("/cable/lineCsaMm2", size)
            .with(LAID + "insulationLengthM", length)
            .finding(CHECK);
    assertEquals(!known, missing(found).contains(LAID + "insulationLengthM"));
  }

  /** Table 4B3, in ducts: the next more resistive soil. */
  @ParameterizedTest
  @CsvSource({"0.4, 1.28", "2.5, 1", "2.6, 0.96", "3, 0.96"})
  void soilTakesTheNextMoreResistiveRow(double resistivity, double factor) {
    Finding found =
        buried().with(LAID + "soilThermalResistivityKMPerW", resistivity).finding(CHECK);
    assertEquals(factor, step("F", found), 1e-12);
  }

  @Test
  void soilBeyondTheTableIsNotKnown() {
    open(
        buried().with(LAID + "soilThermalResistivityKMPerW", 3.1).finding(CHECK),
        LAID + "soilThermalResistivityKMPerW");
  }

  /** Appendix 4: the tables hold for 0.7 m; shallower is cooler, deeper is not known. */
  @ParameterizedTest
  @CsvSource({"0.5, true", "0.7, true", "0.71, false"})
  void depthEndsAtTheReference(double depth, boolean known) {
    Finding found = buried().with(LAID + "burialDepthM", depth).finding(CHECK);
    assertEquals(!known, missing(found).contains(LAID + "burialDepthM"));
  }

  @Test
  void soilAndDepthAreAssumedInADesignOnly() {
    Scenario unknown =
        buried().without(LAID + "soilThermalResistivityKMPerW").without(LAID + "burialDepthM");
    open(unknown.finding(CHECK), LAID + "soilThermalResistivityKMPerW", LAID + "burialDepthM");
    Finding design = complies(unknown.with("/stage", "design").finding(CHECK));
    assertTrue(assumptions(design).contains(NoteCode.ASSUMED_SOIL));
    assertTrue(assumptions(design).contains(NoteCode.ASSUMED_DEPTH));
    assertFalse(
        assumptions(Scenario.oven().with("/stage", "design").finding(CHECK))
            .contains(NoteCode.ASSUMED_SOIL));
  }

  private static Finding air(String member, double value) {
    return Scenario.oven()
        .with(LAID + member, member.equals("groupedCircuits") ? (Object) (int) value : value)
        .finding(CHECK);
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
