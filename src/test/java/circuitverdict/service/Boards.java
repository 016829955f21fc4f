package circuitverdict.service;

import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.ArrayList;
import java.util.List;

/** Boards for tests, and what is found in their answers. All of them invented. */
final class Boards {
  static final String PATH = "/v1/board-checks";

  private Boards() {}

  /** An example of the contract. */
  static ObjectNode ofContract(String example) {
    return (ObjectNode) Variations.tree(Calls.ofContract("checkBoard", example).body());
  }

  /** Main board, a board fed from it, and one fed from that. */
  static ObjectNode threeLevels() {
    try (InputStream in = Boards.class.getResourceAsStream("/boards/three-level.json")) {
      return (ObjectNode) new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode answer(JsonNode board) {
    return send(board).json();
  }

  /** With headers, names and values in turn. */
  static Reply send(JsonNode board, String... headers) {
    return send(PATH, board, headers);
  }

  static Reply send(String path, JsonNode body, String... headers) {
    List<String> all = new ArrayList<>(List.of("Content-Type", "application/json"));
    all.addAll(List.of(headers));
    return Http.send(
        "POST", path, BodyPublishers.ofString(body.toString()), all.toArray(new String[0]));
  }

  /** Another value, or none where it is null, at a pointer whose parent is there. */
  static ObjectNode with(JsonNode board, String pointer, Object value) {
    ObjectNode changed = board.deepCopy();
    int last = pointer.lastIndexOf('/');
    JsonNode parent = changed.at(pointer.substring(0, last));
    String name = pointer.substring(last + 1);
    if (value == null) {
      ((ObjectNode) parent).remove(name);
    } else {
      JsonNode node = new ObjectMapper().valueToTree(value);
      ((ObjectNode) parent).set(name, node);
    }
    return changed;
  }

  /** The item of a circuit. */
  static JsonNode item(JsonNode answer, String pointer) {
    for (JsonNode item : answer.path("circuits")) {
      if (item.path("pointer").asText("none").equals(pointer)) {
        return item;
      }
    }
    throw new AssertionError("no item " + pointer + " in " + answer);
  }

  /** The finding of a check about something, of the boards. */
  static JsonNode finding(JsonNode answer, String check, String subject) {
    for (JsonNode finding : answer.path("findings")) {
      if (finding.path("check").asText().equals(check)
          && finding.path("subject").asText().equals(subject)) {
        return finding;
      }
    }
    throw new AssertionError("no finding of " + check + " about " + subject + " in " + answer);
  }

  /** The finding of a check in the answer to one circuit. */
  static JsonNode finding(JsonNode item, String check) {
    for (JsonNode finding : item.at("/answer/findings")) {
      if (finding.path("check").asText().equals(check)) {
        return finding;
      }
    }
    throw new AssertionError("no finding of " + check + " in " + item);
  }

  /** Pointers of what a finding misses. */
  static List<String> missing(JsonNode finding) {
    List<String> pointers = new ArrayList<>();
    finding.path("missing").forEach(note -> pointers.add(note.path("pointer").asText()));
    return pointers;
  }

  /** The comparison of a finding whose limit has this symbol. */
  static JsonNode comparison(JsonNode finding, String limit) {
    for (JsonNode comparison : finding.path("comparisons")) {
      if (comparison.at("/limit/symbol").asText().equals(limit)) {
        return comparison;
      }
    }
    throw new AssertionError("no limit " + limit + " in " + finding);
  }
}
