package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Table;
import circuitverdict.standard.Value;

/**
 * The part of a fault loop that the circuit's own cables form, at the far end; on a ring at its
 * mid-point, (r1 + r2)/4 of the end-to-end resistances.
 *
 * @param resistance at operating temperature, Ω
 * @param cold at 20 °C, Ω
 * @param reactance of the loop, Ω; zero up to 16 mm²
 */
public record LoopPart(Figure resistance, Figure cold, Figure reactance) {
  static final Formula LINE = Formula.of("R1", Unit.OHM, "L·r1·Cθ/(n·1000)");
  private static final Formula RETURN = Formula.of("R2", Unit.OHM, "L·r2·Cθ/(n·1000)");
  private static final Formula RETURN_APART = Formula.of("R2", Unit.OHM, "L·r2·Cθ2/(n·1000)");
  static final Formula NEUTRAL = Formula.of("Rn", Unit.OHM, "L·rn·Cθ/(n·1000)");
  static final Formula RADIAL_N = Formula.of("R1Rn", Unit.OHM, "R1 + Rn");
  static final Formula RING_N = Formula.of("R1Rn", Unit.OHM, "(R1 + Rn)/4");
  private static final Formula SUM_N = Formula.of("R1Rn", Unit.OHM, "Rsum + R1Rn");
  private static final Formula RADIAL_LINES = Formula.of("R1R1", Unit.OHM, "2·R1");
  private static final Formula RING_LINES = Formula.of("R1R1", Unit.OHM, "2·R1/4");
  private static final Formula SUM_LINES = Formula.of("R1R1", Unit.OHM, "Rsum + R1R1");
  static final Formula RADIAL = Formula.of("R1R2", Unit.OHM, "R1 + R2");
  static final Formula RING = Formula.of("R1R2", Unit.OHM, "(R1 + R2)/4");
  private static final Formula COLD = Formula.of("R1R2,20", Unit.OHM, "L·(r1 + r2)/(n·1000)");
  private static final Formula COLD_ONE = Formula.of("R1R2,20", Unit.OHM, "L·(r1 + r2·n)/(n·1000)");
  private static final Formula COLD_RING = Formula.of("R1R2,20", Unit.OHM, "L·(r1 + r2)/4000");
  private static final Formula SUM = Formula.of("R1R2", Unit.OHM, "Rsum + R1R2");
  private static final Formula SUM_COLD = Formula.of("R1R2,20", Unit.OHM, "Rsum + R1R2,20");
  private static final Formula QUARTER = Formula.of("R2", Unit.OHM, "R2/4");
  private static final Formula SUM_RETURN = Formula.of("R2", Unit.OHM, "Rsum + R2");
  static final Formula X = Formula.of("X", Unit.OHM, "L·x/(n·1000)");
  static final Formula X_ONE = Formula.of("X", Unit.OHM, "L·x·(n + 1)/(2·n·1000)");
  private static final Formula X_RING = Formula.of("X", Unit.OHM, "L·x/4000");
  private static final Formula SUM_X = Formula.of("X", Unit.OHM, "Xsum + X");
  private static final Formula STATED_X = Formula.of("x", Unit.MILLIOHM_PER_M, "2·x1");

  /** Line and protective conductor of all cables in series. */
  public static LoopPart earth(Circuit circuit, LiveConductors live, Dossier d) {
    LoopPart sum = null;
    for (Cable cable : Wiring.cables(circuit)) {
      LoopPart part = earth(cable, live, d);
      sum = sum == null ? part : sum.plus(part, SUM, d);
    }
    return sum;
  }

  /** Line and neutral of all cables in series. */
  public static LoopPart neutral(Circuit circuit, Dossier d) {
    LoopPart sum = null;
    for (Cable cable : Wiring.cables(circuit)) {
      LoopPart part = neutral(cable, d);
      sum = sum == null ? part : sum.plus(part, SUM_N, d);
    }
    return sum;
  }

  private static LoopPart earth(Cable cable, LiveConductors live, Dossier d) {
    Figure length = Wiring.length(cable, d);
    Figure count = count(cable);
    Figure r1 = Resistance.line(cable, d);
    Figure r2 = Resistance.protective(cable, live, d);
    Figure factor = Temperature.factor(cable, d);
    Figure line = d.working().step(LINE, length, r1, factor, count);
    Figure back = back(cable, length, r2, d);
    Figure hot = d.working().step(cable.ring() ? RING : RADIAL, line, back);
    Figure cold =
        cable.ring()
            ? d.working().step(COLD_RING, length, r1, r2)
            : d.working().step(shared(cable) ? COLD_ONE : COLD, length, r1, r2, count);
    Formula x = shared(cable) ? X_ONE : X;
    return new LoopPart(hot, cold, reactance(x, cable, length, count, d));
  }

