package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.DisconnectionTime;
import circuitverdict.fault.LoopLimit;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import java.util.function.Function;

/**
 * A loop impedance that rests on readings, at operating temperature, against what disconnects in
 * time (411.4.4, 411.5.3): the overcurrent device, else the residual function. It complies by the
 * greatest that it may be, and fails by the least that it may be under the mildest time that what
 * is stated can demand; between, what would settle it is asked for.
 */
final class MeasuredLoop {
  private final String about;
  private final Figure least;
  private final Figure most;
  private final Judgement judgement;
  private final Dossier d;

  private MeasuredLoop(String about, Figure least, Figure most, Judgement judgement, Dossier d) {
    this.about = about;
    this.least = least;
    this.most = most;
    this.judgement = judgement;
    this.d = d;
  }

  /** One that is known. */
  static void judge(
      String about,
      Figure zs,
      Circuit circuit,
      DisconnectionTime time,
      Judgement judgement,
      Dossier d) {
    judge(about, zs, zs, circuit, time, judgement, d);
  }

  /** One that lies between two figures. */
  static void judge(
      String about,
      Figure least,
      Figure most,
      Circuit circuit,
      DisconnectionTime time,
      Judgement judgement,
      Dossier d) {
    MeasuredLoop loop = new MeasuredLoop(about, least, most, judgement, d);
    LoopLimit strictest = LoopLimit.within(circuit, time.strictest(), d);
    ProtectiveDevice residual = ResidualTime.protecting(circuit);
    if (residual != null && most.known() && exceeds(most, strictest.impedance())) {
      judgement.by(Clause.DISCONNECTION_TT);
      d.remark(NoteCode.RESIDUAL_GOVERNS);
      loop.against(
          residual(residual, circuit, time.strictest(), d),
          told -> residual(residual, circuit, time.mildest(), told));
      return;
    }
    loop.against(strictest, told -> LoopLimit.within(circuit, time.mildest(), told));
  }

  private static LoopLimit residual(
      ProtectiveDevice device, Circuit circuit, Figure time, Dossier d) {
    Pointer at = new Pointer(device.data().place() + "/residual", "operatingCurrentA");
    Figure operating = d.need("IΔn", device.data().residual().operatingCurrentA(), Unit.AMPERE, at);
    Figure voltage = NominalVoltage.lineToEarth(circuit, d);
    return new LoopLimit(LoopLimit.ofResidual(device, operating, time.value(), voltage, d), null);
  }

  private static boolean exceeds(Figure actual, Figure limit) {
    return !Comparator.AT_MOST.holds(actual.value(), limit.value());
  }

  private void against(LoopLimit strictest, Function<Dossier, LoopLimit> mildest) {
    Figure limit = strictest.impedance();
    if (!most.known() || !limit.known() || !exceeds(most, limit)) {
      judgement.compare(about, most, Comparator.AT_MOST, limit, strictest.printed());
      return;
    }
    Figure tried = mildest.apply(d.trial()).impedance();
    if (tried.known() && exceeds(least, tried)) {
      // What decides is told with its own working.
      LoopLimit told = mildest.apply(d);
      judgement.compare(about, least, Comparator.AT_MOST, told.impedance(), told.printed());
      return;
    }
    if (exceeds(least, limit)) {
      d.missing(At.CONNECTION);
    } else {
      d.missing(NoteCode.READING_OF_ORIGIN, new Pointer("", "readings"));
    }
    judgement.open(about, most, Comparator.AT_MOST, limit);
  }
}
