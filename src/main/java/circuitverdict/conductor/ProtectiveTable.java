package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Least cross-section of a protective conductor by Table 54.7, mm²: by the line conductor, and by
 * k1/k2 where the materials differ (543.1.4).
 *
 * @param actual its cross-section
 * @param least the least that the table allows
 */
public record ProtectiveTable(Figure actual, Figure least) {
  private static final Formula OF_LINE = Formula.of("S,min", Unit.SQUARE_MM, "fS·S·k1/k2");
  private static final Formula FIXED = Formula.of("S,min", Unit.SQUARE_MM, "S0·k1/k2");

  /** The comparison; figures are unknown where sizes, materials or k are. */
  public static ProtectiveTable of(Cable cable, Dossier d) {
    ProtectiveMeans means = ProtectiveConductors.means(cable, d);
    Figure actual =
        means == null
            ? Figure.unknown("S", Unit.SQUARE_MM)
            : ProtectiveConductors.section(cable, d);
    Figure line = Wiring.lineCsa(cable, d);
    Cable.Metal metal = Wiring.metal(cable, d);
    if (means == null
        || metal == null
        || !actual.known()
        || !line.known()
        || cable.insulation() == null) {
      return new ProtectiveTable(actual, Figure.unknown("S,min", Unit.SQUARE_MM));
    }
    double one = cable.lineCsaMm2();
    Value k1 = d.edition().table(TableName.K_LIVE).at("k", metal.word(), cable.insulation(), one);
    Cable.Metal own =
        means == ProtectiveMeans.ARMOUR_AND_CORE ? metal : ProtectiveConductors.metal(cable, d);
    Value k2 = own == null ? null : HeatLimit.k(cable, arrangement(cable, means), own, actual, d);
    if (k1 == null || k2 == null) {
      return new ProtectiveTable(actual, Figure.unknown("S,min", Unit.SQUARE_MM));
    }
    // A protective conductor of the line's own metal needs no factor, even where it starts colder.
    boolean same = own == metal;
    Figure first = same ? Figure.derived("k1", 1, Unit.ONE) : Figure.of("k1", k1);
    Figure second = same ? Figure.derived("k2", 1, Unit.ONE) : Figure.of("k2", k2);
    Table rule = d.edition().table(TableName.TABLE_54_7);
    Value perLine = rule.at("perLine", line.value());
    Figure least =
        perLine != null
            ? d.working().step(OF_LINE, Figure.of("fS", perLine), line, first, second)
            : d.working()
                .step(FIXED, Figure.of("S0", rule.at("fixed", line.value())), first, second);
    return new ProtectiveTable(actual, least);
  }

  private static String arrangement(Cable cable, ProtectiveMeans means) {
    return switch (means) {
      case CORE, ARMOUR_AND_CORE, SHEATH -> "incorporated";
      case SEPARATE -> ProtectiveConductors.apart(cable) ? "separate" : "incorporated";
      case ARMOUR -> "armour";
      case STEEL_CONDUIT, STEEL_TRUNKING -> "conduit";
    };
  }
}
