package circuitverdict.conductor;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.dossier;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Row;
import circuitverdict.standard.Table;
import circuitverdict.support.Scenario;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A stated resistance is held against physics: no conductor has less than 0.9 of ρ/S, with ρ at 20
 * °C of copper 17.241, aluminium 28.264, steel 138 and lead 214 Ω·mm²/km (IEC 60949 table 1, from
 * memory).
 */
class StatedResistanceTest {
  private static final CheckName DISCONNECTION = CheckName.EARTH_FAULT_DISCONNECTION;
  private static final LiveConductors SINGLE = new LiveConductors(1, true);
  private static final String LINE = "/cable/lineResistanceOhmPerKm";
  private static final String PROTECTIVE = "/cable/protectiveResistanceOhmPerKm";

  /** 6 mm² of 3.08 Ω/km and 2.5 mm² of 7.41 Ω/km in Ω/m: a 300 m circuit would pass. */
  @Test
  void whatIsStatedPerMetreIsNotBelieved() {
    Scenario far = Scenario.oven().with("/cable/lengthM", 300);
    Finding line = open(far.with(LINE, 0.00308).with(PROTECTIVE, 7.41).finding(DISCONNECTION));
    assertEquals(LINE, of(line, NoteCode.BELOW_PHYSICS));
    Finding back = open(far.with(LINE, 3.08).with(PROTECTIVE, 0.00741).finding(DISCONNECTION));
    assertEquals(PROTECTIVE, of(back, NoteCode.BELOW_PHYSICS));
    Finding drop = open(far.with(LINE, 0.00308).finding(CheckName.VOLTAGE_DROP), LINE);
    assertEquals(LINE, of(drop, NoteCode.BELOW_PHYSICS));
  }

  /** 0.9·17.241/6 = 2.58615 and 0.9·28.264/16 = 1.58985 Ω/km. */
  @ParameterizedTest
  @CsvSource({
    "copper, 6, 3.08, true",
    "copper, 6, 2.58615, true",
    "copper, 6, 2.5861, false",
    "copper, 6, 1.54, false",
    "copper, 6, 0, false",
    "aluminium, 16, 1.58985, true",
    "aluminium, 16, 1.5898, false"
  })
  void noLineHasLessThanItsMetalAndSizeLetIt(
      String metal, double size, double ohm, boolean believed) {
    Scenario stated =
        Scenario.oven()
            .with("/cable/conductor", metal)
            .with("/cable/lineCsaMm2", size)
            .with(LINE, ohm);
    Dossier d = dossier(stated);
    Figure r1 = Resistance.line(stated.circuit().cable(), d);
    assertEquals(believed, r1.known());
    assertEquals(believed, d.missing().isEmpty());
    assertEquals(believed, Resistance.neutral(stated.circuit().cable(), dossier(stated)).known());
  }

  /** Steel of 100 mm² 1.242, lead of 100 mm² 1.926, copper of 2.5 mm² 6.20676 Ω/km. */
  @ParameterizedTest
  @CsvSource({
    "core, , 2.5, 6.2068, true",
    "core, , 2.5, 6.2067, false",
    "separate, copper, 2.5, 6.2067, false",
    "steel-conduit, , 100, 1.242, true",
    "steel-trunking, , 100, 1.2419, false",
    "sheath, lead, 100, 1.926, true",
    "sheath, lead, 100, 1.9259, false"
  })
  void norHasAProtectiveConductor(
      String means, String metal, double size, double ohm, boolean believed) {
    Scenario cable =
        Scenario.oven()
            .with("/cable/protectiveMeans", means)
            .with("/cable/protectiveConductor", metal)
            .with("/cable/protectiveCsaMm2", size)
            .with(PROTECTIVE, ohm);
    assertBelieved(believed, cable, PROTECTIVE);
  }

