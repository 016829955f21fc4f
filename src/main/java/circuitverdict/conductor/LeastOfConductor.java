package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.Metal;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * The least that a conductor can have by physics: of resistance that of its whole section, ρ/S,
 * less what tolerances and readings may take off. What is stated below it, as in another unit, is
 * not believed; nor is what no section is stated for.
 */
final class LeastOfConductor {
  private static final Formula LEAST = Formula.of("r,min", Unit.OHM_PER_KM, "kr·ρ/S");
  private static final Formula BESIDE =
      Formula.of("r,min", Unit.OHM_PER_KM, "ra,min·rc,min/(ra,min + rc,min)");

  private LeastOfConductor() {}

  /** Least resistance at 20 °C of a conductor of this metal and section. */
  static Figure resistance(Metal metal, Figure section, Dossier d) {
    if (metal == null || !section.known()) {
      return Figure.unknown("r,min", Unit.OHM_PER_KM);
    }
    return d.working()
        .step(
            LEAST,
            d.constant("kr", Constant.LEAST_RESISTANCE_SHARE),
            d.constant("ρ", resistivity(metal)),
            section.as("S"));
  }

  private static Constant resistivity(Metal metal) {
    return switch (metal) {
      case COPPER -> Constant.RESISTIVITY_COPPER;
      case ALUMINIUM -> Constant.RESISTIVITY_ALUMINIUM;
      case STEEL -> Constant.RESISTIVITY_STEEL;
      case LEAD -> Constant.RESISTIVITY_LEAD;
    };
  }

  /** Of what serves as protective conductor. */
  static Figure protective(Cable cable, Dossier d) {
    ProtectiveMeans means = ProtectiveConductors.means(cable, d);
    if (means == ProtectiveMeans.ARMOUR) {
      return armour(cable, d);
    }
    Figure core =
        resistance(ProtectiveConductors.metal(cable, d), ProtectiveConductors.csa(cable, d), d);
    return means == ProtectiveMeans.ARMOUR_AND_CORE
        ? d.working().step(BESIDE, armour(cable, d).as("ra,min"), core.as("rc,min"))
        : core;
  }

  /** Of the armour; beside a core the metal stated for the protective conductor is the core's. */
  static Figure armour(Cable cable, Dossier d) {
    boolean alone = cable.protectiveMeans() == ProtectiveMeans.ARMOUR;
    Metal metal = alone ? ProtectiveConductors.metal(cable, d) : Metal.STEEL;
    return resistance(metal, ProtectiveConductors.armour(cable, d), d);
  }

  /** What is stated, where it is no less than this; else unknown, and noted. */
  static Figure held(String symbol, double stated, Pointer at, Figure least, Dossier d) {
    if (least.known() && !Comparator.atMost(least.value(), stated)) {
      d.missing(NoteCode.BELOW_PHYSICS, at, least);
    }
    return Comparator.atMost(least.value(), stated)
        ? d.given(symbol, stated, Unit.OHM_PER_KM, at)
        : Figure.unknown(symbol, Unit.OHM_PER_KM);
  }

  /**
   * The stated reactance per conductor. Where the tables count none, up to 16 mm², it may be
   * neglected as well.
   */
  static Figure reactance(Cable cable, Pointer at, Dossier d) {
    double stated = cable.reactanceOhmPerKm();
    double neglected = d.edition().constant(Constant.REACTANCE_RESISTIVE_UP_TO).number();
    Double size = cable.lineCsaMm2();
    if (size != null && size <= neglected) {
      return d.given("x1", stated, Unit.OHM_PER_KM, at);
    }
    return held("x1", stated, at, d.constant("x1,min", Constant.LEAST_REACTANCE), d);
  }
}
