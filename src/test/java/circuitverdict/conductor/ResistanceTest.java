package circuitverdict.conductor;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Resistances at 20 °C: stated, by IEC 60228, or of armour by its own table. */
class ResistanceTest {
  private static final LiveConductors SINGLE = new LiveConductors(1, true);

  /** IEC 60228 class 2, and class 5 of flexible conductors. */
  @ParameterizedTest
  @CsvSource({
    "multicore, 1.5, 12.1",
    "multicore, 6, 3.08",
    "multicore, 50, 0.387",
    "flexible, 6, 3.30"
  })
  void lineIsReadFromTheStandard(String construction, double size, double ohm) {
    Scenario cable =
        Scenario.oven().with("/cable/construction", construction).with("/cable/lineCsaMm2", size);
    assertEquals(ohm, Resistance.line(cable(cable), dossier(cable)).value());
  }

  @Test
  void statedResistancesComeFirst() {
    Scenario cable =
        Scenario.oven()
            .with("/cable/lineResistanceOhmPerKm", 3)
            .with("/cable/protectiveResistanceOhmPerKm", 7);
    assertEquals(3, Resistance.line(cable(cable), dossier(cable)).value());
    assertEquals(7, Resistance.protective(cable(cable), SINGLE, dossier(cable)).value());
  }

  /** What is stated of the line holds for a neutral of its size, not for another. */
  @ParameterizedTest
  @CsvSource({", 3", "6, 3", "2.5, 7.41"})
  void statedLineResistanceIsTheEqualNeutralsToo(Double neutral, double ohm) {
    Scenario stated = Scenario.oven().with("/cable/lineResistanceOhmPerKm", 3);
    Scenario cable =
        neutral == null ? stated.withOpenNeutral() : stated.with("/cable/neutralCsaMm2", neutral);
    assertEquals(ohm, Resistance.neutral(cable(cable), dossier(cable)).value());
  }

  @Test
  void neutralWithoutALineIsReadByItsOwnSize() {
    Scenario cable =
        Scenario.oven()
            .with("/cable/construction", "multicore")
            .without("/cable/lineCsaMm2")
            .with("/cable/lineResistanceOhmPerKm", 3)
            .with("/cable/neutralCsaMm2", 2.5);
    assertEquals(7.41, Resistance.neutral(cable(cable), dossier(cable)).value());
  }

  /** No aluminium until its tables exist, and no size that IEC 60228 does not list. */
  @ParameterizedTest
  @CsvSource({"/cable/conductor, \"aluminium\"", "/cable/lineCsaMm2, 7"})
  void untabledConductorIsNotKnown(String pointer, String value) {
    Scenario odd = Scenario.oven().withJson(pointer, value);
    Dossier d = dossier(odd);
    assertFalse(Resistance.line(cable(odd), d).known());
    assertEquals(NoteCode.NOT_IN_TABLES, d.missing().get(0).code());
    assertTrue(missing(d, pointer));
  }

  /** Conduit, trunking and sheath have no table of resistance: stated, or not known. */
  @ParameterizedTest
  @CsvSource({"steel-conduit", "steel-trunking", "sheath"})
  void otherMeansMustBeStated(String means) {
    Scenario cable = Scenario.oven().with("/cable/protectiveMeans", means);
    Dossier d = dossier(cable);
    assertFalse(Resistance.protective(cable(cable), SINGLE, d).known());
    assertTrue(missing(d, "/cable/protectiveResistanceOhmPerKm"));
  }

  @Test
  void meansThatAreNotStatedAreAskedFor() {
    Scenario cable =
        Scenario.oven().with("/cable/construction", "multicore").without("/cable/protectiveMeans");
    Dossier d = dossier(cable);
    Figure r2 = Resistance.protective(cable(cable), SINGLE, d);
    assertFalse(r2.known());
    assertEquals("r2", r2.symbol());
    assertTrue(missing(d, "/cable/protectiveMeans"));
  }

  /** Armour of 6 mm² by its cores: two 7.0, three 6.7, four 4.3 Ω/km, as the data have it. */
  @ParameterizedTest
  @CsvSource({"1, true, 7.0", "3, false, 6.7", "3, true, 4.3"})
  void armourIsReadByItsCores(int lines, boolean neutral, double ohm) {
    Scenario cable = armoured("armour");
    LiveConductors live = new LiveConductors(lines, neutral);
    assertEquals(ohm, Resistance.protective(cable(cable), live, dossier(cable)).value());
  }

  /** A core beside the armour is one core more: three cores 6.7, beside 7.41 Ω/km. */
  @Test
  void armourBesideACoreIsTakenTogether() {
    Scenario cable = armoured("armour-and-core");
    double both = Resistance.protective(cable(cable), SINGLE, dossier(cable)).value();
    assertEquals(6.7 * 7.41 / (6.7 + 7.41), both, 1e-9);
  }

  /** Untabled armour, or armour of unknown cores, must be stated. */
  @ParameterizedTest
  @CsvSource({"10, true", "6, false", ", true"})
  void otherArmourMustBeStated(Double size, boolean liveKnown) {
    Scenario armoured = armoured("armour");
    Scenario cable =
        size == null
            ? armoured.without("/cable/lineCsaMm2")
            : armoured.with("/cable/lineCsaMm2", size);
    Dossier d = dossier(cable);
    LiveConductors live = liveKnown ? SINGLE : null;
    assertFalse(Resistance.protective(cable(cable), live, d).known());
    assertTrue(missing(d, "/cable/armourResistanceOhmPerKm"));
    Scenario stated =
        cable.with("/cable/armourResistanceOhmPerKm", 5).with("/cable/armourAreaMm2", 26);
    assertEquals(5, Resistance.protective(cable(stated), live, dossier(stated)).value());
  }

  private static Scenario armoured(String means) {
    return Scenario.oven()
        .with("/cable/construction", "armoured-multicore")
        .with("/cable/protectiveMeans", means);
  }

  private static Cable cable(Scenario scenario) {
    return scenario.circuit().cable();
  }

  private static boolean missing(Dossier d, String pointer) {
    return d.missing().stream().anyMatch(note -> note.pointer().text().equals(pointer));
  }
}
