package circuitverdict.support;

import circuitverdict.service.BoardAnswer;
import circuitverdict.service.edge.BoardBody;
import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.wire.BoardContradictions;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Boards for tests without HTTP, and what is found in their answers. All of them invented. */
public final class BoardCase {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final ContractReader READER = new ContractReader(Contract.fromClassPath());

  private BoardCase() {}

  /** The bakery's main board with two circuits, as in the contract's example. */
  public static ObjectNode mainBoard() {
    return resource("/boards/main-board.json");
  }

  /** Main board, a board fed from it, and one fed from that. */
  public static ObjectNode threeLevels() {
    return resource("/boards/three-level.json");
  }

  /** The full answer. */
  public static JsonNode answer(JsonNode board) {
    return answer(board, true);
  }

  /** The answer without explanations. */
  public static JsonNode minimal(JsonNode board) {
    return answer(board, false);
  }

  private static JsonNode answer(JsonNode board, boolean full) {
    byte[] body = board.toString().getBytes(StandardCharsets.UTF_8);
    BoardBody read = READER.readBoard(body, BoardContradictions::of);
    String edition = board.path("edition").asText("bs7671-2018-a4");
    try {
      return JSON.readTree(new BoardAnswer(read, Scenario.edition(edition), "test", full).bytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** JSON, with single quotes where that reads better. */
  public static JsonNode json(String text) {
    try {
      return JSON.readTree(text.replace('\'', '"'));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Another value, or none where it is null, at a pointer whose parent is there. */
  public static ObjectNode with(JsonNode board, String pointer, Object value) {
    ObjectNode changed = board.deepCopy();
    int last = pointer.lastIndexOf('/');
    ObjectNode parent = (ObjectNode) changed.at(pointer.substring(0, last));
    String name = pointer.substring(last + 1);
    if (value == null) {
      parent.remove(name);
    } else {
      parent.set(name, JSON.valueToTree(value));
    }
    return changed;
  }

  /** The item of a circuit. */
  public static JsonNode item(JsonNode answer, String pointer) {
    for (JsonNode item : answer.path("circuits")) {
      if (item.path("pointer").asText("none").equals(pointer)) {
        return item;
      }
    }
    throw new AssertionError("no item " + pointer + " in " + answer);
  }

  /** The finding of a check about something, of the boards. */
  public static JsonNode finding(JsonNode answer, String check, String subject) {
    for (JsonNode finding : answer.path("findings")) {
      if (finding.path("check").asText().equals(check)
          && finding.path("subject").asText().equals(subject)) {
        return finding;
      }
    }
    throw new AssertionError("no finding of " + check + " about " + subject + " in " + answer);
  }

  /** The finding of a check in the answer to one circuit. */
  public static JsonNode finding(JsonNode item, String check) {
    for (JsonNode finding : item.at("/answer/findings")) {
      if (finding.path("check").asText().equals(check)) {
        return finding;
      }
    }
    throw new AssertionError("no finding of " + check + " in " + item);
  }

  /** Pointers of what a finding misses. */
  public static List<String> missing(JsonNode finding) {
    List<String> pointers = new ArrayList<>();
    finding.path("missing").forEach(note -> pointers.add(note.path("pointer").asText()));
    return pointers;
  }

  /** The comparison of a finding whose limit has this symbol. */
  public static JsonNode comparison(JsonNode finding, String limit) {
    for (JsonNode comparison : finding.path("comparisons")) {
      if (comparison.at("/limit/symbol").asText().equals(limit)) {
        return comparison;
      }
    }
    throw new AssertionError("no limit " + limit + " in " + finding);
  }

  private static ObjectNode resource(String name) {
    try (InputStream in = BoardCase.class.getResourceAsStream(name)) {
      return (ObjectNode) JSON.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
