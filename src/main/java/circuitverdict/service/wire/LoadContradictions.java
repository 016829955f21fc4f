package circuitverdict.service.wire;

import circuitverdict.circuit.Load.DemandRule;
import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Facts of a load and of its parts that cannot all be true. */
final class LoadContradictions {
  private final List<Fault> faults = new ArrayList<>();

  private LoadContradictions() {}

  /** Those of the load of a circuit. */
  static List<Fault> of(JsonNode body) {
    LoadContradictions found = new LoadContradictions();
    found.outlets(body);
    found.diversity(body.path("load"), "/load");
    found.voltage(body.path("load"), "/load");
    found.counts(body.path("load"), "/load");
    found.drop(body);
    found.rule(body.path("load"), "/load", body);
    return found.faults;
  }

  /** Part 2: what feeds current-using equipment or socket-outlets directly is a final circuit. */
  private void outlets(JsonNode body) {
    JsonNode load = body.path("load");
    if (itselfOutlets(load) && "distribution".equals(body.path("circuitKind").textValue())) {
      add("/circuitKind", "A circuit of socket-outlets is a final circuit.");
    }
    JsonNode may = load.path("canOverload");
    if (anyOutlets(load) && may.isBoolean() && !may.booleanValue()) {
      add("/load/canOverload", "Socket-outlets can be overloaded by what is plugged in.");
    }
  }

  /** A rule of demand says itself what is drawn of the power. */
  private void rule(JsonNode load, String pointer, JsonNode body) {
    if (load.has("demandRule")) {
      boolean between = DemandRule.isBetweenCircuits(load.path("demandRule").textValue());
      if (between && !"distribution".equals(body.path("circuitKind").textValue())) {
        add(
            pointer + "/demandRule",
            "Diversity of this kind holds between final circuits: of a distribution circuit.");
      }
      for (String other : new String[] {"designCurrentA", "diversityFactor", "parts"}) {
        if (load.has(other)) {
          add(
              pointer + "/" + other,
              "The rule of demand says what is drawn: state one of the two.");
        }
      }
    }
    JsonNode parts = load.path("parts");
    for (int i = 0; i < parts.size(); i++) {
      rule(parts.get(i), pointer + "/parts/" + i, body);
    }
  }

  /** The drop counts by more than the line current, or by that; of one line by that alone. */
  private void drop(JsonNode body) {
    JsonNode drop = body.path("load").path("voltageDropCurrentA");
    JsonNode design = body.path("load").path("designCurrentA");
    if (!drop.isNumber()) {
      return;
    }
    if (design.isNumber() && drop.doubleValue() < design.doubleValue()) {
      add("/load/voltageDropCurrentA", "The drop counts by no less than the design current.");
    }
    long lines = 0;
    for (JsonNode name : body.path("liveConductors")) {
      lines += name.asText().startsWith("L") ? 1 : 0;
    }
    boolean one = body.path("supply").path("phases").asInt(0) == 1;
    if (lines == 1 || lines == 0 && one) {
      add("/load/voltageDropCurrentA", "Of one line the drop counts by its design current.");
    }
  }

  private void diversity(JsonNode load, String pointer) {
    JsonNode diversity = load.path("diversityFactor");
    if (diversity.isNumber() && diversity.doubleValue() == 0) {
      add(pointer + "/diversityFactor", "A diversity factor of 0 leaves no load to protect.");
    }
    JsonNode parts = load.path("parts");
    for (int i = 0; i < parts.size(); i++) {
      diversity(parts.get(i), pointer + "/parts/" + i);
    }
  }

  private void voltage(JsonNode load, String pointer) {
    JsonNode parts = load.path("parts");
    if (!parts.isEmpty() && load.path("ratedVoltageV").isNumber()) {
      add(
          pointer + "/ratedVoltageV",
          "The voltage of a load of parts is theirs: state it of each.");
    }
    for (int i = 0; i < parts.size(); i++) {
      voltage(parts.get(i), pointer + "/parts/" + i);
    }
  }

  /** One device has one greatest number. */
  private void counts(JsonNode load, String pointer) {
    Set<String> seen = new HashSet<>();
    JsonNode limits = load.path("inrush").path("countLimits");
    for (int i = 0; i < limits.size(); i++) {
      JsonNode limit = limits.get(i);
      JsonNode rated = limit.path("ratedCurrentA");
      String device = limit.path("characteristic").asText() + " " + rated.doubleValue();
      if (rated.isNumber() && !seen.add(device)) {
        add(
            pointer + "/inrush/countLimits/" + i,
            "The greatest number on the same device is stated twice.");
      }
    }
    JsonNode parts = load.path("parts");
    for (int i = 0; i < parts.size(); i++) {
      counts(parts.get(i), pointer + "/parts/" + i);
    }
  }

  private static boolean itselfOutlets(JsonNode load) {
    return "socket-outlets".equals(load.path("kind").textValue())
        || "socket-outlet".equals(load.path("connection").textValue());
  }

  private static boolean anyOutlets(JsonNode load) {
    boolean any = itselfOutlets(load);
    for (JsonNode part : load.path("parts")) {
      any |= anyOutlets(part);
    }
    return any;
  }

  private void add(String pointer, String detail) {
    faults.add(Fault.inBody(Contradictions.CONTRADICTION, detail, pointer));
  }
}
