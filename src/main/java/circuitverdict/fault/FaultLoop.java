package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.conductor.LoopPart;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Loop impedance at the far end and the least fault current that follows from it (411.4.4, 434).
 *
 * @param least the formula of its least current
 * @param supply the part up to the supply point, Ω
 * @param part the circuit's own part
 * @param impedance of the whole loop, Zs, Ω
 */
public record FaultLoop(Formula least, Figure supply, LoopPart part, Figure impedance) {
  /** The formulas of a kind of loop, in its own symbols. */
  private record Kind(
      String reactance, Formula sum, Formula sumOfModuli, Formula phasors, Formula least) {
    static final Kind EARTH = of("Zdb", "Xdb", "R1R2", "X", "Zs", "Ief,min");
    static final Kind NEUTRAL = of("Zdb,n", "Xdb,n", "R1Rn", "Xn", "Zn", "Iln,min");

    private static Kind of(
        String supply, String reactance, String r, String x, String loop, String current) {
      String moduli = supply + " + √(" + r + "² + " + x + "²)";
      String resistance = "√(" + supply + "² − " + reactance + "²) + " + r;
      String phasors = "√((" + resistance + ")² + (" + reactance + " + " + x + ")²)";
      return new Kind(
          reactance,
          Formula.of(loop, Unit.OHM, supply + " + " + r),
          Formula.of(loop, Unit.OHM, moduli),
          Formula.of(loop, Unit.OHM, phasors),
          Formula.of(current, Unit.AMPERE, "Cmin·Uo/" + loop));
    }
  }

  private static final Formula LEAST_BETWEEN_LINES =
      Formula.of("Ill,min", Unit.AMPERE, "Cmin·√3·Uo/(2·Zdb + √(R1R1² + X²))");

  /** The earth fault loop. */
  public static FaultLoop earth(Circuit circuit, LiveConductors live, Dossier d) {
    return d.once(Topic.EARTH_LOOP, circuit, inner -> findEarth(circuit, live, inner));
  }

  private static FaultLoop findEarth(Circuit circuit, LiveConductors live, Dossier d) {
    Figure supply = SupplyLoop.earth(circuit, d);
    Figure reactance =
        d.given(
            Kind.EARTH.reactance, circuit.supply().loopReactanceOhm(), Unit.OHM, At.LOOP_REACTANCE);
    agree(supply, reactance, At.LOOP, d);
    return of(Kind.EARTH, supply, reactance, LoopPart.earth(circuit, live, d), d);
  }

  /** The line–neutral loop. */
  public static FaultLoop neutral(Circuit circuit, Dossier d) {
    return d.once(Topic.NEUTRAL_LOOP, circuit, inner -> findNeutral(circuit, inner));
  }

  private static FaultLoop findNeutral(Circuit circuit, Dossier d) {
    Figure supply = SupplyLoop.neutral(circuit, d);
    Pointer at = At.NEUTRAL_LOOP_REACTANCE;
    Figure reactance =
        d.given(
            Kind.NEUTRAL.reactance, circuit.supply().lineToNeutralLoopReactanceOhm(), Unit.OHM, at);
    agree(supply, reactance, At.NEUTRAL_LOOP, d);
    return of(Kind.NEUTRAL, supply, reactance, LoopPart.neutral(circuit, d), d);
  }

  /** A stated reactance may exceed the impedance that stands in: then that must be stated too. */
  private static void agree(Figure impedance, Figure reactance, Pointer at, Dossier d) {
    if (impedance.known()
        && reactance.known()
        && !Comparator.atMost(reactance.value(), impedance.value())) {
      d.missing(at);
    }
  }

  private static FaultLoop of(
      Kind kind, Figure supply, Figure supplyReactance, LoopPart part, Dossier d) {
    Figure impedance;
    if (supplyReactance.known()) {
      impedance =
          d.working()
              .step(kind.phasors, supply, supplyReactance, part.resistance(), part.reactance());
    } else if (part.reactance().value() == 0) {
      impedance = d.working().step(kind.sum, supply, part.resistance());
    } else {
      impedance = d.working().step(kind.sumOfModuli, supply, part.resistance(), part.reactance());
    }
    return new FaultLoop(kind.least, supply, part, impedance);
  }

  /** Least fault current of the loop, A. */
  public Figure leastCurrent(Circuit circuit, Dossier d) {
    boolean earth = least == Kind.EARTH.least;
    Topic topic = earth ? Topic.LEAST_EARTH_CURRENT : Topic.LEAST_NEUTRAL_CURRENT;
    return d.once(topic, circuit, inner -> findLeast(circuit, inner));
  }

  private Figure findLeast(Circuit circuit, Dossier d) {
    Figure factor = d.constant("Cmin", Constant.CMIN);
    return d.working().step(least, factor, NominalVoltage.lineToEarth(circuit, d), impedance);
  }

  /**
   * Least current of a fault between two lines, A. The impedance of a line of the supply is no more
   * than that of its whole earth loop, which stands for it.
   */
  public static Figure leastBetweenLines(Circuit circuit, Dossier d) {
    return d.once(
        Topic.LEAST_CURRENT_BETWEEN_LINES, circuit, inner -> findBetweenLines(circuit, inner));
  }

  private static Figure findBetweenLines(Circuit circuit, Dossier d) {
    Figure supply = SupplyLoop.earth(circuit, d);
    LoopPart part = LoopPart.lines(circuit, d);
    Figure factor = d.constant("Cmin", Constant.CMIN);
    return d.working()
        .step(
            LEAST_BETWEEN_LINES,
            factor,
            NominalVoltage.lineToEarth(circuit, d),
            supply,
            part.resistance(),
            part.reactance());
  }
}
