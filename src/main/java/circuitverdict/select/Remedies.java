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

/** Remedies for the checks that fail: of each kind of change the smallest that helps. */
public final class Remedies {
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
    for (List<Change> rising : new Changes(circuit, edition, checks, before).forFailures(failed)) {
      smallest(rising, failed, remedies);
    }
    return remedies;
  }

  /** Of changes of one kind, rising, each that mends a check which no smaller one mends. */
  private void smallest(List<Change> rising, Set<CheckName> failed, List<Remedy> remedies) {
    Set<CheckName> open = EnumSet.copyOf(failed);
    for (Change change : rising) {
      Function<Check, Finding> after = CircuitCheck.silent(change.applyTo(circuit), edition);
      List<CheckName> mended = mended(failed, after);
      // What mends nothing new is most often seen by the failed checks alone.
      if (mended.stream().anyMatch(open::contains) && breaksNone(failed, after)) {
        remedies.add(new Remedy(change, mended));
        mended.forEach(open::remove);
      }
      if (open.isEmpty()) {
        return;
      }
    }
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
