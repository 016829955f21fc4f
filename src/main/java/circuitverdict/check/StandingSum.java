package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Way;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Standing protective-conductor currents of circuits together, those of the boards that they feed
 * among them.
 *
 * @param sum of those that are stated, A
 * @param whole whether every circuit states its own
 * @param lines the lines of the circuits that have any
 */
record StandingSum(Figure sum, boolean whole, Set<List<Integer>> lines) {
  private static final Formula SUM = Formula.of("ΣIpe", Unit.AMPERE, "ΣIpe + Ipe");

  private static final StandingSum NONE =
      new StandingSum(Figure.derived("ΣIpe", 0, Unit.AMPERE), true, Set.of());

  /**
   * Of circuits; what is not stated is noted.
   *
   * @param fed the boards that circuits feed, by the place of the circuit
   */
  static StandingSum of(List<Way> ways, Map<String, Board> fed, Dossier d) {
    Figure sum = Figure.derived("ΣIpe", 0, Unit.AMPERE);
    boolean whole = true;
    Set<List<Integer>> lines = new HashSet<>();
    for (Way way : ways) {
      Figure own = own(way);
      Board board = fed.get(way.place());
      StandingSum below = board == null ? NONE : of(board.ways(), fed, d);
      whole &= below.whole() && (board != null || own.known());
      if (board == null && !own.known()) {
        d.missing(own(way.place()));
      }
      lines.addAll(below.lines());
      if (own.value() > below.sum().value()) {
        lines.add(way.lines());
      }
      Figure more = Figure.greater(below.sum().as("Ipe"), own);
      if (more.value() > 0) {
        sum = d.working().step(SUM, sum, more);
      }
    }
    return new StandingSum(sum, whole, lines);
  }

  /** Whether the currents add as numbers: all of one and the same line. */
  boolean onOneLine() {
    return lines.size() == 1 && lines.iterator().next().size() == 1;
  }

  private static Figure own(Way way) {
    Double stated =
        way.circuit() == null ? null : way.circuit().load().protectiveConductorCurrentA();
    return stated == null
        ? Figure.unknown("Ipe", Unit.AMPERE)
        : new Figure("Ipe", stated, Unit.AMPERE, own(way.place()));
  }

  private static Pointer own(String place) {
    return new Pointer(place + "/load", "protectiveConductorCurrentA");
  }
}
