package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Requirements;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.standard.Citation;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Turns a check's comparisons into its finding. The one place where verdicts are made: nothing
 * complies while a comparison is unknown, failure needs a comparison that fails, a typical value
 * carries no failure, and guidance carries nothing where proof is wanted.
 */
final class Judgement {
  private final CheckName name;
  private final Circuit circuit;
  private final Dossier d;
  private final String subject;
  private List<Citation> clauses = List.of();
  private final List<Comparison> comparisons = new ArrayList<>(4);
  private List<Comparison> beside = List.of();
  private List<Comparison> classes = List.of();
  private boolean fails;
  private boolean classFails;
  private List<Note> broken = List.of();
  private List<Figure> told = List.of();
  private Comparison lead;
  private boolean undetermined;
  private boolean informative;
  private boolean settled;
  private boolean certain;

  Judgement(CheckName name, Circuit circuit, Dossier d, String subject) {
    this.name = name;
    this.circuit = circuit;
    this.d = d;
    this.subject = subject;
  }

  /** Names a clause the finding rests on. */
  Judgement by(Clause rule) {
    clauses = Few.with(clauses, d.edition().clause(rule));
    return this;
  }

  /** The finding will not enter the overall verdict. */
  Judgement informative() {
    informative = true;
    return this;
  }

  /** Compares; unknown figures leave the check undetermined. Returns the comparison's verdict. */
  Verdict compare(String about, Figure actual, Comparator comparator, Figure limit) {
    return compare(about, actual, comparator, limit, null);
  }

  /** As above, with the limit as the standard prints it. */
  Verdict compare(String about, Figure actual, Comparator comparator, Figure limit, Value printed) {
    return add(Comparison.of(about, actual, comparator, limit, printed));
  }

  /** Compares an interval with the energy that a conductor stands. */
  Verdict compareInterval(String about, Figure least, Figure greatest, Figure limit) {
    return add(Comparison.ofInterval(about, least, greatest, limit));
  }

  /** Adds a comparison made elsewhere. */
  Verdict add(Comparison comparison) {
    boolean shown = comparison.actual().known() && comparison.limit().known();
    if (shown) {
      keep(comparison);
    }
    if (comparison.verdict() == Verdict.NOT_DETERMINED) {
      undetermined = true;
    }
    return comparison.verdict();
  }

  /**
   * Keeps the governing comparison in another unit beside it: the same relation, never governing.
   */
  void beside(String about, Figure actual, Comparator comparator, Figure limit) {
    Comparison same = Comparison.of(about, actual, comparator, limit, null);
    if (same.verdict() != Verdict.NOT_DETERMINED) {
      beside = List.of(same);
    }
  }

  /**
   * Compares what comes in classes, such as poles or rated voltages: no margin of it says how close
   * a circuit is, so it governs only where it fails, and then for certain.
   */
  Verdict classed(String about, Figure actual, Comparator comparator, Figure limit) {
    Comparison comparison = Comparison.of(about, actual, comparator, limit, null);
    if (comparison.verdict() == Verdict.NOT_DETERMINED) {
      undetermined = true;
    } else {
      classes = Few.with(classes, comparison);
      classFails |= comparison.verdict() == Verdict.DOES_NOT_COMPLY;
    }
    return comparison.verdict();
  }

  /** What is stated breaks the duty, whatever else is; told first among the remarks. */
  void broken(NoteCode why) {
    broken = Few.with(broken, Note.of(why));
  }

  /** Shows figures that what is missing leaves undecided. */
  void open(String about, Figure actual, Comparator comparator, Figure limit) {
    undetermined = true;
    if (actual.known() && limit.known()) {
      comparisons.add(
          new Comparison(
              about, actual, null, null, comparator, limit, null, Verdict.NOT_DETERMINED));
    }
  }

  /** The comparison that answers the question; where it does not hold, it leaves that open. */
  void lead(String about, Figure actual, Comparator comparator, Figure limit, boolean holds) {
    if (holds) {
      compare(about, actual, comparator, limit);
    } else {
      open(about, actual, comparator, limit);
    }
    if (actual.known() && limit.known()) {
      lead = comparisons.get(comparisons.size() - 1);
    }
  }

  /** Keeps a comparison for the record without counting it: a clause deems the duty met. */
  void show(Comparison comparison) {
    if (comparison.verdict() == Verdict.COMPLIES) {
      keep(comparison);
    }
  }

  /** What was compared settles it, whatever else of the evaluation stands at its best. */
  void settled() {
    settled = true;
  }

  /** A failure among what was compared rests on nothing that stands in for an input. */
  void certain() {
    certain = true;
  }

  /** Figures that the reader is told besides those compared. */
  Judgement tell(Figure... figures) {
    for (Figure figure : figures) {
      told = Few.with(told, figure);
    }
    return this;
  }

  /** Whether anything is compared. */
  boolean compares() {
    return !comparisons.isEmpty();
  }

  /** Notes that the check cannot be decided by what is stated. */
  Judgement undetermined() {
    undetermined = true;
    return this;
  }

