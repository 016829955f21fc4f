package circuitverdict.service.edge;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The body of a board, with what is wrong of each of its circuits by the JSON pointer of the
 * circuit; what is wrong with the board itself stands under the empty pointer.
 */
public final class BoardBody {
  private static final String CIRCUITS = "circuits";

  /** A fact of the contract (Circuit.circuits). */
  private static final int MOST = 1_000;

  /** What stands deeper than circuits may is a fault of the whole. */
  private static final Pattern PLACE = Pattern.compile("((?:/circuits/\\d+){0,4})(?!/circuits/).*");

  private final JsonNode whole;
  private final Map<String, Faults> faults = new HashMap<>();

  private BoardBody(JsonNode whole) {
    this.whole = whole;
  }

  static BoardBody of(JsonNode value, Shape shape, Function<JsonNode, List<Fault>> further) {
    BoardBody body = new BoardBody(value);
    body.check(value, "", Place.body(), shape);
    for (Fault fault : further.apply(body.sound())) {
      Matcher place = PLACE.matcher(fault.pointer());
      String at = place.matches() ? place.group(1) : "";
      body.faults.computeIfAbsent(at, each -> new Faults()).addAll(List.of(fault));
    }
    return body;
  }

  /** A body with which nothing is wrong. */
  public static BoardBody valid(JsonNode body) {
    return new BoardBody(body);
  }

  /** The body as sent. */
  public JsonNode whole() {
    return whole;
  }

  /** What is wrong with the circuit at this place alone. */
  public List<Fault> faults(String place) {
    Faults own = faults.get(place);
    return own == null ? List.of() : own.list();
  }

  private void check(JsonNode node, String pointer, Place place, Shape shape) {
    Faults own = new Faults();
    JsonNode circuits = node.path(CIRCUITS);
    boolean nested = circuits.isArray() && circuits.size() <= MOST;
    shape.check(nested ? without(node) : node, place, own);
    if (!own.isEmpty()) {
      faults.put(pointer, own);
    }
    for (int i = 0; nested && i < circuits.size(); i++) {
      check(
          circuits.get(i),
          pointer + "/" + CIRCUITS + "/" + i,
          place.member(CIRCUITS).item(i),
          shape);
    }
  }

  private static JsonNode without(JsonNode node) {
    ObjectNode own = ((ObjectNode) node).objectNode();
    own.setAll((ObjectNode) node);
    own.remove(CIRCUITS);
    return own;
  }

  /** What can be held one part against another: of a circuit that is not valid, what it feeds. */
  private JsonNode sound() {
    if (faults.isEmpty()) {
      return whole;
    }
    JsonNode sound = SoundPart.of(whole, faults(""));
    for (String place : faults.keySet()) {
      if (!place.isEmpty()) {
        JsonPointer at = JsonPointer.compile(place);
        ArrayNode parent = (ArrayNode) sound.at(at.head());
        JsonNode circuit = sound.at(at);
        ObjectNode fed = parent.objectNode();
        if (circuit.path(CIRCUITS).isArray()) {
          fed.set(CIRCUITS, circuit.get(CIRCUITS));
        }
        parent.set(at.last().getMatchingIndex(), fed);
      }
    }
    return sound;
  }
}
