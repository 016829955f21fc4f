package circuitverdict.select;

import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.At;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;

/**
 * Solves backwards for the greatest length, loop impedance and fault current (each check is
 * monotonic in them). The value found complies and the next step does not.
 */
public final class Solver {
  private enum Quantity {
    LENGTH(new Pointer("/cable", "lengthM"), Unit.METRE, 10, 50_000),
    LOOP(At.LOOP, Unit.OHM, 1000, 5_000_000),
    CURRENT(At.MAXIMUM_CURRENT, Unit.AMPERE, 1, 200_000);

    private final Pointer pointer;
    private final Unit unit;
    private final int stepsPerUnit;
    private final int most;

    Quantity(Pointer pointer, Unit unit, int stepsPerUnit, int most) {
      this.pointer = pointer;
      this.unit = unit;
      this.stepsPerUnit = stepsPerUnit;
      this.most = most;
    }
  }

  private static final Set<CheckName> BY_LENGTH =
      EnumSet.of(
          CheckName.VOLTAGE_DROP,
          CheckName.EARTH_FAULT_DISCONNECTION,
          CheckName.LET_THROUGH_ENERGY,
          CheckName.PROTECTIVE_CONDUCTOR);
  private static final Set<CheckName> BY_LOOP =
      EnumSet.of(
          CheckName.EARTH_FAULT_DISCONNECTION,
          CheckName.LET_THROUGH_ENERGY,
          CheckName.PROTECTIVE_CONDUCTOR);
  private static final Set<CheckName> BY_CURRENT =
      EnumSet.of(
          CheckName.BREAKING_CAPACITY,
          CheckName.LET_THROUGH_ENERGY,
          CheckName.PROTECTIVE_CONDUCTOR,
          CheckName.SELECTIVITY);

  /** No value at all lets the check comply. */
  private static final int NONE_COMPLIES = -1;

  private final Circuit circuit;
  private final Edition edition;
  private final List<Check> checks;
  private final Result found;
  private Shared known = new Shared();

  /** What was tried last: other checks are asked at the same value. */
  private Tried last;

  /** The circuit with one quantity at one value, and what its checks have in common. */
  private record Tried(Quantity quantity, double value, Circuit circuit, Shared shared) {}

  /** A solver for a circuit among these checks. */
  public Solver(Circuit circuit, Edition edition, List<Check> checks) {
    this(circuit, edition, checks, null);
  }

  /** A solver that need not evaluate again what these checks found for the circuit as it stands. */
  public Solver(Circuit circuit, Edition edition, List<Check> checks, Result found) {
    this.circuit = circuit;
    this.edition = edition;
    this.checks = checks;
    this.found = found;
  }

  /** The limits that can be given, each governed by the check that sets it. */
  public List<Limit> limits() {
    List<Limit> limits = new ArrayList<>(3);
    least(Quantity.LENGTH, BY_LENGTH, this::withLength).ifPresent(limits::add);
    least(Quantity.LOOP, BY_LOOP, this::withLoop).ifPresent(limits::add);
    least(Quantity.CURRENT, BY_CURRENT, this::withCurrent).ifPresent(limits::add);
    return limits;
  }

  /** The shortest length that is tried, m. */
  static double shortest() {
    return 1.0 / Quantity.LENGTH.stepsPerUnit;
  }

  /** The greatest length with which every check complies, m; empty where none governs. */
  Optional<Limit> greatestLength() {
    return least(Quantity.LENGTH, BY_LENGTH, this::withLength);
  }

  /** The greatest length with which one check complies, m; empty where none does. */
  public Optional<Limit> greatestLength(CheckName name) {
    return least(Quantity.LENGTH, EnumSet.of(name), this::withLength);
  }

  private Circuit withLength(double metres) {
    return circuit.with(circuit.cable().withLength(metres));
  }

  private Circuit withLoop(double ohm) {
    return circuit.with(circuit.supply().withLoopImpedance(ohm));
  }

  private Circuit withCurrent(double ampere) {
    return circuit.with(circuit.supply().withMaximumFaultCurrent(ampere));
  }

