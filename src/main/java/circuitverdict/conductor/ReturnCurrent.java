package circuitverdict.conductor;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Way;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import java.util.Map;

/**
 * What the circuits of a board, and of those that it feeds, send back by the neutral of the circuit
 * that feeds it while each line carries its demand: the vector sum of the line currents, each
 * lagging by its power factor. Of loads of which line or, where nothing is assumed, power factor is
 * not known the whole current counts. What is between two lines sends nothing back, but loads two
 * lines and not three alike.
 */
public final class ReturnCurrent {
  private static final double APART = 2 * Math.PI / 3;

  private final Map<String, Board> boards;
  private final Map<String, LineLoading> loadings;
  private final Dossier d;
  private double real;
  private double imaginary;
  private double loose;
  private boolean between;

  private ReturnCurrent(Map<String, Board> boards, Map<String, LineLoading> loadings, Dossier d) {
    this.boards = boards;
    this.loadings = loadings;
    this.d = d;
  }

  /**
   * Of a board.
   *
   * @param boards the board and those that it feeds, by place
   * @param loadings what they draw
   */
  public static ReturnCurrent of(
      Board board, Map<String, Board> boards, Map<String, LineLoading> loadings, Dossier d) {
    ReturnCurrent sum = new ReturnCurrent(boards, loadings, d);
    sum.add(board, new double[] {1, 1, 1});
    return sum;
  }

  /** The current in the neutral, A. */
  public double ampere() {
    return StrictMath.hypot(real, imaginary) + loose;
  }

  /** Whether a load is between two of the lines. */
  public boolean isBetweenLines() {
    return between;
  }

  private void add(Board board, double[] share) {
    double[] own = share.clone();
    for (LineLoading.Line line : loadings.get(board.place()).lines()) {
      double connected = line.connected().value();
      own[line.number() - 1] *= connected > 0 ? line.demand().value() / connected : 1;
    }
    for (Way way : board.ways()) {
      Board below = boards.get(way.place());
      if (below != null) {
        add(below, own);
      } else if (way.circuit() != null) {
        add(way, own);
      }
    }
  }

  private void add(Way way, double[] share) {
    Circuit circuit = way.circuit();
    LiveConductors live = LiveConductors.of(circuit);
    double current = DesignCurrent.of(circuit, live, d.trial()).value();
    boolean oneLine = OneLine.stands(circuit, live, d.trial());
    boolean alike = live != null && live.lines() == 3 && !oneLine;
    if (alike || Double.isNaN(current)) {
      return;
    }
    if (live != null && !live.neutral()) {
      between = true;
      return;
    }
    int lines = way.lines().size();
    Double cosine = powerFactor(circuit.load());
    if (lines != 1 || live == null || live.lines() != 1 || cosine == null) {
      loose += current;
      return;
    }
    int line = way.lines().get(0);
    double angle = -APART * (line - 1) - StrictMath.acos(Math.min(1, cosine));
    real += share[line - 1] * current * StrictMath.cos(angle);
    imaginary += share[line - 1] * current * StrictMath.sin(angle);
  }

  /** As stated, 1 of a resistance; of others 1 where a design assumes, else not known. */
  private Double powerFactor(Load load) {
    boolean resistive = load.kind() == Load.Kind.RESISTIVE || load.kind() == Load.Kind.FILAMENT;
    if (load.powerFactor() != null) {
      return load.powerFactor();
    }
    return resistive || d.allows(Allowance.TABLE_DEFAULTS) ? 1.0 : null;
  }
}
