package circuitverdict.conductor;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import circuitverdict.support.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Least sizes of Table 54.7: S to 16 mm², 16 to 35 mm², S/2 above, times k1/k2 (543.1.4). */
class ProtectiveTableTest {

  @ParameterizedTest
  @CsvSource({"6, 6", "16, 16", "25, 16", "35, 16", "50, 25", "95, 47.5", "240, 120"})
  void leastSizeFollowsTheLine(double line, double least) {
    ProtectiveTable table = of(cable().with("/cable/lineCsaMm2", line));
    assertEquals(least, table.least().value(), 1e-9);
    assertEquals(2.5, table.actual().value());
  }

  /** k1/k2 where the materials differ: 115/51, 143/46, 115/47, 115/52; none for the same metal. */
  @ParameterizedTest
  @CsvSource({
    "armoured-multicore, thermoplastic-70, armour, , 36.07843137",
    "armoured-multicore, thermosetting-90, armour, , 49.73913043",
    "singles, thermoplastic-70, steel-conduit, , 39.14893617",
    "singles, thermoplastic-70, steel-trunking, , 39.14893617",
    "multicore, thermoplastic-70, separate, steel, 35.38461538",
    "multicore, thermoplastic-70, separate, copper, 16",
    "singles, thermoplastic-70, separate, copper, 16",
    "multicore, thermoplastic-70, core, , 16",
    "armoured-multicore, thermoplastic-70, armour-and-core, , 16",
    "multicore, thermoplastic-70, separate, aluminium, 19.36842105"
  })
  void otherMaterialsTakeTheRatioOfTheirFactors(
      String construction, String insulation, String means, String metal, double least) {
    Scenario laid =
        cable()
            .with("/cable/lineCsaMm2", 25)
            .with("/cable/construction", construction)
            .with("/cable/insulation", insulation)
            .with("/cable/protectiveMeans", means)
            .with("/cable/armourAreaMm2", 40);
    ProtectiveTable table =
        of(metal == null ? laid : laid.with("/cable/protectiveConductor", metal));
    assertEquals(least, table.least().value(), 1e-7);
    assertEquals(means.equals("armour") ? 40 : 2.5, table.actual().value());
  }

  /** What is not known gives no least size, and nothing complies by it. */
  @ParameterizedTest
  @CsvSource({
    "/cable/lineCsaMm2",
    "/cable/protectiveCsaMm2",
    "/cable/insulation",
    "/cable/conductor",
    "/cable/protectiveMeans"
  })
  void unknownInputsGiveNoLeastSize(String pointer) {
    assertFalse(
        of(cable().with("/cable/construction", "multicore").without(pointer)).least().known());
  }

  /** Insulations without a k of their own have no ratio. */
  @ParameterizedTest
  @CsvSource({"core, mineral-70", "sheath, thermoplastic-70"})
  void withoutFactorsThereIsNoRatio(String means, String insulation) {
    Scenario odd =
        cable().with("/cable/protectiveMeans", means).with("/cable/insulation", insulation);
    assertFalse(of(odd).least().known());
  }

  private static ProtectiveTable of(Scenario scenario) {
    return ProtectiveTable.of(scenario.circuit().cable(), dossier(scenario));
  }

  private static Scenario cable() {
    return Scenario.oven();
  }
}
