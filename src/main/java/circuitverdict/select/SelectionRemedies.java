package circuitverdict.select;

import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Comparison;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.select.DeviceSelection.Candidate;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.List;

/** What would have to change so that one of the candidates nearest to complying passes. */
final class SelectionRemedies {
  /** Candidates for which remedies are looked for, and remedies that are enough. */
  private static final int TRIED = 24;

  private static final int ENOUGH = 3;

  private static final String OF_DEVICE = "/device/";

  private final Circuit circuit;
  private final Edition edition;
  private final List<Check> checks;
  private final boolean products;

  /** Remedies for a circuit; {@code products} where the devices themselves cannot change. */
  SelectionRemedies(Circuit circuit, Edition edition, List<Check> checks, boolean products) {
    this.circuit = circuit;
    this.edition = edition;
    this.checks = checks;
    this.products = products;
  }

  /** Changes that let one of these pass, ranked as they are. */
  List<Remedy> of(List<Candidate> rejected) {
    List<Candidate> nearest =
        rejected.stream().filter(SelectionRemedies::carriesTheLoad).limit(TRIED).toList();
    List<Remedy> remedies = new ArrayList<>();
    for (Candidate candidate : nearest) {
      Circuit fitted = circuit.with(candidate.device());
      for (Remedy remedy : new Remedies(fitted, edition, checks, candidate.result()).all()) {
        Change change = around(candidate, remedy.change());
        if (change != null && isNew(change, remedies) && lets(fitted, remedy.change())) {
          remedies.add(new Remedy(change, remedy.mends()));
        }
      }
      if (remedies.size() >= ENOUGH) {
        break;
      }
    }
    return remedies;
  }

  private boolean lets(Circuit fitted, Change change) {
    Circuit changed = change.applyTo(fitted);
    return CircuitCheck.run(checks, changed, edition, false).verdict() == Verdict.COMPLIES;
  }

  /** A change told with its candidate; null where it would need another product. */
  private Change around(Candidate candidate, Change change) {
    if (!products) {
      return new Change.WithDevice((Breaker) candidate.device(), change);
    }
    boolean ofDevice =
        change.members().stream().anyMatch(member -> member.pointer().startsWith(OF_DEVICE));
    return ofDevice ? null : new Change.WithProduct(Designation.of(candidate), change);
  }

  private static boolean isNew(Change change, List<Remedy> remedies) {
    return remedies.stream().noneMatch(each -> each.change().members().equals(change.members()));
  }

  /** A device too small for the load is mended by no change of the rest. */
  private static boolean carriesTheLoad(Candidate candidate) {
    Result result = candidate.result();
    List<Comparison> compared = result.of(CheckName.OVERLOAD_PROTECTION).comparisons();
    return !compared.isEmpty() && compared.get(0).verdict() == Verdict.COMPLIES;
  }
}