  /** Steel wire of 20 mm²: 6.21 Ω/km; beside a core of 2.5 mm², 6.20676: 3.10419. */
  @ParameterizedTest
  @CsvSource({
    "armour, /cable/armourResistanceOhmPerKm, 6.21, true",
    "armour, /cable/armourResistanceOhmPerKm, 6.2099, false",
    "armour, /cable/protectiveResistanceOhmPerKm, 6.2099, false",
    "armour-and-core, /cable/armourResistanceOhmPerKm, 6.2099, false",
    "armour-and-core, /cable/protectiveResistanceOhmPerKm, 3.1042, true",
    "armour-and-core, /cable/protectiveResistanceOhmPerKm, 3.1041, false"
  })
  void norHasArmour(String means, String member, double ohm, boolean believed) {
    Scenario cable =
        Scenario.oven()
            .with("/cable/construction", "armoured-multicore")
            .with("/cable/protectiveMeans", means)
            .with("/cable/armourAreaMm2", 20)
            .with(member, ohm);
    assertBelieved(believed, cable, member);
  }

  /** What nothing can be held against is not believed either: the size is asked for. */
  @ParameterizedTest
  @CsvSource({
    "/cable/lineResistanceOhmPerKm, multicore, core, /cable/lineCsaMm2",
    "/cable/protectiveResistanceOhmPerKm, multicore, core, /cable/protectiveCsaMm2",
    "/cable/protectiveResistanceOhmPerKm, multicore, steel-conduit, /cable/protectiveCsaMm2",
    "/cable/armourResistanceOhmPerKm, armoured-multicore, armour, /cable/armourAreaMm2"
  })
  void theSizeIsAskedFor(String member, String construction, String means, String size) {
    Scenario bare =
        Scenario.oven()
            .with("/cable/construction", construction)
            .with("/cable/protectiveMeans", means)
            .without(size)
            .with(member, 3);
    assertTrue(missing(open(bare.finding(DISCONNECTION))).contains(size));
  }

  /** Every value of the tables passes: what is printed is the most, and little above the least. */
  @Test
  void everyTabledConductorIsBelieved() {
    Table table = Scenario.oven().edition().table("conductor-resistance");
    for (Row row : table.rows()) {
      for (Map.Entry<String, String> column :
          Map.of("copper/class-1", "copper", "copper/class-5", "copper", "aluminium", "aluminium")
              .entrySet()) {
        double size = row.keys().get(0).to();
        if (table.at(column.getKey(), size) != null) {
          Scenario stated =
              Scenario.oven()
                  .with("/cable/conductor", column.getValue())
                  .with("/cable/lineCsaMm2", size)
                  .with(LINE, table.at(column.getKey(), size).number());
          Figure r1 = Resistance.line(stated.circuit().cable(), dossier(stated));
          assertTrue(r1.known(), column.getKey() + " " + size);
        }
      }
    }
  }

  /**
   * Two round conductors that touch have μ0·f·(ln 2 + 1/4) = 0.0593 Ω/km each; 0.05 is the bound.
   */
  @ParameterizedTest
  @CsvSource({"25, 0.05, true", "25, 0.0499, false", "25, 0, false", "16, 0, true"})
  void aLargeConductorHasAReactance(double size, double ohm, boolean believed) {
    Scenario large =
        Scenario.oven()
            .with("/cable/construction", "multicore")
            .with("/cable/lineCsaMm2", size)
            .with("/cable/lineResistanceOhmPerKm", 18 / size)
            .with("/cable/reactanceOhmPerKm", ohm);
    for (CheckName check : new CheckName[] {DISCONNECTION, CheckName.VOLTAGE_DROP}) {
      if (believed) {
        complies(large.finding(check));
      } else {
        Finding found = open(large.finding(check));
        assertEquals("/cable/reactanceOhmPerKm", of(found, NoteCode.BELOW_PHYSICS));
      }
    }
  }

  private static void assertBelieved(boolean believed, Scenario scenario, String member) {
    Dossier d = dossier(scenario);
    assertEquals(believed, Resistance.protective(scenario.circuit().cable(), SINGLE, d).known());
    assertEquals(
        !believed,
        d.missing().stream()
            .anyMatch(
                n -> n.code() == NoteCode.BELOW_PHYSICS && n.pointer().text().equals(member)));
  }

  private static String of(Finding finding, NoteCode code) {
    assertFalse(wanted(finding).isEmpty());
    return finding.missing().stream()
        .filter(note -> note.code() == code)
        .map(note -> note.pointer().text())
        .findFirst()
        .orElse(null);
  }
}
