package circuitverdict.select;

import circuitverdict.check.AdditionalProtection;
import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Comparison;
import circuitverdict.check.Finding;
import circuitverdict.check.LiveIsolation;
import circuitverdict.check.ResidualTypeRule;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Nameplate;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.circuit.Residual;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Working;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Row;
import circuitverdict.standard.TableName;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which devices of the standard series may protect a circuit: every characteristic, rated current
 * and breaking capacity, class 3. Those that pass every check are ranked: least rated current,
 * least characteristic that rides the start of the load, least capacity, unless the caller orders
 * otherwise.
 */
public final class DeviceSelection {
  /** What a ranking may look at. */
  public enum Order {
    RATED_CURRENT,
    CHARACTERISTIC,
    BREAKING_CAPACITY,
    GIVEN
  }

  /**
   * A device of the series and what the checks say of it.
   *
   * @param device the device
   * @param result its result
   * @param decidedBy the finding that decides: the first that rejects it or leaves it open; of a
   *     selected one the finding with the least margin
   */
  public record Candidate(Breaker device, Result result, Finding decidedBy) {}

  /**
   * The selection.
   *
   * @param selected those that comply, best first
   * @param undetermined those that nothing rejects but something leaves open
   * @param rejected those that fail
   * @param remedies changes that would let the candidate nearest to complying pass, where none does
   */
  public record Selection(
      List<Candidate> selected,
      List<Candidate> undetermined,
      List<Candidate> rejected,
      List<Remedy> remedies) {}

  /** Candidates for which remedies are looked for, and remedies that are enough. */
  private static final int TRIED = 24;

  private static final int ENOUGH = 3;

  private static final Check ADDITIONAL = new AdditionalProtection();

  private final Circuit circuit;
  private final Edition edition;
  private final List<Check> checks;
  private final Comparator<Candidate> ranking;

  /** A selection for a circuit; {@code order} empty for the usual ranking. */
  public DeviceSelection(Circuit circuit, Edition edition, List<Check> checks, List<Order> order) {
    this.circuit = circuit;
    this.edition = edition;
    this.checks = checks;
    this.ranking = ranking(order);
  }

