package circuitverdict.service.wire;

import circuitverdict.check.CircuitCheck;
import circuitverdict.circuit.Board;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.conductor.LineLoading;
import circuitverdict.conductor.ReturnCurrent;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Working;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/**
 * The load of a circuit that feeds a board: what the board draws from its most loaded line, or more
 * where more is stated. Where the lines of a three-phase circuit are not loaded alike its voltage
 * drop counts by more than that: by line and neutral current together, or between two lines by 2/√3
 * of the line current.
 */
final class FeederLoad {
  private static final String LOAD = "load";
  private static final String CURRENT = "designCurrentA";
  private static final String DROP = "voltageDropCurrentA";
  private static final int LINES = 3;

  private final BoardNode way;
  private final Map<String, Board> boards;
  private final Map<String, LineLoading> loadings;
  private final Edition edition;

  /** Of the circuit that feeds a board, which is known with all that it feeds. */
  FeederLoad(
      BoardNode way,
      Map<String, Board> boards,
      Map<String, LineLoading> loadings,
      Edition edition) {
    this.way = way;
    this.boards = boards;
    this.loadings = loadings;
    this.edition = edition;
  }

  /** Puts it into the circuit as a request of its own. */
  void into(ObjectNode circuit) {
    Circuit stated = CircuitMapping.circuit(circuit);
    Dossier d = new Dossier(edition, CircuitCheck.allowance(stated.stage()), Working.silent());
    double designed = DesignCurrent.of(stated, LiveConductors.of(stated), d).value();
    double drawn = loadings.get(way.place()).greatest().value();
    boolean more = designed >= drawn;
    ObjectNode load = circuit.objectNode();
    if (circuit.path(LOAD).isObject()) {
      load.setAll((ObjectNode) circuit.get(LOAD));
    } else {
      load.put("kind", "mixed");
    }
    double current = more ? designed : drawn;
    if (!more) {
      load.put(CURRENT, drawn);
    }
    double counts = Math.max(drop(current, drawn, d), load.path(DROP).asDouble(0));
    if (counts > current) {
      load.put(DROP, counts);
    }
    circuit.set(LOAD, load);
  }

  /** The current by which the drop counts: in proportion where more is stated than is drawn. */
  private double drop(double current, double drawn, Dossier d) {
    JsonNode live = way.own().path("liveConductors");
    boolean neutral = live.isEmpty();
    int lines = live.isEmpty() ? LINES : 0;
    for (JsonNode name : live) {
      neutral |= "N".equals(name.asText());
      lines += name.asText().startsWith("L") ? 1 : 0;
    }
    if (lines < 2 || lines < LINES && !neutral || drawn == 0) {
      return current;
    }
    ReturnCurrent back = ReturnCurrent.of(boards.get(way.place()), boards, loadings, d);
    if (lines < LINES) {
      // Of its voltage between lines the same volts are a lesser share than of one line's.
      return back.ampere() > 0 ? current * Math.sqrt(LINES) : current;
    }
    double between = back.isBetweenLines() ? current * 2 / Math.sqrt(LINES) : current;
    double byNeutral = neutral ? current * (1 + back.ampere() / drawn * thinner()) : current;
    return Math.max(between, byNeutral);
  }

  /** Section of the line over that of a smaller neutral, of the cable where it is the most. */
  private double thinner() {
    double most = thinner(way.own().path("cable"));
    for (JsonNode further : way.own().path("furtherCables")) {
      most = Math.max(most, thinner(further));
    }
    return most;
  }

  private static double thinner(JsonNode cable) {
    double line = cable.path("lineCsaMm2").asDouble(0);
    double neutral = cable.path("neutralCsaMm2").asDouble(line);
    return neutral > 0 && neutral < line ? line / neutral : 1;
  }
}
