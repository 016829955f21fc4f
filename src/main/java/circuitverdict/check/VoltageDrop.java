package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.conductor.DropFromOrigin;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.conductor.OneLine;
import circuitverdict.conductor.TemperatureCorrection;
import circuitverdict.conductor.Wiring;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;

/**
 * Voltage drop from the origin, % of the nominal voltage (525, Appendix 4 section 6), against the
 * limit by supply and use with the allowance for length beyond 100 m. What the drop is up to the
 * supply point must be stated unless that is the origin.
 */
public final class VoltageDrop implements Check {
  private static final Formula OWN = Formula.of("Δuc", Unit.PERCENT, "100·ΔU/U");
  private static final Formula IN_VOLTS = Formula.of("ΔUtotal", Unit.VOLT, "Δuo·U/100 + ΔU");
  private static final Formula LIMIT_IN_VOLTS = Formula.of("ΔU,max", Unit.VOLT, "Δu,max·U/100");

  @Override
  public CheckName name() {
    return CheckName.VOLTAGE_DROP;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement =
        new Judgement(name(), circuit, d, "/cable")
            .by(Clause.VOLTAGE_DROP)
            .by(Clause.VOLTAGE_DROP_APPENDIX);
    LiveConductors live = Wiring.live(circuit, d);
    Figure current = DesignCurrent.noted(circuit, live, d);
    boolean oneLine = OneLine.stands(circuit, live, d);
    LiveConductors path = DropFromOrigin.path(circuit, live, d);
    Figure voltage = NominalVoltage.ofCircuit(circuit, path, d);
    Figure before = DropFromOrigin.before(circuit.supply(), d);
    DropLimits limits = DropLimits.of(circuit, d);
    Figure drop = DropFromOrigin.volts(circuit, path, current, DropFromOrigin.uncorrected(), d);
    if (!within(before, drop, voltage, limits)) {
      Figure correction = TemperatureCorrection.of(circuit, live, current, d);
      drop =
          corrected(
              circuit, path, current, correction, voltage, before, limits, drop, judgement, d);
    }
    boolean shared = oneLine && !circuit.load().parts().isEmpty();
    if (shared && drop.known() && !holds(before, drop, voltage, limits.strictest())) {
      d.missing(NoteCode.SHARE_OF_LINES, At.LOAD_PARTS, drop);
      return judgement.undetermined().conclude();
    }
    judge(judgement, before, drop, voltage, limits, d);
    if (DesignCurrent.isRating(circuit)) {
      // All of In at one point is the worst of outlets: what fails by it a stated Ib may mend.
      d.curable(At.DESIGN_CURRENT);
    }
    return judgement.conclude();
  }

  private static void judge(
      Judgement judgement,
      Figure before,
      Figure drop,
      Figure voltage,
      DropLimits limits,
      Dossier d) {
    Figure total = DropFromOrigin.percent(before, drop, voltage, d);
    if (!total.known()) {
      Figure none = Figure.derived("Δuo", 0, Unit.PERCENT);
      judgement.atBest(
          "/cable",
          DropFromOrigin.percent(none, drop, voltage, d),
          Comparator.AT_MOST,
          limits.mildest());
      // As long as the drop is not known, nobody knows that the strictest limit will do.
      limits.noteMissing(d);
      judgement.undetermined();
      return;
    }
    if (!limits.open() || Comparator.atMost(total.value(), limits.strictest().value())) {
      if (limits.open()) {
        d.remark(NoteCode.STRICTEST_LIMIT);
      }
      compare(judgement, total, before, drop, voltage, limits.strictest(), d);
      own(judgement, drop, voltage, limits, d);
      return;
    }
    if (Comparator.atMost(total.value(), limits.mildest().value())) {
      limits.noteMissing(d);
      judgement.open("/cable", total, Comparator.AT_MOST, limits.strictest());
      return;
    }
    compare(judgement, total, before, drop, voltage, limits.mildest(), d);
  }

  /** Of a private supply each final circuit keeps to the limits of a public one by itself. */
  private static void own(
      Judgement judgement, Figure drop, Figure voltage, DropLimits limits, Dossier d) {
    if (limits.ownStrictest() == null) {
      return;
    }
    Figure own = d.working().step(OWN, drop, voltage);
    boolean strict = Comparator.atMost(own.value(), limits.ownStrictest().value());
    if (strict || !Comparator.atMost(own.value(), limits.ownMildest().value())) {
      Figure limit = strict ? limits.ownStrictest() : limits.ownMildest();
      judgement.compare("/cable", own, Comparator.AT_MOST, limit);
      return;
    }
    limits.noteMissing(d);
    judgement.open("/cable", own, Comparator.AT_MOST, limits.ownStrictest());
  }

  private static void compare(
      Judgement judgement,
      Figure total,
      Figure before,
      Figure drop,
      Figure voltage,
      Figure limit,
      Dossier d) {
    judgement.compare("/cable", total, Comparator.AT_MOST, limit);
    judgement.beside(
        "/cable",
        d.working().step(IN_VOLTS, before, voltage, drop),
        Comparator.AT_MOST,
        d.working().step(LIMIT_IN_VOLTS, limit, voltage));
  }

  private static Figure corrected(
      Circuit circuit,
      LiveConductors path,
      Figure current,
      Figure correction,
      Figure voltage,
      Figure before,
      DropLimits limits,
      Figure drop,
      Judgement judgement,
      Dossier d) {
    if (!correction.known()) {
      return drop;
    }
    judgement.tell(correction);
    Figure cooler = DropFromOrigin.volts(circuit, path, current, correction, d);
    if (within(before, cooler, voltage, limits)) {
      d.remark(NoteCode.TEMPERATURE_CORRECTED);
      return cooler;
    }
    return drop;
  }

  /** Whether the mildest of the limits that are possible hold. */
  private static boolean within(Figure before, Figure drop, Figure voltage, DropLimits limits) {
    Figure own = limits.ownMildest();
    Figure none = Figure.derived("Δuo", 0, Unit.PERCENT);
    return holds(before, drop, voltage, limits.mildest())
        && (own == null || holds(none, drop, voltage, own));
  }

  private static boolean holds(Figure before, Figure drop, Figure voltage, Figure limit) {
    return Comparator.atMost(before.value() + 100 * drop.value() / voltage.value(), limit.value());
  }
}
