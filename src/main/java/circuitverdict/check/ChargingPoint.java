package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import java.util.List;

/** Whether a circuit supplies a charging point for vehicles (722.1): by its load and its place. */
final class ChargingPoint {
  private ChargingPoint() {}

  /** Names what would tell whether it does, where that is not known. */
  static void noteMissing(Circuit circuit, Dossier d) {
    boolean byPlace = circuit.load().kindsKnown();
    if (!byPlace) {
      d.missing(At.LOAD_KIND);
    }
    if (circuit.premises().locations() == null) {
      d.missing(At.LOCATIONS);
    } else if (byPlace) {
      d.missing(At.CONNECTION);
    }
  }

  /**
   * Whether it supplies a charging point: one by its kind, or whatever can charge a vehicle where
   * the place is one of charging; null where what is not stated decides.
   */
  static Boolean supplied(Circuit circuit) {
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
      boolean unable = load.kind() != null && load.kind().onlyDraws();
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
