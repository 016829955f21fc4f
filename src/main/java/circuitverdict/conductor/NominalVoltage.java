package circuitverdict.conductor;

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
import circuitverdict.standard.Constant;
import circuitverdict.standard.Value;

/**
 * Nominal voltages of a circuit. Public supplies are 230 V; another one is stated for a private
 * one.
 */
public final class NominalVoltage {
  private static final Formula LINE_TO_LINE = Formula.of("U", Unit.VOLT, "√3·Uo");

  private NominalVoltage() {}

  /** Uo, V. */
  public static Figure lineToEarth(Circuit circuit, Dossier d) {
    Supply supply = circuit.supply();
    Value nominal = d.edition().constant(Constant.NOMINAL_LINE_TO_EARTH);
    Double stated = supply.lineToEarthVoltageV();
    if (stated == null && supply.ownership() == Supply.Ownership.PUBLIC) {
      return Figure.of("Uo", nominal);
    }
    if (stated != null
        && stated != nominal.number()
        && supply.ownership() != Supply.Ownership.PRIVATE) {
      d.missing(At.OWNERSHIP);
      return Figure.unknown("Uo", Unit.VOLT);
    }
    return d.orAssume(
        "Uo",
        stated,
        At.VOLTAGE,
        nominal,
        Allowance.TABLE_DEFAULTS,
        NoteCode.ASSUMED_NOMINAL_VOLTAGE);
  }

  /** The nominal voltage across the load: Uo between line and neutral, else between lines, V. */
  public static Figure ofCircuit(Circuit circuit, LiveConductors live, Dossier d) {
    Figure lineToEarth = lineToEarth(circuit, d);
    if (live == null || !lineToEarth.known()) {
      return Figure.unknown("U", Unit.VOLT);
    }
    if (live.lines() == 1 || live.lines() == 2 && live.neutral()) {
      return lineToEarth.as("U");
    }
    return betweenLines(lineToEarth, d);
  }

  /** The nominal voltage between lines, V, by that between line and earth. */
  public static Figure betweenLines(Figure lineToEarth, Dossier d) {
    if (!lineToEarth.known()) {
      return Figure.unknown("U", Unit.VOLT);
    }
    boolean common =
        lineToEarth.value() == d.edition().constant(Constant.NOMINAL_LINE_TO_EARTH).number();
    return common
        ? d.constant("U", Constant.NOMINAL_LINE_TO_LINE)
        : d.working().step(LINE_TO_LINE, lineToEarth);
  }
}
