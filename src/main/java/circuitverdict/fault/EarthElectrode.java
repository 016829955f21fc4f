package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.FeederPart;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Unit;

/**
 * Resistance of the installation's earth electrode, Ω (411.5.3): as stated, a reading widened by
 * its uncertainty to the side that is worse. It is no conductor: its temperature corrects nothing.
 */
public final class EarthElectrode {
  private static final Formula GREATEST = Formula.of("Re", Unit.OHM, "Rm·(1 + u/100)");
  private static final Formula LEAST = Formula.of("Re", Unit.OHM, "Rm·(1 − u/100)");

  private EarthElectrode() {}

  /** The greatest that it may be: what a residual device must disconnect. Missing if not stated. */
  public static Figure greatest(Supply supply, Dossier d) {
    Figure stated = d.need("Re", supply.earthElectrodeResistanceOhm(), Unit.OHM, At.ELECTRODE);
    if (stated.known() && !SupplyBasis.serves(supply, NoteCode.TYPICAL_ELECTRODE, d)) {
      return Figure.unknown("Re", Unit.OHM);
    }
    return stated.known() ? widened(GREATEST, stated, supply, d) : stated;
  }

  /** The least that it may be: what limits the greatest earth fault current. */
  static Figure least(Supply supply, Dossier d) {
    return widened(LEAST, asStated(supply, d), supply, d);
  }

  /**
   * The greatest that the electrode and the protective conductors to the far end of a circuit may
   * be, Ω; unknown but in TT, and where no electrode is stated.
   */
  public static Figure withConductors(Circuit feeder, Dossier d) {
    Supply supply = feeder.supply();
    LiveConductors live = LiveConductors.of(feeder);
    boolean stated = supply.earthElectrodeResistanceOhm() != null;
    if (supply.earthing() != Supply.Earthing.TT || !stated || live == null) {
      return Figure.unknown("RA", Unit.OHM);
    }
    FeederPart part = FeederPart.of(feeder, live, true, d);
    double electrode = greatest(supply, d).value();
    double back = part.earth().value() - part.line().value();
    boolean known = !d.standsAtBest();
    return Figure.derived("RA", known ? electrode + back : Double.NaN, Unit.OHM);
  }

  /** As stated, for what fails whatever the uncertainty of a reading. */
  public static Figure asStated(Supply supply, Dossier d) {
    return d.given("Re", supply.earthElectrodeResistanceOhm(), Unit.OHM, At.ELECTRODE);
  }

  private static Figure widened(Formula side, Figure stated, Supply supply, Dossier d) {
    if (!Uncertainty.measured(supply)) {
      return stated;
    }
    Figure uncertainty = Uncertainty.of(supply, d);
    if (uncertainty.value() == 0) {
      return stated;
    }
    if (supply.basis() == null) {
      d.assumeCurable(NoteCode.ASSUMED_MEASURED_COLD, At.BASIS);
    }
    return d.working().step(side, stated.as("Rm"), uncertainty);
  }
}
