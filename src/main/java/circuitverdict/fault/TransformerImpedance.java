package circuitverdict.fault;

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
 * Impedances of one transformer, or of several equal ones in parallel, on the side that it feeds
 * (IEC 60909-0, 6.3).
 *
 * @param ratedV rated voltage of that side, V
 * @param resistance RT of one, Ω
 * @param reactance XT of one, Ω
 * @param relative xT, its reactance relative to its own base
 * @param share zero-sequence impedance relative to the positive one
 * @param count how many in parallel
 */
record TransformerImpedance(
    Figure ratedV,
    Figure resistance,
    Figure reactance,
    Figure relative,
    Figure share,
    Figure count) {
  private static final Formula IMPEDANCE = Formula.of("ZT", Unit.OHM, "uk·Ur²/(100·Sr)");
  private static final Formula BY_LOSS = Formula.of("RT", Unit.OHM, "Pk·Ur²/Sr²");
  private static final Formula BY_RATIO = Formula.of("RT", Unit.OHM, "ZT·ρT/√(1 + ρT²)");
  private static final Formula REACTANCE = Formula.of("XT", Unit.OHM, "√(ZT² − RT²)");
  private static final Formula RELATIVE = Formula.of("xT", Unit.ONE, "XT·Sr/Ur²");
  private static final Formula SHARE = Formula.of("z0", Unit.ONE, "u0/uk");
  private static final Formula CORRECTION = Formula.of("KT", Unit.ONE, "kT·cmax/(1 + kX·xT)");
  private static final Formula R = Formula.of("RTc", Unit.OHM, "KT·RT/n");
  private static final Formula X = Formula.of("XTc", Unit.OHM, "KT·XT/n");
  private static final Formula R_ZERO = Formula.of("R0", Unit.OHM, "z0·RTc");
  private static final Formula X_ZERO = Formula.of("X0", Unit.OHM, "z0·XTc");

  /** Of the transformer as stated; what is missing is noted and leaves figures unknown. */
  static TransformerImpedance of(Transformer stated, Dossier d) {
    Figure power = need("Sr", stated.ratedPowerVA(), Unit.VOLT_AMPERE, "ratedPowerVA", d);
    Figure rated = need("Ur", stated.secondaryVoltageV(), Unit.VOLT, "secondaryVoltageV", d);
    Figure uk =
        need("uk", stated.impedanceVoltagePercent(), Unit.PERCENT, "impedanceVoltagePercent", d);
    Figure impedance = d.working().step(IMPEDANCE, uk, rated, power);
    Figure resistance;
    if (stated.loadLossW() == null && stated.resistanceToReactanceRatio() != null) {
      Double ratio = stated.resistanceToReactanceRatio();
      Figure given = need("ρT", ratio, Unit.ONE, "resistanceToReactanceRatio", d);
      resistance = d.working().step(BY_RATIO, impedance, given);
    } else {
      Figure loss = need("Pk", stated.loadLossW(), Unit.WATT, "loadLossW", d);
      resistance = d.working().step(BY_LOSS, loss, rated, power);
    }
    Figure reactance = d.working().step(REACTANCE, impedance, resistance);
    Figure relative = d.working().step(RELATIVE, reactance, power, rated);
    Figure count =
        stated.count() == null
            ? Figure.derived("n", 1, Unit.ONE)
            : new Figure("n", stated.count(), Unit.ONE, at("count"));
    return new TransformerImpedance(
        rated, resistance, reactance, relative, share(stated, uk, d), count);
  }

  /** Dyn windings have about the impedance of all three in each (common practice), listed. */
  private static Figure share(Transformer stated, Figure uk, Dossier d) {
    Pointer at = at("zeroSequenceImpedancePercent");
    Double zero = stated.zeroSequenceImpedancePercent();
    if (zero == null && d.allows(Allowance.TABLE_DEFAULTS) && uk.known()) {
      d.assumeCurable(NoteCode.ASSUMED_ZERO_SEQUENCE, at, uk);
      return Figure.derived("z0", 1, Unit.ONE);
    }
    return d.working().step(SHARE, d.need("u0", zero, Unit.PERCENT, at), uk);
  }

  /** KT of greatest currents, by the greatest voltage factor of the side that it feeds. */
  Figure correction(Figure greatestFactor, Dossier d) {
    return d.working()
        .step(
            CORRECTION,
            d.constant("kT", Constant.SHORT_CIRCUIT_TRANSFORMER_SHARE),
            greatestFactor.as("cmax"),
            d.constant("kX", Constant.SHORT_CIRCUIT_TRANSFORMER_REACTANCE),
            relative);
  }

  /** Positive-sequence and zero-sequence impedance of all in parallel, corrected. */
  Corrected corrected(Figure correction, Dossier d) {
    Figure r = d.working().step(R, correction, resistance, count);
    Figure x = d.working().step(X, correction, reactance, count);
    return new Corrected(
        r, x, d.working().step(R_ZERO, share, r), d.working().step(X_ZERO, share, x));
  }

  /**
   * Impedances with a correction, Ω.
   *
   * @param r positive-sequence resistance
   * @param x positive-sequence reactance
   * @param r0 zero-sequence resistance
   * @param x0 zero-sequence reactance
   */
  record Corrected(Figure r, Figure x, Figure r0, Figure x0) {}

  private static Figure need(String symbol, Double value, Unit unit, String member, Dossier d) {
    return d.need(symbol, value, unit, at(member));
  }

  private static Pointer at(String member) {
    return new Pointer(At.TRANSFORMER, member);
  }
}
