package circuitverdict.fault;

import circuitverdict.circuit.Grid;
import circuitverdict.circuit.Transformer;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Impedance of the network before a transformer, referred to the side that this feeds (IEC 60909-0,
 * 6.2).
 *
 * @param resistance Ω
 * @param reactance Ω
 */
record GridImpedance(Figure resistance, Figure reactance) {
  private static final Formula IMPEDANCE = Formula.of("Zq", Unit.OHM, "cq·Uq²/Sq");
  private static final Formula REACTANCE = Formula.of("Xq", Unit.OHM, "Zq·Ur²/(Up²·√(1 + ρ²))");
  private static final Formula RESISTANCE = Formula.of("Rq", Unit.OHM, "ρ·Xq");

  /**
   * For greatest currents; a network that is not stated has none, which nothing exceeds, listed.
   *
   * @param lowVoltage voltage factor where the network itself is of low voltage
   */
  static GridImpedance forGreatest(
      Grid grid, Transformer transformer, Figure rated, Figure lowVoltage, Dossier d) {
    if (grid == null || grid.maximumShortCircuitPowerVA() == null) {
      d.assume(NoteCode.ASSUMED_INFINITE_NETWORK, At.GRID_ITSELF);
      return new GridImpedance(
          Figure.derived("Rq", 0, Unit.OHM), Figure.derived("Xq", 0, Unit.OHM));
    }
    Pointer at = new Pointer(At.GRID, "maximumShortCircuitPowerVA");
    Figure power = d.need("Sq", grid.maximumShortCircuitPowerVA(), Unit.VOLT_AMPERE, at);
    Constant medium = Constant.SHORT_CIRCUIT_MEDIUM_VOLTAGE_GREATEST;
    return of(grid, transformer, rated, power, medium, lowVoltage, d);
  }

  /** For least currents: its least short-circuit power is needed. */
  static GridImpedance forLeast(
      Grid grid, Transformer transformer, Figure rated, Figure lowVoltage, Dossier d) {
    Pointer at = new Pointer(At.GRID, "minimumShortCircuitPowerVA");
    if (grid == null) {
      d.missing(At.GRID_ITSELF);
      Figure unknown = Figure.unknown("Rq", Unit.OHM);
      return new GridImpedance(unknown, unknown.as("Xq"));
    }
    Figure power = d.need("Sq", grid.minimumShortCircuitPowerVA(), Unit.VOLT_AMPERE, at);
    Constant medium = Constant.SHORT_CIRCUIT_MEDIUM_VOLTAGE_LEAST;
    return of(grid, transformer, rated, power, medium, lowVoltage, d);
  }

  private static GridImpedance of(
      Grid grid,
      Transformer transformer,
      Figure rated,
      Figure power,
      Constant medium,
      Figure lowVoltage,
      Dossier d) {
    Pointer nominalAt = new Pointer(At.GRID, "nominalVoltageV");
    Figure nominal = d.need("Uq", grid.nominalVoltageV(), Unit.VOLT, nominalAt);
    Pointer primaryAt = new Pointer(At.TRANSFORMER, "primaryVoltageV");
    Figure primary = d.need("Up", transformer.primaryVoltageV(), Unit.VOLT, primaryAt);
    double from = d.edition().constant(Constant.SHORT_CIRCUIT_MEDIUM_VOLTAGE_FROM).number();
    Figure factor = nominal.value() > from ? d.constant("cq", medium) : lowVoltage.as("cq");
    Figure ratio =
        d.orAssume(
            "ρ",
            grid.resistanceToReactanceRatio(),
            new Pointer(At.GRID, "resistanceToReactanceRatio"),
            d.edition().constant(Constant.SHORT_CIRCUIT_GRID_RATIO),
            Allowance.TABLE_DEFAULTS,
            NoteCode.ASSUMED_GRID_RATIO);
    if (grid.resistanceToReactanceRatio() == null) {
      d.curable(new Pointer(At.GRID, "resistanceToReactanceRatio"));
    }
    Figure impedance = d.working().step(IMPEDANCE, factor, nominal, power);
    Figure reactance = d.working().step(REACTANCE, impedance, rated, primary, ratio);
    return new GridImpedance(d.working().step(RESISTANCE, ratio, reactance), reactance);
  }
}
