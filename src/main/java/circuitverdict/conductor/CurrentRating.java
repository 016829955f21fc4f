package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Unit;

/**
 * What a cable carries continuously as installed (523, Appendix 4): Iz = n·It·Ca·Cg·Ci·Cs·Ch.
 *
 * @param tabulated It, A
 * @param factors product of the rating factors, F
 * @param count cables in parallel, n
 * @param installed Iz, A
 * @param ambient Ca, for the temperature correction of voltage drop
 * @param grouping Cg, likewise
 */
public record CurrentRating(
    Figure tabulated,
    Figure factors,
    Figure count,
    Figure installed,
    Figure ambient,
    Figure grouping) {
  private static final Formula PRODUCT = Formula.of("F", Unit.ONE, "Ca·Cg·Ci·Cs·Ch");
  private static final Formula INSTALLED = Formula.of("Iz", Unit.AMPERE, "n·It·F");

  /** The rating of one cable of a circuit. */
  public static CurrentRating of(Circuit circuit, Cable cable, LiveConductors live, Dossier d) {
    return d.once(Topic.RATING, cable, inner -> find(circuit, cable, live, inner));
  }

  private static CurrentRating find(Circuit circuit, Cable cable, LiveConductors live, Dossier d) {
    Figure tabulated = RatingTables.tabulated(cable, live, d);
    RatingFactors factors = new RatingFactors(cable, d);
    Figure ambient = d.working().look(factors.ambient());
    Figure grouping = d.working().look(factors.grouping());
    Figure insulation = d.working().look(factors.insulation());
    Figure soil = factors.soil();
    Figure harmonics = factors.harmonics(circuit, live);
    Figure group = d.working().step(PRODUCT, ambient, grouping, insulation, soil, harmonics);
    Figure product = GroupOverload.factor(circuit, cable, live, group, grouping, tabulated, d);
    Figure count =
        cable.parallelCables() == null
            ? Figure.derived("n", 1, Unit.ONE)
            : new Figure(
                "n",
                cable.parallelCables(),
                Unit.ONE,
                new Pointer(cable.place(), "parallelCables"));
    if (tabulated.known() && RatingTables.heldByTerminals(cable, d)) {
      d.remark(NoteCode.TERMINALS_LIMIT);
    }
    return new CurrentRating(
        tabulated,
        product,
        count,
        d.working().step(INSTALLED, count, tabulated, product),
        ambient,
        grouping);
  }
}
