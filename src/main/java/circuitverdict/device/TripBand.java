package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.quantity.Comparator;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * Earliest and latest operating time that a breaker's standard promises for any current: a step
 * function of the standard's tests (IEC 60898-1 table 7; IEC 60947-2). Infinity where nothing is
 * promised.
 */
public final class TripBand {
  /**
   * One step: from this current on, until the next step.
   *
   * @param fromA current from which it holds, A
   * @param toA current up to which it holds, not included, A
   * @param earliest earliest operating time; null where it may operate at once
   * @param latest latest operating time; null where none is promised
   */
  public record Step(double fromA, double toA, Value earliest, Value latest) {
    /** Earliest operating time, s. */
    public double earliestS() {
      return earliest == null ? 0 : earliest.number();
    }

    /** Latest operating time, s; infinite where none is promised. */
    public double latestS() {
      return latest == null ? NEVER : latest.number();
    }
  }

  private static final double NEVER = Double.POSITIVE_INFINITY;

  private final List<Step> steps;
  private final Step[] along;

  private TripBand(Step[] steps) {
    this.steps = List.of(steps);
    this.along = steps;
  }

  /** The band of a breaker; null where its data or its kind do not give one. */
  public static TripBand of(ProtectiveDevice device, Edition edition) {
    if (device instanceof Breaker breaker) {
      return ofBreaker(breaker, edition);
    }
    if (device instanceof AdjustableBreaker breaker) {
      return ofAdjustable(breaker, edition);
    }
    return null;
  }

  private static TripBand ofBreaker(Breaker breaker, Edition edition) {
    Double rated = breaker.data().ratedCurrentA();
    MagneticBand band = MagneticBand.of(breaker, edition);
    Table times = edition.table(TableName.BREAKER_TEST_TIMES);
    Value conventional = rated == null ? null : times.at("conventional", rated);
    if (band == null || conventional == null) {
      return null;
    }
    double in = rated;
    double hold = edition.constant(Constant.BREAKER_TESTS_CONVENTIONAL_NON_TRIPPING).number() * in;
    double trip = edition.constant(Constant.BREAKER_TESTS_CONVENTIONAL_TRIPPING).number() * in;
    double thermal = edition.constant(Constant.BREAKER_TESTS_THERMAL_TEST).number() * in;
    Value thermalEarliest = edition.constant(Constant.BREAKER_TESTS_THERMAL_EARLIEST);
    Value instantaneous = edition.constant(Constant.BREAKER_TESTS_INSTANTANEOUS);
    double magneticLower = band.lower() * in;
    double magneticUpper = band.upper() * in;
    Value thermalLatest = times.at("thermal-latest", in);
    return new Builder()
        .until(Math.min(hold, magneticLower), conventional, null)
        .until(Math.min(trip, magneticLower), thermalEarliest, null)
        .until(trip, null, null)
        .until(Math.min(thermal, magneticLower), thermalEarliest, conventional)
        .until(thermal, null, conventional)
        .until(magneticLower, instantaneous, thermalLatest)
        .until(magneticUpper, null, thermalLatest)
        .until(NEVER, null, instantaneous)
        .build();
  }

  private static TripBand ofAdjustable(AdjustableBreaker breaker, Edition edition) {
    Double setting = breaker.settings().longTimeA();
    Double rated = setting != null ? setting : breaker.data().ratedCurrentA();
    if (rated == null) {
      return null;
    }
    double tolerance = edition.constant(Constant.ADJUSTABLE_TESTS_MAGNETIC_TOLERANCE).number();
    Value instantaneous = edition.constant(Constant.ADJUSTABLE_TESTS_INSTANTANEOUS);
    Value conventional = edition.table(TableName.ADJUSTABLE_TEST_TIMES).at("conventional", rated);
    double hold =
        edition.constant(Constant.ADJUSTABLE_TESTS_CONVENTIONAL_NON_TRIPPING).number() * rated;
    double trip =
        edition.constant(Constant.ADJUSTABLE_TESTS_CONVENTIONAL_TRIPPING).number() * rated;
    Builder builder = new Builder().until(hold, conventional, null).until(trip, null, null);
    // A delayed release is left out: the standard promises no greatest clearing time of it.
    return builder
        .until(magneticFrom(breaker, tolerance), null, conventional)
        .until(NEVER, null, instantaneous)
        .build();
  }

  /**
   * Current from which the instantaneous release operates for certain; infinite where not stated.
   */
  private static double magneticFrom(AdjustableBreaker breaker, double tolerance) {
    double from = 0;
    if (breaker.settings().instantaneousA() != null) {
      from = breaker.settings().instantaneousA() * (1 + tolerance);
    }
    if (breaker.multiples().upper() != null && breaker.data().ratedCurrentA() != null) {
      from = Math.max(from, breaker.multiples().upper() * breaker.data().ratedCurrentA());
    }
    return from > 0 ? from : Double.POSITIVE_INFINITY;
  }

  /** The steps, rising in current. */
  public List<Step> steps() {
    return steps;
  }

  /** Earliest operating time at a current, s. */
  public double earliestS(double currentA) {
    return at(currentA).earliestS();
  }

  /** Latest operating time at a current, s; infinite where no trip is promised. */
  public double latestS(double currentA) {
    return at(currentA).latestS();
  }

  /** The step that holds at a current; at a corner the one above it. */
  Step at(double currentA) {
    for (Step step : along) {
      if (!Comparator.atMost(step.toA(), currentA)) {
        return step;
      }
    }
    return along[along.length - 1];
  }

  /** Adds the currents at which a step begins. */
  void addTo(Corners corners) {
    for (Step step : along) {
      corners.add(step.fromA());
    }
  }

  private static final class Builder {
    private final List<Step> steps = new ArrayList<>(6);
    private double from;

    Builder until(double to, Value earliest, Value latest) {
      if (to > from) {
        steps.add(new Step(from, to, earliest, latest));
        from = to;
      }
      return this;
    }

    TripBand build() {
      return new TripBand(steps.toArray(Step[]::new));
    }
  }
}
