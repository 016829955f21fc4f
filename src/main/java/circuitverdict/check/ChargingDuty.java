package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.explain.At;
import circuitverdict.standard.Clause;

/** Charging points for electric vehicles owe additional protection, each its own (722.531.3.1). */
final class ChargingDuty {
  private ChargingDuty() {}

  static AdditionalDuty of(Circuit circuit) {
    Boolean charging = ChargingPoint.supplied(circuit);
    if (charging == null) {
      return circuit.premises().locations() == null
          ? AdditionalDuty.open(Clause.CHARGING_RESIDUAL, At.LOCATIONS, At.LOAD_KIND)
          : AdditionalDuty.open(Clause.CHARGING_RESIDUAL, At.LOAD_KIND);
    }
    return AdditionalDuty.of(
        Clause.CHARGING_RESIDUAL, charging && circuit.kind() != Circuit.Kind.DISTRIBUTION);
  }
}
