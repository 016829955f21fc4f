package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * The energy that a conductor stands, k²S² in A²s (434.5.2, Table 43.1; 543.1.3, Tables 54.2 to
 * 54.5). Of parallel conductors, and of the legs of a ring, one alone counts: a fault near the end
 * flows in one.
 */
public final class HeatLimit {
  private static final Formula LIMIT = Formula.of("k²S²", Unit.AMPERE_SQUARED_SECOND, "k²·S²");

  private static final String SEPARATE = "separate";

  private HeatLimit() {}

  /** Of a line conductor. */
  public static Figure line(Cable cable, Dossier d) {
    return d.once(
        Topic.HEAT_LIMIT_LINE, cable, inner -> live(cable, Wiring.lineCsa(cable, inner), inner));
  }

  /** Of the neutral. */
  public static Figure neutral(Cable cable, Dossier d) {
    return d.once(
        Topic.HEAT_LIMIT_NEUTRAL,
        cable,
        inner -> live(cable, Wiring.neutralCsa(cable, inner), inner));
  }

  private static Figure live(Cable cable, Figure size, Dossier d) {
    Cable.Metal metal = Wiring.metal(cable, d);
    Pointer at = new Pointer(cable.place(), "insulation");
    String insulation = d.need(cable.insulation(), at);
    if (metal == null || insulation == null || !size.known()) {
      return unknown();
    }
    Value k = d.edition().table(TableName.K_LIVE).at("k", metal.word(), insulation, size.value());
    return d.working().step(LIMIT, d.tabled("k", k, Unit.HEAT_FACTOR, at), size);
  }

  /**
   * Of the protective conductor; where armour and a core share the fault, of the better one alone.
   */
  public static Figure protective(Cable cable, Dossier d) {
    return d.once(Topic.HEAT_LIMIT_PROTECTIVE, cable, inner -> findProtective(cable, inner));
  }

  private static Figure findProtective(Cable cable, Dossier d) {
    ProtectiveMeans means = ProtectiveConductors.means(cable, d);
    if (means == null) {
      return unknown();
    }
    return switch (means) {
      case CORE -> core(cable, "incorporated", d);
      case SEPARATE ->
          core(cable, ProtectiveConductors.apart(cable) ? SEPARATE : "incorporated", d);
      case ARMOUR -> ofSteel(cable, "armour", ProtectiveConductors.armour(cable, d), d);
      case ARMOUR_AND_CORE -> better(cable, d);
      case STEEL_CONDUIT, STEEL_TRUNKING ->
          ofSteel(cable, "conduit", ProtectiveConductors.csa(cable, d), d);
      case SHEATH -> {
        d.missing(NoteCode.NOT_IN_TABLES, new Pointer(cable.place(), "protectiveMeans"));
        yield unknown();
      }
    };
  }

  private static Figure better(Cable cable, Dossier d) {
    Figure core = core(cable, "incorporated", d);
    if (cable.armourAreaMm2() == null) {
      d.assumeCurable(
          NoteCode.ASSUMED_CORE_ALONE, new Pointer(cable.place(), "armourAreaMm2"), core);
      return core;
    }
    return Figure.greater(core, ofSteel(cable, "armour", ProtectiveConductors.armour(cable, d), d));
  }

  private static Figure core(Cable cable, String arrangement, Dossier d) {
    Cable.Metal metal = ProtectiveConductors.metal(cable, d);
    return metal == null
        ? unknown()
        : of(cable, arrangement, metal, ProtectiveConductors.csa(cable, d), d);
  }

  private static Figure ofSteel(Cable cable, String arrangement, Figure area, Dossier d) {
    return of(cable, arrangement, Cable.Metal.STEEL, area, d);
  }

  private static Figure of(
      Cable cable, String arrangement, Cable.Metal metal, Figure size, Dossier d) {
    Pointer at = new Pointer(cable.place(), "insulation");
    String insulation = d.need(cable.insulation(), at);
    if (insulation == null || !size.known()) {
      return unknown();
    }
    return d.working()
        .step(
            LIMIT,
            d.tabled("k", k(cable, arrangement, metal, size, d), Unit.HEAT_FACTOR, at),
            size);
  }

  /**
   * Factor k of the protective conductor; null where the tables have none. The insulation stated is
   * the cable's: that of a separate conductor may be another, so the one that stands least counts.
   */
  static Value k(Cable cable, String arrangement, Cable.Metal metal, Figure size, Dossier d) {
    String insulation = arrangement.equals(SEPARATE) ? RatingTables.COOL : cable.insulation();
    return d.edition()
        .table(TableName.K_PROTECTIVE)
        .at("k", arrangement, metal.word(), insulation, size.value());
  }

  private static Figure unknown() {
    return Figure.unknown("k²S²", Unit.AMPERE_SQUARED_SECOND);
  }
}
