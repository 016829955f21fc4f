package circuitverdict.service.wire;

import circuitverdict.service.edge.BoardBody;
import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A circuit of a board in the request, or the board that the request is.
 *
 * @param place its JSON pointer, empty for the request itself
 * @param own what the request says of it
 * @param faults what is wrong with it; then nothing of it is relied on
 * @param ways the circuits that leave from the board that it feeds
 */
public record BoardNode(String place, JsonNode own, List<Fault> faults, List<BoardNode> ways) {

  /** The tree of a body. */
  public static BoardNode of(BoardBody body) {
    return of(body, "", body.whole());
  }

  private static BoardNode of(BoardBody body, String place, JsonNode own) {
    List<BoardNode> ways = new ArrayList<>();
    JsonNode circuits = own.path("circuits");
    for (int i = 0; circuits.isArray() && i < circuits.size(); i++) {
      ways.add(of(body, place + "/circuits/" + i, circuits.get(i)));
    }
    return new BoardNode(place, own, body.faults(place), ways);
  }

  /** Whether what is said of it is valid. */
  public boolean valid() {
    return faults.isEmpty();
  }

  /** Whether circuits leave from its far end. */
  public boolean feedsBoard() {
    return !ways.isEmpty();
  }

  /** The caller's name for it, where it is one. */
  public String reference() {
    String reference = own.path("reference").textValue();
    return reference == null || reference.length() > MOST_LETTERS ? null : reference;
  }

  /** A fact of the contract (Circuit.reference). */
  private static final int MOST_LETTERS = 120;
}
