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
import circuitverdict.quantity.Unit;

/**
 * Loop impedance at the far end and the least fault current that follows from it (411.4.4, 434).
 *
 * @param supply the part up to the supply point, Ω
 * @param part the circuit's own part
 * @param impedance of the whole loop, Zs, Ω
 */
public record FaultLoop(Figure supply, LoopPart part, Figure impedance) {
  private static final Formula SUM = Formula.of("Zs", Unit.OHM, "Zdb + R1R2");
  private static final Formula SUM_OF_MODULI = Formula.of("Zs", Unit.OHM, "Zdb + √(R1R2² + X²)");
  private static final Formula PHASORS =
      Formula.of("Zs", Unit.OHM, "√((√(Zdb² − Xdb²) + R1R2)² + (Xdb + X)²)");
  private static final Formula LEAST = Formula.of("If,min", Unit.AMPERE, "Cmin·Uo/Zs");
  private static final Formula LEAST_BETWEEN_LINES =
      Formula.of("If,min", Unit.AMPERE, "Cmin·√3·Uo/(2·Zdb + √(R1R2² + X²))");

  /** The earth fault loop. */
  public static FaultLoop earth(Circuit circuit, LiveConductors live, Dossier d) {
    Figure supply = SupplyLoop.earth(circuit, d);
    Figure reactance =
        d.given("Xdb", circuit.supply().loopReactanceOhm(), Unit.OHM, At.LOOP_REACTANCE);
    return of(supply, reactance, LoopPart.earth(circuit, live, d), d);
  }

  /** The line–neutral loop. */
  public static FaultLoop neutral(Circuit circuit, Dossier d) {
    Figure supply = SupplyLoop.neutral(circuit, d);
    Pointer at = At.NEUTRAL_LOOP_REACTANCE;
    Figure reactance =
        d.given("Xdb", circuit.supply().lineToNeutralLoopReactanceOhm(), Unit.OHM, at);
    return of(supply, reactance, LoopPart.neutral(circuit, d), d);
  }

  private static FaultLoop of(Figure supply, Figure supplyReactance, LoopPart part, Dossier d) {
    Figure impedance;
    if (supplyReactance.known()) {
      impedance =
          d.working().step(PHASORS, supply, supplyReactance, part.resistance(), part.reactance());
    } else if (part.reactance().value() == 0) {
      impedance = d.working().step(SUM, supply, part.resistance());
    } else {
      impedance =
          d.working().step(SUM_OF_MODULI, supply, part.resistance(), part.reactance());
    }
    return new FaultLoop(supply, part, impedance);
  }

  /** Least fault current of the loop, A. */
  public Figure leastCurrent(Circuit circuit, Dossier d) {
    Figure factor = d.constant("Cmin", "voltage", "cmin");
    return d.working().step(LEAST, factor, NominalVoltage.lineToEarth(circuit, d), impedance);
  }

  /**
   * Least current of a fault between two lines, A. The impedance of a line of the supply is no more
   * than that of its whole earth loop, which stands for it.
   */
  public static Figure leastBetweenLines(Circuit circuit, Dossier d) {
    Figure supply = SupplyLoop.earth(circuit, d);
    LoopPart part = LoopPart.lines(circuit, d);
    Figure factor = d.constant("Cmin", "voltage", "cmin");
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
