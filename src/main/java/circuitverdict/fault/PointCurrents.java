package circuitverdict.fault;

import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Fault currents at a point (IEC 60909-0, 5, 7 and 8), and the loops that go with the least ones;
 * unknown where a kind cannot flow or its path is not known.
 *
 * @param threePhase between three lines
 * @param twoPhase between two lines
 * @param neutral between line and neutral
 * @param earth between line and protective conductor
 * @param any greatest of any kind, A
 * @param earthLoop impedance and reactance of the earth fault loop, conductors hot
 * @param neutralLoop the same between line and neutral
 */
public record PointCurrents(
    Kind threePhase,
    Kind twoPhase,
    Kind neutral,
    Kind earth,
    Figure any,
    Loop earthLoop,
    Loop neutralLoop) {

  /**
   * Currents of one kind of fault, A.
   *
   * @param greatest initial symmetrical current, r.m.s., conductors at 20 °C
   * @param least the same, conductors at operating temperature
   * @param peak greatest peak
   */
  public record Kind(Figure greatest, Figure least, Figure peak) {
    private static final Kind NONE = new Kind(unknown(), unknown(), unknown());

    private static Figure unknown() {
      return Figure.unknown("I", Unit.AMPERE);
    }
  }

  /**
   * A fault loop.
   *
   * @param impedance its modulus, or the greatest that it may be, Ω
   * @param reactance Ω; unknown where an angle is not known
   */
  public record Loop(Figure impedance, Figure reactance) {}

  private record Names(Formula greatest, Formula least, Formula peak) {
    static Names of(String current, FaultKind kind) {
      String peak = "ip," + current.substring(1);
      return new Names(
          Formula.of(
              current + ",max",
              Unit.AMPERE,
              "cmax·U/(√3·" + kind.path(true).modulus().symbol() + ")"),
          Formula.of(
              current + ",min", Unit.AMPERE, "cmin·Uo/" + kind.path(false).modulus().symbol()),
          Formula.of(peak, Unit.AMPERE, "κ·√2·" + current + ",max"));
    }
  }

  private static final Names THREE = Names.of("Ik3", FaultKind.LINE);
  private static final Names TO_NEUTRAL = Names.of("Iln", FaultKind.NEUTRAL);
  private static final Names TO_EARTH = Names.of("Ief", FaultKind.EARTH);
  private static final Names OF_ANY = Names.of("Ia", FaultKind.ANY);
  private static final Formula TWO_MAX = Formula.of("Ik2,max", Unit.AMPERE, "√3·Ik3,max/2");
  private static final Formula TWO_MIN = Formula.of("Ik2,min", Unit.AMPERE, "√3·Ik3,min/2");
  private static final Formula TWO_PEAK = Formula.of("ip,k2", Unit.AMPERE, "κ·√2·Ik2,max");
  private static final Formula PEAK = Formula.of("κ", Unit.ONE, "κ0 + κ1/exp(κd·R20/X20)");

  static PointCurrents of(
      FaultLevel level,
      LiveConductors live,
      boolean tn,
      boolean accounted,
      VoltageFactors factors,
      Figure lineToEarth,
      Figure betweenLines,
      Dossier d) {
    Figure factor = peakFactor(level, d);
    Evaluation e = new Evaluation(level, factors, lineToEarth, betweenLines, factor, d);
    Kind lines = live.lines() > 1 ? e.kind(FaultKind.LINE, THREE) : Kind.NONE;
    Kind three = live.threePhase() ? lines : Kind.NONE;
    Kind two = lines == Kind.NONE ? Kind.NONE : between(lines, factor, d);
    Kind neutral = live.neutral() ? e.kind(FaultKind.NEUTRAL, TO_NEUTRAL) : Kind.NONE;
    Kind earth = e.kind(FaultKind.EARTH, TO_EARTH);
    Figure any = any(e, live, tn, accounted, lines, neutral, earth);
    return new PointCurrents(
        three,
        two,
        neutral,
        earth,
        any,
        loop(level, FaultKind.EARTH, d),
        loop(level, FaultKind.NEUTRAL, d));
  }

  /**
   * The greatest of the kinds that can flow here, all known; where one of the supply's is stated as
   * such, that followed to here, unless it is {@code accounted} for by a kind that is stated.
   */
  private static Figure any(
      Evaluation e,
      LiveConductors live,
      boolean tn,
      boolean accounted,
      Kind lines,
      Kind neutral,
      Kind earth) {
    boolean all =
        (live.lines() == 1 || lines.greatest().known())
            && (!live.neutral() || neutral.greatest().known())
            && (!tn || earth.greatest().known());
    boolean asSuch = e.level.path(FaultKind.ANY, true) != null;
    if (asSuch && !(all && accounted)) {
      return e.kind(FaultKind.ANY, OF_ANY).greatest();
    }
    Figure greatest =
        Figure.greater(Figure.greater(lines.greatest(), neutral.greatest()), earth.greatest());
    return all ? greatest : Figure.unknown("Ia,max", Unit.AMPERE);
  }

  private static Figure peakFactor(FaultLevel level, Dossier d) {
    PathImpedance line = level.path(FaultKind.LINE, true);
    return line == null || !line.resolved()
        ? Figure.unknown("κ", Unit.ONE)
        : d.working()
            .step(
                PEAK,
                d.constant("κ0", Constant.SHORT_CIRCUIT_PEAK_CONSTANT),
                d.constant("κ1", Constant.SHORT_CIRCUIT_PEAK_EXPONENTIAL),
                d.constant("κd", Constant.SHORT_CIRCUIT_PEAK_DECAY),
                line.resistance(),
                line.reactance());
  }

  private static Kind between(Kind lines, Figure factor, Dossier d) {
    Figure greatest = d.working().step(TWO_MAX, lines.greatest());
    Figure least = d.working().step(TWO_MIN, lines.least());
    return new Kind(greatest, least, d.working().step(TWO_PEAK, factor, greatest));
  }

  private static Loop loop(FaultLevel level, FaultKind kind, Dossier d) {
    PathImpedance path = level.path(kind, false);
    boolean resolved = path != null && path.resolved();
    return new Loop(
        level.modulus(kind, false, d), resolved ? path.reactance() : Figure.unknown("X", Unit.OHM));
  }

  /** What the currents of one point have in common. */
  private record Evaluation(
      FaultLevel level,
      VoltageFactors factors,
      Figure lineToEarth,
      Figure betweenLines,
      Figure peakFactor,
      Dossier d) {
    Kind kind(FaultKind kind, Names names) {
      Figure near = level.modulus(kind, true, d);
      Figure far = level.modulus(kind, false, d);
      Figure greatest = d.working().step(names.greatest(), factors.greatest(), betweenLines, near);
      Figure least = d.working().step(names.least(), factors.least(), lineToEarth, far);
      return new Kind(greatest, least, d.working().step(names.peak(), peakFactor, greatest));
    }
  }
}
