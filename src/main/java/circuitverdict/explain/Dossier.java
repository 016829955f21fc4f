package circuitverdict.explain;

import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What one check gathers while it is evaluated: working, missing inputs, assumptions, remarks, and
 * the strength of its proof.
 */
public final class Dossier {
  /** How strong a proof is. */
  public enum Strength {
    /** By the rule itself or the maker's data. */
    RULE,
    /** Deemed by a clause. */
    DEEMED,
    /** By published guidance. */
    GUIDANCE
  }

  private final Edition edition;
  private final Allowance allowance;
  private final Working working;
  private final Shared shared;
  private List<Note> missing = List.of();
  private List<Note> assumptions = List.of();
  private List<Note> remarks = List.of();
  private List<Pointer> typical = List.of();
  private List<Dossier> adopted = List.of();
  private Strength strength = Strength.RULE;
  private boolean blocked;
  private boolean atBest;

  /** A dossier for one check of one circuit that shares nothing with others. */
  public Dossier(Edition edition, Allowance allowance, Working working) {
    this(edition, allowance, working, new Shared());
  }

  /** A dossier for one check of one circuit, with what the checks of a run have in common. */
  public Dossier(Edition edition, Allowance allowance, Working working, Shared shared) {
    this.edition = edition;
    this.allowance = allowance;
    this.working = working;
    this.shared = shared;
  }

  /**
   * Evaluates what several checks need once, and takes over the steps and notes that came with it.
   *
   * @param about what it is about, compared by identity
   */
  @SuppressWarnings("unchecked")
  public <T> T once(Shared.Topic topic, Object about, Function<Dossier, T> work) {
    Shared.Memo memo = memo(topic, about, work);
    adopt(memo.dossier());
    return (T) memo.value();
  }

  /** As {@link #once}, for trying what may not be used: nothing that came with it is taken over. */
  @SuppressWarnings("unchecked")
  public <T> T tried(Shared.Topic topic, Object about, Function<Dossier, T> work) {
    return (T) memo(topic, about, work).value();
  }

  private Shared.Memo memo(Shared.Topic topic, Object about, Function<Dossier, ?> work) {
    Shared.Memo memo = shared.find(topic, about);
    if (memo == null) {
      Dossier inner = new Dossier(edition, allowance, working.fresh(), shared);
      memo = shared.keep(topic, about, work.apply(inner), inner);
    }
    return memo;
  }

  /** A dossier of its own for trying what may not be used: nothing of it is taken over. */
  public Dossier trial() {
    return new Dossier(edition, allowance, working.fresh(), shared);
  }

  private void adopt(Dossier inner) {
    if (inner.tellsNothing()) {
      return;
    }
    for (int i = 0; i < adopted.size(); i++) {
      if (adopted.get(i) == inner) {
        return;
      }
    }
    adopted = adopted.isEmpty() ? new ArrayList<>(4) : adopted;
    adopted.add(inner);
    missing = withAll(missing, inner.missing);
    assumptions = withAll(assumptions, inner.assumptions);
    remarks = withAll(remarks, inner.remarks);
    typical = withAll(typical, inner.typical);
    restsOn(inner.strength);
    atBest |= inner.atBest;
    working.adopt(inner.working);
  }

  private boolean tellsNothing() {
    return !working.records()
        && missing.isEmpty()
        && assumptions.isEmpty()
        && remarks.isEmpty()
        && typical.isEmpty()
        && strength == Strength.RULE
        && !atBest;
  }

  private static <T> List<T> withAll(List<T> list, List<T> items) {
    List<T> all = list;
    for (int i = 0; i < items.size(); i++) {
      all = with(all, items.get(i));
    }
    return all;
  }

  /** The list with one more, once; lists stay unallocated while nothing is in them. */
  private static <T> List<T> with(List<T> list, T item) {
    if (list.contains(item)) {
      return list;
    }
    List<T> open = list.isEmpty() ? new ArrayList<>(4) : list;
    open.add(item);
    return open;
  }

  public Edition edition() {
    return edition;
  }

  public Working working() {
    return working;
  }

