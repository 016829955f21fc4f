package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.LiveConductors;
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
 * Voltage drop per ampere and metre, mV/A/m, by the formula of IEC 60364-5-52 annex G: b·(ρ1/S·cosφ
 * + λ·sinφ), b 2 of one line and its return; of three phases √3, line to line. Where the power
 * factor is not stated the worst of any counts, not the 0.8 of the annex.
 */
final class AnnexDrop {
  private static final Formula TWO_WAY = Formula.of("r", Unit.MILLIVOLT_PER_AMPERE_METRE, "2·ρ1/S");
  private static final Formula THREE_WAY =
      Formula.of("r", Unit.MILLIVOLT_PER_AMPERE_METRE, "√3·ρ1/S");
  private static final Formula TWO_WAY_X = Formula.of("x", Unit.MILLIVOLT_PER_AMPERE_METRE, "2·λ");
  private static final Formula THREE_WAY_X =
      Formula.of("x", Unit.MILLIVOLT_PER_AMPERE_METRE, "√3·λ");

  private AnnexDrop() {}

  static Figure perMetre(Cable cable, LiveConductors live, Figure cosine, Dossier d) {
    boolean three = live != null && live.threePhase();
    Figure size = three ? Wiring.lineCsa(cable, d) : Wiring.ratedCsa(cable, live, d);
    d.need(cable.construction(), new Pointer(cable.place(), "construction"));
    Cable.Metal metal = Wiring.metal(cable, d);
    if (live == null || !size.known() || metal == null || cable.construction() == null) {
      return unknown();
    }
    Table formula = d.edition().table(TableName.VOLTAGE_DROP_FORMULA);
    Figure resistivity =
        d.tabled(
            "ρ1",
            covers(cable) ? formula.at("value", "resistivity/" + metal.word()) : null,
            Unit.OHM_SQUARE_MM_PER_KM,
            new Pointer(cable.place(), "conductor"));
    Figure reactance = reactance(cable, size, formula, d);
    Figure r = d.working().step(three ? THREE_WAY : TWO_WAY, resistivity, size.as("S"));
    Figure x = d.working().step(three ? THREE_WAY_X : TWO_WAY_X, reactance);
    return cosine.known()
        ? d.working().step(VoltageDropOfCable.PHASED, r, cosine, x)
        : d.working().step(VoltageDropOfCable.MODULUS, r, x);
  }

  /** Strands of flexible cable have more resistance, and bare mineral cable is hotter. */
  private static boolean covers(Cable cable) {
    return cable.construction() != Cable.Construction.FLEXIBLE
        && cable.construction() != Cable.Construction.MINERAL;
  }

  /** λ; of single cores that may lie apart the annex's figure does not speak. */
  private static Figure reactance(Cable cable, Figure size, Table formula, Dossier d) {
    Pointer at = new Pointer(cable.place(), "reactanceOhmPerKm");
    if (cable.reactanceOhmPerKm() != null) {
      return LeastOfConductor.reactance(cable, at, d).as("λ");
    }
    boolean matters =
        !(size.value() <= d.edition().constant(Constant.REACTANCE_RESISTIVE_UP_TO).number());
    if (matters && cable.construction() == Cable.Construction.SINGLES) {
      d.missing(NoteCode.NOT_IN_TABLES, at);
      return Figure.unknown("λ", Unit.MILLIOHM_PER_M);
    }
    return Figure.of("λ", formula.at("value", "reactance"));
  }

  private static Figure unknown() {
    return Figure.unknown("mV", Unit.MILLIVOLT_PER_AMPERE_METRE);
  }
}
