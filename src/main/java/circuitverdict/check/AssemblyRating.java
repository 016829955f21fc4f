package circuitverdict.check;

import circuitverdict.circuit.Assembly;
import circuitverdict.circuit.Board;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;

/**
 * Conditional short-circuit rating of the assembly (536.4.201, IEC 61439-3): the greatest fault
 * current at the board is within it, and the device before it is a fuse no larger than its maker
 * allows. What each device breaks within it is a check of each circuit.
 */
final class AssemblyRating {
  private AssemblyRating() {}

  static Finding of(Board board, Dossier d) {
    String place = board.place() + "/assembly";
    Judgement judgement =
        new Judgement(CheckName.ASSEMBLY_RATING, board.here(), d, place)
            .by(Clause.CONDITIONAL_RATING);
    Assembly assembly = board.assembly();
    Figure rating =
        d.need(
            "Icc",
            assembly.conditionalRatingA(),
            Unit.AMPERE,
            new Pointer(place, "conditionalRatingA"));
    LiveConductors live = LiveConductors.of(board.here());
    Figure greatest = GreatestCurrent.ofWay(board.here(), live, null, d);
    judgement.compare(place, greatest, Comparator.AT_MOST, rating);
    fuse(board, assembly, judgement, d);
    return judgement.conclude();
  }

  private static void fuse(Board board, Assembly assembly, Judgement judgement, Dossier d) {
    Figure most =
        d.need(
            "In,fuse",
            assembly.maximumUpstreamFuseA(),
            Unit.AMPERE,
            new Pointer(board.place() + "/assembly", "maximumUpstreamFuseA"));
    ProtectiveDevice upstream = board.upstream();
    if (upstream == null) {
      d.missing(new Pointer(board.place(), "upstreamDevice"));
      judgement.undetermined();
      return;
    }
    if (!(upstream instanceof Fuse)) {
      // Its maker names fuses: what another device lets through is not known.
      d.missing(NoteCode.BACK_UP_EVIDENCE_NEEDED, new Pointer(upstream.data().place(), "standard"));
      judgement.undetermined();
      return;
    }
    Figure rated =
        d.need(
            "In",
            upstream.data().ratedCurrentA(),
            Unit.AMPERE,
            new Pointer(upstream.data().place(), "ratedCurrentA"));
    judgement.compare(upstream.data().place(), rated, Comparator.AT_MOST, most);
  }
}
