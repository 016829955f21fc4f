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
    for (List<Change> rising : new Changes(circuit, edition, checks).forFailures(failed)) {
      smallest(rising, failed, remedies);
    }
    return remedies;
  }

  /** Of changes of one kind, rising, each that mends a check which no smaller one mends. */
  private void smallest(List<Change> rising, Set<CheckName> failed, List<Remedy> remedies) {
    Set<CheckName> open = EnumSet.copyOf(failed);
    for (Change change : rising) {
      List<CheckName> mended = mends(change, failed);
      if (mended.stream().anyMatch(open::contains)) {
        remedies.add(new Remedy(change, mended));
        mended.forEach(open::remove);
      }
      if (open.isEmpty()) {
        return;
      }
    }
  }

  /** The failed checks that comply after the change; none where it breaks another. */
  private List<CheckName> mends(Change change, Set<CheckName> failed) {
    Result after = CircuitCheck.run(checks, change.applyTo(circuit), edition, false);
    List<CheckName> mended = new ArrayList<>();
    for (int i = 0; i < after.findings().size(); i++) {
      Finding old = before.findings().get(i);
      Verdict now = after.findings().get(i).verdict();
      if (old.counted() && breaks(old.verdict(), now)) {
        return List.of();
      }
      if (failed.contains(old.check()) && now == Verdict.COMPLIES) {
        mended.add(old.check());
      }
    }
    return mended;
  }

  private static boolean breaks(Verdict old, Verdict now) {
    return old == Verdict.COMPLIES && now != Verdict.COMPLIES
        || old == Verdict.NOT_DETERMINED && now == Verdict.DOES_NOT_COMPLY;
  }
}
