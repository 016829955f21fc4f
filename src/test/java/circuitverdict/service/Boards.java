package circuitverdict.service;

import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.ArrayList;
import java.util.List;

/** Boards sent as a caller does. */
final class Boards {
  static final String PATH = "/v1/board-checks";

  private Boards() {}

  /** An example of the contract. */
  static ObjectNode ofContract(String example) {
    return (ObjectNode) Variations.tree(Calls.ofContract("checkBoard", example).body());
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
}
