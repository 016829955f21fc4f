package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import java.util.List;

/**
 * Charging points (722.531.3.1, from memory): the residual device that protects one opens all live
 * conductors, the neutral too. It fails where every residual device of the circuit is stated to
 * have fewer poles; without one, that of the charging point itself may do, so it is asked for.
 */
final class ChargingPoles {
  private ChargingPoles() {}

  static void hold(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    Boolean charging = ChargingPoint.supplied(circuit);
    if (Boolean.FALSE.equals(charging)) {
      return;
    }
    judgement.by(Clause.CHARGING_POLES);
    double greatest =
        d.edition().constant(Constant.ADDITIONAL_PROTECTION_RESIDUAL_OPERATING_CURRENT).number();
    List<ProtectiveDevice> residual =
        ResidualTime.all(circuit).stream().filter(each -> protects(each, greatest)).toList();
    int most = 0;
    boolean open = residual.isEmpty();
    for (ProtectiveDevice device : residual) {
      Integer poles = device.data().poles();
      boolean unknown = poles == null || device.data().residual().operatingCurrentA() == null;
      open |= unknown;
      most = unknown ? most : Math.max(most, poles);
    }
    if (most >= live.count()) {
      return;
    }
    if (charging == null) {
      ChargingPoint.noteMissing(circuit, d);
      judgement.undetermined();
    } else if (open) {
      note(residual, d);
      judgement.undetermined();
    } else {
      fails(residual, most, live, judgement);
    }
  }

  /** One that is known not to be of 30 mA does not protect the point. */
  private static boolean protects(ProtectiveDevice device, double greatest) {
    Double operating = device.data().residual().operatingCurrentA();
    return operating == null || Comparator.atMost(operating, greatest);
  }

  private static void note(List<ProtectiveDevice> residual, Dossier d) {
    if (residual.isEmpty()) {
      d.missing(At.RESIDUAL_DEVICE);
    }
    for (ProtectiveDevice device : residual) {
      if (device.data().poles() == null) {
        d.missing(Suitability.at(device, "poles"));
      }
      if (device.data().residual().operatingCurrentA() == null) {
        d.missing(new Pointer(device.data().place() + "/residual", "operatingCurrentA"));
      }
    }
  }

  private static void fails(
      List<ProtectiveDevice> residual, int most, LiveConductors live, Judgement judgement) {
    for (ProtectiveDevice device : residual) {
      if (device.data().poles() == most) {
        judgement.classed(
            device.data().place(),
            new Figure("p", most, Unit.ONE, Suitability.at(device, "poles")),
            Comparator.AT_LEAST,
            new Figure("pLN", live.count(), Unit.ONE, At.LIVE));
        return;
      }
    }
  }
}
