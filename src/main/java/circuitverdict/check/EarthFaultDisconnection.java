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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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
    LiveConductors live = Wiring.live(circuit, d);
    if (earthing == null || circuit.device() == null) {
      askAtOnce(circuit, live, d);
      return judgement.undetermined().conclude();
    }
    ProtectiveDevice residual = ResidualTime.protecting(circuit);
    DisconnectionTime time = DisconnectionTime.of(circuit, d);
    FaultLoop loop = FaultLoop.earth(circuit, live, d);
    OvercurrentDisconnection overcurrent = new OvercurrentDisconnection(circuit, loop, time, d);
    boolean proves = !overcurrent.guided() || !Judgement.proofWanted(circuit);
    boolean holds = overcurrent.holds() && proves;
    boolean settled = residual == null || earthing.tn() && holds;
    Way way = settled ? null : best(circuit, residual, live, time, d);
    boolean serves = way != null && way.verdict() == Verdict.COMPLIES;
    boolean other = way != null && way.verdict() == Verdict.DOES_NOT_COMPLY;
    if (settled || !serves && holds || other && open(circuit, live, time, d)) {
      judgement.by(
          earthing.tn() ? Clause.AUTOMATIC_DISCONNECTION : Clause.DISCONNECTION_TT_OVERCURRENT);
      if (residual != null && holds) {
        d.remark(NoteCode.OVERCURRENT_GOVERNS);
      }
      overcurrent.judge(judgement);
      return judgement.conclude();
    }
    judgement.by(earthing.tn() ? Clause.EARTHING : Clause.DISCONNECTION_TT);
    if (earthing.tn() && serves && loop.impedance().known()) {
      d.remark(NoteCode.RESIDUAL_GOVERNS);
    }
    new ResidualDisconnection(circuit, way.device(), live, loop, time, d).judge(judgement);
    return judgement.conclude();
  }

  /** Where nothing is compared yet, what will be needed besides is named with it. */
  private static void askAtOnce(Circuit circuit, LiveConductors live, Dossier d) {
    FaultLoop.earth(circuit, live, d);
    if (circuit.device() != null) {
      DisconnectionTime.of(circuit, d);
    }
  }

  /** A residual function and what it would make of the check by itself. */
  private record Way(ProtectiveDevice device, Verdict verdict) {}

  /** The residual function that disconnects by itself, else one that may, else one that fails. */
  private Way best(
      Circuit circuit,
      ProtectiveDevice preferred,
      LiveConductors live,
      DisconnectionTime time,
      Dossier d) {
    Way best = null;
    Set<ProtectiveDevice> ways = new LinkedHashSet<>(List.of(preferred));
    ways.addAll(ResidualTime.all(circuit));
    for (ProtectiveDevice each : ways) {
      Dossier trial = d.trial();
      Judgement judgement = new Judgement(name(), circuit, trial, "/cable");
      FaultLoop same = FaultLoop.earth(circuit, live, trial);
      new ResidualDisconnection(circuit, each, live, same, time, trial).judge(judgement);
      Way way = new Way(each, judgement.conclude().verdict());
      boolean better =
          best == null
              || way.verdict() == Verdict.COMPLIES && best.verdict() != Verdict.COMPLIES
              || way.verdict() == Verdict.NOT_DETERMINED
                  && best.verdict() == Verdict.DOES_NOT_COMPLY;
      best = better ? way : best;
    }
    return best;
  }

  /** Whether what is not known may yet let the overcurrent device disconnect. */
  private boolean open(Circuit circuit, LiveConductors live, DisconnectionTime time, Dossier d) {
    Dossier trial = d.trial();
    Judgement judgement = new Judgement(name(), circuit, trial, "/cable");
    FaultLoop same = FaultLoop.earth(circuit, live, trial);
    new OvercurrentDisconnection(circuit, same, time, trial).judge(judgement);
    return judgement.conclude().verdict() == Verdict.NOT_DETERMINED;
  }
}
