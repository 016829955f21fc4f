package circuitverdict.check;

import circuitverdict.device.LetThrough;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Comparisons of let-through energy with what conductors stand, judged together. */
final class EnergyComparisons {
  private final List<Comparison> comparisons = new ArrayList<>(2);
  private final List<Figure> told = new ArrayList<>(1);
  private boolean unknown;
  private boolean fails;
  private boolean contrary;

  /**
   * Compares the energy over a range of currents, that of another kind of fault, with a limit that
   * was compared before; where it fails alone or is the greater, that range is told too.
   */
  void addOther(
      String about, LetThrough energy, Figure least, Figure greatest, Figure limit, Dossier d) {
    int before = comparisons.size();
    add(about, energy, least, greatest, limit, d);
    if (comparisons.size() > before && before > 0) {
      Comparison here = comparisons.get(before);
      Comparison other = comparisons.get(before - 1);
      boolean alone =
          here.verdict() == Verdict.DOES_NOT_COMPLY && other.verdict() != Verdict.DOES_NOT_COMPLY;
      if (alone || !Comparator.atMost(here.actual().value(), other.actual().value())) {
        told.add(least);
      }
    }
  }

  /** Compares the energy over a range of currents with a conductor's limit. */
  void add(
      String about, LetThrough energy, Figure least, Figure greatest, Figure limit, Dossier d) {
    if (!limit.known() || !least.known() && !greatest.known()) {
      unknown = true;
      return;
    }
    // Without one end of the range nothing says how far it reaches: what is certain of the other
    // end alone can fail the check, never pass it.
    boolean open = !least.known() || !greatest.known();
    if (!open && !Comparator.atMost(least.value(), greatest.value())) {
      d.remark(NoteCode.CURRENTS_CONTRADICT, least, greatest);
      d.missing(At.MAXIMUM_CURRENT);
      unknown = true;
      contrary = true;
      return;
    }
    Figure from = least.known() ? least : greatest;
    Figure upTo = greatest.known() ? greatest : least;
    LetThrough.Energy over = energy.over(from, upTo);
    if (!least.known()) {
      Figure none = Figure.derived("I", 0, Unit.AMPERE);
      contrary |= !Comparator.atMost(energy.over(none, greatest).least().value(), limit.value());
    }
    Figure certain = over.least();
    if (further(about) && !Comparator.atMost(certain.value(), limit.value())) {
      // How much of the greatest current, that of the board, reaches a further cable is not known.
      certain = least.known() ? energy.over(least, least).least() : none();
      contrary = true;
    }
    Figure most = open ? unbounded(over.greatest()) : over.greatest();
    Comparison comparison = Comparison.ofInterval(about, certain, most, limit);
    unknown |= comparison.verdict() == Verdict.NOT_DETERMINED;
    fails |= comparison.verdict() == Verdict.DOES_NOT_COMPLY;
    comparisons.add(comparison);
  }

  /** Something cannot be compared: nothing complies any more, but what fails fails. */
  void unknown() {
    unknown = true;
  }

  /**
   * Whether something speaks against deeming: a stated greatest current below the least, or, where
   * the least is not known or the cable lies further on, an energy above the limit at a current
   * that may flow.
   */
  boolean contrary() {
    return contrary;
  }

  private static boolean further(String about) {
    return about.startsWith(At.FURTHER_CABLES);
  }

  private static Figure none() {
    return Figure.derived("I²t", 0, Unit.AMPERE_SQUARED_SECOND);
  }

  private static Figure unbounded(Figure figure) {
    return Figure.derived(figure.symbol(), Double.POSITIVE_INFINITY, figure.unit());
  }

  boolean complies() {
    return !unknown && !comparisons.isEmpty() && !fails;
  }

  boolean fails() {
    return fails;
  }

  /** Whether one fails whose cable is of those. */
  boolean fails(Predicate<String> places) {
    for (Comparison each : comparisons) {
      if (each.verdict() == Verdict.DOES_NOT_COMPLY && places.test(each.subject())) {
        return true;
      }
    }
    return false;
  }

  /** Gives the comparisons to a judgement, which counts each of them. */
  void addTo(Judgement judgement) {
    comparisons.forEach(judgement::add);
    told.forEach(judgement::tell);
    if (unknown) {
      judgement.undetermined();
    }
  }

  /** Gives the comparisons to a judgement for the record, where a clause deems the duty met. */
  void addShownTo(Judgement judgement) {
    comparisons.forEach(judgement::show);
  }
}
