package circuitverdict.select;

import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which sizes of the conductors as installed serve the load and its device: each size is put in the
 * circuit's place and judged by every check. A device that is not stated is selected with each
 * size; a length that is not stated is solved: the greatest with which every check complies.
 */
public final class ConductorSelection {
  /**
   * A size, and what the checks say of the circuit with it.
   *
   * @param cable the cable with its sizes, and with the length where that was solved
   * @param device the device selected with it; null where the caller states one
   * @param lengthSolved whether the length is the greatest that complies
   * @param result its result
   * @param cost by the caller's weights; null where none are given
   * @param decidedBy the finding that decides: the first that rejects it or leaves it open; of a
   *     selected one the finding with the least margin
   */
  public record Candidate(
      Cable cable,
      ProtectiveDevice device,
      boolean lengthSolved,
      Result result,
      Double cost,
      Finding decidedBy) {}

  /**
   * The selection, each list from the smallest line conductor up.
   *
   * @param selected those that comply
   * @param undetermined those that nothing rejects but something leaves open
   * @param rejected those that fail
   */
  public record Selection(
      List<Candidate> selected, List<Candidate> undetermined, List<Candidate> rejected) {

    /** How many were looked at. */
    public int count() {
      return selected.size() + undetermined.size() + rejected.size();
    }
  }

  private final Circuit circuit;
  private final Edition edition;
  private final List<Check> checks;
  private final CostWeights weights;
  private final boolean explain;

  private ConductorSelection(
      Circuit circuit, Edition edition, List<Check> checks, CostWeights weights, boolean explain) {
    this.weights = weights;
    this.circuit = circuit;
    this.edition = edition;
    this.checks = checks;
    this.explain = explain;
  }

  /**
   * Every size of the circuit's cable, judged and sorted: the cheapest first, or without weights
   * the smallest.
   *
   * @param weights what the caller says of cost; null for nothing
   */
  public static Selection of(
      Circuit circuit, Edition edition, List<Check> checks, CostWeights weights, boolean explain) {
    return new ConductorSelection(circuit, edition, checks, weights, explain).select();
  }

  private Selection select() {
    Selection all = new Selection(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (Cable cable : ConductorSizes.of(circuit.cable(), edition)) {
      Candidate candidate = judge(cable);
      switch (candidate.result().verdict()) {
        case COMPLIES -> all.selected().add(candidate);
        case DOES_NOT_COMPLY -> all.rejected().add(candidate);
        default -> all.undetermined().add(candidate);
      }
    }
    all.selected().sort(bySize());
    return all;
  }

  private static Comparator<Candidate> bySize() {
    return Comparator.<Candidate>comparingDouble(each -> each.cost() == null ? 0 : each.cost())
        .thenComparingDouble(each -> each.cable().lineCsaMm2())
        .thenComparingDouble(
            each -> each.cable().protectiveCsaMm2() == null ? 0 : each.cable().protectiveCsaMm2());
  }

  private Candidate judge(Cable size) {
    boolean solve = size.lengthM() == null;
    Cable cable = solve ? size.withLength(Solver.shortest()) : size;
    Circuit with = circuit.with(cable);
    ProtectiveDevice device = circuit.device() == null ? fitting(with) : null;
    with = device == null ? with : with.with(device);
    Result result = CircuitCheck.run(checks, with, edition, explain && !solve);
    if (solve) {
      if (result.verdict() == Verdict.COMPLIES) {
        cable = cable.withLength(greatestLength(with, result));
      }
      with = with.with(cable);
      result = CircuitCheck.run(checks, with, edition, explain);
    }
    Double cost = weights == null ? null : weights.of(circuit, cable, solve, device);
    return new Candidate(cable, device, solve, result, cost, DeviceSelection.deciding(result));
  }

  /** Of the standard series the best that passes, else that comes nearest to it; null for none. */
  private ProtectiveDevice fitting(Circuit with) {
    DeviceSelection.Selection devices =
        new DeviceSelection(with, edition, checks, List.of()).ofSeries(false);
    for (List<DeviceSelection.Candidate> each :
        List.of(devices.selected(), devices.undetermined())) {
      if (!each.isEmpty()) {
        return each.get(0).device();
      }
    }
    return devices.rejected().stream()
        .min(Comparator.comparingLong(ConductorSelection::failures))
        .map(DeviceSelection.Candidate::device)
        .orElse(null);
  }

  private static long failures(DeviceSelection.Candidate candidate) {
    return candidate.result().findings().stream()
        .filter(each -> each.counted() && each.verdict() == Verdict.DOES_NOT_COMPLY)
        .count();
  }

  private double greatestLength(Circuit with, Result result) {
    return new Solver(with, edition, checks, result)
        .greatestLength()
        .map(Limit::value)
        .orElse(Solver.shortest());
  }
}
