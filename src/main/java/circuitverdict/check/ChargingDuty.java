package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;

/** Charging points for electric vehicles owe additional protection, each its own (722.531.3.1). */
final class ChargingDuty {
  private ChargingDuty() {}

  /** Whether there are several points, which one device does not serve; noted. */
  static boolean several(Circuit circuit, Dossier d) {
    boolean several =
        Boolean.TRUE.equals(ChargingPoint.supplied(circuit)) && points(circuit.load()) > 1;
    if (several) {
      d.missing(NoteCode.EACH_ITS_OWN, At.LOAD_KIND);
    }
    return several;
  }

  private static int points(Load load) {
    int own = load.count() == null ? 1 : load.count();
    if (load.parts().isEmpty()) {
      return load.kind() == null || !load.kind().onlyDraws() ? own : 0;
    }
    return own * load.parts().stream().mapToInt(ChargingDuty::points).sum();
  }

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
