package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Row;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.Arrays;

/**
 * The energy a device lets through over a range of fault currents (434.5.2, 543.1.3), as the
 * interval that the evidence leaves: the maker's data where they reach, the energy limiting class
 * at the device's own Icn, the times its standard promises. Above its own breaking capacity a
 * device promises nothing.
 */
public final class LetThrough {
  /**
   * Energy over a range of currents.
   *
   * @param least energy that is certainly reached somewhere in the range, A²s
   * @param greatest energy that is certainly not exceeded, A²s; infinite where nothing says so
   * @param decidingA current at which the greatest arises, A
   */
  public record Energy(Figure least, Figure greatest, double decidingA) {}

  private final ProtectiveDevice device;
  private final Dossier d;
  private EnergyBound[] bounds;
  private boolean residual;
  private Told told;

  /** What was last said, and of which range. */
  private record Told(Figure from, Figure upTo, Energy energy) {}

  private LetThrough(ProtectiveDevice device, EnergyBound[] bounds, Dossier d) {
    this.device = device;
    this.bounds = bounds;
    this.d = d;
  }

  /** What the device's own standard and its maker say. */
  public static LetThrough of(ProtectiveDevice device, Dossier d) {
    return new LetThrough(
        device, d.once(Topic.ENERGY_BOUNDS, device, inner -> OwnEvidence.of(device, inner)), d);
  }

  /**
   * As {@link #of}, with the class row of the smallest capacity not below the current: guidance.
   */
  public static LetThrough byGuidance(ProtectiveDevice device, double currentA, Dossier d) {
    LetThrough letThrough = of(device, d);
    Figure capacity = letThrough.capacity();
    if (device instanceof Breaker breaker && Comparator.atMost(currentA, capacity.value())) {
      double row = Double.POSITIVE_INFINITY;
      for (Row each : d.edition().table(TableName.ENERGY_LIMITS).rows()) {
        double listed = each.keys().get(1).to();
        row = Comparator.atMost(currentA, listed) ? Math.min(row, listed) : row;
      }
      EnergyBound limit = OwnEvidence.limit(breaker, row, capacity, d);
      if (limit != null) {
        letThrough.add(limit);
      }
    }
    return letThrough;
  }

  /**
   * What the maker shows the device to let through at a current, A²s; unknown where he does not.
   */
  public static Figure byMaker(ProtectiveDevice device, Figure current, Dossier d) {
    MakersPoints maker = new MakersPoints(device);
    boolean shown =
        !device.data().letThrough().isEmpty() && maker.settles(current.value(), current.value());
    return shown
        ? maker.explain(current.value(), current.value(), current, d).as("I²t,Icn")
        : Figure.unknown("I²t,Icn", Unit.AMPERE_SQUARED_SECOND);
  }

  /** The same with a residual function that breaks earth faults within a time, up to a current. */
  public LetThrough withResidual(Figure timeS, Figure breaksA) {
    if (timeS.known() && breaksA.known()) {
      add(new EnergyBounds.ResidualTrip(timeS, breaksA));
      residual = true;
    }
    return this;
  }

  /**
   * The same with a declared let-through of the pair above the device's own capacity, up to the
   * current for which it is declared.
   *
   * @param rated whether the rating of the pair says up to which
   */
  public LetThrough withBackUp(Double limitedA2s, Figure upTo, boolean rated) {
    Figure own = capacity();
    if (limitedA2s != null && own.value() > 0) {
      Figure energy =
          d.given(
              EnergyBounds.SYMBOL,
              limitedA2s,
              Unit.AMPERE_SQUARED_SECOND,
              new Pointer("/backUp", "limitedLetThroughA2s"));
      EnergyBounds.Limit limit = new EnergyBounds.Limit(energy, own.value(), upTo);
      add(new EnergyBounds.Pair(limit, own, rated));
    }
    return this;
  }

  EnergyBound[] bounds() {
    return bounds;
  }

  private void add(EnergyBound bound) {
    bounds = Arrays.copyOf(bounds, bounds.length + 1);
    bounds[bounds.length - 1] = bound;
    told = null;
  }

  /** The energy over a range of currents; where the ends are crossed, at the lower one. */
  public Energy over(Figure from, Figure upTo) {
    // Line and neutral of a cable are held against the same energy.
    if (told == null || told.from() != from || told.upTo() != upTo) {
      told = new Told(from, upTo, find(from, upTo));
    }
    return told.energy();
  }

