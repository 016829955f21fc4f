package circuitverdict.fault;

import circuitverdict.circuit.Supply;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Unit;

/**
 * Uncertainty of measured figures, %. At sign-off a measured figure without it stands at its best,
 * so that nothing may comply by it; before that it counts as exact.
 */
final class Uncertainty {
  private Uncertainty() {}

  static Figure of(Supply supply, Dossier d) {
    if (supply.instrumentUncertaintyPercent() == null) {
      if (!d.allows(Allowance.TABLE_DEFAULTS)) {
        d.atBest(At.UNCERTAINTY);
      } else {
        d.assume(NoteCode.ASSUMED_EXACT_READING, At.UNCERTAINTY);
      }
      return Figure.derived("u", 0, Unit.PERCENT);
    }
    return d.given("u", supply.instrumentUncertaintyPercent(), Unit.PERCENT, At.UNCERTAINTY);
  }

  /** Names it with a reading that is missing, where that one will need it too. */
  static void ask(Supply supply, Dossier d) {
    boolean needed = measured(supply) && !d.allows(Allowance.TABLE_DEFAULTS);
    if (needed && supply.instrumentUncertaintyPercent() == null) {
      d.missing(At.UNCERTAINTY);
    }
  }

  /** Whether the supply's figures are readings: a missing basis counts as one. */
  static boolean measured(Supply supply) {
    return supply.basis() == null || supply.basis() == Supply.Basis.MEASURED_COLD;
  }
}
