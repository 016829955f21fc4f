package circuitverdict.service.wire;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Members that verdicts on readings do not use. */
public final class UnusedInReadings {
  private static final int MOST = 90;

  /** What each kind of reading is read by, besides what every kind has. */
  private static final Map<String, Set<String>> BY_KIND =
      Map.of(
          "loop-impedance", Set.of("resistanceOhm", "conductorTemperatureC"),
          "r1-plus-r2", Set.of("resistanceOhm", "conductorTemperatureC"),
          "r2", Set.of("resistanceOhm", "conductorTemperatureC"),
          "ring-r1", Set.of("resistanceOhm"),
          "ring-rn", Set.of("resistanceOhm"),
          "ring-r2", Set.of("resistanceOhm"),
          "insulation", Set.of("resistanceOhm"),
          "fault-current", Set.of("currentA"),
          "residual-trip-time", Set.of("timeS", "testMultiple"),
          "earth-electrode", Set.of("resistanceOhm"));

  private static final Set<String> OF_EVERY_KIND =
      Set.of("kind", "between", "place", "satisfactory", "instrumentUncertaintyPercent");

  private UnusedInReadings() {}

  /** Those of a request. */
  public static List<Note> of(JsonNode body) {
    List<Note> notes = new ArrayList<>();
    JsonNode readings = body.path("readings");
    for (int i = 0; i < readings.size(); i++) {
      Set<String> read = BY_KIND.getOrDefault(readings.get(i).path("kind").asText(), Set.of());
      for (Map.Entry<String, JsonNode> member : readings.get(i).properties()) {
        String name = member.getKey();
        if (!read.contains(name) && !OF_EVERY_KIND.contains(name)) {
          Pointer at = new Pointer("/readings/" + i, name);
          notes.add(new Note(NoteCode.MEMBER_NOT_USED, at, List.of()));
        }
      }
    }
    notes.addAll(UnusedMembers.besidesReadings(body));
    return notes.subList(0, Math.min(MOST, notes.size()));
  }
}
