package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Resistance of conductors at 20 °C, Ω/km: as stated, if physics lets it be, or by IEC 60228; of
 * armour by its own table.
 */
public final class Resistance {
  private static final Formula BESIDE = Formula.of("r2", Unit.OHM_PER_KM, "ra·rc/(ra + rc)");

  private Resistance() {}

  /** Of a line conductor, r1. */
  public static Figure line(Cable cable, Dossier d) {
    return live("r1", cable, Wiring.lineCsa(cable, d), d);
  }

  /** Of the neutral, rn. */
  public static Figure neutral(Cable cable, Dossier d) {
    Figure size = Wiring.neutralCsa(cable, d);
    boolean asLine = cable.lineCsaMm2() != null && size.value() == cable.lineCsaMm2();
    return asLine
        ? live("rn", cable, size, d)
        : ofSize("rn", cable, Wiring.metal(cable, d), size, d);
  }

  private static Figure live(String symbol, Cable cable, Figure size, Dossier d) {
    Cable.Metal metal = Wiring.metal(cable, d);
    if (cable.lineResistanceOhmPerKm() != null) {
      return LeastOfConductor.held(
          symbol,
          cable.lineResistanceOhmPerKm(),
          new Pointer(cable.place(), "lineResistanceOhmPerKm"),
          LeastOfConductor.resistance(metal, size, d),
          d);
    }
    return ofSize(symbol, cable, metal, size, d);
  }

  /** Of the protective conductor, r2; {@code live} tells how many cores an armoured cable has. */
  public static Figure protective(Cable cable, LiveConductors live, Dossier d) {
    if (cable.protectiveResistanceOhmPerKm() != null) {
      return LeastOfConductor.held(
          "r2",
          cable.protectiveResistanceOhmPerKm(),
          new Pointer(cable.place(), "protectiveResistanceOhmPerKm"),
          LeastOfConductor.protective(cable, d),
          d);
    }
    ProtectiveMeans means = ProtectiveConductors.means(cable, d);
    if (means == null) {
      return Figure.unknown("r2", Unit.OHM_PER_KM);
    }
    return switch (means) {
      case CORE, SEPARATE -> core("r2", cable, d);
      case ARMOUR -> armour("r2", cable, live, d);
      case ARMOUR_AND_CORE ->
          d.working().step(BESIDE, armour("ra", cable, live, d), core("rc", cable, d));
      case STEEL_CONDUIT, STEEL_TRUNKING, SHEATH ->
          d.need(
              "r2",
              null,
              Unit.OHM_PER_KM,
              new Pointer(cable.place(), "protectiveResistanceOhmPerKm"));
    };
  }

  private static Figure core(String symbol, Cable cable, Dossier d) {
    return ofSize(
        symbol, cable, ProtectiveConductors.metal(cable, d), ProtectiveConductors.csa(cable, d), d);
  }

  private static Figure armour(String symbol, Cable cable, LiveConductors live, Dossier d) {
    Pointer at = new Pointer(cable.place(), "armourResistanceOhmPerKm");
    Double stated = cable.armourResistanceOhmPerKm();
    if (stated != null) {
      return LeastOfConductor.held(symbol, stated, at, LeastOfConductor.armour(cable, d), d);
    }
    if (live == null || cable.lineCsaMm2() == null) {
      return d.need(symbol, null, Unit.OHM_PER_KM, at);
    }
    int cores = live.count() + (cable.protectiveMeans() == ProtectiveMeans.ARMOUR_AND_CORE ? 1 : 0);
    Value tabled =
        d.edition()
            .table(TableName.ARMOUR_RESISTANCE)
            .at("resistance", cable.lineCsaMm2(), (double) cores);
    return tabled == null ? d.need(symbol, null, Unit.OHM_PER_KM, at) : Figure.of(symbol, tabled);
  }

  private static Figure ofSize(
      String symbol, Cable cable, Cable.Metal metal, Figure size, Dossier d) {
    if (metal == null || !size.known()) {
      return Figure.unknown(symbol, Unit.OHM_PER_KM);
    }
    if (metal != Cable.Metal.COPPER) {
      d.missing(NoteCode.NOT_IN_TABLES, new Pointer(cable.place(), "conductor"));
      return Figure.unknown(symbol, Unit.OHM_PER_KM);
    }
    boolean flexible = cable.construction() == Cable.Construction.FLEXIBLE;
    Value tabled =
        d.edition()
            .table(TableName.CONDUCTOR_RESISTANCE)
            .at(flexible ? "copper/class-5" : "copper/class-2", size.value());
    return d.tabled(symbol, tabled, Unit.OHM_PER_KM, new Pointer(cable.place(), "lineCsaMm2"));
  }
}
