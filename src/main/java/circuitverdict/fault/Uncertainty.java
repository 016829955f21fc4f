package circuitverdict.fault;

import circuitverdict.circuit.Supply;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;

/**
 * Uncertainty of measured figures, %. At sign-off a measured figure without it is not known; before
 * that it counts as exact.
 */
final class Uncertainty {
  private Uncertainty() {}

  static Figure of(Supply supply, Dossier d) {
    if (supply.instrumentUncertaintyPercent() == null && d.allows(Allowance.TABLE_DEFAULTS)) {
      return Figure.derived("u", 0, Unit.PERCENT);
    }
    return d.need("u", supply.instrumentUncertaintyPercent(), Unit.PERCENT, At.UNCERTAINTY);
  }

  /** Whether the supply's figures are readings: a missing basis counts as one. */
  static boolean measured(Supply supply) {
    return supply.basis() == null && supply.loopImpedanceOhm() != null
        || supply.basis() == Supply.Basis.MEASURED_COLD;
  }
}
