package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Supply;
import circuitverdict.circuit.Supply.FaultCurrents;
import circuitverdict.circuit.Transformer;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.TransformerImpedance.Corrected;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * The paths of every kind of fault up to the supply point: of a transformer and the network before
 * it (IEC 60909-0), or by the figures that are stated for the point, declared or measured.
 */
final class FaultSource {
  private static final Formula R = Formula.of("RS", Unit.OHM, "Rq + RTc");
  private static final Formula X = Formula.of("XS", Unit.OHM, "Xq + XTc");
  private static final Formula LOOP_R = Formula.of("RL", Unit.OHM, "(2·RS + R0)/3");
  private static final Formula LOOP_X = Formula.of("XL", Unit.OHM, "(2·XS + X0)/3");
  private static final Formula BY_CURRENT = Formula.of("Zo", Unit.OHM, "cmax·U/(√3·If,max)");
  private static final Formula RESISTIVE = Formula.of("Rs", Unit.OHM, "√(Zs² − Xs²)");

  private FaultSource() {}

  /** What is known at the supply point of a circuit. */
  static FaultLevel of(Circuit circuit, VoltageFactors factors, Dossier d) {
    boolean tn = circuit.supply().earthing() != null && circuit.supply().earthing().tn();
    Transformer transformer = circuit.supply().source().transformer();
    if (transformer == null) {
      return stated(circuit, factors, d);
    }
    if (d.need(circuit.supply().earthing(), At.EARTHING) == Supply.Earthing.TT) {
      d.remark(NoteCode.TT_PATH);
    }
    FaultLevel level = new FaultLevel();
    TransformerImpedance impedance = TransformerImpedance.of(transformer, d);
    Supply.Source source = circuit.supply().source();
    Figure rated = impedance.ratedV();
    GridImpedance greatest =
        GridImpedance.forGreatest(source.grid(), transformer, rated, factors.greatest(), d);
    add(level, true, tn, greatest, impedance, impedance.correction(factors.greatest(), d), d);
    GridImpedance least =
        GridImpedance.forLeast(source.grid(), transformer, rated, factors.least(), d);
    Figure none = d.constant("KT", Constant.SHORT_CIRCUIT_TRANSFORMER_LEAST);
    add(level, false, tn, least, impedance, none, d);
    return level;
  }

  private static void add(
      FaultLevel level,
      boolean cold,
      boolean tn,
      GridImpedance grid,
      TransformerImpedance transformer,
      Figure correction,
      Dossier d) {
    Corrected corrected = transformer.corrected(correction, d);
    Figure r = d.working().step(R, grid.resistance(), corrected.r());
    Figure x = d.working().step(X, grid.reactance(), corrected.x());
    level.put(PathImpedance.of(FaultKind.LINE, cold, r, x));
    Figure loopR = d.working().step(LOOP_R, r, corrected.r0());
    Figure loopX = d.working().step(LOOP_X, x, corrected.x0());
    level.put(PathImpedance.of(FaultKind.NEUTRAL, cold, loopR, loopX));
    if (tn) {
      level.put(PathImpedance.of(FaultKind.EARTH, cold, loopR, loopX));
    }
  }

  /** By the figures of the point: moduli, of which angles are not known unless stated. */
  private static FaultLevel stated(Circuit circuit, VoltageFactors factors, Dossier d) {
    FaultLevel level = new FaultLevel();
    Supply supply = circuit.supply();
    FaultCurrents currents = supply.faultCurrents();
    byCurrent(
        level, FaultKind.LINE, currents.threePhaseA(), At.THREE_PHASE_CURRENT, circuit, factors, d);
    byCurrent(
        level, FaultKind.EARTH, currents.lineToEarthA(), At.EARTH_CURRENT, circuit, factors, d);
    byCurrent(
        level,
        FaultKind.NEUTRAL,
        currents.lineToNeutralA(),
        At.NEUTRAL_CURRENT,
        circuit,
        factors,
        d);
    byCurrent(
        level,
        FaultKind.ANY,
        supply.maximumFaultCurrentA(),
        At.MAXIMUM_CURRENT,
        circuit,
        factors,
        d);
    Double x = supply.loopReactanceOhm();
    byLoop(level, FaultKind.EARTH, SupplyLoop.earth(circuit, d), x, At.LOOP_REACTANCE, d);
    Double xn = supply.lineToNeutralLoopReactanceOhm();
    Pointer at = At.NEUTRAL_LOOP_REACTANCE;
    byLoop(level, FaultKind.NEUTRAL, SupplyLoop.neutral(circuit, d), xn, at, d);
    return level;
  }

  private static void byCurrent(
      FaultLevel level,
      FaultKind kind,
      Double ampere,
      Pointer at,
      Circuit circuit,
      VoltageFactors factors,
      Dossier d) {
    if (ampere == null) {
      return;
    }
    Figure current = GreatestCurrent.read(ampere, at, circuit.supply(), d);
    Figure voltage = NominalVoltage.betweenLines(NominalVoltage.lineToEarth(circuit, d), d);
    Figure modulus = d.working().step(BY_CURRENT, factors.greatest(), voltage, current);
    level.put(PathImpedance.ofModulus(kind, true, modulus));
  }

  private static void byLoop(
      FaultLevel level, FaultKind kind, Figure loop, Double reactance, Pointer at, Dossier d) {
    if (!loop.known()) {
      return;
    }
    if (reactance == null || reactance > loop.value()) {
      level.put(PathImpedance.ofModulus(kind, false, loop));
      return;
    }
    Figure x = d.given("Xs", reactance, Unit.OHM, at);
    Figure r = d.working().step(RESISTIVE, loop.as("Zs"), x);
    level.put(PathImpedance.of(kind, false, r, x));
  }
}