  private Double stated(Quantity quantity) {
    return switch (quantity) {
      case LENGTH -> circuit.cable().lengthM();
      case LOOP -> circuit.supply().loopImpedanceOhm();
      case CURRENT -> circuit.supply().maximumFaultCurrentA();
    };
  }

  private Optional<Limit> least(
      Quantity quantity, Set<CheckName> names, DoubleFunction<Circuit> vary) {
    int least = 0;
    CheckName governing = null;
    for (Check check : checks) {
      if (!names.contains(check.name()) || !check.counts(circuit)) {
        continue;
      }
      Search search = new Search(quantity, check, vary);
      if (least > 0 && search.tries(least)) {
        // It holds where another already turns: it cannot govern.
        continue;
      }
      int steps = search.greatest(least);
      if (steps == NONE_COMPLIES) {
        return Optional.empty();
      }
      if (steps > 0 && (least == 0 || steps < least)) {
        least = steps;
        governing = check.name();
      }
    }
    return governing == null
        ? Optional.empty()
        : Optional.of(
            new Limit(
                quantity.pointer,
                (double) least / quantity.stepsPerUnit,
                quantity.unit,
                governing));
  }

  /** The search for the greatest step with which one check complies. */
  private final class Search {
    private final Quantity quantity;
    private final Check check;
    private final DoubleFunction<Circuit> vary;
    private int complies = 1;
    private int fails;
    private boolean failsForCertain;
    private double marginAbove;
    private double marginBelow;

    Search(Quantity quantity, Check check, DoubleFunction<Circuit> vary) {
      this.quantity = quantity;
      this.check = check;
      this.vary = vary;
      this.fails = quantity.most;
    }

    /**
     * The greatest step that complies, not above a bound where there is one; 0 where every one does
     * or nothing can be said, {@link #NONE_COMPLIES} where the check fails at the least step
     * already.
     */
    int greatest(int bound) {
      if (bound > 0) {
        fails = bound;
      } else if (tries(quantity.most)) {
        return 0;
      }
      if (!(now() < fails && tries(now())) && !tries(1)) {
        return failsForCertain ? NONE_COMPLIES : 0;
      }
      // Margins are nearly straight lines: a few steps along them, then halving.
      for (int i = 0; i < 4 && fails - complies > 1; i++) {
        int guess = alongMargins();
        probe(guess);
        probe(complies == guess ? guess + 1 : guess - 1);
      }
      while (fails - complies > 1) {
        probe((complies + fails) >>> 1);
      }
      return complies;
    }

    /** The value as it stands: from it the search goes up where the check complies, else down. */
    private int now() {
      Double stated = stated(quantity);
      int steps = stated == null ? 1 : (int) Math.floor(stated * quantity.stepsPerUnit);
      return Math.max(1, Math.min(steps, quantity.most - 1));
    }

    private int alongMargins() {
      double share = marginBelow / (marginBelow - marginAbove);
      if (!(share > 0 && share < 1)) {
        return (complies + fails) >>> 1;
      }
      return complies + (int) Math.floor(share * (fails - complies));
    }

    private void probe(int steps) {
      if (steps > complies && steps < fails) {
        tries(steps);
      }
    }

    private Finding at(double value) {
      Double stated = stated(quantity);
      if (found != null && stated != null && stated == value) {
        return found.of(check.name());
      }
      if (last == null || last.quantity() != quantity || last.value() != value) {
        // What is known of the device stays: nothing of it varies.
        known = known.knowing(circuit.device());
        last = new Tried(quantity, value, vary.apply(value), known);
      }
      return CircuitCheck.silent(check, last.circuit(), edition, last.shared());
    }

    private boolean tries(int steps) {
      Finding finding = at((double) steps / quantity.stepsPerUnit);
      boolean holds = finding.verdict() == Verdict.COMPLIES;
      double margin =
          finding.governing() == null ? Double.NaN : finding.governing().marginPercent();
      if (holds) {
        complies = steps;
        marginBelow = margin;
      } else {
        fails = steps;
        marginAbove = margin;
        failsForCertain = finding.verdict() == Verdict.DOES_NOT_COMPLY;
      }
      return holds;
    }
  }
}
