package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Supply;
import circuitverdict.circuit.Supply.FaultCurrents;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Greatest fault currents where the circuit begins, A (434.1): as stated, a reading widened by its
 * uncertainty; for a quotation the typical declared value of a single-phase service.
 */
public final class GreatestCurrent {
  private static final Formula WIDENED = Formula.of("If,max", Unit.AMPERE, "Im·(1 + u/100)");
  private static final Formula DOUBLE = Formula.of("If,max", Unit.AMPERE, "k3·Im");
  private static final Formula ELECTRODE = Formula.of("If,max", Unit.AMPERE, "Cmax·Uo/(RA/2)");

  private GreatestCurrent() {}

  /**
   * What a device of a way meets: three-phase ways the three-phase current, a two-pole device on
   * one phase the line–neutral one, a single-pole device the greater of line–neutral and
   * line–earth.
   *
   * @param live live conductors, or null where they are not known
   * @param poles poles of the device, or null where they are not stated
   */
  public static Figure ofWay(Circuit circuit, LiveConductors live, Integer poles, Dossier d) {
    Supply supply = circuit.supply();
    FaultCurrents stated = supply.faultCurrents();
    if (live != null && live.lines() == 3) {
      return threePhase(supply, stated, d);
    }
    if (live != null && live.lines() == 1) {
      if (poles != null && poles >= 2 && stated.lineToNeutralA() != null) {
        return read(stated.lineToNeutralA(), At.NEUTRAL_CURRENT, supply, d);
      }
      if (stated.lineToNeutralA() != null && stated.lineToEarthA() != null) {
        return stated.lineToNeutralA() >= stated.lineToEarthA()
            ? read(stated.lineToNeutralA(), At.NEUTRAL_CURRENT, supply, d)
            : read(stated.lineToEarthA(), At.EARTH_CURRENT, supply, d);
      }
    }
    return ofAnyKind(supply, d);
  }

  private static Figure threePhase(Supply supply, FaultCurrents stated, Dossier d) {
    // Near a transformer an earth fault can exceed the three-phase one: at sign-off one of it and
    // the greatest of any kind must say that it does not.
    boolean open = stated.lineToEarthA() == null && !d.allows(Allowance.TABLE_DEFAULTS);
    if (stated.threePhaseA() != null && !open) {
      boolean earthGreater =
          stated.lineToEarthA() != null && stated.lineToEarthA() > stated.threePhaseA();
      return earthGreater
          ? read(stated.lineToEarthA(), At.EARTH_CURRENT, supply, d)
          : read(stated.threePhaseA(), At.THREE_PHASE_CURRENT, supply, d);
    }
    if (supply.maximumFaultCurrentA() == null
        && stated.lineToNeutralA() != null
        && d.allows(Allowance.TABLE_DEFAULTS)) {
      Figure single = read(stated.lineToNeutralA(), At.NEUTRAL_CURRENT, supply, d);
      Figure multiple = d.constant("k3", Constant.THREE_PHASE_FROM_LINE_NEUTRAL);
      Figure three = d.working().step(DOUBLE, multiple, single.as("Im"));
      d.assume(NoteCode.ASSUMED_THREE_PHASE_CURRENT, At.THREE_PHASE_CURRENT, three);
      return three;
    }
    return ofAnyKind(supply, d);
  }

  /**
   * Greatest earth fault current: as stated, else in TN the greatest of any kind; in TT, where
   * there is no metallic path to a TN earth, what half the electrode's resistance, the least that
   * it may be, lets flow, listed.
   */
  public static Figure toEarth(Circuit circuit, Dossier d) {
    Supply supply = circuit.supply();
    Double stated = supply.faultCurrents().lineToEarthA();
    if (stated != null) {
      return read(stated, At.EARTH_CURRENT, supply, d);
    }
    boolean tt = supply.earthing() == Supply.Earthing.TT;
    if (tt && supply.earthElectrodeResistanceOhm() != null && d.allows(Allowance.TABLE_DEFAULTS)) {
      Figure electrode = EarthElectrode.least(supply, d).as("RA");
      if (electrode.value() > 0) {
        return throughElectrode(circuit, electrode, d);
      }
    }
    return ofAnyKind(supply, d);
  }

  private static Figure throughElectrode(Circuit circuit, Figure electrode, Dossier d) {
    Figure factor = d.constant("Cmax", Constant.CMAX);
    Figure voltage = NominalVoltage.lineToEarth(circuit, d);
    Figure current = d.working().step(ELECTRODE, factor, voltage, electrode);
    d.assumeCurable(NoteCode.ASSUMED_TT_FAULT_CURRENT, At.EARTH_CURRENT, current);
    return current;
  }

  private static Figure ofAnyKind(Supply supply, Dossier d) {
    if (supply.maximumFaultCurrentA() != null) {
      return read(supply.maximumFaultCurrentA(), At.MAXIMUM_CURRENT, supply, d);
    }
    boolean single = supply.phases() != null && supply.phases() == 1;
    if (single && SupplyLoop.atOrigin(supply, d) && d.allows(Allowance.TYPICAL_VALUES)) {
      Figure typical = d.constant("If,max", Constant.SUPPLY_TYPICAL_FAULT_CURRENT_SINGLE_PHASE);
      d.assumeCurable(NoteCode.TYPICAL_FAULT_CURRENT, At.MAXIMUM_CURRENT, typical);
      return d.working().look(typical);
    }
    d.missing(At.MAXIMUM_CURRENT);
    Uncertainty.ask(supply, d);
    return Figure.unknown("If,max", Unit.AMPERE);
  }

  private static Figure read(double ampere, Pointer at, Supply supply, Dossier d) {
    Figure stated = d.given("If,max", ampere, Unit.AMPERE, at);
    if (!Uncertainty.measured(supply)) {
      return d.working().look(stated);
    }
    Figure uncertainty = Uncertainty.of(supply, d);
    return uncertainty.value() == 0
        ? d.working().look(stated)
        : d.working().step(WIDENED, stated.as("Im"), uncertainty);
  }
}
