package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.explain.At;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;
import java.util.List;

/**
 * Special locations: circuits of a room with a bath or shower owe additional protection
 * (701.411.3.3); so do those of a sauna, but for its heater (703.411.3.3, from memory); at a pool
 * (702) other measures serve too, which no request states.
 */
final class LocationDuty {
  private LocationDuty() {}

  static AdditionalDuty of(Circuit circuit) {
    List<String> locations = circuit.premises().locations();
    if (locations == null) {
      return AdditionalDuty.open(Clause.BATH_OR_SHOWER, At.LOCATIONS);
    }
    if (locations.contains("bath-or-shower")) {
      return AdditionalDuty.of(Clause.BATH_OR_SHOWER, true);
    }
    if (locations.contains("sauna")) {
      boolean heater = circuit.load().kind() == null || circuit.load().has(Load.Kind.RESISTIVE);
      return heater
          ? AdditionalDuty.unless(Clause.SAUNA, NoteCode.OTHER_MEASURE, At.LOCATIONS)
          : AdditionalDuty.of(Clause.SAUNA, true);
    }
    if (locations.contains("swimming-pool")) {
      return AdditionalDuty.unless(Clause.SWIMMING_POOL, NoteCode.OTHER_MEASURE, At.LOCATIONS);
    }
    return AdditionalDuty.of(Clause.BATH_OR_SHOWER, false);
  }
}
