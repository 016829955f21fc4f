package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Facts of a board and its circuits that cannot all be true, each at its place. */
public final class BoardContradictions {
  /** Numbers are the same however they are written. */
  private static final Comparator<JsonNode> NUMBERS =
      (a, b) ->
          a.isNumber() && b.isNumber()
              ? Double.compare(a.doubleValue(), b.doubleValue())
              : a.equals(b) ? 0 : 1;

  private final Set<Fault> faults = new LinkedHashSet<>();

  /** Residual devices by their id: of the same one everybody says the same. */
  private final Map<String, JsonNode> shared = new HashMap<>();

  private BoardContradictions() {}

  /** Every contradiction of a board. */
  public static List<Fault> of(JsonNode body) {
    BoardContradictions found = new BoardContradictions();
    found.faults.addAll(NetworkContradictions.of(body));
    found.diversity(body, "");
    found.shared(body.path("residualDevice"), "");
    found.ring(body, "");
    found.circuits(body, "");
    return new ArrayList<>(found.faults);
  }

  private void circuits(JsonNode board, String place) {
    JsonNode circuits = board.path("circuits");
    for (int i = 0; i < circuits.size(); i++) {
      JsonNode circuit = circuits.get(i);
      String here = place + "/circuits/" + i;
      for (Fault fault : Contradictions.of(circuit)) {
        String pointer = here + fault.pointer();
        faults.add(Fault.inBody(fault.code(), fault.detail(), pointer, fault.allowed()));
      }
      shared(circuit.path("residualDevice"), here);
      ring(circuit, here);
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

  /** Circuits that name the same residual device say the same of it. */
  private void shared(JsonNode device, String here) {
    String id = device.path("id").textValue();
    JsonNode before = id == null ? null : shared.putIfAbsent(id, device);
    if (before != null && !before.equals(NUMBERS, device)) {
      add(here + "/residualDevice", "Another circuit says otherwise of the device of this id.");
    }
  }

  /** What a ring feeds may leave it anywhere: there is no far end where a board could stand. */
  private void ring(JsonNode circuit, String here) {
    boolean ring = "ring".equals(circuit.at("/cable/arrangement").textValue());
    if (ring && !circuit.path("circuits").isEmpty()) {
      add(here + "/cable/arrangement", "A ring feeds no board: it has no far end.");
    }
  }

  private void add(String pointer, String detail) {
    faults.add(Fault.inBody(Contradictions.CONTRADICTION, detail, pointer));
  }
}
