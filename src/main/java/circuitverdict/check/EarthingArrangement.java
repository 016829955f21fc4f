package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.Supply;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Earthing arrangement (411.4, 722.411.4.1): protective multiple earthing supplies an outdoor
 * charging point only with a permitted measure against a broken PEN conductor; a construction site
 * (704.411.3.1, from memory) only under conditions that no request states; TT needs a residual
 * device.
 */
public final class EarthingArrangement implements Check {
  private static final Set<Load.Kind> UNABLE =
      EnumSet.of(
          Load.Kind.RESISTIVE,
          Load.Kind.MOTOR,
          Load.Kind.LED,
          Load.Kind.DISCHARGE,
          Load.Kind.FILAMENT,
          Load.Kind.WELDING,
          Load.Kind.X_RAY);

  @Override
  public CheckName name() {
    return CheckName.EARTHING_ARRANGEMENT;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement = new Judgement(name(), circuit, d, "/supply").by(Clause.EARTHING);
    Supply.Earthing earthing = circuit.supply().earthing();
    Boolean charging = charging(circuit);
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

  private static Finding multipleEarthing(
      Circuit circuit, Boolean charging, Judgement judgement, Dossier d) {
    judgement.by(Clause.CHARGING_EARTHING);
    Boolean measure = circuit.supply().openPenProtection();
    List<String> locations = circuit.premises().locations();
    boolean indoors = locations != null && !locations.contains("outdoors");
    if (Boolean.TRUE.equals(measure)) {
      return judgement.concludeMet();
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

  /**
   * Whether it supplies a charging point: one by its kind, or whatever can charge a vehicle where
   * the place is one of charging; null where what is not stated decides.
   */
  static Boolean charging(Circuit circuit) {
    Load load = circuit.load();
    if (load.has(Load.Kind.VEHICLE_CHARGING)) {
      return true;
    }
    Boolean able = canCharge(load, null);
    List<String> locations = circuit.premises().locations();
    boolean elsewhere = locations != null && !locations.contains("vehicle-charging");
    if (circuit.kind() == Circuit.Kind.DISTRIBUTION && load.kind() != null && elsewhere) {
      // What is fed from its end is on final circuits of their own.
      return false;
    }
    if (Boolean.FALSE.equals(able) || locations == null) {
      return Boolean.FALSE.equals(able) ? Boolean.FALSE : null;
    }
    if (locations.contains("vehicle-charging")) {
      return able;
    }
    return load.kindsKnown() ? Boolean.FALSE : null;
  }

  /**
   * Whether a vehicle could be charged by it: not by a heater, lamp, motor, welding or X-ray set,
   * unless an outlet serves it, which would take a vehicle's cable too. Null where the connection
   * that tells them apart is not stated.
   */
  private static Boolean canCharge(Load load, Load.Connection ofWhole) {
    if (load.kind() == Load.Kind.SOCKET_OUTLETS) {
      return true;
    }
    Load.Connection connection = load.connection() == null ? ofWhole : load.connection();
    if (load.parts().isEmpty()) {
      boolean unable = load.kind() != null && UNABLE.contains(load.kind());
      return !unable || connection == Load.Connection.SOCKET_OUTLET
          ? Boolean.TRUE
          : connection == null ? null : Boolean.FALSE;
    }
    Boolean any = false;
    for (Load part : load.parts()) {
      Boolean able = canCharge(part, connection);
      if (Boolean.TRUE.equals(able)) {
        return true;
      }
      any = able == null ? null : any;
    }
    return any;
  }
}
