package circuitverdict.check;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Group;
import circuitverdict.circuit.Board.Way;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Clause;
import java.util.List;
import java.util.Map;

/**
 * The type of a residual current device that circuits share (531.3.3): that which each of their
 * loads asks for, those of the boards that they feed among them, even where a circuit has a device
 * of its own: direct current beyond what it detects may blind it.
 */
final class SharedResidualType {
  private final Group group;
  private final Map<String, Board> fed;
  private final Judgement judgement;
  private final Dossier d;
  private boolean broken;
  private boolean open;

  private SharedResidualType(Group group, Map<String, Board> fed, Judgement judgement, Dossier d) {
    this.group = group;
    this.fed = fed;
    this.judgement = judgement;
    this.d = d;
  }

  static Finding of(Board board, Group group, Map<String, Board> fed, Dossier d) {
    String place = group.device().data().place();
    Judgement judgement =
        new Judgement(CheckName.RESIDUAL_GROUPING, board.here(), d, place + "/residual/type");
    if (group.device().data().residual() == null) {
      d.missing(new Pointer(place, "residual"));
      return judgement.by(Clause.RESIDUAL_TYPE).undetermined().conclude();
    }
    SharedResidualType type = new SharedResidualType(group, fed, judgement, d);
    type.judge(group.ways());
    if (type.broken) {
      d.remark(NoteCode.RESIDUAL_TYPE_OF_OTHERS);
      return judgement.concludeBroken();
    }
    if (!type.open) {
      return judgement.concludeMet();
    }
    if (board.here().stage() != Circuit.Stage.SIGN_OFF) {
      judgement.informative();
    }
    return judgement.undetermined().conclude();
  }

  private void judge(List<Way> ways) {
    for (Way way : ways) {
      Board below = fed.get(way.place());
      if (below != null) {
        judge(below.ways());
      } else {
        judge(way);
      }
    }
  }

  private void judge(Way way) {
    Pointer at = new Pointer(way.place() + "/load", "residualWaveform");
    Dossier trial = d.trial();
    Boolean suits =
        way.circuit() == null
            ? null
            : ResidualTypeRule.suits(way.circuit(), group.device(), judgement, trial);
    broken |= Boolean.FALSE.equals(suits);
    if (suits == null) {
      open = true;
      boolean untyped = group.device().data().residual().type() == null;
      d.missing(untyped ? new Pointer(group.device().data().place() + "/residual", "type") : at);
    }
  }
}
