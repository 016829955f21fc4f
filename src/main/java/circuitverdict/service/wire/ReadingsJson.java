package circuitverdict.service.wire;

import circuitverdict.check.Finding;
import circuitverdict.check.Reason;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Edition;
import java.util.List;

/** Verdicts on readings as the contract writes them: a finding for each, about its place. */
public final class ReadingsJson {
  private final Edition edition;
  private final String version;
  private final boolean full;

  /** Writes verdicts under an edition. */
  public ReadingsJson(Edition edition, String version, boolean full) {
    this.edition = edition;
    this.version = version;
    this.full = full;
  }

  /** The bytes of the answer. */
  public byte[] bytes(Sourced request, Circuit.Stage stage, Result result, List<Note> unused) {
    boolean none = result.findings().isEmpty();
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, edition, full, request);
          answer.head(
              stage,
              result.verdict(),
              none ? Reason.MISSING_INPUT : result.reason(),
              none ? "There is no reading to judge." : summary(result));
          answer.findings(result.findings(), List.of(), NoteCode.READING_NOT_MENDED);
          if (none) {
            Pointer at = new Pointer("", "readings");
            Json.notes(
                json, "missing", List.of(new Note(NoteCode.MISSING_INPUT, at, List.of())), full);
          } else {
            answer.notes(result.findings());
          }
          answer.foot(unused, version);
        });
  }

  private static String summary(Result result) {
    long failing = count(result, Verdict.DOES_NOT_COMPLY);
    long open = count(result, Verdict.NOT_DETERMINED);
    String all = " of " + result.findings().size() + " readings";
    if (failing > 0) {
      return failing + all + (failing == 1 ? " does" : " do") + " not bear the design out.";
    }
    return open > 0
        ? open + all + (open == 1 ? " is" : " are") + " not determined."
        : result.verdict() == Verdict.COMPLIES
            ? "The readings bear the design out."
            : "No reading that counts is judged.";
  }

  private static long count(Result result, Verdict verdict) {
    return result.findings().stream()
        .filter(Finding::counted)
        .filter(each -> each.verdict() == verdict)
        .count();
  }
}