  /** Every device of the series, judged and sorted. */
  public Selection select(boolean explain) {
    List<Candidate> selected = new ArrayList<>();
    List<Candidate> undetermined = new ArrayList<>();
    List<Candidate> rejected = new ArrayList<>();
    for (Breaker device : series()) {
      Candidate candidate = judge(device, explain);
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
    return new Selection(selected, undetermined, rejected, stuck ? remedies(rejected) : List.of());
  }

  private Candidate judge(Breaker device, boolean explain) {
    Result result = CircuitCheck.run(checks, circuit.with(device), edition, explain);
    return new Candidate(device, result, deciding(result));
  }

  private static Finding deciding(Result result) {
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

  private List<Breaker> series() {
    List<Breaker> plain = series(null);
    return residualOwed(plain.get(0)) ? series(residual()) : plain;
  }

  /** Every rating, letter and capacity of the series, with or without a residual function. */
  private List<Breaker> series(Residual residual) {
    List<Breaker> series = new ArrayList<>();
    LiveConductors live = live();
    Integer poles = live == null ? null : LiveIsolation.poles(circuit, live, told());
    Nameplate face = face(live, poles);
    for (Row rating : edition.table(TableName.STANDARD_RATINGS).rows()) {
      for (Row band : edition.table(TableName.MAGNETIC_BANDS).rows()) {
        for (Row capacity : edition.table(TableName.STANDARD_CAPACITIES).rows()) {
          DeviceData data =
              new DeviceData(
                  "/device",
                  null,
                  residual == null ? "IEC 60898-1" : "IEC 61009-1",
                  rating.keys().get(0).to(),
                  capacity.keys().get(0).to(),
                  null,
                  poles,
                  null,
                  residual,
                  null,
                  List.of(),
                  List.of(),
                  face);
          series.add(new Breaker(data, band.keys().get(0).text(), 3, Multiples.NONE));
        }
      }
    }
    return series;
  }

  /**
   * Whether additional protection is owed, or may be, that no residual device of the circuit gives:
   * then breakers of the series with a residual function are looked at.
   */
  private boolean residualOwed(Breaker plain) {
    if (circuit.residualDevice() != null || !checked()) {
      return false;
    }
    Verdict verdict = CircuitCheck.one(ADDITIONAL, circuit.with(plain), edition, false).verdict();
    return verdict != Verdict.COMPLIES && verdict != Verdict.NOT_APPLICABLE;
  }

  private boolean checked() {
    return checks.stream().anyMatch(check -> check.name() == CheckName.ADDITIONAL_PROTECTION);
  }

  private Residual residual() {
    double operating =
        edition.constant(Constant.ADDITIONAL_PROTECTION_RESIDUAL_OPERATING_CURRENT).number();
    return new Residual(
        ResidualTypeRule.least(circuit, edition), operating, Residual.Delay.GENERAL, null);
  }

  private LiveConductors live() {
    Integer phases = circuit.supply().phases();
    boolean onePhase = phases != null && phases == 1;
    return circuit.live() == null && onePhase ? new LiveConductors(1, true) : circuit.live();
  }

  private Dossier told() {
    return new Dossier(edition, Allowance.NOTHING, Working.silent());
  }

  /** Of two poles those for two lines are asked for: such for one line and neutral exist too. */
  private Nameplate face(LiveConductors live, Integer poles) {
    if (live == null || live.lines() != 2 || poles != 2) {
      return Nameplate.NONE;
    }
    double voltage = edition.constant(Constant.NOMINAL_LINE_TO_LINE).number();
    return new Nameplate(voltage, null, poles, null, null, null, List.of());
  }

  /** What would have to change so that one of the candidates nearest to complying passes. */
  private List<Remedy> remedies(List<Candidate> rejected) {
    List<Candidate> nearest = rejected.stream().filter(DeviceSelection::carriesTheLoad).toList();
    List<Remedy> remedies = new ArrayList<>();
    for (Candidate candidate : nearest.subList(0, Math.min(TRIED, nearest.size()))) {
      Circuit fitted = circuit.with(candidate.device());
      for (Remedy remedy : new Remedies(fitted, edition, checks, candidate.result()).all()) {
        Circuit changed = remedy.change().applyTo(fitted);
        Result after = CircuitCheck.run(checks, changed, edition, false);
        if (after.verdict() == Verdict.COMPLIES) {
          Change change = new Change.WithDevice(candidate.device(), remedy.change());
          remedies.add(new Remedy(change, remedy.mends()));
        }
      }
      if (remedies.size() >= ENOUGH) {
        break;
      }
    }
    return remedies;
  }

  /** A device too small for the load is mended by no change of the rest. */
  private static boolean carriesTheLoad(Candidate candidate) {
    List<Comparison> compared = candidate.result().of(CheckName.OVERLOAD_PROTECTION).comparisons();
    return !compared.isEmpty() && compared.get(0).verdict() == Verdict.COMPLIES;
  }

  /** Letters that ride the start come before those of which it is not known. */
  private static int unfitForStart(Candidate candidate) {
    for (Finding finding : candidate.result().findings()) {
      if (finding.check() == CheckName.INRUSH) {
        return switch (finding.verdict()) {
          case COMPLIES, NOT_APPLICABLE -> 0;
          case NOT_DETERMINED -> 1;
          case DOES_NOT_COMPLY -> 2;
        };
      }
    }
    return 0;
  }

  private static Comparator<Candidate> ranking(List<Order> order) {
    Comparator<Candidate> ranking = Comparator.comparingInt(candidate -> 0);
    List<Order> all = new ArrayList<>(order);
    for (Order each : List.of(Order.RATED_CURRENT, Order.CHARACTERISTIC, Order.BREAKING_CAPACITY)) {
      if (!all.contains(each)) {
        all.add(each);
      }
    }
    for (Order each : all) {
      ranking =
          switch (each) {
            case RATED_CURRENT ->
                ranking.thenComparingDouble(c -> c.device().data().ratedCurrentA());
            case CHARACTERISTIC ->
                ranking
                    .thenComparingInt(DeviceSelection::unfitForStart)
                    .thenComparing(c -> c.device().characteristic());
            case BREAKING_CAPACITY ->
                ranking.thenComparingDouble(c -> c.device().data().breakingCapacityA());
            case GIVEN -> ranking;
          };
    }
    return ranking;
  }
}
