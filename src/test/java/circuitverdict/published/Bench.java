package circuitverdict.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.check.Comparison;
import circuitverdict.check.Finding;
import circuitverdict.circuit.Cable;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Working;
import circuitverdict.select.LoopQuestion;
import circuitverdict.support.Scenario;

/**
 * What the tests of published examples have in common: circuits, devices, and a dossier to ask
 * with.
 */
final class Bench {
  static final String WITH_CMIN = "bs7671-2018-a4";
  static final String WITHOUT_CMIN = "bs7671-2008";
  static final LiveConductors LINE_AND_NEUTRAL = new LiveConductors(1, true);

  private Bench() {}

  static Dossier dossier(String edition) {
    return new Dossier(Scenario.edition(edition), Allowance.NOTHING, Working.silent());
  }

  /** A breaker of class 3 and 6 kA in the circuit of the bakery's oven. */
  static Scenario breaker(String letter, double rated) {
    return Scenario.oven()
        .with("/device/characteristic", letter)
        .with("/device/ratedCurrentA", rated);
  }

  /** A device in the circuit of the bakery's oven. */
  static Scenario device(String json) {
    return Scenario.oven().withJson("/device", json);
  }

  /** Greatest loop impedance of a scenario's device. */
  static LoopQuestion limit(Scenario scenario, double timeS, String edition) {
    ProtectiveDevice device = scenario.circuit().device();
    return LoopQuestion.ask(device, timeS, null, Scenario.edition(edition), true);
  }

  /**
   * The circuit with this loop impedance at its end, hot, as good as all of it before the board.
   */
  static Scenario loop(Scenario scenario, double ohm) {
    return scenario
        .with("/supply/basis", "calculated-hot")
        .with("/supply/loopImpedanceOhm", ohm)
        .with("/cable/lengthM", 1e-6);
  }

  static Cable cable(Scenario scenario) {
    return scenario.circuit().cable();
  }

  /** The compared figure of this symbol. */
  static double actual(Finding finding, String symbol) {
    return comparison(finding, symbol).actual().value();
  }

  /** The limit that the figure of this symbol is held against. */
  static double allowed(Finding finding, String symbol) {
    return comparison(finding, symbol).limit().value();
  }

  private static Comparison comparison(Finding finding, String symbol) {
    return finding.comparisons().stream()
        .filter(each -> each.actual().symbol().equals(symbol))
        .findFirst()
        .orElseThrow(() -> new AssertionError(symbol + " is not compared in " + finding));
  }

  /** The cross-section whose heat limit, with this factor k, is just this energy. */
  static void isTheSizeFor(double csaMm2, double k, double energy, double within) {
    assertEquals(csaMm2, Math.sqrt(energy) / k, within);
  }
}
