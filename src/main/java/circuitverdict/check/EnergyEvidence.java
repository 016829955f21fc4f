package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;

/** What would settle a question of let-through energy, and what the caller gave for it. */
final class EnergyEvidence {
  private EnergyEvidence() {}

  /** Declared let-through of the pair with a named upstream device, A²s; null where there is none. */
  static Double backUp(Circuit circuit) {
    boolean named = circuit.backUp().evidence() != null && circuit.upstreamDevice() != null;
    return named ? circuit.backUp().limitedLetThroughA2s() : null;
  }

  /** Names the data that would settle it, and at which current. */
  static void ask(ProtectiveDevice device, Figure greatest, Dossier d) {
    Figure capacity = BreakingCapacity.stated(device, d);
    if (!capacity.known()) {
      d.missing(new Pointer(device.data().place(), "breakingCapacityA"));
    } else if (greatest.known() && !Comparator.atMost(greatest.value(), capacity.value())) {
      d.missing(NoteCode.BACK_UP_EVIDENCE_NEEDED, new Pointer("", "backUp"), greatest);
    }
    if (greatest.known()) {
      d.missing(
          NoteCode.MAKER_DATA_NEEDED, new Pointer(device.data().place(), "letThrough"), greatest);
    } else {
      d.missing(At.MAXIMUM_CURRENT);
    }
  }
}
