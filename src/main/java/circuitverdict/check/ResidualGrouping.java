package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Group;
import circuitverdict.circuit.Board.Way;
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
import java.util.List;

/**
 * Circuits that share a residual current device (531.3.2): their standing protective-conductor
 * currents together are no more than 30 % of IΔn, lest it trips without a fault. Where a circuit
 * does not state its current the group is left open and does not count: what is stated of it may
 * still fail.
 */
final class ResidualGrouping {
  private static final Formula SHARE = Formula.of("Ipe,max", Unit.AMPERE, "s·IΔn");
  private static final Formula SUM = Formula.of("ΣIpe", Unit.AMPERE, "ΣIpe + Ipe");

  private ResidualGrouping() {}

  static Finding of(Board board, Group group, Dossier d) {
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
    standing(group, device, limit, judgement, d);
    return judgement.conclude();
  }

  private static void standing(
      Group group, DeviceData device, Figure limit, Judgement judgement, Dossier d) {
    Figure sum = Figure.derived("ΣIpe", 0, Unit.AMPERE);
    boolean all = true;
    for (Way way : group.ways()) {
      Double own =
          way.circuit() == null ? null : way.circuit().load().protectiveConductorCurrentA();
      Pointer at = new Pointer(way.place() + "/load", "protectiveConductorCurrentA");
      if (own == null) {
        d.missing(at);
        all = false;
      } else {
        sum = d.working().step(SUM, sum, new Figure("Ipe", own, Unit.AMPERE, at));
      }
    }
    if (!sum.known() || !limit.known()) {
      judgement.undetermined();
      return;
    }
    boolean within = Comparator.atMost(sum.value(), limit.value());
    boolean certain = within ? all : onOneLine(group.ways());
    if (certain) {
      judgement.compare(device.place(), sum, Comparator.AT_MOST, limit);
      return;
    }
    if (within) {
      judgement.informative();
    } else {
      // Currents of different lines do not add as numbers.
      d.remark(NoteCode.STANDING_OF_LINES);
    }
    judgement.open(device.place(), sum, Comparator.AT_MOST, limit);
  }

  private static boolean onOneLine(List<Way> ways) {
    return ways.stream().map(Way::lines).distinct().count() == 1 && ways.get(0).lines().size() == 1;
  }
}
