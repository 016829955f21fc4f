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

  private static final List<String> OF_THE_WHOLE = List.of("edition", "stage", "supply");

  private final List<Fault> faults = new ArrayList<>();
  private int circuits;
  private int phases;

  private NetworkContradictions() {}

  /** Every contradiction of a request for fault currents. */
  public static List<Fault> of(JsonNode body) {
    NetworkContradictions found = new NetworkContradictions();
    found.faults.addAll(Contradictions.of(body));
    found.phases = body.path("supply").path("phases").asInt(0);
    found.tree(body, "", live(body), 0);
    if (found.circuits > MOST_CIRCUITS) {
      found.add("/circuits", "A request holds at most " + MOST_CIRCUITS + " circuits in all.");
    }
    return found.faults;
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
