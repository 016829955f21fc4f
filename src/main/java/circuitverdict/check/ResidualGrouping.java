package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Group;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.DeviceData;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import java.util.Map;

/**
 * Circuits that share a residual current device (531.3.2): their standing protective-conductor
 * currents together are no more than 30 % of IΔn, lest it trips without a fault. Where a circuit
 * does not state its current the group is left open, and counts at sign-off only: what is stated of
 * it may still fail.
 */
final class ResidualGrouping {
  private static final Formula SHARE = Formula.of("Ipe,max", Unit.AMPERE, "s·IΔn");

  private ResidualGrouping() {}

  static Finding of(Board board, Group group, Map<String, Board> fed, Dossier d) {
    DeviceData device = group.device().data();
    Judgement judgement =
        new Judgement(CheckName.RESIDUAL_GROUPING, board.here(), d, device.place())
            .by(Clause.STANDING_RESIDUAL);
    Double stated = device.residual() == null ? null : device.residual().operatingCurrentA();
    Figure operating =
        d.need(
            "IΔn",
            stated,
            Unit.AMPERE,
            new Pointer(device.place() + "/residual", "operatingCurrentA"));
    Figure limit =
        d.working()
            .step(SHARE, d.constant("s", Constant.ADDITIONAL_PROTECTION_STANDING_SHARE), operating);
    standing(board, StandingSum.of(group.ways(), fed, d), device, limit, judgement, d);
    return judgement.conclude();
  }

  private static void standing(
      Board board,
      StandingSum standing,
      DeviceData device,
      Figure limit,
      Judgement judgement,
      Dossier d) {
    Figure sum = standing.sum();
    if (!limit.known()) {
      judgement.undetermined();
      return;
    }
    boolean within = Comparator.atMost(sum.value(), limit.value());
    boolean certain = within ? standing.whole() : standing.onOneLine();
    if (certain) {
      judgement.compare(device.place(), sum, Comparator.AT_MOST, limit);
      return;
    }
    if (!within) {
      // Currents of different lines do not add as numbers.
      d.remark(NoteCode.STANDING_OF_LINES);
    } else if (board.here().stage() != Circuit.Stage.SIGN_OFF) {
      judgement.informative();
    }
    judgement.open(device.place(), sum, Comparator.AT_MOST, limit);
  }
}
