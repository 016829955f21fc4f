package circuitverdict.conductor;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Way;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Working;
import circuitverdict.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * What the circuits of a board draw, line by line (311.1): their design currents added as numbers,
 * whatever their power factors, which is never less than they draw together; then the share of it
 * that the stated diversity leaves, all of it where none is stated, and never less than the largest
 * of them draws alone.
 *
 * @param lines the lines of the board that carry a load, in order
 * @param designed what the circuit that feeds the board is stated to be designed for, A; unknown
 *     where nothing is
 */
public record LineLoading(List<Line> lines, Figure designed) {
  /** Steps of a sum that are still worth reading; of longer ones the sum alone is shown. */
  private static final int MOST_STEPS = 30;

  private static final String SUM = "Isum,L";
  private static final String DEMAND = "IL";
  private static final String LARGEST = "Ib,max";

  /**
   * One line.
   *
   * @param number 1 to 3
   * @param connected sum of the design currents, A
   * @param demand what of it is drawn at most, A
   * @param least the same of the circuits alone whose currents are known, A
   */
  public record Line(int number, Figure connected, Figure demand, Figure least) {}

  private record Sums(Formula add, Formula share) {
    static Sums of(int line) {
      String sum = SUM + line;
      return new Sums(
          Formula.of(sum, Unit.AMPERE, sum + " + Ib"),
          Formula.of(DEMAND + line, Unit.AMPERE, "max(kd·" + sum + "; " + LARGEST + ")"));
    }
  }

  private static final List<Sums> FORMULAE = List.of(Sums.of(1), Sums.of(2), Sums.of(3));

  /**
   * Of a board.
   *
   * @param fed what the boards draw that its circuits feed, by the place of the circuit
   */
  public static LineLoading of(Board board, Map<String, LineLoading> fed, Dossier d) {
    TreeSet<Integer> numbers = new TreeSet<>();
    board.ways().forEach(way -> numbers.addAll(way.lines()));
    boolean whole = placed(board, d);
    Figure share =
        d.given(
            "kd", board.diversityFactor(), Unit.ONE, new Pointer(board.place(), "diversityFactor"));
    share = share.known() ? share : Figure.derived("kd", 1, Unit.ONE);
    Working working = board.ways().size() > MOST_STEPS ? Working.silent() : d.working();
    List<Line> lines = new ArrayList<>();
    for (int number : numbers) {
      lines.add(line(board, number, whole, share, fed, working, d));
    }
    LiveConductors live = LiveConductors.of(board.here());
    return new LineLoading(lines, DesignCurrent.of(board.here(), live, d.trial()));
  }

  /** Whether of each circuit the lines are known; which are not is noted. */
  private static boolean placed(Board board, Dossier d) {
    boolean all = true;
    for (Way way : board.ways()) {
      if (way.circuit() == null) {
        d.missing(new Pointer(way.place(), ""));
        all = false;
      } else if (way.lines().isEmpty()) {
        Pointer live = new Pointer(way.place(), "liveConductors");
        d.missing(board.here().supply().phases() == null ? At.PHASES : live);
        all = false;
      }
    }
    return all;
  }

  private static Line line(
      Board board,
      int number,
      boolean whole,
      Figure share,
      Map<String, LineLoading> fed,
      Working working,
      Dossier d) {
    Sums sums = FORMULAE.get(number - 1);
    Figure sum = Figure.derived(SUM + number, whole ? 0 : Double.NaN, Unit.AMPERE);
    Figure largest = Figure.derived(LARGEST, 0, Unit.AMPERE);
    double known = 0;
    for (Way way : board.ways()) {
      if (way.circuit() != null && way.lines().contains(number)) {
        Figure current = current(way, number, fed, d);
        sum = working.step(sums.add(), sum, current);
        largest = Figure.greater(largest, current.as(LARGEST));
        known += current.known() ? current.value() : 0;
      }
    }
    double least = Math.max(share.value() * known, largest.value());
    return new Line(
        number,
        sum,
        d.working().step(sums.share(), share, sum, largest),
        Figure.derived(DEMAND + number, least, Unit.AMPERE));
  }

  /** The greatest demand of a line, A; unknown where that of any line is. */
  public Figure greatest() {
    Figure greatest = Figure.unknown(DEMAND, Unit.AMPERE);
    for (Line line : lines) {
      if (!line.demand().known()) {
        return Figure.unknown(DEMAND, Unit.AMPERE);
      }
      greatest = Figure.greater(line.demand(), greatest);
    }
    return greatest;
  }

  /** The greatest demand of a line by what is known alone, A: it is no less. */
  public Figure least() {
    Figure least = Figure.derived(DEMAND, 0, Unit.AMPERE);
    for (Line line : lines) {
      least = Figure.greater(line.least(), least);
    }
    return least;
  }

  private static Figure current(Way way, int line, Map<String, LineLoading> fed, Dossier d) {
    Pointer at = new Pointer(way.place() + "/load", "designCurrentA");
    if (way.feedsBoard()) {
      return drawn(way, fed.get(way.place()), line);
    }
    Dossier own = d.trial();
    Figure current = DesignCurrent.of(way.circuit(), LiveConductors.of(way.circuit()), own);
    if (!current.known()) {
      d.missing(at);
    }
    return new Figure("Ib", current.value(), Unit.AMPERE, at);
  }

  /**
   * What a board draws that the circuit feeds, or of each line what that was designed for where it
   * is more. What is missing is told of the board.
   */
  private static Figure drawn(Way way, LineLoading board, int line) {
    Figure demand = board.demand(line);
    double counts = demand.value();
    if (demand.known() && board.designed().known()) {
      counts = Math.max(counts, board.designed().value());
    }
    return new Figure("Ib", counts, Unit.AMPERE, new Pointer(way.place(), "circuits"));
  }

  private Figure demand(int number) {
    for (Line line : lines) {
      if (line.number() == number) {
        return line.demand();
      }
    }
    boolean known = lines.stream().allMatch(line -> line.demand().known());
    return Figure.derived(DEMAND + number, known ? 0 : Double.NaN, Unit.AMPERE);
  }
}
