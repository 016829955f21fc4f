package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Facts of a source and a tree of circuits that cannot all be true. */
public final class NetworkContradictions {
  /** Facts of the contract (Circuit.circuits), like the bounds of its members. */
  private static final int MOST_LEVELS = 4;

  private static final int MOST_CIRCUITS = 1_000;

  /** Nominal voltage where none is stated: a fact of the contract. */
  private static final double USUAL_VOLTAGE_V = 230;

  /**
   * Rated voltages of transformers lie up to a tenth above nominal ones; more is another system.
   */
  private static final double VOLTAGE_APART = 0.15;

  private static final List<String> FIGURES =
      List.of(
          "loopImpedanceOhm",
          "loopReactanceOhm",
          "originLoopImpedanceOhm",
          "lineToNeutralLoopImpedanceOhm",
          "lineToNeutralLoopReactanceOhm",
          "maximumFaultCurrentA",
          "faultCurrents");

  private static final List<String> OF_THE_WHOLE = List.of("edition", "stage", "supply");

  private final List<Fault> faults = new ArrayList<>();
  private int circuits;
  private int phases;

  private NetworkContradictions() {}

  /** Every contradiction of a request for fault currents. */
  public static List<Fault> of(JsonNode body) {
    NetworkContradictions found = new NetworkContradictions();
    found.faults.addAll(Contradictions.of(body));
    JsonNode supply = body.path("supply");
    if (supply.has("transformer")) {
      found.source(supply);
    }
    found.grid(supply.path("grid"));
    found.voltages(supply);
    found.phases = supply.path("phases").asInt(0);
    found.tree(body, "", live(body), 0);
    if (found.circuits > MOST_CIRCUITS) {
      found.add("/circuits", "A request holds at most " + MOST_CIRCUITS + " circuits in all.");
    }
    return found.faults;
  }

  private void source(JsonNode supply) {
    for (String figure : FIGURES) {
      if (supply.has(figure)) {
        add("/supply/" + figure, "It follows from the transformer: state one of the two.");
      }
    }
    JsonNode transformer = supply.path("transformer");
    JsonNode loss = transformer.path("loadLossW");
    if (loss.isNumber() && transformer.has("resistanceToReactanceRatio")) {
      add(
          "/supply/transformer/resistanceToReactanceRatio",
          "The resistance follows from the load loss: state one of the two.");
    }
    JsonNode power = transformer.path("ratedPowerVA");
    JsonNode impedance = transformer.path("impedanceVoltagePercent");
    boolean stated = loss.isNumber() && power.isNumber() && impedance.isNumber();
    if (stated && 100 * loss.doubleValue() > impedance.doubleValue() * power.doubleValue()) {
      add("/supply/transformer/loadLossW", "The resistance cannot exceed the impedance.");
    }
  }

  /** Rated and nominal voltages of one side lie close together. */
  private void voltages(JsonNode supply) {
    JsonNode transformer = supply.path("transformer");
    double uo = supply.path("lineToEarthVoltageV").asDouble(USUAL_VOLTAGE_V);
    apart(
        transformer.path("secondaryVoltageV"),
        Math.sqrt(3) * uo,
        "/supply/transformer/secondaryVoltageV");
    JsonNode nominal = supply.path("grid").path("nominalVoltageV");
    if (nominal.isNumber()) {
      apart(
          transformer.path("primaryVoltageV"),
          nominal.doubleValue(),
          "/supply/transformer/primaryVoltageV");
    }
  }

  private void apart(JsonNode rated, double nominal, String pointer) {
    if (rated.isNumber() && Math.abs(rated.doubleValue() / nominal - 1) > VOLTAGE_APART) {
      add(pointer, "It is another voltage than the nominal one of the system that it stands in.");
    }
  }

  private void grid(JsonNode grid) {
    JsonNode least = grid.path("minimumShortCircuitPowerVA");
    JsonNode greatest = grid.path("maximumShortCircuitPowerVA");
    boolean stated = least.isNumber() && greatest.isNumber();
    if (stated && least.doubleValue() > greatest.doubleValue()) {
      add(
          "/supply/grid/minimumShortCircuitPowerVA",
          "The least short-circuit power cannot exceed the greatest.");
    }
  }

  private void tree(JsonNode node, String place, Set<String> fed, int level) {
    JsonNode below = node.path("circuits");
    for (int i = 0; i < below.size(); i++) {
      circuits++;
      String here = place + "/circuits/" + i;
      if (level == MOST_LEVELS) {
        add(here, "Circuits are nested at most " + MOST_LEVELS + " deep.");
        return;
      }
      JsonNode each = below.get(i);
      for (String name : OF_THE_WHOLE) {
        if (each.has(name)) {
          add(here + "/" + name, "It belongs to the whole request.");
        }
      }
      Set<String> live = live(each);
      liveConductors(each, here, live, fed);
      faults.addAll(Contradictions.ofCables(each, here));
      tree(each, here, live.isEmpty() ? fed : live, level + 1);
    }
  }

  private void liveConductors(JsonNode circuit, String here, Set<String> live, Set<String> fed) {
    String at = here + "/liveConductors";
    if (live.isEmpty()) {
      return;
    }
    if (live.size() < circuit.path("liveConductors").size()) {
      add(at, "A live conductor is named twice.");
    }
    if (lines(live) == 0) {
      add(at, "A circuit has at least one line conductor.");
    } else if (live.size() == 1) {
      add(at, "A single line has a neutral or another line to return by.");
    }
    boolean beyond = phases == 1 && lines(live) > 1;
    if (beyond || !fed.isEmpty() && !fed.containsAll(live)) {
      add(at, "The circuit that feeds it does not have all of them.");
    }
  }

  private static long lines(Set<String> live) {
    return live.stream().filter(name -> name.startsWith("L")).count();
  }

  private static Set<String> live(JsonNode circuit) {
    Set<String> names = new HashSet<>();
    circuit.path("liveConductors").forEach(each -> names.add(each.asText()));
    return names;
  }

  private void add(String pointer, String detail) {
    faults.add(Fault.inBody(Contradictions.CONTRADICTION, detail, pointer));
  }
}