  /**
   * Holds the best that a missing input could make of it: only a failure is kept, since no value of
   * the input could cure it.
   */
  void atBest(String about, Figure actual, Comparator comparator, Figure limit) {
    Comparison best = Comparison.of(about, actual, comparator, limit, null);
    if (best.verdict() == Verdict.DOES_NOT_COMPLY) {
      keep(best);
    }
  }

  /** The rule does not bear on what is stated. */
  Finding notApplicable() {
    return finding(Verdict.NOT_APPLICABLE, Reason.NO_SUCH_DUTY);
  }

  /** The finding. */
  Finding conclude() {
    if (d.blocked()) {
      return finding(Verdict.NOT_DETERMINED, Reason.MISSING_INPUT);
    }
    boolean byFacts = classFails || !broken.isEmpty();
    if (fails && !byFacts && !certain && !d.typical().isEmpty()) {
      for (Pointer at : d.typical()) {
        d.missing(NoteCode.STAND_IN_FAILS, at);
      }
      return finding(Verdict.NOT_DETERMINED, Reason.STAND_IN_FAILS);
    }
    if (fails || byFacts) {
      return finding(Verdict.DOES_NOT_COMPLY, Reason.LIMIT_EXCEEDED);
    }
    boolean nothing = comparisons.isEmpty() && classes.isEmpty();
    if (undetermined || nothing || d.standsAtBest() && !settled) {
      return finding(Verdict.NOT_DETERMINED, undeterminedReason());
    }
    if (d.strength() == Dossier.Strength.GUIDANCE && proofWanted()) {
      d.missing(NoteCode.PROOF_WANTED, new Pointer("/requirements", "evidence"));
      return finding(Verdict.NOT_DETERMINED, Reason.PROOF_WANTED);
    }
    return finding(Verdict.COMPLIES, null);
  }

  private void keep(Comparison comparison) {
    comparisons.add(comparison);
    fails |= comparison.verdict() == Verdict.DOES_NOT_COMPLY;
  }

  /**
   * Concludes a check whose duty is met by facts, not by figures. Where the tables do not speak of
   * the circuit nothing is called met: the product standards of what meets it do not either.
   */
  Finding concludeMet() {
    if (d.blocked()) {
      return finding(Verdict.NOT_DETERMINED, Reason.MISSING_INPUT);
    }
    return finding(Verdict.COMPLIES, null);
  }

  /**
   * Concludes a check whose duty is broken by facts, not by figures. It stands even where the
   * tables do not speak, as at another frequency: it rests on none of them. Only for facts of which
   * no table tells.
   */
  Finding concludeBroken() {
    return finding(Verdict.DOES_NOT_COMPLY, Reason.LIMIT_EXCEEDED);
  }

  private Reason undeterminedReason() {
    for (Note note : d.missing()) {
      if (note.code() == NoteCode.DEVICE_NOT_JUDGED) {
        return Reason.DEVICE_NOT_JUDGED;
      }
      if (note.code() == NoteCode.MISSING_INPUT || note.code() == NoteCode.NOT_IN_TABLES) {
        return Reason.MISSING_INPUT;
      }
    }
    for (Comparison comparison : comparisons) {
      if (comparison.verdict() == Verdict.NOT_DETERMINED) {
        return Reason.BETWEEN_BOUNDS;
      }
    }
    return Reason.MISSING_INPUT;
  }

  /** Whether published guidance may not carry a verdict: at sign-off, and where asked for. */
  static boolean proofWanted(Circuit circuit) {
    Requirements.Evidence evidence = circuit.requirements().evidence();
    return evidence == null
        ? circuit.stage() == Circuit.Stage.SIGN_OFF
        : evidence == Requirements.Evidence.PROVED;
  }

  private boolean proofWanted() {
    return proofWanted(circuit);
  }

  private Finding finding(Verdict verdict, Reason reason) {
    List<Comparison> all = all();
    Comparison governing =
        verdict == Verdict.DOES_NOT_COMPLY && !classes.isEmpty()
            ? Governing.of(all, lead, verdict)
            : Governing.of(comparisons, lead, verdict);
    boolean applies = verdict != Verdict.NOT_APPLICABLE;
    if (verdict == Verdict.COMPLIES) {
      if (d.strength() == Dossier.Strength.GUIDANCE) {
        d.remark(NoteCode.BY_GUIDANCE);
      } else if (d.strength() == Dossier.Strength.DEEMED) {
        d.remark(NoteCode.DEEMED);
      }
    }
    return new Finding(
        name,
        verdict,
        applies && !informative,
        reason,
        d.strength(),
        clauses,
        subject,
        governing,
        all,
        Governing.working(governing, all, told, d),
        verdict == Verdict.NOT_DETERMINED ? List.copyOf(d.missing()) : List.of(),
        List.copyOf(d.assumptions()),
        broken.isEmpty() ? List.copyOf(d.remarks()) : Few.joined(broken, d.remarks()));
  }

  private List<Comparison> all() {
    List<Comparison> rest = classes.isEmpty() ? beside : classes;
    return rest.isEmpty()
        ? Collections.unmodifiableList(comparisons)
        : Few.joined(comparisons, rest);
  }
}