  private Energy find(Figure from, Figure upTo) {
    double fromA = from.value();
    double to = Math.max(fromA, upTo.value());
    double[] corners = Corners.within(fromA, to, bounds);
    Worst least = new Worst(null, 0, fromA, to);
    Worst worst = new Worst(null, -1, fromA, to);
    for (int i = 0; i + 1 < corners.length; i++) {
      worst = worse(worst, corners[i], corners[i + 1]);
      least = more(least, corners[i], corners[i + 1]);
    }
    // At a corner itself another bound may speak than beside it: that of the own capacity's end, or
    // a single point of the maker's.
    for (double corner : corners) {
      worst = worse(worst, corner, corner);
      least = more(least, corner, corner);
    }
    Figure most =
        Double.isInfinite(worst.energy()) || worst.bound() == null
            ? energy(Double.POSITIVE_INFINITY)
            : worst.bound().explain(worst.from(), worst.to(), end(worst.to(), from, upTo), d);
    Figure certain =
        least.bound() == null
            ? energy(0)
            : least.bound().explainLeast(least.from(), least.to(), end(least.to(), from, upTo), d);
    return new Energy(certain, most, worst.to());
  }

  /** The stretch with the most energy so far, and the bound that promises it there. */
  private record Worst(EnergyBound bound, double energy, double from, double to) {}

  private Worst worse(Worst worst, double from, double to) {
    EnergyBound tightest = tightest(from, to);
    double here = tightest == null ? Double.POSITIVE_INFINITY : tightest.greatest(from, to);
    return here > worst.energy() ? new Worst(tightest, here, from, to) : worst;
  }

  /**
   * The current at the upper end of the deciding stretch: one that the caller knows, or a corner.
   */
  private Figure end(double ampere, Figure from, Figure upTo) {
    if (ampere == upTo.value()) {
      return upTo;
    }
    return ampere == from.value() ? from : Corners.figure(ampere, bounds, d);
  }

  /**
   * The bound that lets the least through. What settles it, the maker's data of the device alone,
   * leaves no others to count but those of what else breaks the current with it.
   */
  EnergyBound tightest(double from, double to) {
    EnergyBound best = null;
    double least = Double.POSITIVE_INFINITY;
    boolean settled = false;
    for (EnergyBound bound : bounds) {
      boolean beside =
          bound instanceof EnergyBounds.ResidualTrip || bound instanceof EnergyBounds.Pair;
      if (settled && !beside) {
        continue;
      }
      settled = settled || bound.settles(from, to);
      double here = bound.greatest(from, to);
      if (here < least) {
        least = here;
        best = bound;
      }
    }
    return best;
  }

  /** The stretch and the bound with more energy that is certain to be reached. */
  private Worst more(Worst least, double from, double to) {
    if (residual && residualCovers(to)) {
      return least;
    }
    double pair = pairAtBest(from, to);
    Worst most = least;
    for (EnergyBound bound : bounds) {
      double here = bound.least(from, to);
      // With the pair it may be less.
      boolean certain = here > most.energy() && Comparator.atMost(here, pair);
      most = certain ? new Worst(bound, here, from, to) : most;
    }
    return most;
  }

  private double pairAtBest(double from, double to) {
    double most = Double.POSITIVE_INFINITY;
    for (EnergyBound bound : bounds) {
      if (bound instanceof EnergyBounds.Pair pair) {
        most = Math.min(most, pair.atBest(from, to));
      }
    }
    return most;
  }

  private boolean residualCovers(double to) {
    for (EnergyBound bound : bounds) {
      if (bound instanceof EnergyBounds.ResidualTrip trip && trip.breaks(to)) {
        return true;
      }
    }
    return false;
  }

  /** Limit of the energy limiting class in the row of this capacity; null where there is none. */
  public static Value classLimit(Breaker breaker, double capacityA, Dossier d) {
    Double rated = breaker.data().ratedCurrentA();
    if (breaker.energyClass() == null || breaker.characteristic() == null || rated == null) {
      return null;
    }
    Table table = d.edition().table(TableName.ENERGY_LIMITS);
    return table.has(breaker.characteristic())
        ? table.at(breaker.characteristic(), rated, capacityA, breaker.energyClass())
        : null;
  }

  /** Whether no class is stated, and one that is in the table would limit the energy. */
  public static boolean lacksClass(Breaker breaker, double capacityA, Dossier d) {
    if (breaker.energyClass() != null) {
      return false;
    }
    for (Row row : d.edition().table(TableName.ENERGY_LIMITS).rows()) {
      int listed = (int) row.keys().get(2).to();
      Breaker classed =
          new Breaker(breaker.data(), breaker.characteristic(), listed, breaker.multiples());
      if (classLimit(classed, capacityA, d) != null) {
        return true;
      }
    }
    return false;
  }

  private Figure capacity() {
    return OwnEvidence.capacity(device, d);
  }

  private static Figure energy(double value) {
    return Figure.derived(EnergyBounds.SYMBOL, value, Unit.AMPERE_SQUARED_SECOND);
  }
}
