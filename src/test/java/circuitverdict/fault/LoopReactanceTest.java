package circuitverdict.fault;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Loop reactance above 16 mm² where no table tells it: 2·0.08 mΩ/m in a design, common practice.
 */
class LoopReactanceTest {

  /** 0.4 Ω of reactance in a typical TN-C-S loop of 0.35 Ω: then the loop must be stated. */
  @ParameterizedTest
  @CsvSource({"0.35, false", "0.4, true"})
  void reactanceAboveATypicalLoopAsksForTheLoop(double reactance, boolean asked) {
    Scenario quoted =
        Scenario.oven()
            .with("/stage", "quotation")
            .with("/supply/loopReactanceOhm", reactance)
            .without("/supply/loopImpedanceOhm");
    Dossier d = dossier(quoted);
    LiveConductors live = new LiveConductors(1, true);
    boolean known = FaultLoop.earth(quoted.circuit(), live, d).impedance().known();
    assertEquals(!asked, known);
    assertEquals(
        asked,
        d.missing().stream().anyMatch(n -> n.pointer().text().equals("/supply/loopImpedanceOhm")));
  }

  /** Mineral and flexible cables lie as one; single cores may lie apart and are asked for. */
  @ParameterizedTest
  @CsvSource({
    "mineral, design, 0.016, true",
    "flexible, design, 0.016, true",
    "mineral, sign-off, NaN, false",
    "singles, design, NaN, false",
    ", design, NaN, false",
    "multicore, sign-off, 0.017, false"
  })
  void usualReactanceStandsInADesign(
      String construction, String stage, double ohm, boolean assumed) {
    Scenario large =
        Scenario.oven()
            .with("/stage", stage)
            .with("/cable/lineCsaMm2", 25)
            .with("/cable/protectiveCsaMm2", 25)
            .with("/cable/lengthM", 100);
    Scenario cable =
        construction == null
            ? large.without("/cable/construction")
            : large.with("/cable/construction", construction);
    Dossier d = dossier(cable);
    LiveConductors live = new LiveConductors(1, true);
    double x = FaultLoop.earth(cable.circuit(), live, d).part().reactance().value();
    assertEquals(ohm, x, 1e-9);
    assertEquals(
        assumed, d.assumptions().stream().anyMatch(n -> n.code() == NoteCode.ASSUMED_REACTANCE));
    if (Double.isNaN(ohm)) {
      assertTrue(
          d.missing().stream()
              .anyMatch(n -> n.pointer().text().equals("/cable/reactanceOhmPerKm")));
    }
  }
}
