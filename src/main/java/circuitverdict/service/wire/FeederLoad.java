package circuitverdict.service.wire;

import circuitverdict.check.CircuitCheck;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.conductor.LineLoading;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Working;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * The load of a circuit that feeds a board: what the board draws from its most loaded line, or more
 * where more is stated. Where the lines of a three-phase circuit are not loaded alike its voltage
 * drop counts by more than that: by line and neutral current together, or between two lines by 2/√3
 * of the line current.
 */
final class FeederLoad {
  private static final String LOAD = "load";
  private static final String CURRENT = "designCurrentA";
  private static final int LINES = 3;

  private final BoardNode way;
  private final LineLoading loading;
  private final Edition edition;

  FeederLoad(BoardNode way, LineLoading loading, Edition edition) {
    this.way = way;
    this.loading = loading;
    this.edition = edition;
  }

  /** Puts it into the circuit as a request of its own. */
  void into(ObjectNode circuit) {
    Circuit stated = CircuitMapping.circuit(circuit);
    Dossier d = new Dossier(edition, CircuitCheck.allowance(stated.stage()), Working.silent());
    double designed = DesignCurrent.of(stated, LiveConductors.of(stated), d).value();
    double drawn = loading.greatest().value();
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
    double counts = drop(current, drawn, d.allows(Allowance.TABLE_DEFAULTS));
    if (counts > current && !load.has("voltageDropCurrentA")) {
      load.put("voltageDropCurrentA", counts);
    }
    circuit.set(LOAD, load);
  }

  /** The current by which the drop counts: in proportion where more is stated than is drawn. */
  private double drop(double current, double drawn, boolean design) {
    JsonNode live = way.own().path("liveConductors");
    boolean neutral = false;
    int lines = 0;
    for (JsonNode name : live) {
      neutral |= "N".equals(name.asText());
      lines += name.asText().startsWith("L") ? 1 : 0;
    }
    boolean alike = !live.isEmpty() && (lines < 2 || lines < LINES && !neutral);
    if (alike || drawn == 0) {
      return current;
    }
    if (lines == 2) {
      // Of its voltage between lines the same volts are a lesser share than of one line's.
      return loads(way, 1, true) ? current * Math.sqrt(LINES) : current;
    }
    boolean between = loads(way, 2, false);
    if (!between && !loads(way, 1, true)) {
      return current;
    }
    if (!neutral) {
      return between ? current * 2 / Math.sqrt(LINES) : current;
    }
    // Loads of any power factor and between lines: no more than the greatest line current returns.
    double back = between || !design ? drawn : vector();
    return current * (1 + back / drawn * thinner());
  }

  /** The neutral current of loads of one power factor, as much drawn from each line as is found. */
  private double vector() {
    double[] currents = new double[LINES];
    for (LineLoading.Line line : loading.lines()) {
      currents[line.number() - 1] = line.demand().value();
    }
    double a = currents[0];
    double b = currents[1];
    double c = currents[2];
    return Math.sqrt(Math.max(0, a * a + b * b + c * c - a * b - b * c - c * a));
  }

  /** Section of the line over that of a smaller neutral. */
  private double thinner() {
    double line = way.own().at("/cable/lineCsaMm2").asDouble(0);
    double neutral = way.own().at("/cable/neutralCsaMm2").asDouble(line);
    return neutral > 0 && neutral < line ? line / neutral : 1;
  }

  /** Whether a circuit below loads so many lines and the neutral, or may. */
  private static boolean loads(BoardNode board, int lines, boolean neutral) {
    for (BoardNode way : board.ways()) {
      JsonNode live = way.own().path("liveConductors");
      int named = 0;
      boolean back = false;
      for (JsonNode name : live) {
        named += name.asText().startsWith("L") ? 1 : 0;
        back |= "N".equals(name.asText());
      }
      boolean found = live.isEmpty() ? neutral : named == lines && (back || !neutral);
      if (found || loads(way, lines, neutral)) {
        return true;
      }
    }
    return false;
  }
}
