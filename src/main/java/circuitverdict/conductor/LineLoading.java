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
 * that the stated diversity leaves, all of it where none is stated.
 *
 * @param lines the lines of the board that carry a load, in order
 */
public record LineLoading(List<Line> lines) {
  /** Steps of a sum that are still worth reading; of longer ones the sum alone is shown. */
  private static final int MOST_STEPS = 30;

  private static final String SUM = "Isum,L";
  private static final String DEMAND = "IL";

  /**
   * One line.
   *
   * @param number 1 to 3
   * @param connected sum of the design currents, A
   * @param demand what of it is drawn at most, A
   */
  public record Line(int number, Figure connected, Figure demand) {}

  private record Sums(Formula add, Formula share) {
    static Sums of(int line) {
      String sum = SUM + line;
      return new Sums(
          Formula.of(sum, Unit.AMPERE, sum + " + Ib"),
          Formula.of(DEMAND + line, Unit.AMPERE, "kd·" + sum));
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
    boolean whole = true;
    for (Way way : board.ways()) {
      if (way.lines().isEmpty()) {
        Pointer live = new Pointer(way.place(), "liveConductors");
        d.missing(board.here().supply().phases() == null ? At.PHASES : live);
        whole = false;
      }
    }
    Figure share =
        d.given(
            "kd", board.diversityFactor(), Unit.ONE, new Pointer(board.place(), "diversityFactor"));
    share = share.known() ? share : Figure.derived("kd", 1, Unit.ONE);
    Working working = board.ways().size() > MOST_STEPS ? Working.silent() : d.working();
    List<Line> lines = new ArrayList<>();
    for (int number : numbers) {
      Sums sums = FORMULAE.get(number - 1);
      Figure sum = Figure.derived(SUM + number, whole ? 0 : Double.NaN, Unit.AMPERE);
      for (Way way : board.ways()) {
        if (way.lines().contains(number)) {
          sum = working.step(sums.add(), sum, current(way, number, fed, d));
        }
      }
      lines.add(new Line(number, sum, d.working().step(sums.share(), share, sum)));
    }
    return new LineLoading(lines);
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

  /** The greatest sum of a line, A; unknown where that of any line is. */
  public Figure greatestConnected() {
    Figure greatest = Figure.unknown(SUM, Unit.AMPERE);
    for (Line line : lines) {
      if (!line.connected().known()) {
        return Figure.unknown(SUM, Unit.AMPERE);
      }
      greatest = Figure.greater(line.connected(), greatest);
    }
    return greatest;
  }

  private static Figure current(Way way, int line, Map<String, LineLoading> fed, Dossier d) {
    Pointer at = new Pointer(way.place() + "/load", "designCurrentA");
    if (way.circuit() == null) {
      d.missing(new Pointer(way.place(), ""));
      return Figure.unknown("Ib", Unit.AMPERE);
    }
    if (way.feedsBoard()) {
      // What is missing is told of the board that it feeds.
      Figure demand = fed.get(way.place()).demand(line);
      return new Figure("Ib", demand.value(), Unit.AMPERE, new Pointer(way.place(), "circuits"));
    }
    Dossier own = d.trial();
    Figure current = DesignCurrent.of(way.circuit(), LiveConductors.of(way.circuit()), own);
    if (!current.known()) {
      d.missing(at);
    }
    return new Figure("Ib", current.value(), Unit.AMPERE, at);
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
