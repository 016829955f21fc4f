package circuitverdict.support;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Reason;
import circuitverdict.check.Verdict;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Working;
import java.util.List;

/** What tests ask of a finding, said in one word each. */
public final class Facts {
  /** Expected values are quoted to this, relative: far closer than any print of the trade. */
  private static final double QUOTED = 1e-6;

  private Facts() {}

  /** It complies, and gives no reason. */
  public static Finding complies(Finding finding) {
    assertEquals(Verdict.COMPLIES, finding.verdict(), () -> told(finding));
    assertEquals(null, finding.reason());
    assertTrue(finding.missing().isEmpty());
    return finding;
  }

  /** It fails because a figure passes its limit. */
  public static Finding fails(Finding finding) {
    assertEquals(Verdict.DOES_NOT_COMPLY, finding.verdict(), () -> told(finding));
    assertEquals(Reason.LIMIT_EXCEEDED, finding.reason());
    return finding;
  }

  /** It is not determined, and names each of these members as missing. */
  public static Finding open(Finding finding, String... pointers) {
    assertEquals(Verdict.NOT_DETERMINED, finding.verdict(), () -> told(finding));
    for (String pointer : pointers) {
      assertTrue(missing(finding).contains(pointer), () -> pointer + " in " + told(finding));
    }
    return finding;
  }

  /** It is not determined for this reason. */
  public static Finding openBecause(Reason reason, Finding finding) {
    assertEquals(Verdict.NOT_DETERMINED, finding.verdict(), () -> told(finding));
    assertEquals(reason, finding.reason(), () -> told(finding));
    return finding;
  }

  /** Complies or fails as told. */
  public static Finding judged(boolean holds, Finding finding) {
    return holds ? complies(finding) : fails(finding);
  }

  /** The governing comparison's actual figure. */
  public static void actual(double expected, Finding finding) {
    assertEquals(expected, finding.governing().actual().value(), Math.abs(expected) * QUOTED);
  }

  /** The governing comparison's limit. */
  public static void limit(double expected, Finding finding) {
    assertEquals(expected, finding.governing().limit().value(), Math.abs(expected) * QUOTED);
  }

  /** The value of the last step of the working with this symbol. */
  public static double step(String symbol, Finding finding) {
    return finding.working().stream()
        .filter(step -> step.result().symbol().equals(symbol))
        .reduce((first, second) -> second)
        .orElseThrow(() -> new AssertionError("no step " + symbol + " in " + told(finding)))
        .result()
        .value();
  }

  /** A dossier as the check of this scenario would open it. */
  public static Dossier dossier(Scenario scenario) {
    return new Dossier(
        scenario.edition(),
        CircuitCheck.allowance(scenario.circuit().stage()),
        Working.recording());
  }

  /** Members named as missing. */
  public static List<String> missing(Finding finding) {
    return finding.missing().stream()
        .filter(note -> note.pointer() != null)
        .map(note -> note.pointer().text())
        .toList();
  }

  /** Codes of what is missing. */
  public static List<NoteCode> wanted(Finding finding) {
    return codes(finding.missing());
  }

  /** Codes of the remarks. */
  public static List<NoteCode> remarks(Finding finding) {
    return codes(finding.remarks());
  }

  /** Codes of the assumptions. */
  public static List<NoteCode> assumptions(Finding finding) {
    return codes(finding.assumptions());
  }

  /** References of the clauses. */
  public static List<String> clauses(Finding finding) {
    return finding.clauses().stream().map(clause -> clause.reference()).toList();
  }

  private static List<NoteCode> codes(List<Note> notes) {
    return notes.stream().map(Note::code).toList();
  }

  private static String told(Finding finding) {
    return finding.check().word()
        + " "
        + finding.verdict().word()
        + " "
        + finding.reason()
        + " "
        + finding.governing()
        + " missing "
        + finding.missing()
        + " remarks "
        + remarks(finding);
  }
}
