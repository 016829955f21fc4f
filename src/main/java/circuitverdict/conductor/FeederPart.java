package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.quantity.Unit;

/**
 * What the cables of one circuit add to the impedances of every kind of fault at its far end (IEC
 * 60909-0, 6.4): at 20 °C for greatest currents, at operating temperature for least ones. On a ring
 * at its mid-point.
 *
 * @param line resistance of a line conductor, Ω
 * @param lineX its reactance, Ω
 * @param earth resistance of line and protective conductor, Ω
 * @param earthX their reactance, Ω
 * @param neutral resistance of line and neutral, Ω; unknown where there is no neutral
 * @param neutralX their reactance, Ω
 */
public record FeederPart(
    Figure line, Figure lineX, Figure earth, Figure earthX, Figure neutral, Figure neutralX) {
  private static final Formula LINE = Formula.of("R1,20", Unit.OHM, "L·r1/(n·1000)");
  private static final Formula BACK = Formula.of("R2,20", Unit.OHM, "L·r2/(n·1000)");
  private static final Formula NEUTRAL = Formula.of("Rn,20", Unit.OHM, "L·rn/(n·1000)");
  private static final Formula EARTH = Formula.of("R1R2,20", Unit.OHM, "R1,20 + R2,20");
  private static final Formula EARTH_RING = Formula.of("R1R2,20", Unit.OHM, "(R1,20 + R2,20)/4");
  private static final Formula PAIR = Formula.of("R1Rn,20", Unit.OHM, "R1,20 + Rn,20");
  private static final Formula PAIR_RING = Formula.of("R1Rn,20", Unit.OHM, "(R1,20 + Rn,20)/4");
  private static final Formula QUARTER = Formula.of("R1", Unit.OHM, "R1/4");
  private static final Formula QUARTER_COLD = Formula.of("R1,20", Unit.OHM, "R1,20/4");
  private static final Formula ONE_LINE = Formula.of("X1", Unit.OHM, "L·x/(2·n·1000)");
  private static final Formula ONE_LINE_RING = Formula.of("X1", Unit.OHM, "L·x/8000");
  private static final Formula SUM = Formula.of("Rc", Unit.OHM, "Rb + Rc");
  private static final Formula SUM_X = Formula.of("Xc", Unit.OHM, "Xb + Xc");

  /** Of all cables of a circuit in series, hot or at 20 °C. */
  public static FeederPart of(Circuit circuit, LiveConductors live, boolean hot, Dossier d) {
    FeederPart sum = null;
    for (Cable cable : Wiring.cables(circuit)) {
      FeederPart part = hot ? hot(cable, live, d) : cold(cable, live, d);
      sum = sum == null ? part : sum.plus(part, d);
    }
    return sum;
  }

  /** Of the first cable alone, at 20 °C: of a circuit with a ring, the ring. */
  public static FeederPart ofFirst(Circuit circuit, LiveConductors live, Dossier d) {
    return cold(circuit.cable(), live, d);
  }

  /** Of what lies beyond the first cable, at operating temperature; null where nothing does. */
  public static FeederPart beyondFirst(Circuit circuit, LiveConductors live, Dossier d) {
    FeederPart sum = null;
    for (Cable cable : circuit.furtherCables()) {
      FeederPart part = hot(cable, live, d);
      sum = sum == null ? part : sum.plus(part, d);
    }
    return sum;
  }

  private static FeederPart hot(Cable cable, LiveConductors live, Dossier d) {
    Figure length = Wiring.length(cable, d);
    Figure count = LoopPart.count(cable);
    Figure factor = Temperature.factor(cable, d);
    Figure line = d.working().step(LoopPart.LINE, length, Resistance.line(cable, d), factor, count);
    Figure back = LoopPart.back(cable, length, Resistance.protective(cable, live, d), d);
    Figure earth = d.working().step(cable.ring() ? LoopPart.RING : LoopPart.RADIAL, line, back);
    Figure pair = Figure.unknown("R1Rn", Unit.OHM);
    if (live.neutral()) {
      Figure rn = Resistance.neutral(cable, d);
      Figure neutral = d.working().step(LoopPart.NEUTRAL, length, rn, factor, count);
      pair = d.working().step(cable.ring() ? LoopPart.RING_N : LoopPart.RADIAL_N, line, neutral);
    }
    Figure one = cable.ring() ? d.working().step(QUARTER, line) : line;
    return withReactances(cable, one, earth, pair, d);
  }

  private static FeederPart cold(Cable cable, LiveConductors live, Dossier d) {
    Figure length = Wiring.length(cable, d);
    Figure count = LoopPart.count(cable);
    Figure line = d.working().step(LINE, length, Resistance.line(cable, d), count);
    Figure shared = LoopPart.shared(cable) ? Figure.derived("n", 1, Unit.ONE) : count;
    Figure back = d.working().step(BACK, length, Resistance.protective(cable, live, d), shared);
    Figure earth = d.working().step(cable.ring() ? EARTH_RING : EARTH, line, back);
    Figure pair = Figure.unknown("R1Rn,20", Unit.OHM);
    if (live.neutral()) {
      Figure neutral = d.working().step(NEUTRAL, length, Resistance.neutral(cable, d), count);
      pair = d.working().step(cable.ring() ? PAIR_RING : PAIR, line, neutral);
    }
    Figure one = cable.ring() ? d.working().step(QUARTER_COLD, line) : line;
    return withReactances(cable, one, earth, pair, d);
  }

  private static FeederPart withReactances(
      Cable cable, Figure line, Figure earth, Figure neutral, Dossier d) {
    Figure length = Wiring.length(cable, d);
    Figure count = LoopPart.count(cable);
    Figure x = LoopPart.perMetre(cable, d);
    Figure one =
        cable.ring()
            ? d.working().step(ONE_LINE_RING, length, x)
            : d.working().step(ONE_LINE, length, x, count);
    Formula loop = LoopPart.shared(cable) ? LoopPart.X_ONE : LoopPart.X;
    Figure earthX = LoopPart.reactance(loop, cable, length, count, d);
    Figure neutralX = LoopPart.reactance(LoopPart.X, cable, length, count, d);
    return new FeederPart(line, one, earth, earthX, neutral, neutralX);
  }

  private FeederPart plus(FeederPart next, Dossier d) {
    return new FeederPart(
        sum(SUM, line, next.line, "Rb", "Rc", d),
        sum(SUM_X, lineX, next.lineX, "Xb", "Xc", d),
        sum(SUM, earth, next.earth, "Rb", "Rc", d),
        sum(SUM_X, earthX, next.earthX, "Xb", "Xc", d),
        sum(SUM, neutral, next.neutral, "Rb", "Rc", d),
        sum(SUM_X, neutralX, next.neutralX, "Xb", "Xc", d));
  }

  private static Figure sum(
      Formula formula, Figure before, Figure next, String first, String second, Dossier d) {
    return d.working().step(formula, before.as(first), next.as(second));
  }
}
