package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a device declares of its selectivity that cannot all be true. */
final class SelectivityContradictions {
  private SelectivityContradictions() {}

  /** One limit only for each device upstream. */
  static List<Fault> of(JsonNode device, String pointer) {
    List<Fault> faults = new ArrayList<>();
    Set<String> named = new HashSet<>();
    JsonNode declared = device.path("selectivity");
    for (int i = 0; i < declared.size(); i++) {
      JsonNode id = declared.get(i).path("upstreamId");
      if (id.isTextual() && !named.add(id.textValue())) {
        faults.add(
            Fault.inBody(
                Contradictions.CONTRADICTION,
                "Two limits of selectivity are declared behind the same device upstream.",
                pointer + "/selectivity/" + i));
      }
    }
    return faults;
  }
}
