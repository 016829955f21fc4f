package circuitverdict.check;

import java.util.List;

/**
 * The findings of a run and the overall verdict: "does not comply" outranks "not determined"
 * outranks "complies"; with nothing counted, "not determined".
 *
 * @param findings in order
 * @param verdict overall
 * @param reason why it is not "complies"; null where it is
 */
public record Result(List<Finding> findings, Verdict verdict, Reason reason) {

  static Result of(List<Finding> findings) {
    boolean any = false;
    boolean open = false;
    boolean broken = false;
    for (Finding finding : findings) {
      if (finding.counted()) {
        any = true;
        open |= finding.verdict() == Verdict.NOT_DETERMINED;
        broken |= finding.verdict() == Verdict.DOES_NOT_COMPLY;
      }
    }
    if (broken) {
      return new Result(List.copyOf(findings), Verdict.DOES_NOT_COMPLY, Reason.CHECK_FAILS);
    }
    if (open) {
      return new Result(List.copyOf(findings), Verdict.NOT_DETERMINED, Reason.CHECK_NOT_DETERMINED);
    }
    if (!any) {
      return new Result(List.copyOf(findings), Verdict.NOT_DETERMINED, Reason.NOTHING_COUNTED);
    }
    return new Result(List.copyOf(findings), Verdict.COMPLIES, null);
  }

  /** The finding of a check. */
  public Finding of(CheckName check) {
    for (Finding finding : findings) {
      if (finding.check() == check) {
        return finding;
      }
    }
    throw new IllegalArgumentException("no finding of " + check);
  }
}
