package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Facts of a board and its circuits that cannot all be true, each at its place. */
public final class BoardContradictions {
  private final Set<Fault> faults = new LinkedHashSet<>();

  private BoardContradictions() {}

  /** Every contradiction of a board. */
  public static List<Fault> of(JsonNode body) {
    BoardContradictions found = new BoardContradictions();
    found.faults.addAll(NetworkContradictions.of(body));
    found.diversity(body, "");
    found.circuits(body, "");
    return new ArrayList<>(found.faults);
  }

  private void circuits(JsonNode board, String place) {
    Map<String, JsonNode> shared = new HashMap<>();
    JsonNode circuits = board.path("circuits");
    for (int i = 0; i < circuits.size(); i++) {
      JsonNode circuit = circuits.get(i);
      String here = place + "/circuits/" + i;
      for (Fault fault : Contradictions.of(circuit)) {
        String pointer = here + fault.pointer();
        faults.add(Fault.inBody(fault.code(), fault.detail(), pointer, fault.allowed()));
      }
      shared(circuit.path("residualDevice"), here, shared);
      diversity(circuit, here);
      circuits(circuit, here);
    }
  }

  private void diversity(JsonNode board, String place) {
    JsonNode diversity = board.path("diversityFactor");
    if (!board.path("circuits").isEmpty() && diversity.isNumber() && diversity.doubleValue() == 0) {
      add(place + "/diversityFactor", "A diversity factor of 0 leaves nothing that is drawn.");
    }
  }

  /** Circuits of one board that name the same residual device say the same of it. */
  private void shared(JsonNode device, String here, Map<String, JsonNode> shared) {
    String id = device.path("id").textValue();
    JsonNode before = id == null ? null : shared.putIfAbsent(id, device);
    if (before != null && !before.equals(device)) {
      add(here + "/residualDevice", "Another circuit says otherwise of the device of this id.");
    }
  }

  private void add(String pointer, String detail) {
    faults.add(Fault.inBody(Contradictions.CONTRADICTION, detail, pointer));
  }
}
