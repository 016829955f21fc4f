package circuitverdict.fault;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.conductor.LoopPart;
import circuitverdict.explain.Dossier;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Loops of radial, ring, spur, series, parallel and armoured circuits. Resistances by IEC 60228 (6
 * mm² 3.08, 2.5 mm² 7.41, 1.5 mm² 12.1 Ω/km), factors by the On-Site Guide (1.20 at 70, 1.28 at 90
 * °C).
 */
class FaultLoopTest {
  private static final double EXACT = 1e-9;

  private static final LiveConductors SINGLE = new LiveConductors(1, true);

  /** 0.28 + 22·(3.08 + 7.41)·1.20/1000 = 0.556936 Ω, the contract's own example. */
  @Test
  void radialLoop() {
    FaultLoop loop = earth(radial());
    assertEquals(0.556936, loop.impedance().value(), EXACT);
    assertEquals(0.28, loop.supply().value(), EXACT);
    assertEquals(0.276936, loop.part().resistance().value(), EXACT);
    assertEquals(0.23078, loop.part().cold().value(), EXACT);
    assertEquals(0, loop.part().reactance().value());
  }

  /** Worked example B03: 22 m of 2.5/1.5 mm² are 0.429 Ω at 20 °C. */
  @Test
  void coldResistanceIsWhatTheTesterReads() {
    FaultLoop loop =
        earth(radial().with("/cable/lineCsaMm2", 2.5).with("/cable/protectiveCsaMm2", 1.5));
    assertEquals(0.42922, loop.part().cold().value(), EXACT);
  }

  /** A 90 °C cable: 22·(3.08 + 7.41)·1.28/1000. */
  @Test
  void hotCableIsTakenAtItsOwnTemperature() {
    FaultLoop loop =
        earth(
            radial()
                .with("/cable/construction", "multicore")
                .with("/cable/insulation", "thermosetting-90"));
    assertEquals(0.2953984, loop.part().resistance().value(), EXACT);
  }

  /** Ring: (r1 + r2)/4 of the end-to-end resistances: 60·(7.41 + 12.1)·1.20/4000. */
  @Test
  void ringIsWorstAtItsMiddle() {
    FaultLoop loop = earth(ring());
    assertEquals(0.35118, loop.part().resistance().value(), EXACT);
    assertEquals(0.29265, loop.part().cold().value(), EXACT);
    assertEquals(0.25 * 60 * (7.41 + 7.41) * 1.2 / 1000, neutral(ring()), EXACT);
  }

  /** The spur at the worst point adds its whole length: 5·(7.41 + 12.1)·1.20/1000. */
  @Test
  void spurAddsToItsRing() {
    FaultLoop loop = earth(ring().withJson("/furtherCables", further(2.5, 1.5, 5)));
    assertEquals(0.35118 + 0.11706, loop.part().resistance().value(), EXACT);
    assertEquals(0.29265 + 0.09755, loop.part().cold().value(), EXACT);
  }

  /** Series: 0.276936 + 10·(7.41 + 12.1)·1.20/1000. */
  @Test
  void cablesInSeriesAreAdded() {
    Scenario series = radial().withJson("/furtherCables", further(2.5, 1.5, 10));
    FaultLoop loop = earth(series);
    assertEquals(0.276936 + 0.23412, loop.part().resistance().value(), EXACT);
    assertEquals(0.23078 + 0.1951, loop.part().cold().value(), EXACT);
    assertEquals(22 * 6.16 * 1.2e-3 + 10 * 14.82 * 1.2e-3, neutral(series), EXACT);
  }

  /** Two in parallel: half of 0.276936 Ω. */
  @Test
  void parallelCablesHalveTheLoop() {
    Scenario parallel = radial().with("/cable/parallelCables", 2);
    assertEquals(0.138468, earth(parallel).part().resistance().value(), EXACT);
    assertEquals(0.11539, earth(parallel).part().cold().value(), EXACT);
    assertEquals(22 * 6.16 * 1.2e-3 / 2, neutral(parallel), EXACT);
  }

  /** One protective conductor beside two cables: of the loop only the line is halved. */
  @ParameterizedTest
  @CsvSource({"separate, 1.04", "steel-conduit, 1.2", "steel-trunking, 1.2", "core, 0.6"})
  void oneConductorBesideParallelCablesIsNotDivided(String means, double factor) {
    Scenario parallel =
        radial()
            .with("/cable/construction", "multicore")
            .with("/cable/protectiveMeans", means)
            .with("/cable/protectiveConductor", "copper")
            .with("/cable/protectiveResistanceOhmPerKm", 7.41)
            .with("/cable/reactanceOhmPerKm", 0.1)
            .with("/cable/parallelCables", 2);
    boolean one = !means.equals("core");
    LoopPart part = earth(parallel).part();
    double hot = 22 * (3.08 * 0.6 + 7.41 * factor) / 1000;
    assertEquals(hot, part.resistance().value(), EXACT);
    assertEquals(22 * (3.08 / 2 + 7.41 / (one ? 1 : 2)) / 1000, part.cold().value(), EXACT);
    assertEquals(22 * (0.05 + (one ? 0.1 : 0.05)) / 1000, part.reactance().value(), EXACT);
    assertEquals(22 * 7.41 * factor / 1000, protective(parallel), EXACT);
  }

  /** A separate cpc starts at 30 °C: 1.04 (Table 54.2); with singles in conduit it is bunched. */
  @ParameterizedTest
  @CsvSource({"multicore, 1.04", "armoured-multicore, 1.04", "singles, 1.2"})
  void separateConductorStartsCold(String construction, double factor) {
    Scenario separate =
        radial()
            .with("/cable/construction", construction)
            .with("/cable/protectiveMeans", "separate")
            .with("/cable/protectiveConductor", "copper");
    double expected = 22 * (3.08 * 1.2 + 7.41 * factor) / 1000;
    assertEquals(expected, earth(separate).part().resistance().value(), EXACT);
    assertEquals(22 * 7.41 * factor / 1000, protective(separate), EXACT);
  }

