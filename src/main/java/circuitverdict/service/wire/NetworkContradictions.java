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

  private static final List<String> FIGURES =
      List.of(
          "loopImpedanceOhm",
          "loopReactanceOhm",
          "lineToNeutralLoopImpedanceOhm",
          "lineToNeutralLoopReactanceOhm",
          "maximumFaultCurrentA",
          "faultCurrents");

  private static final List<String> OF_THE_WHOLE = List.of("edition", "stage", "supply");

  private final List<Fault> faults = new ArrayList<>();
  private int circuits;

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
      if (!live.isEmpty() && !fed.isEmpty() && !fed.containsAll(live)) {
        add(here + "/liveConductors", "The circuit that feeds it does not have all of them.");
      }
      tree(each, here, live.isEmpty() ? fed : live, level + 1);
    }
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
