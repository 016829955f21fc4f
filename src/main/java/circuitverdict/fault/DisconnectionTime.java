package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Greatest disconnection time, s (411.3.2, Table 41.1): final circuits up to 63 A with a
 * socket-outlet and up to 32 A with fixed equipment only take the table, others 5 s in TN and 1 s
 * in TT.
 *
 * @param strictest the time that what is stated demands at its strictest
 * @param mildest the time that it demands at its mildest; equal unless the connection is not stated
 */
public record DisconnectionTime(Figure strictest, Figure mildest) {

  /** The time for a circuit; unknown where earthing, voltage or rating are. */
  public static DisconnectionTime of(Circuit circuit, Dossier d) {
    return d.once(Topic.DISCONNECTION_TIME, circuit, inner -> find(circuit, inner));
  }

  private static DisconnectionTime find(Circuit circuit, Dossier d) {
    ProtectiveDevice device = circuit.device();
    Supply.Earthing earthing = d.need(circuit.supply().earthing(), At.EARTHING);
    Figure voltage = NominalVoltage.lineToEarth(circuit, d);
    if (earthing == null || !voltage.known()) {
      if (circuit.kind() != Circuit.Kind.DISTRIBUTION) {
        // It will decide too, and is named with them where it is missing.
        RatedCurrent.of(device, d);
      }
      return new DisconnectionTime(unknown(), unknown());
    }
    String system = earthing.tn() ? "TN" : "TT";
    Value tabled = d.edition().table(TableName.TABLE_41_1).at("ac", system, voltage.value());
    Figure table = d.tabled("t,max", tabled, Unit.SECOND, At.VOLTAGE);
    Figure other =
        d.constant(
            "t,max",
            earthing.tn()
                ? Constant.DISCONNECTION_SCOPE_OTHER_TN
                : Constant.DISCONNECTION_SCOPE_OTHER_TT);
    if (circuit.kind() == Circuit.Kind.DISTRIBUTION) {
      return new DisconnectionTime(other, other);
    }
    Figure rated = RatedCurrent.of(device, d);
    if (!rated.known()) {
      return new DisconnectionTime(table, other);
    }
    double sockets =
        d.edition().constant(Constant.DISCONNECTION_SCOPE_FINAL_WITH_SOCKET_OUTLET).number();
    double fixed = d.edition().constant(Constant.DISCONNECTION_SCOPE_FINAL_FIXED_ONLY).number();
    Load load = circuit.load();
    if (Comparator.atMost(rated.value(), fixed)) {
      return new DisconnectionTime(table, table);
    }
    if (!Comparator.atMost(rated.value(), sockets) || load.onlyFixed()) {
      return new DisconnectionTime(other, other);
    }
    return load.hasSocketOutlet()
        ? new DisconnectionTime(table, table)
        : new DisconnectionTime(table, other);
  }

  private static Figure unknown() {
    return Figure.unknown("t,max", Unit.SECOND);
  }
}
