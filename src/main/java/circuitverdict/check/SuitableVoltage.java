package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Nameplate;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Value;

/**
 * Voltage (512.1.1): one line is opened against neutral and earth at Uo, several lines against each
 * other too. Where none is stated the least that the product standard knows of such a device
 * counts, listed; it carries no failure. No more counts than the standard knows.
 */
final class SuitableVoltage {
  private static final int THREE_POLES = 3;

  private SuitableVoltage() {}

  static void hold(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    judgement.by(Clause.DEVICE_VOLTAGE);
    ProtectiveDevice device = circuit.device();
    Nameplate face = device.data().nameplate();
    Figure lineToEarth = NominalVoltage.lineToEarth(circuit, d);
    Figure toEarth =
        d.given(
            "Ue",
            face.ratedLineToEarthVoltageV(),
            Unit.VOLT,
            Suitability.at(device, "ratedLineToEarthVoltageV"));
    if (toEarth.known()) {
      judgement.classed("/device", lineToEarth, Comparator.AT_MOST, toEarth);
    }
    if (live.lines() > 1) {
      between(device, NominalVoltage.betweenLines(lineToEarth, d), judgement, d);
    } else if (!toEarth.known()) {
      held(device, "one-line", lineToEarth, judgement, d);
    }
  }

  private static void between(
      ProtectiveDevice device, Figure voltage, Judgement judgement, Dossier d) {
    Integer poles = device.data().poles();
    boolean ofSeveral = poles != null && poles >= THREE_POLES;
    held(device, ofSeveral ? "several-lines" : null, voltage, judgement, d);
  }

  /** Holds a voltage within the rated one, or the least of the standard by a column. */
  private static void held(
      ProtectiveDevice device, String column, Figure voltage, Judgement judgement, Dossier d) {
    Pointer at = Suitability.at(device, "ratedVoltageV");
    Double stated = device.data().nameplate().ratedVoltageV();
    if (stated != null) {
      Figure rated = new Figure("Ue", stated, Unit.VOLT, at);
      boolean household = device instanceof Breaker;
      judgement.classed(
          "/device",
          voltage,
          Comparator.AT_MOST,
          household
              ? Figure.lesser(rated, d.constant("Ue", Constant.BREAKER_TESTS_GREATEST_VOLTAGE))
              : rated);
      return;
    }
    Value least = column == null ? null : Suitability.of(device, column, d);
    boolean within = least != null && !(voltage.value() > least.number());
    if (!within) {
      d.missing(least == null ? NoteCode.MISSING_INPUT : NoteCode.STAND_IN_FAILS, at);
      judgement.undetermined();
      return;
    }
    Figure assumed = Figure.of("Ue", least);
    d.assume(NoteCode.ASSUMED_RATED_VOLTAGE, at, assumed);
    judgement.classed("/device", voltage, Comparator.AT_MOST, assumed);
  }
}
