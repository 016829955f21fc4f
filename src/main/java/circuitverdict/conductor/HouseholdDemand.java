package circuitverdict.conductor;

import circuitverdict.circuit.Load;
import circuitverdict.circuit.Load.DemandRule;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Current demand of household cooking appliances (On-Site Guide, Appendix A): 10 A of the rated
 * current and 30 % of the rest, and 5 A for a socket-outlet in the control unit.
 */
final class HouseholdDemand {
  private static final Formula COOKING =
      Formula.of("Ib", Unit.AMPERE, "min(Ir; Iw) + ks·max(Ir − Iw; 0)");
  private static final Formula WITH_OUTLET =
      Formula.of("Ib", Unit.AMPERE, "min(Ir; Iw) + ks·max(Ir − Iw; 0) + Is");

  private HouseholdDemand() {}

  /** Of the whole rated current; unknown, and missing, where the edition has no such guide. */
  static Figure of(Load load, Figure whole, String place, Dossier d) {
    Pointer at = new Pointer(place, "demandRule");
    if (!d.edition().has(Constant.HOUSEHOLD_DEMAND_COOKING_WHOLE)) {
      d.missing(NoteCode.NOT_IN_TABLES, at);
      return Figure.unknown("Ib", Unit.AMPERE);
    }
    Figure full = d.constant("Iw", Constant.HOUSEHOLD_DEMAND_COOKING_WHOLE);
    Figure share = d.constant("ks", Constant.HOUSEHOLD_DEMAND_COOKING_REST);
    Figure outlet = d.constant("Is", Constant.HOUSEHOLD_DEMAND_COOKING_SOCKET_OUTLET);
    boolean with = load.demandRule() == DemandRule.HOUSEHOLD_COOKING_WITH_SOCKET_OUTLET;
    Figure rated = whole.as("Ir");
    Figure demand =
        with
            ? d.working().step(WITH_OUTLET, rated, full, share, outlet)
            : d.working().step(COOKING, rated, full, share);
    if (demand.known()) {
      // What is drawn at once may be more or less: no failure rests on it.
      d.assumeCurable(NoteCode.ASSUMED_HOUSEHOLD_DEMAND, at, demand);
    }
    return demand;
  }
}
