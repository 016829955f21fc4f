package circuitverdict.check;

import circuitverdict.circuit.Assembly;
import circuitverdict.circuit.Board;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.device.GeneralPurpose;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import java.util.Set;

/**
 * Conditional short-circuit rating of the assembly (536.4.201, IEC 61439-3): the greatest fault
 * current at the board is within it, and the device before it is a fuse no larger than its maker
 * allows. What each device breaks within it is a check of each circuit.
 */
final class AssemblyRating {
  private static final Set<String> NAMED = Set.of("BS 88-2", "BS 88-3", "BS 1361");

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
    if (ContradictedCurrent.byLoops(board.here(), live, greatest, d)) {
      return judgement.undetermined().conclude();
    }
    judgement.compare(place, greatest, Comparator.AT_MOST, rating);
    fuse(board, assembly, greatest, judgement, d);
    return judgement.conclude();
  }

  private static void fuse(
      Board board, Assembly assembly, Figure greatest, Judgement judgement, Dossier d) {
    ProtectiveDevice upstream = board.upstream();
    if (upstream == null) {
      d.missing(new Pointer(board.place(), "upstreamDevice"));
      judgement.undetermined();
      return;
    }
    if (!(upstream instanceof Fuse fuse && NAMED.contains(standard(fuse)) && general(fuse, d))) {
      small(upstream, greatest, judgement, d);
      return;
    }
    Figure most =
        d.need(
            "In,fuse",
            assembly.maximumUpstreamFuseA(),
            Unit.AMPERE,
            new Pointer(board.place() + "/assembly", "maximumUpstreamFuseA"));
    Figure rated =
        d.need(
            "In",
            upstream.data().ratedCurrentA(),
            Unit.AMPERE,
            new Pointer(upstream.data().place(), "ratedCurrentA"));
    judgement.compare(upstream.data().place(), rated, Comparator.AT_MOST, most);
  }

  private static String standard(Fuse fuse) {
    return fuse.data().standard();
  }

  private static boolean general(Fuse fuse, Dossier d) {
    return Boolean.TRUE.equals(GeneralPurpose.of(fuse, d));
  }

  /**
   * Its maker names fuses: what another device lets through is not known. At small currents no
   * assembly is tried for its strength (IEC 61439-1, 10.11.2, from memory): guidance, since that
   * speaks of its rating.
   */
  private static void small(
      ProtectiveDevice upstream, Figure greatest, Judgement judgement, Dossier d) {
    Figure untried = d.constant("Icp", Constant.ASSEMBLY_UNTRIED_CURRENT);
    if (upstream.data().standard() != null
        && Comparator.atMost(greatest.value(), untried.value())) {
      d.remark(NoteCode.ASSEMBLY_SMALL_CURRENT, untried);
      d.restsOn(Dossier.Strength.GUIDANCE);
      return;
    }
    d.missing(NoteCode.BACK_UP_EVIDENCE_NEEDED, new Pointer(upstream.data().place(), "standard"));
    judgement.undetermined();
  }
}
