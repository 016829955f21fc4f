package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Other;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.explain.Dossier;
import circuitverdict.standard.Clause;

/**
 * The main device of a board at the fault currents of its busbars (434.5.1): one that breaks
 * overcurrents breaks the greatest, an RCCB stands it (536.4.3.2, from memory). A switch that does
 * neither is part of the assembly and of its rating.
 */
final class BoardBreaking {
  private BoardBreaking() {}

  /** Whether it is judged of the device. */
  static boolean judges(ProtectiveDevice device) {
    return device != null && (!(device instanceof Other) || device.data().standard() == null);
  }

  /**
   * Judges it.
   *
   * @param breaking what is judged of a circuit's device
   */
  static Finding of(Board board, ProtectiveDevice device, Check breaking, Dossier d) {
    String place = device.data().place();
    Circuit here = board.here().withUpstream(board.upstream());
    if (!(device instanceof Rccb rccb)) {
      return breaking.evaluate(here.with(device), d).about(place);
    }
    LiveConductors live = LiveConductors.of(here);
    Judgement judgement =
        new Judgement(CheckName.BREAKING_CAPACITY, here, d, place)
            .by(Clause.RESIDUAL_DEVICE_PROTECTION);
    ResidualDeviceProtection.shortCircuit(here, live, rccb, judgement, d);
    return judgement.conclude();
  }
}
