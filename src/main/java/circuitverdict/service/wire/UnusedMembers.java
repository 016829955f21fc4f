package circuitverdict.service.wire;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Members of a request that an operation does not use: told, so that nobody relies on them. */
public final class UnusedMembers {
  private static final int MOST = 90;

  /** Top-level members that no operation reads yet, or that only others read. */
  private static final Set<String> NEVER =
      Set.of(
          "incomer",
          "circuits",
          "diversityFactor",
          "products",
          "readings",
          "editions",
          "acceptedOpenPoints");

  private static final Set<String> SELECTION_ONLY = Set.of("limit", "offset", "preferences");

  /** Members below the top that no operation reads yet, wherever they stand. */
  private static final Set<String> BELOW =
      Set.of(
          "transformer",
          "grid",
          "localGeneration",
          "minimumA",
          "peakA",
          "inrush",
          "residualWaveform",
          "concealment",
          "gtin",
          "ratedLineToEarthVoltageV",
          "characteristicCurrentA",
          "isolation",
          "arcFaultDetection",
          "unidirectional",
          "referenceTemperatureC",
          "derating",
          "selectivity",
          "markings",
          "features",
          "type",
          "longTimeDelayS",
          "operatedBy",
          "pollutionDegree",
          "higherRiskResidential",
          "protectedPoles",
          "conditionalCapacityA");

  private final Set<String> read;
  private final List<Note> notes = new ArrayList<>();

  private UnusedMembers(Set<String> read) {
    this.read = read;
  }

  /** What a whole check does not use. */
  public static List<Note> ofCheck(JsonNode body) {
    return new UnusedMembers(null).top(body, SELECTION_ONLY);
  }

  /** What a selection does not use: among others a device, since it looks for one. */
  public static List<Note> ofSelection(JsonNode body) {
    return new UnusedMembers(null).top(body, Set.of("device"));
  }

  /** What an operation that reads only these members does not use. */
  public static List<Note> ofReading(JsonNode body, Set<String> read) {
    return new UnusedMembers(read).top(body, SELECTION_ONLY);
  }

  private List<Note> top(JsonNode body, Set<String> besides) {
    Iterator<Map.Entry<String, JsonNode>> fields = body.fields();
    while (fields.hasNext()) {
      Map.Entry<String, JsonNode> field = fields.next();
      String name = field.getKey();
      boolean own = Set.of("reference", "edition", "stage", "requirements").contains(name);
      if (NEVER.contains(name)
          || besides.contains(name)
          || read != null && !own && !read.contains(name)) {
        add("", name);
      } else {
        below("/" + name, name, field.getValue());
      }
    }
    return notes;
  }

  private void below(String place, String parent, JsonNode node) {
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        below(place + "/" + i, parent, node.get(i));
      }
    }
    Iterator<Map.Entry<String, JsonNode>> fields = node.fields();
    while (fields.hasNext()) {
      Map.Entry<String, JsonNode> field = fields.next();
      if (unread(parent, field.getKey())) {
        add(place, field.getKey());
      } else {
        below(place + "/" + field.getKey(), field.getKey(), field.getValue());
      }
    }
  }

  /** Some names mean other things elsewhere. */
  private static boolean unread(String parent, String name) {
    return BELOW.contains(name)
        || name.equals("use") && parent.equals("premises")
        || name.equals("ambientTemperatureC") && parent.equals("assembly")
        || name.equals("ratedVoltageV") && !parent.equals("load") && !parent.equals("parts")
        || name.equals("inrush") && parent.equals("requirements");
  }

  private void add(String parent, String member) {
    if (notes.size() < MOST) {
      notes.add(new Note(NoteCode.MEMBER_NOT_USED, new Pointer(parent, member), List.of()));
    }
  }
}