  /** Armour of a two-core 6 mm² cable 7.0, of a three-core one 6.7 Ω/km, as the data have it. */
  @ParameterizedTest
  @CsvSource({"armour, , 7.0", "armour-and-core, , 3.518568391", "armour, 5, 5"})
  void armourReturnsTheFault(String means, Double stated, double r2) {
    Scenario armoured =
        radial()
            .with("/cable/construction", "armoured-multicore")
            .with("/cable/armourAreaMm2", 26)
            .with("/cable/protectiveMeans", means);
    Scenario cable =
        stated == null ? armoured : armoured.with("/cable/armourResistanceOhmPerKm", stated);
    assertEquals(22 * (3.08 + r2) * 1.2e-3, earth(cable).part().resistance().value(), 1e-8);
  }

  /** The protective conductors alone: of a ring a quarter, with the spur's whole length. */
  @Test
  void protectiveConductorsAlone() {
    assertEquals(22 * 7.41 * 1.2e-3, protective(radial()), EXACT);
    assertEquals(60 * 12.1 * 1.2e-3 / 4, protective(ring()), EXACT);
    assertEquals(
        60 * 12.1 * 1.2e-3 / 4 + 5 * 12.1 * 1.2e-3,
        protective(ring().withJson("/furtherCables", further(2.5, 1.5, 5))),
        EXACT);
    assertEquals(11 * 7.41 * 1.2e-3, protective(radial().with("/cable/parallelCables", 2)), EXACT);
  }

  /** Neutral loop: 0.26 + 22·2·3.08·1.20/1000, a smaller neutral by its own size. */
  @ParameterizedTest
  @CsvSource({", 0.422624", "6, 0.422624", "2.5, 0.536936"})
  void neutralLoop(Double neutral, double impedance) {
    Scenario cable = neutral == null ? radial() : radial().with("/cable/neutralCsaMm2", neutral);
    Circuit circuit = cable.circuit();
    FaultLoop loop = FaultLoop.neutral(circuit, dossier(cable));
    assertEquals(impedance, loop.impedance().value(), EXACT);
  }

  /** 0.95·230/0.556936 = 392.3 A; without Cmin in the first issue of the 17th Edition 413 A. */
  @ParameterizedTest
  @CsvSource({
    "bs7671-2018-a4, 392.3251504",
    "bs7671-2018-a2, 392.3251504",
    "bs7671-2008, 412.97384"
  })
  void leastCurrentTakesTheEditionsFactor(String edition, double current) {
    Scenario circuit = radial().with("/edition", edition);
    Dossier d = dossier(circuit);
    FaultLoop loop = FaultLoop.earth(circuit.circuit(), SINGLE, d);
    assertEquals(current, loop.leastCurrent(circuit.circuit(), d).value(), 1e-4);
  }

  /** Between lines: 0.95·√3·230/(2·0.28 + 22·2·3.08·1.20/1000). */
  @Test
  void leastCurrentBetweenLines() {
    Scenario circuit = radial();
    double value = FaultLoop.leastBetweenLines(circuit.circuit(), dossier(circuit)).value();
    assertEquals(0.95 * Math.sqrt(3) * 230 / (0.56 + 0.162624), value, 1e-6);
    Scenario ring = ring().withJson("/furtherCables", further(2.5, 1.5, 5));
    double part = 60 * 2 * 7.41 * 1.2e-3 / 4 + 5 * 2 * 7.41 * 1.2e-3;
    assertEquals(
        0.95 * Math.sqrt(3) * 230 / (0.56 + part),
        FaultLoop.leastBetweenLines(ring.circuit(), dossier(ring)).value(),
        1e-6);
  }

  /** What is not known makes the whole loop unknown. */
  @ParameterizedTest
  @CsvSource({
    "/cable/lengthM",
    "/cable/lineCsaMm2",
    "/cable/protectiveCsaMm2",
    "/cable/insulation"
  })
  void unknownPartMakesTheLoopUnknown(String pointer) {
    Scenario unknown = radial().without(pointer);
    Dossier d = dossier(unknown);
    FaultLoop loop = FaultLoop.earth(unknown.circuit(), SINGLE, d);
    assertFalse(loop.impedance().known());
    assertTrue(d.missing().stream().anyMatch(note -> note.pointer().text().equals(pointer)));
  }

  static Scenario radial() {
    return Scenario.oven().with("/supply/basis", "declared");
  }

  private static Scenario ring() {
    return radial()
        .with("/cable/arrangement", "ring")
        .with("/cable/lineCsaMm2", 2.5)
        .with("/cable/protectiveCsaMm2", 1.5)
        .with("/cable/lengthM", 60);
  }

  static String further(double line, double protective, double length) {
    return """
        [{"construction": "flat-twin-and-earth", "conductor": "copper",
          "insulation": "thermoplastic-70", "lineCsaMm2": %s, "protectiveCsaMm2": %s,
          "lengthM": %s}]
        """
        .formatted(line, protective, length)
        .strip();
  }

  static FaultLoop earth(Scenario scenario) {
    return FaultLoop.earth(scenario.circuit(), SINGLE, dossier(scenario));
  }

  static double neutral(Scenario scenario) {
    return LoopPart.neutral(scenario.circuit(), dossier(scenario)).resistance().value();
  }

  private static double protective(Scenario scenario) {
    return LoopPart.protective(scenario.circuit(), SINGLE, dossier(scenario)).value();
  }
}
