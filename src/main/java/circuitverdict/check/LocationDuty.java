package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.explain.At;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;
import java.util.List;
import java.util.Set;

/**
 * Special locations: circuits of a room with a bath or shower owe additional protection
 * (701.411.3.3); so do those of a sauna, but for its heater (703.411.3.3, from memory); at a pool
 * (702), on construction sites (704), in agriculture (705), for caravans (708) and boats (709)
 * other measures or other devices serve too, which no request states.
 */
final class LocationDuty {
  /** Sections 704, 705, 708 and 709 ask by circuit and rating what no rule here holds. */
  private static final Set<String> RULES_OF_THEIR_OWN =
      Set.of("construction-site", "agricultural", "caravan-park", "marina");

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
    if (locations.stream().anyMatch(RULES_OF_THEIR_OWN::contains)) {
      return AdditionalDuty.unless(
          Clause.ADDITIONAL_PROTECTION, NoteCode.OTHER_MEASURE, At.LOCATIONS);
    }
    return AdditionalDuty.of(Clause.BATH_OR_SHOWER, false);
  }
}
