package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.Requirements;
import circuitverdict.device.NotJudged;
import circuitverdict.device.Promises;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.standard.Clause;

/**
 * Selectivity (536.4.1): on overload, on short circuit and on residual currents only the device
 * opens, not the one upstream. It counts where it is required, or where it is the question itself.
 */
public final class Selectivity implements Check {
  private final boolean asked;

  /** Among the other checks of a circuit. */
  public Selectivity() {
    this(false);
  }

  /**
   * Alone or among others.
   *
   * @param asked whether it is the question itself
   */
  public Selectivity(boolean asked) {
    this.asked = asked;
  }

  @Override
  public CheckName name() {
    return CheckName.SELECTIVITY;
  }

  @Override
  public boolean counts(Circuit circuit) {
    return asked || circuit.requirements().selectivity() == Requirements.Selectivity.REQUIRED;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement = new Judgement(name(), circuit, d, At.DEVICE).by(Clause.SELECTIVITY);
    if (!counts(circuit)) {
      judgement.informative();
    }
    ProtectiveDevice device = circuit.device();
    ProtectiveDevice upstream = circuit.upstreamDevice();
    boolean overcurrent = upstream == null || !(upstream instanceof Rccb);
    boolean open = upstream == null || overcurrent && unknown(upstream, d);
    if (upstream == null) {
      d.missing(At.UPSTREAM);
    }
    if (device == null || overcurrent && unknown(device, d)) {
      if (device == null) {
        d.missing(At.DEVICE_ITSELF);
      }
      open = true;
    }
    if (open) {
      // Nothing is compared; the current will be needed besides and is named with the devices.
      if (device != null && Promises.known(device)) {
        Promises.ofDownstream(device, d);
      }
      Integer poles = device == null ? null : device.data().poles();
      GreatestCurrent.ofWay(circuit, LiveConductors.of(circuit), poles, d);
      return judgement.undetermined().conclude();
    }
    d.remark(NoteCode.CIRCUIT_ALONE);
    if (overcurrent) {
      new OvercurrentSelectivity(circuit, judgement, d).judge();
    } else {
      d.remark(NoteCode.UPSTREAM_WITHOUT_RELEASE);
    }
    new ResidualSelectivity(circuit, judgement, d).judge();
    return judgement.conclude();
  }

  private static boolean unknown(ProtectiveDevice device, Dossier d) {
    if (Promises.known(device)) {
      return false;
    }
    NotJudged.note(device, d);
    return true;
  }
}