  /**
   * The protective conductor, at operating temperature, Ω; one beside all cables is not divided.
   */
  static Figure back(Cable cable, Figure length, Figure r2, Dossier d) {
    Figure count = shared(cable) ? Figure.derived("n", 1, Unit.ONE) : count(cable);
    return ProtectiveConductors.apart(cable)
        ? d.working().step(RETURN_APART, length, r2, Temperature.separateFactor(d), count)
        : d.working().step(RETURN, length, r2, Temperature.factor(cable, d), count);
  }

  static boolean shared(Cable cable) {
    return cable.parallel() > 1 && ProtectiveConductors.beside(cable);
  }

  private static LoopPart neutral(Cable cable, Dossier d) {
    Figure length = Wiring.length(cable, d);
    Figure count = count(cable);
    Figure factor = Temperature.factor(cable, d);
    Figure line = d.working().step(LINE, length, Resistance.line(cable, d), factor, count);
    Figure back = d.working().step(NEUTRAL, length, Resistance.neutral(cable, d), factor, count);
    Figure hot = d.working().step(cable.ring() ? RING_N : RADIAL_N, line, back);
    return new LoopPart(hot, hot, reactance(X, cable, length, count, d).as("Xn"));
  }

  /** The protective conductors alone, at operating temperature, Ω. */
  public static Figure protective(Circuit circuit, LiveConductors live, Dossier d) {
    Figure sum = null;
    for (Cable cable : Wiring.cables(circuit)) {
      Figure length = Wiring.length(cable, d);
      Figure r2 = Resistance.protective(cable, live, d);
      Figure part = back(cable, length, r2, d);
      Figure own = cable.ring() ? d.working().step(QUARTER, part) : part;
      sum = sum == null ? own : d.working().step(SUM_RETURN, sum.as("Rsum"), own);
    }
    return sum;
  }

  /** Line conductors alone, there and back: a fault between lines. */
  public static LoopPart lines(Circuit circuit, Dossier d) {
    LoopPart sum = null;
    for (Cable cable : Wiring.cables(circuit)) {
      Figure length = Wiring.length(cable, d);
      Figure count = count(cable);
      Figure factor = Temperature.factor(cable, d);
      Figure line = d.working().step(LINE, length, Resistance.line(cable, d), factor, count);
      Figure hot = d.working().step(cable.ring() ? RING_LINES : RADIAL_LINES, line);
      LoopPart part = new LoopPart(hot, hot, reactance(X, cable, length, count, d));
      sum = sum == null ? part : sum.plus(part, SUM_LINES, d);
    }
    return sum;
  }

  private LoopPart plus(LoopPart next, Formula sum, Dossier d) {
    Figure both = d.working().step(sum, resistance.as("Rsum"), next.resistance);
    boolean earth = cold != resistance;
    return new LoopPart(
        both,
        earth ? d.working().step(SUM_COLD, cold.as("Rsum"), next.cold) : both,
        d.working()
            .step(SUM_X, reactance.as("Xsum"), next.reactance.as("X"))
            .as(reactance.symbol()));
  }

  static Figure count(Cable cable) {
    return cable.parallelCables() == null
        ? Figure.derived("n", 1, Unit.ONE)
        : new Figure(
            "n", cable.parallelCables(), Unit.ONE, new Pointer(cable.place(), "parallelCables"));
  }

  static Figure reactance(Formula radial, Cable cable, Figure length, Figure count, Dossier d) {
    Figure x = perMetre(cable, d);
    return cable.ring()
        ? d.working().step(X_RING, length, x)
        : d.working().step(radial, length, x, count);
  }

  /**
   * Reactance of the loop, mΩ/m: as stated, by the table of voltage drop, or by common practice.
   */
  static Figure perMetre(Cable cable, Dossier d) {
    if (cable.reactanceOhmPerKm() != null) {
      Pointer at = new Pointer(cable.place(), "reactanceOhmPerKm");
      return d.working().step(STATED_X, LeastOfConductor.reactance(cable, at, d));
    }
    Figure size = Wiring.lineCsa(cable, d);
    if (!size.known()) {
      return Figure.unknown("x", Unit.MILLIOHM_PER_M);
    }
    if (size.value() <= d.edition().constant(Constant.REACTANCE_RESISTIVE_UP_TO).number()) {
      return Figure.derived("x", 0, Unit.MILLIOHM_PER_M);
    }
    Table table = DropTables.of(cable, d.edition());
    Value tabled = table != null && table.has("2/x") ? table.at("2/x", size.value()) : null;
    if (tabled != null) {
      return Figure.of("x", tabled);
    }
    Pointer at = new Pointer(cable.place(), "reactanceOhmPerKm");
    // Single cores may lie apart, and their reactance grows with the distance: nothing stands for
    // it.
    if (cable.construction() == null || cable.construction() == Cable.Construction.SINGLES) {
      d.missing(at);
      return Figure.unknown("x", Unit.MILLIOHM_PER_M);
    }
    Value usual = d.edition().constant(Constant.REACTANCE_PER_CONDUCTOR);
    return d.working()
        .step(
            STATED_X,
            d.orAssume(
                "x1", null, at, usual, Allowance.TABLE_DEFAULTS, NoteCode.ASSUMED_REACTANCE));
  }
}
