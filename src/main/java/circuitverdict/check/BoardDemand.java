package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Group;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.conductor.LineLoading;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import java.util.ArrayList;
import java.util.List;

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
    Figure demand = loading.greatest();
    if (!demand.known()) {
      judgement.undetermined();
    }
    incomer(board, demand, judgement, d);
    if (board.upstream() != null) {
      Figure carries = RatedCurrent.of(board.upstream(), d);
      judgement.compare(board.upstream().data().place(), demand, Comparator.AT_MOST, carries);
    }
    feeder(board, loading, judgement, d);
    return judgement.conclude();
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
    SwitchOverload.hold(board, place, carries, before(board, true), group.ways(), judgement, d);
    return judgement.conclude();
  }

  /** The overcurrent devices before the circuits of a board, or before its incomer. */
  private static List<ProtectiveDevice> before(Board board, boolean withIncomer) {
    List<ProtectiveDevice> before = new ArrayList<>(2);
    if (withIncomer && board.incomer() != null && breaksOverload(board.incomer())) {
      before.add(board.incomer());
    }
    if (board.upstream() != null) {
      before.add(board.upstream());
    }
    return before;
  }

  private static void incomer(Board board, Figure demand, Judgement judgement, Dossier d) {
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
    boolean breaksOverload = breaksOverload(incomer);
    Figure carries =
        breaksOverload
            ? RatedCurrent.of(incomer, d)
            : d.need(
                "In",
                incomer.data().ratedCurrentA(),
                Unit.AMPERE,
                new Pointer(place, "ratedCurrentA"));
    judgement.compare(place, demand, Comparator.AT_MOST, carries);
    if (!breaksOverload) {
      SwitchOverload.hold(
          board, place, carries.as("In,switch"), before(board, false), board.ways(), judgement, d);
    }
  }

  private static boolean breaksOverload(ProtectiveDevice device) {
    return device instanceof Breaker
        || device instanceof AdjustableBreaker
        || device instanceof Fuse;
  }

  /** A stated design current of the circuit that feeds the board stands for its diversity. */
  private static void feeder(Board board, LineLoading loading, Judgement judgement, Dossier d) {
    LiveConductors live = LiveConductors.of(board.here());
    Figure stated = DesignCurrent.of(board.here(), live, d.trial());
    if (!stated.known()) {
      return;
    }
    Pointer at = new Pointer(board.place() + "/load", "designCurrentA");
    Figure designed = new Figure("Ib", stated.value(), Unit.AMPERE, at);
    Figure connected = loading.greatestConnected();
    if (board.diversityFactor() != null) {
      judgement.compare(at.text(), loading.greatest(), Comparator.AT_MOST, designed);
    } else if (connected.known() && !Comparator.atMost(connected.value(), designed.value())) {
      d.remark(NoteCode.DIVERSITY_BY_DESIGN_CURRENT, designed, connected);
    }
  }
}
