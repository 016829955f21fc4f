package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Supply;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;
import java.util.List;

/**
 * Earthing arrangement (411.4, 722.411.4.1): protective multiple earthing supplies an outdoor
 * charging point only with a permitted measure against a broken PEN conductor; a construction site
 * (704.411.3.1, from memory) only under conditions that no request states; caravans and boats not
 * at all (708, 709); TT needs a residual device.
 */
public final class EarthingArrangement implements Check {
  @Override
  public CheckName name() {
    return CheckName.EARTHING_ARRANGEMENT;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement = new Judgement(name(), circuit, d, "/supply").by(Clause.EARTHING);
    Supply.Earthing earthing = circuit.supply().earthing();
    Boolean charging = ChargingPoint.supplied(circuit);
    if (earthing == null) {
      d.missing(At.EARTHING);
      return judgement.undetermined().conclude();
    }
    List<String> locations = circuit.premises().locations();
    if (earthing == Supply.Earthing.TN_C_S
        && locations != null
        && locations.contains("construction-site")) {
      judgement.by(Clause.CONSTRUCTION_EARTHING);
      d.missing(NoteCode.CONSTRUCTION_EARTHING, At.EARTHING);
      return judgement.undetermined().conclude();
    }
    Boolean caravans = CaravanEarthing.serves(circuit);
    boolean placed = locations != null && !Boolean.FALSE.equals(caravans);
    if (earthing == Supply.Earthing.TN_C_S && placed) {
      return caravans(circuit, caravans, judgement, d);
    }
    if (Boolean.FALSE.equals(charging) && earthing != Supply.Earthing.TT) {
      return judgement.notApplicable();
    }
    return switch (earthing) {
      // No PEN conductor can break: met even if the load, not stated, is a charging point.
      case TN_S -> judgement.by(Clause.CHARGING_EARTHING).concludeMet();
      case TN_C_S -> multipleEarthing(circuit, charging, judgement, d);
      case TT -> ownElectrode(circuit, judgement, d);
    };
  }

  private static Finding caravans(
      Circuit circuit, Boolean certain, Judgement judgement, Dossier d) {
    CaravanEarthing.cite(circuit, judgement);
    if (certain == null) {
      d.missing(NoteCode.CARAVAN_EARTHING, At.EARTHING);
      return judgement.undetermined().conclude();
    }
    judgement.broken(NoteCode.CARAVAN_OR_BOAT);
    return judgement.concludeBroken();
  }

  private static Finding multipleEarthing(
      Circuit circuit, Boolean charging, Judgement judgement, Dossier d) {
    judgement.by(Clause.CHARGING_EARTHING);
    Boolean measure = circuit.supply().openPenProtection();
    List<String> locations = circuit.premises().locations();
    boolean indoors = locations != null && !locations.contains("outdoors");
    if (Boolean.TRUE.equals(measure)) {
      boolean anyPlace = CaravanEarthing.serves(circuit) == null;
      if (!anyPlace) {
        return judgement.concludeMet();
      }
      // No measure would do for a caravan or a boat.
      d.missing(At.LOCATIONS);
      return judgement.undetermined().conclude();
    }
    boolean byPlaceAlone = charging == null && circuit.load().kindsKnown();
    if (charging == null && !byPlaceAlone) {
      d.missing(At.LOAD_KIND);
    }
    if (locations == null) {
      d.missing(At.LOCATIONS);
    } else if (byPlaceAlone) {
      d.missing(At.CONNECTION);
    }
    if (indoors && Boolean.TRUE.equals(charging)) {
      d.missing(NoteCode.CHARGING_OUTDOORS_TOO, At.OPEN_PEN);
    } else if (measure == null && !byPlaceAlone) {
      d.missing(At.OPEN_PEN);
    }
    boolean outdoors = locations != null && !indoors;
    boolean broken = Boolean.TRUE.equals(charging) && outdoors && Boolean.FALSE.equals(measure);
    return broken ? judgement.concludeBroken() : judgement.undetermined().conclude();
  }

  private static Finding ownElectrode(Circuit circuit, Judgement judgement, Dossier d) {
    judgement.by(Clause.EARTHING_TT);
    boolean residual = ResidualTime.protecting(circuit) != null;
    Supply supply = circuit.supply();
    boolean electrode =
        supply.earthElectrodeResistanceOhm() != null || supply.loopImpedanceOhm() != null;
    if (residual && (electrode || d.allows(Allowance.TYPICAL_VALUES))) {
      return judgement.concludeMet();
    }
    if (!electrode) {
      d.missing(At.ELECTRODE);
    }
    if (residual) {
      return judgement.undetermined().conclude();
    }
    d.missing(At.RESIDUAL_DEVICE);
    return judgement.undetermined().conclude();
  }
}
