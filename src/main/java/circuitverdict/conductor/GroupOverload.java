package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Grouped circuits that are never all overloaded at once (Appendix 4, 5.1.2): It ≥ √(In² +
 * 0.48·Ib²·(1 − Cg²)/Cg²) before the other factors, and It·F ≥ Ib. Solved for the current up to
 * which the device may be rated it is a factor of the tabulated rating in place of F. Not for
 * rewireable fuses, rings, cables in parallel or in the ground.
 */
final class GroupOverload {
  private static final Formula RELIEVED =
      Formula.of("F", Unit.ONE, "√(Fg²/Cg² − ko·Ib²/It²·(1 − Cg²)/Cg²)");

  private GroupOverload() {}

  /** The factor to be used: that of the group as tabulated, or the greater one. */
  static Figure factor(
      Circuit circuit,
      Cable cable,
      LiveConductors live,
      Figure product,
      Figure grouping,
      Figure tabulated,
      Dossier d) {
    if (!Boolean.FALSE.equals(cable.installation().simultaneousOverload())
        || !d.edition().has(Constant.GROUP_OVERLOAD_LOAD_SHARE)
        || circuit.device() == null
        || "BS 3036".equals(circuit.device().data().standard())
        || cable.ring()
        || cable.parallel() > 1
        || cable.installation().buried()
        || !(grouping.value() < 1)) {
      return product;
    }
    Dossier trial = d.trial();
    Figure design = DesignCurrent.of(circuit, live, trial);
    boolean carries = Comparator.atMost(design.value(), tabulated.value() * product.value());
    if (!carries || trial.standsAtBest()) {
      return product;
    }
    DesignCurrent.of(circuit, live, d);
    d.remark(NoteCode.GROUP_NOT_OVERLOADED_TOGETHER);
    return d.working()
        .step(
            RELIEVED,
            product.as("Fg"),
            grouping,
            d.constant("ko", Constant.GROUP_OVERLOAD_LOAD_SHARE),
            design,
            tabulated);
  }
}
