package circuitverdict.conductor;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.Cable;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** k²S² of line, neutral and protective conductor by Tables 43.1 and 54.2 to 54.5. */
class HeatLimitTest {

  /** Table 43.1: 115, 143, 135, 76; 103 above 300 mm². */
  @ParameterizedTest
  @CsvSource({
    "copper, thermoplastic-70, 6, 115",
    "copper, thermoplastic-70, 300, 115",
    "copper, thermoplastic-70, 400, 103",
    "copper, thermosetting-90, 6, 143",
    "copper, mineral-105, 6, 135",
    "aluminium, thermoplastic-70, 16, 76"
  })
  void lineStandsByItsMetalAndInsulation(String metal, String insulation, double size, double k) {
    Scenario cable =
        cable()
            .with("/cable/conductor", metal)
            .with("/cable/insulation", insulation)
            .with("/cable/lineCsaMm2", size);
    assertEquals(k * k * size * size, HeatLimit.line(of(cable), dossier(cable)).value(), 1e-6);
  }

  /** The neutral by its own size; in a flat twin as large as the line. */
  @ParameterizedTest
  @CsvSource({"multicore, 1.5, 1.5", "flat-twin-and-earth, , 6"})
  void neutralStandsByItsOwnSize(String construction, Double stated, double size) {
    Scenario plain = cable().with("/cable/construction", construction);
    Scenario cable =
        stated == null ? plain.withOpenNeutral() : plain.with("/cable/neutralCsaMm2", stated);
    double limit = HeatLimit.neutral(of(cable), dossier(cable)).value();
    assertEquals(115 * 115 * size * size, limit, 1e-6);
  }

  /**
   * Tables 54.3 (core 115), 54.2 (separate 143; in conduit with the lines 115; steel 52), 54.4
   * (armour 51 and 46), 54.5 (conduit 47).
   */
  @ParameterizedTest
  @CsvSource({
    "multicore, thermoplastic-70, core, , 115",
    "multicore, thermosetting-90, core, , 143",
    "multicore, thermoplastic-70, separate, copper, 143",
    "multicore, thermoplastic-70, separate, steel, 52",
    "singles, thermoplastic-70, separate, copper, 115",
    "singles, thermoplastic-70, steel-conduit, , 47",
    "singles, thermosetting-90, steel-trunking, , 58"
  })
  void protectiveConductorStandsByHowItIsLaid(
      String construction, String insulation, String means, String metal, double k) {
    Scenario laid =
        cable()
            .with("/cable/construction", construction)
            .with("/cable/insulation", insulation)
            .with("/cable/protectiveMeans", means);
    Scenario cable = metal == null ? laid : laid.with("/cable/protectiveConductor", metal);
    double limit = HeatLimit.protective(of(cable), dossier(cable)).value();
    assertEquals(k * k * 2.5 * 2.5, limit, 1e-6);
  }

  /** Armour by its stated area; the table has no area of it. */
  @ParameterizedTest
  @CsvSource({"thermoplastic-70, 51", "thermosetting-90, 46"})
  void armourStandsByItsArea(String insulation, double k) {
    Scenario cable =
        armoured("armour").with("/cable/insulation", insulation).with("/cable/armourAreaMm2", 20);
    assertEquals(k * k * 400, HeatLimit.protective(of(cable), dossier(cable)).value(), 1e-6);
    Scenario unknown = cable.without("/cable/armourAreaMm2");
    Dossier d = dossier(unknown);
    assertFalse(HeatLimit.protective(of(unknown), d).known());
    assertTrue(missing(d, "/cable/armourAreaMm2"));
  }

  /** Of armour and core the better one alone: 51·20 = 1 020 against 115·2.5 or 115·10. */
  @ParameterizedTest
  @CsvSource({"2.5, 1020", "10, 1150"})
  void ofArmourAndCoreTheBetterOneCounts(double core, double withstand) {
    Scenario cable =
        armoured("armour-and-core")
            .with("/cable/armourAreaMm2", 20)
            .with("/cable/protectiveCsaMm2", core);
    assertEquals(
        withstand * withstand, HeatLimit.protective(of(cable), dossier(cable)).value(), 1e-6);
  }

  /** Without the armour's area the core stands alone: curable, so it carries no failure. */
  @Test
  void coreStandsForUnknownArmour() {
    Scenario cable = armoured("armour-and-core");
    Dossier d = dossier(cable);
    assertEquals(287.5 * 287.5, HeatLimit.protective(of(cable), d).value(), 1e-6);
    assertEquals(NoteCode.ASSUMED_CORE_ALONE, d.assumptions().get(0).code());
    assertEquals("/cable/armourAreaMm2", d.typical().get(0).text());
  }

  /** A ring counts one leg, parallel cables one path. */
  @ParameterizedTest
  @CsvSource({"/cable/arrangement, \"ring\"", "/cable/parallelCables, 2"})
  void onePathAloneCounts(String pointer, String value) {
    Scenario cable = cable().withJson(pointer, value);
    assertEquals(690.0 * 690, HeatLimit.line(of(cable), dossier(cable)).value(), 1e-6);
    assertEquals(287.5 * 287.5, HeatLimit.protective(of(cable), dossier(cable)).value(), 1e-6);
  }

  @Test
  void sheathHasNoTable() {
    Scenario cable = cable().with("/cable/protectiveMeans", "sheath");
    Dossier d = dossier(cable);
    assertFalse(HeatLimit.protective(of(cable), d).known());
    assertEquals(NoteCode.NOT_IN_TABLES, d.missing().get(0).code());
    assertTrue(missing(d, "/cable/protectiveMeans"));
  }

  @ParameterizedTest
  @CsvSource({
    "/cable/insulation, true",
    "/cable/conductor, true",
    "/cable/lineCsaMm2, true",
    "/cable/insulation, false",
    "/cable/conductor, false",
    "/cable/protectiveCsaMm2, false",
    "/cable/protectiveMeans, false"
  })
  void whatTheLimitNeedsIsAskedFor(String pointer, boolean line) {
    Scenario unknown = cable().with("/cable/construction", "multicore").without(pointer);
    Dossier d = dossier(unknown);
    assertFalse(
        (line ? HeatLimit.line(of(unknown), d) : HeatLimit.protective(of(unknown), d)).known());
    assertTrue(missing(d, pointer));
  }

  /** A separate conductor's metal is not that of the lines. */
  @Test
  void metalOfASeparateConductorIsAskedFor() {
    Scenario unknown =
        cable().with("/cable/construction", "multicore").with("/cable/protectiveMeans", "separate");
    Dossier d = dossier(unknown);
    assertFalse(HeatLimit.protective(of(unknown), d).known());
    assertTrue(missing(d, "/cable/protectiveConductor"));
  }

  /** Insulation without a k in the tables. */
  @Test
  void untabledInsulationIsNotKnown() {
    Scenario odd = cable().with("/cable/insulation", "mineral-70");
    Dossier d = dossier(odd);
    assertFalse(HeatLimit.protective(of(odd), d).known());
    assertEquals(NoteCode.NOT_IN_TABLES, d.missing().get(0).code());
  }

  private static Scenario cable() {
    return Scenario.oven();
  }

  private static Scenario armoured(String means) {
    return cable()
        .with("/cable/construction", "armoured-multicore")
        .with("/cable/protectiveMeans", means);
  }

  private static Cable of(Scenario scenario) {
    return scenario.circuit().cable();
  }

  private static boolean missing(Dossier d, String pointer) {
    return d.missing().stream().anyMatch(note -> note.pointer().text().equals(pointer));
  }
}
