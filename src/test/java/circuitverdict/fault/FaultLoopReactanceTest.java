package circuitverdict.fault;

import static circuitverdict.fault.FaultLoopTest.earth;
import static circuitverdict.fault.FaultLoopTest.further;
import static circuitverdict.fault.FaultLoopTest.neutral;
import static circuitverdict.fault.FaultLoopTest.radial;
import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.LiveConductors;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reactance of fault loops above 16 mm² and where it is stated. */
class FaultLoopReactanceTest {
  private static final double EXACT = 1e-9;

  private static final LiveConductors SINGLE = new LiveConductors(1, true);

  /** Above 16 mm² by the table's x (4D2B 25 mm²: 0.17 mΩ/m), moduli added arithmetically. */
  @ParameterizedTest
  @CsvSource({"16, 0", "25, 0.017", "35, 0.0165"})
  void largeConductorsHaveReactance(double size, double x) {
    FaultLoop loop = earth(large(size));
    assertEquals(x, loop.part().reactance().value(), EXACT);
    double r = loop.part().resistance().value();
    assertEquals(0.28 + Math.hypot(r, x), loop.impedance().value(), EXACT);
  }

  /** Single cores may lie apart: without a stated reactance nothing stands for it (25 mm²). */
  @Test
  void reactanceOfSingleCoresIsNotAssumed() {
    FaultLoop loop = earth(large(25).with("/cable/construction", "singles"));
    assertEquals(Double.NaN, loop.part().reactance().value());
    FaultLoop stated =
        earth(
            large(25)
                .with("/cable/construction", "singles")
                .with("/cable/reactanceOhmPerKm", 0.08));
    assertEquals(0.016, stated.part().reactance().value(), EXACT);
  }

  /** Stated per conductor, it counts at every size: 2·0.1·100/1000; of a ring a quarter of it. */
  @Test
  void statedReactanceCounts() {
    Scenario stated = large(16).with("/cable/reactanceOhmPerKm", 0.1);
    assertEquals(0.02, earth(stated).part().reactance().value(), EXACT);
    assertEquals(
        0.005, earth(stated.with("/cable/arrangement", "ring")).part().reactance().value(), EXACT);
    assertEquals(
        0.01, earth(stated.with("/cable/parallelCables", 2)).part().reactance().value(), EXACT);
    assertEquals(
        0.022,
        earth(
                stated.withJson(
                    "/furtherCables",
                    further(2.5, 1.5, 10).replace("}]", ", \"reactanceOhmPerKm\": 0.1}]")))
            .part()
            .reactance()
            .value(),
        EXACT);
  }

  /** Both parts known: as phasors, √((√(0.28² − 0.1²) + R)² + (0.1 + X)²). */
  @Test
  void knownReactancesAreAddedAsPhasors() {
    Scenario phasors = large(25).with("/supply/loopReactanceOhm", 0.1);
    FaultLoop loop = earth(phasors);
    double r = loop.part().resistance().value();
    double expected = Math.hypot(Math.sqrt(0.28 * 0.28 - 0.01) + r, 0.1 + 0.017);
    assertEquals(expected, loop.impedance().value(), EXACT);
    assertTrue(loop.impedance().value() < earth(large(25)).impedance().value());

    Scenario between = large(25).with("/supply/lineToNeutralLoopReactanceOhm", 0.1);
    FaultLoop neutral = FaultLoop.neutral(between.circuit(), dossier(between));
    double rn = neutral.part().resistance().value();
    assertEquals(
        Math.hypot(Math.sqrt(0.26 * 0.26 - 0.01) + rn, 0.1 + 0.017),
        neutral.impedance().value(),
        EXACT);
  }

  private static Scenario large(double size) {
    return radial()
        .with("/cable/construction", "multicore")
        .with("/cable/lineCsaMm2", size)
        .with("/cable/protectiveCsaMm2", size)
        .with("/cable/lengthM", 100);
  }
}
