package circuitverdict.service.wire;

import circuitverdict.check.Finding;
import circuitverdict.check.Reason;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.explain.Note;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What every selection answers by its lists, whatever it selects. */
final class Outcome {
  private Outcome() {}

  /** It complies with one selected; where something is open it is not determined. */
  static Verdict of(List<?> selected, List<?> undetermined) {
    if (!selected.isEmpty()) {
      return Verdict.COMPLIES;
    }
    return undetermined.isEmpty() ? Verdict.DOES_NOT_COMPLY : Verdict.NOT_DETERMINED;
  }

  static Reason reason(Verdict verdict) {
    return switch (verdict) {
      case COMPLIES -> null;
      case DOES_NOT_COMPLY -> Reason.NONE_SELECTED;
      default -> Reason.CHECK_NOT_DETERMINED;
    };
  }

  /** What lacks of a candidate, over all checks that count. */
  static List<Note> missing(Result result) {
    Set<Note> missing = new LinkedHashSet<>();
    for (Finding finding : result.findings()) {
      if (finding.counted()) {
        missing.addAll(finding.missing());
      }
    }
    return List.copyOf(missing);
  }
}
