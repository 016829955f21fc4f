package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.device.GeneralPurpose;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Discharge lamps behind a gG fuse: one of twice the load current takes their pulse, by guidance (a
 * college hand-out on fuses). A smaller one may take it too, which this rule does not say.
 */
final class LampFuse {
  private static final Formula NEEDED = Formula.of("In,min", Unit.AMPERE, "kf·Ib");

  private LampFuse() {}

  /** Whether the rule lets the fuse comply. */
  static boolean decides(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    boolean lamps =
        circuit.load().kind() == Load.Kind.DISCHARGE && circuit.load().parts().isEmpty();
    boolean stated = circuit.load().inrush().stated();
    // At sign-off a start that is not stated is not excused: stated, it might leave this open.
    if (!lamps
        || stated
        || !d.allows(Allowance.TABLE_DEFAULTS)
        || !(circuit.device() instanceof Fuse fuse)
        || !holds(circuit, fuse, live, d.trial())) {
      return false;
    }
    GeneralPurpose.noted(fuse, d);
    d.restsOn(Dossier.Strength.GUIDANCE);
    judgement.compare(
        "/device", needed(circuit, live, d), Comparator.AT_MOST, RatedCurrent.of(fuse, d));
    return true;
  }

  private static boolean holds(Circuit circuit, Fuse fuse, LiveConductors live, Dossier trial) {
    return "BS 88-2".equals(fuse.data().standard())
        && Boolean.TRUE.equals(GeneralPurpose.of(fuse, trial))
        && Comparator.atMost(
            needed(circuit, live, trial).value(), RatedCurrent.of(fuse, trial).value());
  }

  private static Figure needed(Circuit circuit, LiveConductors live, Dossier d) {
    Figure load =
        DesignCurrent.ofOne(circuit, live, circuit.load().together(), At.LOAD, d).as("Ib");
    return d.working().step(NEEDED, d.constant("kf", Constant.INRUSH_DISCHARGE_FUSE), load);
  }
}
