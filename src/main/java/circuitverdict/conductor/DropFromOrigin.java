package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Supply;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Unit;

/**
 * Voltage drop from the origin to the far end of a circuit (525): what is stated up to its supply
 * point, and the drop of its own cables in series. What leaves from the far end starts with it.
 */
public final class DropFromOrigin {
  private static final Formula TOTAL = Formula.of("Δu", Unit.PERCENT, "Δuo + 100·ΔU/U");
  private static final Formula SUM = Formula.of("ΔU", Unit.VOLT, "ΔUsum + ΔU");

  private DropFromOrigin() {}

  /** At the far end, % of the nominal voltage, conductors at their operating temperature. */
  public static Figure atFarEnd(Circuit circuit, Dossier d) {
    LiveConductors live = Wiring.live(circuit, d);
    Figure current = DesignCurrent.of(circuit, live, d);
    LiveConductors path = path(circuit, live, d);
    Figure drop = volts(circuit, path, current, uncorrected(), d);
    return percent(
        before(circuit.supply(), d), drop, NominalVoltage.ofCircuit(circuit, path, d), d);
  }

  /** What is stated up to the supply point, %; nothing at the origin. */
  public static Figure before(Supply supply, Dossier d) {
    Double stated = supply.voltageDropPercent();
    if (stated == null && supply.point() == Supply.Point.ORIGIN) {
      return Figure.derived("Δuo", 0, Unit.PERCENT);
    }
    boolean quoted =
        supply.point() == null
            && supply.loopImpedanceOhm() == null
            && d.allows(Allowance.TYPICAL_VALUES);
    if (stated == null && quoted) {
      d.assume(NoteCode.ASSUMED_ORIGIN, At.POINT);
      return Figure.derived("Δuo", 0, Unit.PERCENT);
    }
    return d.need("Δuo", stated, Unit.PERCENT, At.SUPPLY_DROP);
  }

  /**
   * The conductors along which the drop counts: of a three-phase way whose load stands on one line,
   * that line and the neutral.
   */
  public static LiveConductors path(Circuit circuit, LiveConductors live, Dossier d) {
    return OneLine.stands(circuit, live, d) ? new LiveConductors(1, true) : live;
  }

  /**
   * Of all cables in series, V, with a temperature correction; of several lines that are not loaded
   * alike by the current that is stated for it.
   */
  public static Figure volts(
      Circuit circuit, LiveConductors live, Figure current, Figure correction, Dossier d) {
    Figure counts = counting(circuit, live, current, d);
    Figure sum = null;
    for (Cable cable : Wiring.cables(circuit)) {
      Figure part = VoltageDropOfCable.volts(cable, circuit.load(), live, counts, correction, d);
      sum = sum == null ? part : d.working().step(SUM, sum.as("ΔUsum"), part);
    }
    return sum;
  }

  private static Figure counting(Circuit circuit, LiveConductors live, Figure current, Dossier d) {
    Double stated = circuit.load().voltageDropCurrentA();
    if (stated == null || live == null || live.lines() < 2) {
      return current;
    }
    Figure counts = d.given("Ib", stated, Unit.AMPERE, At.VOLTAGE_DROP_CURRENT);
    return current.known() ? Figure.greater(counts, current) : current;
  }

  /** Before and along, % of the nominal voltage. */
  public static Figure percent(Figure before, Figure drop, Figure voltage, Dossier d) {
    return d.working().step(TOTAL, before, drop, voltage);
  }

  /** No temperature correction. */
  public static Figure uncorrected() {
    return Figure.derived("ct", 1, Unit.ONE);
  }
}
