package circuitverdict.service.wire;

import circuitverdict.select.Change;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** A change as a partial circuit, to be applied by JSON merge patch (RFC 7396). */
final class ChangeJson {
  private ChangeJson() {}

  static void write(JsonGenerator json, Change change) throws IOException {
    Map<String, Object> root = new LinkedHashMap<>();
    for (Change.Member member : change.members()) {
      put(root, member.pointer().substring(1).split("/"), member.value());
    }
    write(json, root);
  }

  @SuppressWarnings("unchecked")
  private static void put(Map<String, Object> root, String[] path, Object value) {
    Map<String, Object> at = root;
    for (int i = 0; i + 1 < path.length; i++) {
      at = (Map<String, Object>) at.computeIfAbsent(path[i], key -> new LinkedHashMap<>());
    }
    at.put(path[path.length - 1], value);
  }

  @SuppressWarnings("unchecked")
  private static void write(JsonGenerator json, Map<String, Object> object) throws IOException {
    json.writeStartObject();
    for (Map.Entry<String, Object> entry : object.entrySet()) {
      json.writeFieldName(entry.getKey());
      Object value = entry.getValue();
      if (value instanceof Map) {
        write(json, (Map<String, Object>) value);
      } else if (value instanceof Number number) {
        Json.number(json, number.doubleValue());
      } else {
        json.writeObject(value);
      }
    }
    json.writeEndObject();
  }
}
