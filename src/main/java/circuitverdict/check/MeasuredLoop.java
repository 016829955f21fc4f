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

/**
 * A loop impedance that rests on readings, at operating temperature, against what disconnects in
 * time (411.4.4, 411.5.3): the overcurrent device, else the residual function. It fails for certain
 * only by the mildest time that what is stated can demand.
 */
final class MeasuredLoop {
  private MeasuredLoop() {}

  static void judge(
      String about,
      Figure zs,
      Circuit circuit,
      DisconnectionTime time,
      Judgement judgement,
      Dossier d) {
    LoopLimit limit = LoopLimit.within(circuit, time.strictest(), d);
    boolean holds = Comparator.AT_MOST.holds(zs.value(), limit.impedance().value());
    ProtectiveDevice residual = ResidualTime.protecting(circuit);
    if (residual != null && !holds && zs.known()) {
      byResidual(about, zs, residual, circuit, time, judgement, d);
      return;
    }
    boolean open = time.strictest().value() != time.mildest().value();
    if (!holds && open) {
      Dossier trial = d.trial();
      LoopLimit mildest = LoopLimit.within(circuit, time.mildest(), trial);
      if (Comparator.AT_MOST.holds(zs.value(), mildest.impedance().value())) {
        d.missing(At.CONNECTION);
        judgement.open(about, zs, Comparator.AT_MOST, limit.impedance());
        return;
      }
    }
    judgement.compare(about, zs, Comparator.AT_MOST, limit.impedance(), limit.printed());
  }

  private static void byResidual(
      String about,
      Figure zs,
      ProtectiveDevice residual,
      Circuit circuit,
      DisconnectionTime time,
      Judgement judgement,
      Dossier d) {
    judgement.by(Clause.DISCONNECTION_TT);
    d.remark(NoteCode.RESIDUAL_GOVERNS);
    Pointer at = new Pointer(residual.data().place() + "/residual", "operatingCurrentA");
    Figure operating =
        d.need("IΔn", residual.data().residual().operatingCurrentA(), Unit.AMPERE, at);
    Figure voltage = NominalVoltage.lineToEarth(circuit, d);
    Figure strict = LoopLimit.ofResidual(residual, operating, time.strictest().value(), voltage, d);
    boolean open = time.strictest().value() != time.mildest().value();
    if (open && !Comparator.AT_MOST.holds(zs.value(), strict.value())) {
      d.missing(At.CONNECTION);
      judgement.open(about, zs, Comparator.AT_MOST, strict);
      return;
    }
    judgement.compare(about, zs, Comparator.AT_MOST, strict);
  }
}
