package circuitverdict.select;

import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Remedies for the checks that fail: of each kind of change the smallest that helps, and where none
 * mends them all changes of several kinds that do together.
 */
public final class Remedies {
  /** Of each kind so many changes that help are tried together with others, and so many times. */
  private static final int MOST_OF_KIND = 4;

  private static final int MOST_TRIED = 200;

  private final Circuit circuit;
  private final Edition edition;
  private final List<Check> checks;
  private final Result before;

  /** Remedies for a circuit whose result is known, among these checks. */
  public Remedies(Circuit circuit, Edition edition, List<Check> checks, Result before) {
    this.circuit = circuit;
    this.edition = edition;
    this.checks = checks;
    this.before = before;
  }

  /** Every remedy found, smallest change first. */
  public List<Remedy> all() {
    Set<CheckName> failed = EnumSet.noneOf(CheckName.class);
    for (Finding finding : before.findings()) {
      if (finding.counted() && finding.verdict() == Verdict.DOES_NOT_COMPLY) {
        failed.add(finding.check());
      }
    }
    if (failed.isEmpty()) {
      return List.of();
    }
    List<Remedy> remedies = new ArrayList<>();
    List<List<Change>> helpful = new ArrayList<>();
    for (List<Change> rising : new Changes(circuit, edition, checks, before).forFailures(failed)) {
      List<Change> helps = smallest(rising, failed, remedies);
      if (!helps.isEmpty()) {
        helpful.add(helps.subList(0, Math.min(MOST_OF_KIND, helps.size())));
      }
    }
    boolean whole = remedies.stream().anyMatch(each -> each.mends().size() == failed.size());
    if (!whole) {
      Remedy together = together(helpful, failed);
      if (together != null) {
        remedies.add(together);
      }
    }
    return remedies;
  }

  /** Two changes of different kinds, else three, that mend all and break none; null without. */
  private Remedy together(List<List<Change>> helpful, Set<CheckName> failed) {
    List<CombinedChange> tried = new ArrayList<>();
    combine(helpful, 0, List.of(), 2, tried);
    combine(helpful, 0, List.of(), 3, tried);
    for (CombinedChange change : tried.subList(0, Math.min(MOST_TRIED, tried.size()))) {
      Function<Check, Finding> after = CircuitCheck.silent(change.applyTo(circuit), edition);
      List<CheckName> mended = mended(failed, after);
      if (mended.size() == failed.size() && breaksNone(failed, after)) {
        return new Remedy(change, mended);
      }
    }
    return null;
  }

  /** Every choice of so many changes, each of another kind. */
  private static void combine(
      List<List<Change>> kinds,
      int from,
      List<Change> chosen,
      int count,
      List<CombinedChange> all) {
    if (chosen.size() == count) {
      all.add(new CombinedChange(chosen));
      return;
    }
    for (int kind = from; kind < kinds.size() && all.size() < MOST_TRIED; kind++) {
      for (Change change : kinds.get(kind)) {
        List<Change> more = new ArrayList<>(chosen);
        more.add(change);
        combine(kinds, kind + 1, more, count, all);
      }
    }
  }

  /**
   * Of changes of one kind, rising, each that mends a check which no smaller one mends, and breaks
   * none. What helps, though it may break another, is returned.
   */
  private List<Change> smallest(List<Change> rising, Set<CheckName> failed, List<Remedy> remedies) {
    List<Change> helpful = new ArrayList<>();
    Set<CheckName> open = EnumSet.copyOf(failed);
    for (Change change : rising) {
      Function<Check, Finding> after = CircuitCheck.silent(change.applyTo(circuit), edition);
      List<CheckName> mended = mended(failed, after);
      // What mends nothing new is most often seen by the failed checks alone.
      if (!mended.isEmpty()) {
        helpful.add(change);
      }
      if (mended.stream().anyMatch(open::contains) && breaksNone(failed, after)) {
        remedies.add(new Remedy(change, mended));
        mended.forEach(open::remove);
      }
      if (open.isEmpty()) {
        return helpful;
      }
    }
    return helpful;
  }

  /** The failed checks that comply after a change. */
  private List<CheckName> mended(Set<CheckName> failed, Function<Check, Finding> after) {
    return checks.stream()
        .filter(check -> failed.contains(check.name()))
        .filter(check -> after.apply(check).verdict() == Verdict.COMPLIES)
        .map(Check::name)
        .toList();
  }

  /** Whether a change leaves every check that did not fail at least where it was. */
  private boolean breaksNone(Set<CheckName> failed, Function<Check, Finding> after) {
    for (Check check : checks) {
      Finding old = before.of(check.name());
      if (old.counted()
          && !failed.contains(check.name())
          && breaks(old.verdict(), after.apply(check).verdict())) {
        return false;
      }
    }
    return true;
  }

  private static boolean breaks(Verdict old, Verdict now) {
    return old == Verdict.COMPLIES && now != Verdict.COMPLIES
        || old == Verdict.NOT_DETERMINED && now == Verdict.DOES_NOT_COMPLY;
  }
}
