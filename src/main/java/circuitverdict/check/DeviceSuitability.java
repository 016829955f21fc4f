package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Other;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.NotJudged;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.Dossier;
import circuitverdict.standard.Clause;

/**
 * Whether the device suits the users, the circuit and the place (133.1, 512, 536.4 and the product
 * standards), question by question: each is a rule of its own. Poles, voltages and users come in
 * classes: they are met or not, and have no margin.
 *
 * <p>Examined only where they are stated: temperature and humidity in the assembly and the
 * pollution degree; and the declaration of the assembly's maker where no assembly is described. The
 * frequency is examined for every check alike.
 */
public final class DeviceSuitability implements Check {
  @Override
  public CheckName name() {
    return CheckName.DEVICE_SUITABILITY;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement = new Judgement(name(), circuit, d, "/device");
    ProtectiveDevice device = circuit.device();
    boolean judged = device != null && device.data().standard() != null;
    if (!judged || device instanceof Rccb || device instanceof Other) {
      NotJudged.note(device, d);
      judgement.by(Clause.DEVICE_USERS);
      return judgement.undetermined().conclude();
    }
    if (!RatedCurrent.withinStandard(device, d)) {
      judgement.undetermined();
    }
    LiveConductors live = Wiring.live(circuit, d);
    SuitableUsers.hold(circuit, judgement, d);
    if (live == null) {
      judgement.undetermined();
    } else {
      SuitableVoltage.hold(circuit, live, judgement, d);
      SuitablePoles.hold(circuit, live, judgement, d);
      LiveIsolation.hold(circuit, live, judgement, d);
      ChargingPoles.hold(circuit, live, judgement, d);
      SuitableAmbient.hold(circuit, live, judgement, d);
    }
    ResidualDeviceProtection.hold(circuit, live, judgement, d);
    PowerDirection.hold(circuit, judgement, d);
    SuitablePollution.hold(circuit, judgement, d);
    SuitableHumidity.hold(circuit, judgement, d);
    DeclaredDevice.hold(circuit, judgement, d);
    return judgement.conclude();
  }
}
