package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Ct: voltage drop with conductors cooler than their limit because the load is less than the rating
 * (Appendix 4 section 6.1). Only for one radial cable up to 16 mm², with Ca ≥ 1 and not behind a
 * rewireable fuse; elsewhere, and in an edition without it, it is not known, and the uncorrected
 * drop counts.
 */
public final class TemperatureCorrection {
  private static final Formula CT =
      Formula.of("ct", Unit.ONE, "(θb + tp − max(Ca²·Cg² − Ib²/It²; 0)·(tp − θr))/(θb + tp)");

  private TemperatureCorrection() {}

  /** The correction, or an unknown figure where it may not be used. */
  public static Figure of(Circuit circuit, LiveConductors live, Figure current, Dossier d) {
    Cable cable = circuit.cable();
    boolean asTabled = !Boolean.FALSE.equals(cable.installation().simultaneousOverload());
    boolean ruled = asTabled && d.edition().has(Constant.VOLTAGE_DROP_CORRECTION_BASE);
    boolean single = circuit.furtherCables().isEmpty() && !cable.ring() && cable.parallel() == 1;
    if (!ruled || !single || circuit.device() == null || cable.lineCsaMm2() == null) {
      return unknown();
    }
    boolean small =
        Wiring.ratedCsa(cable, live, d).value()
            <= d.edition().constant(Constant.REACTANCE_RESISTIVE_UP_TO).number();
    boolean rewireable = "BS 3036".equals(circuit.device().data().standard());
    if (!small || rewireable || RatingTables.heldByTerminals(cable, d)) {
      return unknown();
    }
    CurrentRating rating = CurrentRating.of(circuit, cable, live, d);
    double known = rating.ambient().value() * rating.grouping().value();
    boolean otherFactors = !Comparator.atMost(known, rating.factors().value());
    if (!(rating.ambient().value() >= 1) || otherFactors) {
      return unknown();
    }
    return d.working()
        .step(
            CT,
            d.constant("θb", Constant.VOLTAGE_DROP_CORRECTION_BASE),
            Temperature.operating(cable, d).as("tp"),
            rating.ambient(),
            rating.grouping(),
            current,
            rating.tabulated(),
            d.constant("θr", Constant.VOLTAGE_DROP_CORRECTION_REFERENCE));
  }

  private static Figure unknown() {
    return Figure.unknown("ct", Unit.ONE);
  }
}
