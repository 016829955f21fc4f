package circuitverdict.conductor;

import circuitverdict.circuit.Load;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;

/**
 * Current demand by kind of load (On-Site Guide, Appendix A): so much of the rated current in full,
 * of the rest a share, and so much for a socket-outlet. Cooking appliances draw so much themselves;
 * the other rules hold between final circuits.
 */
final class GuideDemand {
  private static final Formula DEMAND =
      Formula.of("Ib", Unit.AMPERE, "min(Ir; Iw) + ks·max(Ir − Iw; 0) + Is");

  private GuideDemand() {}

  /** Of the whole rated current; unknown, and missing, where the edition has no such guide. */
  static Figure of(Load load, Figure whole, String place, Dossier d) {
    Pointer at = new Pointer(place, "demandRule");
    Table guide = d.edition().table(TableName.GUIDE_DEMAND);
    if (!d.edition().has(TableName.GUIDE_DEMAND)) {
      d.missing(NoteCode.NOT_IN_TABLES, at);
      return Figure.unknown("Ib", Unit.AMPERE);
    }
    String rule = load.demandRule().word();
    Figure demand =
        d.working()
            .step(
                DEMAND,
                whole.as("Ir"),
                Figure.of("Iw", guide.at("whole", rule)),
                Figure.of("ks", guide.at("rest", rule)),
                Figure.of("Is", guide.at("outlet", rule)));
    if (demand.known()) {
      // What is drawn at once may be more or less: no failure rests on it.
      d.assumeCurable(NoteCode.ASSUMED_GUIDE_DEMAND, at, demand);
    }
    return demand;
  }
}
