package circuitverdict.check;

import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Clause;
import java.util.List;

/**
 * Whether a clause owes additional protection by a residual current device (415.1).
 *
 * @param clause the clause
 * @param owed whether it does; null where what is not stated decides
 * @param why why it is not known
 * @param wanted members that would decide it
 */
record AdditionalDuty(Clause clause, Boolean owed, NoteCode why, List<Pointer> wanted) {

  static AdditionalDuty of(Clause clause, boolean owed) {
    return new AdditionalDuty(clause, owed, null, List.of());
  }

  static AdditionalDuty open(Clause clause, Pointer... wanted) {
    return new AdditionalDuty(clause, null, NoteCode.MISSING_INPUT, List.of(wanted));
  }

  /** Owed, unless by something that no request states. */
  static AdditionalDuty unless(Clause clause, NoteCode why, Pointer at) {
    return new AdditionalDuty(clause, null, why, List.of(at));
  }

  boolean certain() {
    return Boolean.TRUE.equals(owed);
  }

  boolean open() {
    return owed == null;
  }
}