  /** Whether what this allowance covers may stand in for what was not stated. */
  public boolean allows(Allowance least) {
    return allowance.compareTo(least) >= 0;
  }

  /** A figure of the request; unknown where it was not stated, without calling it missing. */
  public Figure given(String symbol, Double value, Unit unit, Pointer at) {
    return value == null ? Figure.unknown(symbol, unit) : new Figure(symbol, value, unit, at);
  }

  /** A figure of the request that is needed; unknown and missing where it was not stated. */
  public Figure need(String symbol, Double value, Unit unit, Pointer at) {
    if (value == null) {
      missing(at);
      return Figure.unknown(symbol, unit);
    }
    return new Figure(symbol, value, unit, at);
  }

  /** A word of the request that is needed; null and missing where it was not stated. */
  public <T> T need(T word, Pointer at) {
    if (word == null) {
      missing(at);
    }
    return word;
  }

  /** A figure of the request, or a stand-in where the stage allows one; else missing. */
  public Figure orAssume(
      String symbol, Double value, Pointer at, Value standIn, Allowance least, NoteCode code) {
    if (value != null) {
      return new Figure(symbol, value, standIn.unit(), at);
    }
    if (!allows(least)) {
      missing(at);
      return Figure.unknown(symbol, standIn.unit());
    }
    Figure assumed = Figure.of(symbol, standIn);
    assume(code, at, assumed);
    if (least == Allowance.TYPICAL_VALUES) {
      typical = with(typical, at);
    }
    return assumed;
  }

  /** A value of a table as a figure; unknown and missing where the table has none. */
  public Figure tabled(String symbol, Value value, Unit unit, Pointer at) {
    if (value == null) {
      missing(NoteCode.NOT_IN_TABLES, at);
      return Figure.unknown(symbol, unit);
    }
    return Figure.of(symbol, value);
  }

  /** Notes that this input is missing. */
  public void missing(Pointer at) {
    missing(NoteCode.MISSING_INPUT, at);
  }

  /** Notes that something is missing. */
  public void missing(NoteCode code, Pointer at, Figure... figures) {
    missing = with(missing, new Note(code, at, List.of(figures)));
  }

  /** Notes an assumption. */
  public void assume(NoteCode code, Pointer at, Figure... figures) {
    assumptions = with(assumptions, new Note(code, at, List.of(figures)));
  }

  /**
   * Notes an assumption that the real value may better, a typical or a worst one: it can carry a
   * compliance, never a failure.
   */
  public void assumeCurable(NoteCode code, Pointer at, Figure... figures) {
    assume(code, at, figures);
    curable(at);
  }

  /** What stands in for this the real value may better: no failure may rest on it. */
  public void curable(Pointer at) {
    typical = with(typical, at);
  }

  /** Notes a remark. */
  public void remark(NoteCode code, Figure... figures) {
    remarks = with(remarks, Note.of(code, figures));
  }

  /** Notes that the tables do not speak of this circuit at all: no verdict may rest on them. */
  public void block(Pointer at) {
    blocked = true;
    missing(NoteCode.NOT_IN_TABLES, at);
  }

  /**
   * Notes that a missing input stands at its best: what fails then fails for certain, but nothing
   * may comply by it.
   */
  public void atBest(Pointer missing) {
    atBest = true;
    missing(missing);
  }

  /** Whether a missing input stands at its best, so that nothing may comply. */
  public boolean standsAtBest() {
    return atBest;
  }

  /** Whether no verdict may be given. */
  public boolean blocked() {
    return blocked;
  }

  /** Weakens the proof to this strength, if it was stronger. */
  public void restsOn(Strength other) {
    if (other.compareTo(strength) > 0) {
      strength = other;
    }
  }

  public Strength strength() {
    return strength;
  }

  public List<Note> missing() {
    return missing;
  }

  public List<Note> assumptions() {
    return assumptions;
  }

  public List<Note> remarks() {
    return remarks;
  }

  /** Members for which a typical value stands in. */
  public List<Pointer> typical() {
    return typical;
  }

  /** The constant of the edition as a figure. */
  public Figure constant(String symbol, Constant constant) {
    return Figure.of(symbol, edition.constant(constant));
  }
}
