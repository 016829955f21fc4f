package circuitverdict.check;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.Note;
import circuitverdict.explain.Step;
import circuitverdict.standard.Citation;
import java.util.List;

/**
 * What a check found.
 *
 * @param check which check
 * @param verdict its verdict
 * @param counted whether it enters the overall verdict
 * @param reason why the verdict is not "complies"; null where it is
 * @param strength how strong the proof is
 * @param clauses clauses it rests on
 * @param subject JSON pointer of what it is about
 * @param governing the comparison that governs; null where none could be made
 * @param comparisons all comparisons made
 * @param working steps of the evaluation; empty for a silent one
 * @param missing what is missing for a verdict
 * @param assumptions what stood in for inputs
 * @param remarks what the reader must know besides
 */
public record Finding(
    CheckName check,
    Verdict verdict,
    boolean counted,
    Reason reason,
    Dossier.Strength strength,
    List<Citation> clauses,
    String subject,
    Comparison governing,
    List<Comparison> comparisons,
    List<Step> working,
    List<Note> missing,
    List<Note> assumptions,
    List<Note> remarks) {

  /** The same finding with other words on what is missing. */
  Finding missing(List<Note> other) {
    return with(subject, other);
  }

  /** The same finding about something else. */
  public Finding about(String other) {
    return with(other, missing);
  }

  private Finding with(String about, List<Note> wanted) {
    return new Finding(
        check,
        verdict,
        counted,
        reason,
        strength,
        clauses,
        about,
        governing,
        comparisons,
        working,
        wanted,
        assumptions,
        remarks);
  }
}
