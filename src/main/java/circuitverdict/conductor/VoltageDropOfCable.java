package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;

/**
 * Voltage drop along one cable, V (525, Appendix 4 section 6): z whatever the power factor up to 16
 * mm²; above, r·cosφ + x·sinφ, and z where the power factor is not stated. A ring has a quarter of
 * the drop of its whole loop. An edition without those tables has the formula of {@link AnnexDrop}.
 */
public final class VoltageDropOfCable {
  private static final Formula RADIAL = Formula.of("ΔU", Unit.VOLT, "ct·mV·Ib·L/(n·1000)");
  private static final Formula RING = Formula.of("ΔU", Unit.VOLT, "ct·mV·Ib·L/4000");
  static final Formula PHASED =
      Formula.of("mV", Unit.MILLIVOLT_PER_AMPERE_METRE, "r·cosφ + x·√(1 − cosφ²)");
  static final Formula MODULUS = Formula.of("mV", Unit.MILLIVOLT_PER_AMPERE_METRE, "√(r² + x²)");
  private static final Formula TWO_WAY =
      Formula.of("r", Unit.MILLIVOLT_PER_AMPERE_METRE, "2·r1·Cθ");
  private static final Formula TO_NEUTRAL =
      Formula.of("r", Unit.MILLIVOLT_PER_AMPERE_METRE, "(r1 + rn)·Cθ");
  private static final Formula THREE_WAY =
      Formula.of("r", Unit.MILLIVOLT_PER_AMPERE_METRE, "√3·r1·Cθ");
  private static final Formula TWO_WAY_X = Formula.of("x", Unit.MILLIVOLT_PER_AMPERE_METRE, "2·x1");
  private static final Formula THREE_WAY_X =
      Formula.of("x", Unit.MILLIVOLT_PER_AMPERE_METRE, "√3·x1");

  private VoltageDropOfCable() {}

  /** The drop with a temperature correction {@code ct}, 1 for none. */
  public static Figure volts(
      Cable cable, Load load, LiveConductors live, Figure current, Figure ct, Dossier d) {
    Figure perMetre = perMetre(cable, load, live, d);
    Figure length = Wiring.length(cable, d);
    if (cable.ring()) {
      return d.working().step(RING, ct, perMetre, current, length);
    }
    Figure count =
        cable.parallelCables() == null
            ? Figure.derived("n", 1, Unit.ONE)
            : new Figure(
                "n",
                cable.parallelCables(),
                Unit.ONE,
                new Pointer(cable.place(), "parallelCables"));
    return d.working().step(RADIAL, ct, perMetre, current, length, count);
  }

  private static Figure perMetre(Cable cable, Load load, LiveConductors live, Dossier d) {
    Figure cosine = d.given("cosφ", load.powerFactor(), Unit.ONE, At.POWER_FACTOR);
    if (cable.lineResistanceOhmPerKm() != null) {
      return live == null ? unknown() : stated(cable, live, cosine, d);
    }
    if (d.edition().has(TableName.VOLTAGE_DROP_FORMULA)) {
      return AnnexDrop.perMetre(cable, live, cosine, d);
    }
    boolean three = live != null && live.threePhase();
    Figure smaller = three ? Wiring.lineCsa(cable, d) : Wiring.ratedCsa(cable, live, d);
    Double size = smaller.known() ? smaller.value() : null;
    d.need(cable.construction(), new Pointer(cable.place(), "construction"));
    d.need(cable.insulation(), new Pointer(cable.place(), "insulation"));
    Cable.Metal metal = Wiring.metal(cable, d);
    Table table = DropTables.of(cable, d.edition());
    if (live == null
        || size == null
        || metal == null
        || cable.construction() == null
        || cable.insulation() == null) {
      return unknown();
    }
    Pointer at = new Pointer(cable.place(), "lineCsaMm2");
    if (table == null || metal != Cable.Metal.COPPER) {
      d.missing(NoteCode.NOT_IN_TABLES, new Pointer(cable.place(), "conductor"));
      return unknown();
    }
    Columns ways = three ? Columns.THREE : Columns.TWO;
    if (table.has(ways.x) && table.at(ways.x, size) != null && cosine.known()) {
      Figure r = Figure.of("r", table.at(ways.r, size));
      Figure x = Figure.of("x", table.at(ways.x, size));
      return d.working().step(PHASED, r, cosine, x);
    }
    String column = table.has(ways.z) ? ways.z : ways.drop;
    return d.working()
        .look(d.tabled("mV", table.at(column, size), Unit.MILLIVOLT_PER_AMPERE_METRE, at));
  }

  /** Columns for two conductors that carry the load, or three. */
  private enum Columns {
    TWO("2"),
    THREE("3");

    private final String r;
    private final String x;
    private final String z;
    private final String drop;

    Columns(String ways) {
      this.r = (ways + "/r").intern();
      this.x = (ways + "/x").intern();
      this.z = (ways + "/z").intern();
      this.drop = ("drop/" + ways).intern();
    }
  }

  private static Figure unknown() {
    return Figure.unknown("mV", Unit.MILLIVOLT_PER_AMPERE_METRE);
  }

  /** From a stated resistance; the reactance must be stated above 16 mm², where it matters. */
  private static Figure stated(Cable cable, LiveConductors live, Figure cosine, Dossier d) {
    boolean three = live.threePhase();
    Figure line = Resistance.line(cable, d);
    Figure factor = Temperature.factor(cable, d);
    Figure resistance =
        live.lines() == 1
            ? d.working().step(TO_NEUTRAL, line, Resistance.neutral(cable, d), factor)
            : d.working().step(three ? THREE_WAY : TWO_WAY, line, factor);
    boolean small =
        cable.lineCsaMm2() != null
            && cable.lineCsaMm2()
                <= d.edition().constant(Constant.REACTANCE_RESISTIVE_UP_TO).number();
    if (small && cable.reactanceOhmPerKm() == null) {
      return d.working().look(resistance.as("mV"));
    }
    Pointer at = new Pointer(cable.place(), "reactanceOhmPerKm");
    Figure stated =
        cable.reactanceOhmPerKm() == null
            ? d.need("x1", null, Unit.OHM_PER_KM, at)
            : LeastOfConductor.reactance(cable, at, d);
    Figure reactance = d.working().step(three ? THREE_WAY_X : TWO_WAY_X, stated);
    return cosine.known()
        ? d.working().step(PHASED, resistance, cosine, reactance)
        : d.working().step(MODULUS, resistance, reactance);
  }
}
