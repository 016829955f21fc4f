package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Supply;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared;
import circuitverdict.explain.Working;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Runs checks on a circuit, in their order. */
public final class CircuitCheck {
  private static final List<Check> ALL =
      List.of(
          new OverloadProtection(),
          new ConductorRating(),
          new VoltageDrop(),
          new EarthFaultDisconnection(),
          new BreakingCapacityCheck(),
          new LetThroughEnergy(),
          new ProtectiveConductorCheck(),
          new Selectivity(),
          new Inrush(),
          new AdditionalProtection(),
          new EarthingArrangement(),
          new DeviceSuitability(),
          new Commissioning());

  private CircuitCheck() {}

  /** All checks, in order. */
  public static List<Check> all() {
    return ALL;
  }

  /** Every check with its working. */
  public static Result explained(Circuit circuit, Edition edition) {
    return run(ALL, circuit, edition, true);
  }

  /** Every check, verdicts only: the same verdicts, reasons and figures. */
  public static Result verdicts(Circuit circuit, Edition edition) {
    return run(ALL, circuit, edition, false);
  }

  /** Some checks. */
  public static Result run(List<Check> checks, Circuit circuit, Edition edition, boolean explain) {
    List<Finding> findings = new ArrayList<>(checks.size());
    Shared shared = new Shared();
    for (Check check : checks) {
      findings.add(one(check, circuit, edition, explain, shared));
    }
    return Result.of(findings);
  }

  /** Single checks of one circuit, verdicts only; what they have in common is evaluated once. */
  public static Function<Check, Finding> silent(Circuit circuit, Edition edition) {
    Shared shared = new Shared();
    return check -> one(check, circuit, edition, false, shared);
  }

  /** One check, verdict only, with what is known already. */
  public static Finding silent(Check check, Circuit circuit, Edition edition, Shared known) {
    return one(check, circuit, edition, false, known);
  }

  /** One check. */
  public static Finding one(Check check, Circuit circuit, Edition edition, boolean explain) {
    return one(check, circuit, edition, explain, new Shared());
  }

  private static Finding one(
      Check check, Circuit circuit, Edition edition, boolean explain, Shared shared) {
    Working working = explain ? Working.recording() : Working.silent();
    Dossier dossier = new Dossier(edition, allowance(circuit.stage()), working, shared);
    hold(circuit.supply().frequencyHz(), dossier);
    Finding finding = check.evaluate(circuit, dossier);
    boolean byStandIn = finding.reason() == Reason.STAND_IN_FAILS;
    if (byStandIn && circuit.supply().basis() == null && readsSupply(circuit.supply())) {
      // Failing even with the supply's figures as stated, it fails whatever they rest on.
      Circuit best = circuit.with(circuit.supply().withBasis(Supply.Basis.DECLARED));
      Finding atBest = one(check, best, edition, explain, new Shared());
      return atBest.verdict() == Verdict.DOES_NOT_COMPLY ? atBest : finding;
    }
    return finding;
  }

  /** At another frequency than that of the tables no verdict rests on them. */
  static void hold(Double frequency, Dossier dossier) {
    Value tabled = dossier.edition().constant(Constant.FREQUENCY);
    if (frequency != null && frequency != tabled.number()) {
      dossier.block(new Pointer("/supply", "frequencyHz"));
    }
  }

  private static boolean readsSupply(Supply supply) {
    return supply.loopImpedanceOhm() != null || supply.earthElectrodeResistanceOhm() != null;
  }

  /** What may be assumed at a stage. */
  public static Allowance allowance(Circuit.Stage stage) {
    return switch (stage) {
      case SIGN_OFF -> Allowance.NOTHING;
      case DESIGN -> Allowance.TABLE_DEFAULTS;
      case QUOTATION -> Allowance.TYPICAL_VALUES;
    };
  }
}
