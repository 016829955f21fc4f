package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.device.NotJudged;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;

/**
 * Users (133.1 and the product standards): where ordinary persons operate the board they need a
 * device made for them, to IEC 60898-1 or IEC 61009-1 or a household fuse. Such a one suits whoever
 * operates it.
 */
final class SuitableUsers {
  private SuitableUsers() {}

  static void hold(Circuit circuit, Judgement judgement, Dossier d) {
    judgement.by(Clause.DEVICE_USERS);
    ProtectiveDevice before = circuit.residualDevice();
    boolean ordinary = "ordinary-persons".equals(circuit.premises().operatedBy());
    if (before != null && ordinary && !Suitability.says(before, "ordinary", d)) {
      // Whether they can reach it is not stated (531.3.4.1, from memory).
      NotJudged.note(before, d);
      judgement.undetermined();
    }
    if (Suitability.says(circuit.device(), "ordinary", d)) {
      return;
    }
    String operatedBy = circuit.premises().operatedBy();
    if (operatedBy == null) {
      d.missing(At.OPERATED_BY);
      judgement.undetermined();
    } else if (operatedBy.equals("ordinary-persons")) {
      judgement.broken(NoteCode.NOT_FOR_ORDINARY_PERSONS);
    }
  }
}
