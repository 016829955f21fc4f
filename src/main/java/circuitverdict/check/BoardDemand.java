package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Group;
import circuitverdict.circuit.Board.Way;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.conductor.LineLoading;
import circuitverdict.device.AgainstOverload;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What a board draws (311.1) against what stands before its circuits: the main switch or device
 * carries it, the overcurrent device upstream carries it, and the circuit that feeds the board was
 * designed for it. A main switch that breaks no overload is protected from one (536.4.3.2, from
 * memory).
 */
public final class BoardDemand {
  private BoardDemand() {}

  /** The finding; {@code d} holds the working of the loading. */
  static Finding of(Board board, LineLoading loading, Dossier d) {
    String subject = board.place() + "/incomer";
    Judgement judgement =
        new Judgement(CheckName.BOARD_DEMAND, board.here(), d, subject).by(Clause.MAXIMUM_DEMAND);
    Load load = new Load(judgement, loading);
    if (!load.known()) {
      judgement.undetermined();
    }
    incomer(board, load, judgement, d);
    for (ProtectiveDevice device : board.before()) {
      load.hold(device.data().place(), RatedCurrent.of(device, d));
    }
    feeder(board, load);
    poles(board, judgement, d);
    return judgement.conclude();
  }

  /** The demand held against what carries it; of one that is not known only what fails. */
  private record Load(Judgement judgement, LineLoading loading) {
    boolean known() {
      return loading.greatest().known();
    }

    void hold(String about, Figure carries) {
      if (known()) {
        judgement.compare(about, loading.greatest(), Comparator.AT_MOST, carries);
      } else {
        judgement.atBest(about, loading.least(), Comparator.AT_MOST, carries);
      }
    }
  }

  /** Of circuits that share a residual current device that breaks no overload. */
  static Finding of(Board board, Group group, Dossier d) {
    String place = group.device().data().place();
    Judgement judgement = new Judgement(CheckName.BOARD_DEMAND, board.here(), d, place);
    Figure carries =
        d.need(
            "In,RCCB",
            group.device().data().ratedCurrentA(),
            Unit.AMPERE,
            new Pointer(place, "ratedCurrentA"));
    SwitchOverload.hold(board, place, carries, before(board, true, d), group.ways(), judgement, d);
    return judgement.conclude();
  }

  /** The overcurrent devices before the circuits of a board, or before its incomer. */
  private static List<ProtectiveDevice> before(Board board, boolean withIncomer, Dossier d) {
    List<ProtectiveDevice> before = new ArrayList<>(2);
    if (withIncomer && board.incomer() != null && breaksOverload(board.incomer(), d)) {
      before.add(board.incomer());
    }
    before.addAll(board.before());
    return before;
  }

  private static void incomer(Board board, Load load, Judgement judgement, Dossier d) {
    ProtectiveDevice incomer = board.incomer();
    if (incomer == null) {
      d.missing(new Pointer(board.place(), "incomer"));
      judgement.undetermined();
      return;
    }
    String place = incomer.data().place();
    if (incomer.data().standard() == null) {
      // Whether it breaks overloads itself is not known.
      d.missing(new Pointer(place, "standard"));
      judgement.undetermined();
    }
    boolean breaksOverload = breaksOverload(incomer, d);
    Figure carries =
        breaksOverload
            ? RatedCurrent.of(incomer, d)
            : d.need(
                "In",
                incomer.data().ratedCurrentA(),
                Unit.AMPERE,
                new Pointer(place, "ratedCurrentA"));
    load.hold(place, carries);
    if (!breaksOverload) {
      SwitchOverload.hold(
          board,
          place,
          carries.as("In,switch"),
          before(board, false, d),
          board.ways(),
          judgement,
          d);
    }
  }

  private static boolean breaksOverload(ProtectiveDevice device, Dossier d) {
    return Boolean.TRUE.equals(AgainstOverload.of(device, d));
  }

  /** What was stated as the load of the circuit that feeds the board is no less than it draws. */
  private static void feeder(Board board, Load load) {
    Figure stated = load.loading().designed();
    if (stated.known()) {
      Pointer at = new Pointer(board.place() + "/load", "designCurrentA");
      load.hold(at.text(), new Figure("Ib", stated.value(), Unit.AMPERE, at));
    }
  }

  /**
   * A main switch has a pole for each line that the circuits load, and an RCCB one for a neutral.
   */
  private static void poles(Board board, Judgement judgement, Dossier d) {
    ProtectiveDevice incomer = board.incomer();
    TreeSet<Integer> lines = new TreeSet<>();
    boolean neutral = false;
    for (Way way : board.ways()) {
      lines.addAll(way.lines());
      LiveConductors live = way.circuit() == null ? null : LiveConductors.of(way.circuit());
      neutral |= live != null && live.neutral();
    }
    int needed = lines.size() + (neutral && incomer instanceof Rccb ? 1 : 0);
    if (incomer == null || needed < 2) {
      return;
    }
    Pointer at = new Pointer(incomer.data().place(), "poles");
    Integer poles = incomer.data().poles();
    Figure stated = d.need("p", poles == null ? null : (double) poles, Unit.ONE, at);
    judgement.classed(
        incomer.data().place(),
        stated,
        Comparator.AT_LEAST,
        Figure.derived("p,min", needed, Unit.ONE));
  }
}
