package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Way;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.device.AgainstOverload;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import java.util.List;

/**
 * Overload of a switch or residual current device that several circuits share (536.4.3.2, from
 * memory): the device upstream, or those downstream together, keep its current within its rated
 * one. Diversity alone protects nothing.
 */
final class SwitchOverload {
  private static final Formula SUM = Formula.of("ΣIn", Unit.AMPERE, "ΣIn + In");
  private static final int LINES = 3;

  private SwitchOverload() {}

  /**
   * Holds it.
   *
   * @param before the overcurrent devices before it
   * @param ways the circuits behind it
   */
  static void hold(
      Board board,
      String place,
      Figure carries,
      List<ProtectiveDevice> before,
      List<Way> ways,
      Judgement judgement,
      Dossier d) {
    judgement.by(Clause.RESIDUAL_DEVICE_PROTECTION);
    Dossier trial = d.trial();
    Figure above = none();
    boolean known = board.upstream() != null;
    for (ProtectiveDevice device : before) {
      Figure protects = protecting(device, trial);
      known &= protects.known();
      above = Figure.lesser(protects, above);
    }
    if (!carries.known() || holds(above, carries)) {
      judgement.compare(place, above, Comparator.AT_MOST, carries);
      return;
    }
    Figure below = downstream(ways, d);
    if (holds(below, carries)) {
      judgement.compare(place, below, Comparator.AT_MOST, carries);
      return;
    }
    Figure least = Figure.lesser(above, below);
    if (known && below.known()) {
      judgement.compare(place, least, Comparator.AT_MOST, carries);
      return;
    }
    Pointer at = new Pointer(board.place(), "upstreamDevice");
    if (board.upstream() == null) {
      d.missing(at);
    }
    trial.missing().forEach(note -> d.missing(note.code(), note.pointer()));
    judgement.open(place, least, Comparator.AT_MOST, carries);
  }

  private static boolean holds(Figure current, Figure carries) {
    return current.known() && Comparator.atMost(current.value(), carries.value());
  }

  /** Of the most loaded line the rated currents of all devices; unknown where one is. */
  private static Figure downstream(List<Way> ways, Dossier d) {
    Figure greatest = Figure.derived("ΣIn", 0, Unit.AMPERE);
    for (int line = 1; line <= LINES; line++) {
      Figure sum = Figure.derived("ΣIn", 0, Unit.AMPERE);
      for (Way way : ways) {
        if (way.lines().isEmpty() || way.lines().contains(line)) {
          sum = d.working().step(SUM, sum, rated(way, d).as("In"));
        }
      }
      if (!sum.known()) {
        return sum;
      }
      greatest = Figure.greater(sum, greatest);
    }
    return greatest;
  }

  private static Figure rated(Way way, Dossier d) {
    ProtectiveDevice device = way.circuit() == null ? null : way.circuit().device();
    if (device == null) {
      return none();
    }
    Figure rated = protecting(device, d.trial());
    return new Figure(
        "In", rated.value(), Unit.AMPERE, new Pointer(way.place() + "/device", "ratedCurrentA"));
  }

  /** What a device is rated or set to carry, if it breaks overload at all. */
  private static Figure protecting(ProtectiveDevice device, Dossier d) {
    boolean breaks = Boolean.TRUE.equals(AgainstOverload.noted(device, d));
    return breaks ? RatedCurrent.of(device, d) : none();
  }

  private static Figure none() {
    return Figure.unknown("In", Unit.AMPERE);
  }
}
