package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.DisconnectionTime;
import circuitverdict.fault.FaultLoop;
import circuitverdict.fault.LoopLimit;
import circuitverdict.fault.SupplyLoop;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;

/**
 * What the tester should read (643, Appendix 3, common practice); informative. R1 + R2 and Zs at 20
 * °C, the current to expect, and 0.8 of the greatest Zs. A reading above that is no failure: then
 * the loop at operating temperature decides. The 0.8 is never applied to conductors already hot.
 */
public final class Commissioning implements Check {
  private static final Formula READ = Formula.of("Zs,20", Unit.OHM, "Zread + R1R2,20");
  private static final Formula CURRENT = Formula.of("Ipf", Unit.AMPERE, "Uo/Zs,20");
  private static final Formula LIMIT = Formula.of("Zs,read", Unit.OHM, "c·Zs,max");

  @Override
  public CheckName name() {
    return CheckName.COMMISSIONING;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement =
        new Judgement(name(), circuit, d, "/cable")
            .by(Clause.INSPECTION)
            .by(Clause.MEASURED_READINGS)
            .informative();
    LiveConductors live = Wiring.live(circuit, d);
    FaultLoop loop = FaultLoop.earth(circuit, live, d);
    if (circuit.device() == null) {
      d.missing(At.DEVICE_ITSELF);
      d.need(circuit.supply().earthing(), At.EARTHING);
      return judgement.undetermined().conclude();
    }
    Figure voltage = NominalVoltage.lineToEarth(circuit, d);
    DisconnectionTime time = DisconnectionTime.of(circuit, d);
    LoopLimit limit = LoopLimit.within(circuit, time.strictest(), d);
    Figure reading =
        d.working().step(READ, SupplyLoop.asRead(circuit, loop.supply(), d), loop.part().cold());
    judgement.tell(loop.part().cold(), d.working().step(CURRENT, voltage, reading));
    ProtectiveDevice residual = ResidualTime.protecting(circuit);
    boolean byOvercurrent =
        Comparator.AT_MOST.holds(loop.impedance().value(), limit.impedance().value());
    if (residual != null && !byOvercurrent) {
      return byResidual(residual, loop, judgement, d);
    }
    Figure allowed =
        d.working().step(LIMIT, d.constant("c", Constant.COLD_READING), limit.impedance());
    boolean open = !allowed.known() || !reading.known();
    if (open || Comparator.AT_MOST.holds(reading.value(), allowed.value())) {
      judgement.compare("/cable", reading, Comparator.AT_MOST, allowed);
      return judgement.conclude();
    }
    d.remark(NoteCode.READING_NOT_FAILURE, reading, allowed);
    judgement.compare(
        "/cable", loop.impedance(), Comparator.AT_MOST, limit.impedance(), limit.printed());
    return judgement.conclude();
  }

  /**
   * Where the residual function disconnects, its limit is read against; far from it no 0.8 matters.
   */
  private static Finding byResidual(
      ProtectiveDevice residual, FaultLoop loop, Judgement judgement, Dossier d) {
    Pointer at = new Pointer(residual.data().place() + "/residual", "operatingCurrentA");
    Figure operating =
        d.need("IΔn", residual.data().residual().operatingCurrentA(), Unit.AMPERE, at);
    LoopLimit limit = LoopLimit.ofResidual(operating, d);
    d.remark(NoteCode.RESIDUAL_GOVERNS);
    judgement.compare(
        "/cable", loop.impedance(), Comparator.AT_MOST, limit.impedance(), limit.printed());
    return judgement.conclude();
  }
}
