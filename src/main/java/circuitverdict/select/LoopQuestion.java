package circuitverdict.select;

import circuitverdict.check.Reason;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.device.OperatingCurrent;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Working;
import circuitverdict.fault.LoopLimit;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Citation;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * The greatest earth fault loop impedance for one device and disconnection time (411.4.4, 411.5.3):
 * at operating temperature, as printed, and as it may be read cold (0.8 of it).
 *
 * @param verdict complies where a limit is known
 * @param reason why none is; null where one is
 * @param operating Ia, A
 * @param limit Zs,max by the overcurrent device, Ω
 * @param printed as the wiring rules print it; null where they do not
 * @param reading greatest cold reading, Ω
 * @param residual greatest loop impedance for its residual function, Ω; unknown where it has none
 * @param clauses clauses it rests on
 * @param dossier working, missing inputs and remarks
 */
public record LoopQuestion(
    Verdict verdict,
    Reason reason,
    Figure operating,
    Figure limit,
    Value printed,
    Figure reading,
    Figure residual,
    List<Citation> clauses,
    Dossier dossier) {
  private static final Formula READING = Formula.of("Zs,read", Unit.OHM, "c·Zs,max");

  /**
   * The answer for a device, a time in seconds and a nominal voltage Uo (null: that of the
   * edition).
   */
  public static LoopQuestion ask(
      ProtectiveDevice device, double timeS, Double voltageV, Edition edition, boolean explain) {
    Working working = explain ? Working.recording() : Working.silent();
    Dossier d = new Dossier(edition, Allowance.TABLE_DEFAULTS, working);
    List<Citation> clauses = new ArrayList<>();
    Figure voltage =
        voltageV == null
            ? d.constant("Uo", Constant.NOMINAL_LINE_TO_EARTH)
            : d.given("Uo", voltageV, Unit.VOLT, new Pointer("", "lineToEarthVoltageV"));
    Figure residual = Figure.unknown("Zs,max", Unit.OHM);
    if (ResidualTime.has(device)) {
      clauses.add(edition.clause(Clause.DISCONNECTION_TT));
      Figure operating =
          d.need(
              "IΔn",
              device.data().residual().operatingCurrentA(),
              Unit.AMPERE,
              new Pointer(device.data().place() + "/residual", "operatingCurrentA"));
      residual = LoopLimit.ofResidual(device, operating, timeS, voltage, d);
    }
    if (device instanceof Rccb) {
      boolean known = residual.known();
      return new LoopQuestion(
          known ? Verdict.COMPLIES : Verdict.NOT_DETERMINED,
          known ? null : Reason.MISSING_INPUT,
          Figure.unknown("Ia", Unit.AMPERE),
          Figure.unknown("Zs,max", Unit.OHM),
          null,
          Figure.unknown("Zs,read", Unit.OHM),
          residual,
          clauses,
          d);
    }
    clauses.add(edition.clause(Clause.AUTOMATIC_DISCONNECTION));
    OperatingCurrent operating = OperatingCurrent.within(device, timeS, d);
    LoopLimit limit = LoopLimit.of(operating, voltage, d);
    Figure reading =
        d.working().step(READING, d.constant("c", Constant.COLD_READING), limit.impedance());
    boolean known = limit.impedance().known();
    if (known) {
      d.remark(NoteCode.READING_NOT_FAILURE);
    }
    return new LoopQuestion(
        known ? Verdict.COMPLIES : Verdict.NOT_DETERMINED,
        known ? null : Reason.MISSING_INPUT,
        operating.current(),
        limit.impedance(),
        limit.printed(),
        reading,
        residual,
        clauses,
        d);
  }
}
