package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.fault.DisconnectionTime;
import circuitverdict.fault.FaultLoop;
import circuitverdict.standard.Clause;

/**
 * Automatic disconnection of an earth fault (411.3.2, 411.4.4, 411.5.3, 411.5.4): by the
 * overcurrent device, Zs·Ia ≤ Cmin·Uo within the time; or by a residual device. In TN the
 * overcurrent device governs where it complies, else the residual one; in TT the residual one, and
 * the overcurrent device where it alone disconnects. Of two residual functions in a row one
 * suffices.
 */
public final class EarthFaultDisconnection implements Check {
  @Override
  public CheckName name() {
    return CheckName.EARTH_FAULT_DISCONNECTION;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement =
        new Judgement(name(), circuit, d, "/cable").by(Clause.DISCONNECTION_TIMES);
    Supply.Earthing earthing = d.need(circuit.supply().earthing(), At.EARTHING);
    if (circuit.device() == null) {
      d.missing(At.DEVICE_ITSELF);
    }
    if (earthing == null || circuit.device() == null) {
      return judgement.undetermined().conclude();
    }
    ProtectiveDevice residual = ResidualTime.protecting(circuit);
    LiveConductors live = Wiring.live(circuit, d);
    DisconnectionTime time = DisconnectionTime.of(circuit, circuit.device(), d);
    FaultLoop loop = FaultLoop.earth(circuit, live, d);
    OvercurrentDisconnection overcurrent = new OvercurrentDisconnection(circuit, loop, time, d);
    boolean proves = !overcurrent.guided() || !Judgement.proofWanted(circuit);
    boolean holds = overcurrent.holds() && proves;
    boolean settled = residual == null || earthing.tn() && holds;
    ProtectiveDevice serving = settled ? null : serving(circuit, live, loop, time, d);
    if (settled || serving == null && holds) {
      judgement.by(
          earthing.tn() ? Clause.AUTOMATIC_DISCONNECTION : Clause.DISCONNECTION_TT_OVERCURRENT);
      if (residual != null) {
        d.remark(NoteCode.OVERCURRENT_GOVERNS);
      }
      overcurrent.judge(judgement);
      return judgement.conclude();
    }
    judgement.by(earthing.tn() ? Clause.EARTHING : Clause.DISCONNECTION_TT);
    if (earthing.tn() && serving != null && loop.impedance().known()) {
      d.remark(NoteCode.RESIDUAL_GOVERNS);
    }
    ProtectiveDevice judged = serving == null ? residual : serving;
    new ResidualDisconnection(circuit, judged, live, loop, time, d).judge(judgement);
    return judgement.conclude();
  }

  /** The first residual function that disconnects by itself; null where none does. */
  private ProtectiveDevice serving(
      Circuit circuit, LiveConductors live, FaultLoop loop, DisconnectionTime time, Dossier d) {
    for (ProtectiveDevice each : ResidualTime.all(circuit)) {
      Dossier trial = d.trial();
      Judgement judgement = new Judgement(name(), circuit, trial, "/cable");
      new ResidualDisconnection(circuit, each, live, loop, time, trial).judge(judgement);
      if (judgement.conclude().verdict() == Verdict.COMPLIES) {
        return each;
      }
    }
    return null;
  }
}
