package circuitverdict.select;

import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which devices may protect a circuit, of the standard series or of the caller's own products: each
 * is put in the circuit's place, judged by every check and sorted; those that pass are ranked.
 */
public final class DeviceSelection {
  /** What a ranking may look at, in its usual order. */
  public enum Order {
    RATED_CURRENT,
    CHARACTERISTIC,
    BREAKING_CAPACITY,
    SELECTIVITY,
    GIVEN
  }

  /**
   * A device and what the checks say of the circuit with it.
   *
   * @param place its place in the list that it comes from, from 0
   * @param device the device
   * @param result its result
   * @param decidedBy the finding that decides: the first that rejects it or leaves it open; of a
   *     selected one the finding with the least margin
   */
  public record Candidate(int place, ProtectiveDevice device, Result result, Finding decidedBy) {}

  /**
   * The selection.
   *
   * @param selected those that comply, best first
   * @param undetermined those that nothing rejects but something leaves open
   * @param rejected those that fail
   * @param remedies changes that would let a candidate pass, where none does or may
   */
  public record Selection(
      List<Candidate> selected,
      List<Candidate> undetermined,
      List<Candidate> rejected,
      List<Remedy> remedies) {

    /** How many were looked at. */
    public int count() {
      return selected.size() + undetermined.size() + rejected.size();
    }
  }

  private final Circuit circuit;
  private final Edition edition;
  private final List<Check> checks;
  private final Comparator<Candidate> ranking;

  /** A selection for a circuit; {@code order} empty for the usual ranking. */
  public DeviceSelection(Circuit circuit, Edition edition, List<Check> checks, List<Order> order) {
    this.circuit = circuit;
    this.edition = edition;
    this.checks = checks;
    this.ranking = Ranking.of(order);
  }

  /** Every device of the standard series, judged and sorted. */
  public Selection ofSeries(boolean explain) {
    List<Breaker> series = new StandardSeries(circuit, edition, checks).devices();
    return select(series, false, explain);
  }

  /** The caller's own products, judged and sorted. */
  public Selection of(List<ProtectiveDevice> products, boolean explain) {
    return select(products, true, explain);
  }

  private Selection select(List<? extends ProtectiveDevice> devices, boolean own, boolean explain) {
    List<Candidate> selected = new ArrayList<>();
    List<Candidate> undetermined = new ArrayList<>();
    List<Candidate> rejected = new ArrayList<>();
    for (int i = 0; i < devices.size(); i++) {
      Candidate candidate = judge(i, devices.get(i), explain);
      switch (candidate.result().verdict()) {
        case COMPLIES -> selected.add(candidate);
        case DOES_NOT_COMPLY -> rejected.add(candidate);
        default -> undetermined.add(candidate);
      }
    }
    selected.sort(ranking);
    undetermined.sort(ranking);
    rejected.sort(ranking);
    boolean stuck = selected.isEmpty() && undetermined.isEmpty();
    List<Remedy> remedies =
        stuck ? new SelectionRemedies(circuit, edition, checks, own).of(rejected) : List.of();
    return new Selection(selected, undetermined, rejected, remedies);
  }

  private Candidate judge(int place, ProtectiveDevice device, boolean explain) {
    Result result = CircuitCheck.run(checks, circuit.with(device), edition, explain);
    return new Candidate(place, device, result, deciding(result));
  }

  static Finding deciding(Result result) {
    Finding deciding = null;
    for (Finding finding : result.findings()) {
      if (!finding.counted()) {
        continue;
      }
      if (finding.verdict() == result.verdict() && result.verdict() != Verdict.COMPLIES) {
        return finding;
      }
      if (result.verdict() == Verdict.COMPLIES && closer(finding, deciding)) {
        deciding = finding;
      }
    }
    return deciding == null ? result.findings().get(0) : deciding;
  }

  private static boolean closer(Finding finding, Finding than) {
    if (finding.governing() == null) {
      return false;
    }
    return than == null || finding.governing().marginPercent() < than.governing().marginPercent();
  }
}
