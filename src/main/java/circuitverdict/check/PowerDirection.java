package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;
import java.util.List;

/**
 * Direction of power (530.3.201): where it may flow both ways the devices must not be ones that are
 * supplied from one side only. It may where anything generates in the installation and the circuit
 * serves what could feed it back: inverters, storage and vehicles, and whatever is not stated; not
 * heaters, motors and lamps, nor socket-outlets, by which nothing that generates is connected
 * (551.7.2, from memory). Fuses have no direction.
 */
final class PowerDirection {
  private PowerDirection() {}

  static void hold(Circuit circuit, Judgement judgement, Dossier d) {
    boolean charging = !Boolean.FALSE.equals(ChargingPoint.supplied(circuit));
    boolean takes = onlyTakes(circuit.load()) && !(charging && chargesHere(circuit));
    if (Boolean.FALSE.equals(circuit.supply().localGeneration()) || takes) {
      return;
    }
    judgement.by(Clause.POWER_DIRECTION);
    hold(circuit.device(), circuit, judgement, d);
    if (circuit.residualDevice() != null) {
      hold(circuit.residualDevice(), circuit, judgement, d);
    }
  }

  private static void hold(
      ProtectiveDevice device, Circuit circuit, Judgement judgement, Dossier d) {
    Boolean oneWay = device.data().nameplate().unidirectional();
    if (Boolean.FALSE.equals(oneWay) || device instanceof Fuse && oneWay == null) {
      return;
    }
    Load load = circuit.load();
    boolean generates = Boolean.TRUE.equals(circuit.supply().localGeneration());
    if (generates && oneWay != null && load.kindsKnown()) {
      judgement.broken(NoteCode.ONE_DIRECTION);
      return;
    }
    judgement.undetermined();
    if (!generates) {
      d.missing(At.LOCAL_GENERATION);
    }
    if (oneWay == null) {
      d.missing(Suitability.at(device, "unidirectional"));
    } else if (!load.kindsKnown()) {
      d.missing(At.LOAD_KIND);
    }
  }

  private static boolean chargesHere(Circuit circuit) {
    List<String> locations = circuit.premises().locations();
    return locations == null || locations.contains("vehicle-charging");
  }

  private static boolean onlyTakes(Load load) {
    if (load.parts().isEmpty()) {
      Load.Kind kind = load.kind();
      return kind == Load.Kind.SOCKET_OUTLETS || kind != null && kind.onlyDraws();
    }
    for (Load part : load.parts()) {
      if (!onlyTakes(part)) {
        return false;
      }
    }
    return true;
  }
}
