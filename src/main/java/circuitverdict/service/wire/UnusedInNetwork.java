package circuitverdict.service.wire;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Members that fault currents along a tree of circuits do not use. */
public final class UnusedInNetwork {
  private static final int MOST = 90;

  /** What a source that is computed does not rest on. */
  private static final Set<String> OF_READINGS = Set.of("basis", "instrumentUncertaintyPercent");

  private static final Set<String> OF_A_FEEDER = Set.of("cable", "furtherCables");

  private final List<Note> notes = new ArrayList<>();

  private UnusedInNetwork() {}

  /** Those of a request. */
  public static List<Note> of(JsonNode body) {
    UnusedInNetwork unused = new UnusedInNetwork();
    unused.network(body, "", Set.of("reference", "edition", "stage", "supply"));
    return unused.notes;
  }

  private void network(JsonNode circuit, String place, Set<String> besides) {

    for (Map.Entry<String, JsonNode> field : circuit.properties()) {
      String name = field.getKey();
      if (name.equals("circuits")) {
        for (int i = 0; i < field.getValue().size(); i++) {
          network(field.getValue().get(i), place + "/circuits/" + i, Set.of("reference"));
        }
      } else if (OF_A_FEEDER.contains(name)) {
        cables(place + "/" + name, field.getValue());
      } else if (name.equals("supply")) {
        for (Map.Entry<String, JsonNode> member : field.getValue().properties()) {
          supply(field.getValue(), member.getKey(), place + "/supply");
        }
      } else if (!besides.contains(name) && !name.equals("liveConductors")) {
        add(place, name);
      }
    }
  }

  private void supply(JsonNode supply, String name, String at) {
    boolean read = supply.has("transformer") && OF_READINGS.contains(name);
    if (name.equals("voltageDropPercent") || read) {
      add(at, name);
    }
    if (name.equals("faultCurrents")) {
      for (Map.Entry<String, JsonNode> kind : supply.get(name).properties()) {
        for (String figure : new String[] {"minimumA", "peakA"}) {
          if (kind.getValue().has(figure)) {
            add(at + "/" + name + "/" + kind.getKey(), figure);
          }
        }
      }
    }
  }

  private void cables(String at, JsonNode cable) {
    if (cable.isArray()) {
      for (int i = 0; i < cable.size(); i++) {
        cables(at + "/" + i, cable.get(i));
      }
      return;
    }
    for (String name : new String[] {"terminalTemperatureC", "installation"}) {
      if (cable.has(name)) {
        add(at, name);
      }
    }
  }

  private void add(String parent, String member) {
    if (notes.size() < MOST) {
      notes.add(new Note(NoteCode.MEMBER_NOT_USED, new Pointer(parent, member), List.of()));
    }
  }
}
