package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Supply;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;

/**
 * Isolation of the live conductors (462.2, 461.2, 537, from memory): in TT of all of them, in TN of
 * the lines, whose neutral is reliably earthed. By the device itself, or in common with others by
 * the residual device or the main switch, each only where its standard (Table 537.4) or its maker
 * says that it isolates. Never failed: what is not stated may isolate it.
 */
public final class LiveIsolation {
  private LiveIsolation() {}

  static void hold(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    judgement.by(Clause.ISOLATION).by(Clause.ISOLATING_DEVICES);
    Supply.Earthing earthing = circuit.supply().earthing();
    int needed = needed(earthing, live);
    if (isolates(circuit.device(), needed, live, d) || inCommon(circuit, needed, live, d)) {
      return;
    }
    judgement.undetermined();
    boolean linesAlone =
        isolates(circuit.device(), live.lines(), live, d)
            || inCommon(circuit, live.lines(), live, d);
    if (earthing == null && linesAlone) {
      d.missing(At.EARTHING);
      return;
    }
    // What is not stated of the device may settle it; else what is not of the main switch.
    if (!asked(circuit.device(), needed, d) && !asked(circuit.incomer(), needed, d)) {
      d.missing(NoteCode.ISOLATION_NEEDED, At.INCOMER, Figure.derived("p", needed, Unit.ONE));
    }
  }

  /** Poles with which a device does what is wanted of it where others isolate in common. */
  public static int poles(Circuit circuit, LiveConductors live, Dossier d) {
    int needed = needed(circuit.supply().earthing(), live);
    return inCommon(circuit, needed, live, d) ? live.lines() : needed;
  }

  /** Poles of a device that isolates the circuit by itself: all live conductors but in TN. */
  private static int needed(Supply.Earthing earthing, LiveConductors live) {
    return earthing != null && earthing.tn() ? live.lines() : live.count();
  }

  /** Whether something common to several circuits is stated that isolates these conductors. */
  private static boolean inCommon(Circuit circuit, int needed, LiveConductors live, Dossier d) {
    return isolates(circuit.residualDevice(), needed, live, d)
        || isolates(circuit.incomer(), needed, live, d);
  }

  private static boolean isolates(
      ProtectiveDevice device, int needed, LiveConductors live, Dossier d) {
    if (device == null || !Boolean.TRUE.equals(isolating(device, d))) {
      return false;
    }
    if (device instanceof ProtectiveDevice.Fuse && needed > live.lines()) {
      // No fuse stands in a neutral (132.14.2).
      return false;
    }
    Integer poles = device.data().poles();
    // A device in the way of a single line opens it, whatever its poles are.
    return poles == null ? needed == 1 && live.lines() == 1 : poles >= needed;
  }

  /** Whether it is a device that isolates; null where neither its standard nor its maker says. */
  private static Boolean isolating(ProtectiveDevice device, Dossier d) {
    Boolean declared = device.data().nameplate().isolation();
    return Suitability.says(device, "isolates", d) ? Boolean.TRUE : declared;
  }

  /** Asks for what may show that a device isolates; false where nothing could. */
  private static boolean asked(ProtectiveDevice device, int needed, Dossier d) {
    if (device == null) {
      return false;
    }
    Boolean isolating = isolating(device, d);
    Integer poles = device.data().poles();
    if (Boolean.FALSE.equals(isolating) || poles != null && poles < needed) {
      return false;
    }
    if (isolating == null) {
      d.missing(Suitability.at(device, "isolation"));
    }
    if (poles == null && needed > 1) {
      d.missing(Suitability.at(device, "poles"));
    }
    return isolating == null || poles == null;
  }
}
