package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Value;

/** The kinds of evidence for let-through energy (434.5.2), each a bound. */
final class EnergyBounds {
  static final String SYMBOL = "I²t";
  private static final Formula SQUARE = Formula.of(SYMBOL, Unit.AMPERE_SQUARED_SECOND, "I²·t");
  private static final Formula POINT = Formula.of(SYMBOL, Unit.AMPERE_SQUARED_SECOND, "Ip²·tp");
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private EnergyBounds() {}

  /**
   * The current's square times the times promised by the device's standard, up to its capacity.
   * Beyond the longest adiabatic time it overstates the heating: no failure is stated by it.
   */
  record Promised(ProtectiveDevice device, TripBand band, Figure capacity, double adiabaticS)
      implements EnergyBound {
    @Override
    public void addTo(Corners corners) {
      band.addTo(corners);
      corners.add(capacity.value());
    }

    @Override
    public Figure corner(double ampere, Dossier d) {
      Figure end = Corners.sourced(capacity, ampere);
      return end != null ? end : TripCorner.of(device, ampere, d);
    }

    @Override
    public double greatest(double from, double to) {
      return Comparator.atMost(to, capacity.value()) ? to * to * band.latestS(from) : NEVER;
    }

    @Override
    public double least(double from, double to) {
      double earliest = band.earliestS(from);
      boolean promised = Comparator.atMost(to, capacity.value());
      return promised && earliest <= adiabaticS ? to * to * earliest : 0;
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      return d.working().step(SQUARE, end.as("I"), Figure.of("t", band.at(from).latest()));
    }

    @Override
    public Figure explainLeast(double from, double to, Figure end, Dossier d) {
      return d.working().step(SQUARE, end.as("I"), Figure.of("t", band.at(from).earliest()));
    }
  }

  /** A limit that does not depend on the current within a range: an energy limiting class. */
  record Limit(Figure energy, double fromA, Figure upTo) implements EnergyBound {
    @Override
    public void addTo(Corners corners) {
      corners.add(fromA);
      corners.add(upTo.value());
    }

    @Override
    public Figure corner(double ampere, Dossier d) {
      return Corners.sourced(upTo, ampere);
    }

    @Override
    public double greatest(double from, double to) {
      boolean covered = Comparator.atMost(fromA, from) && Comparator.atMost(to, upTo.value());
      return covered ? energy.value() : NEVER;
    }

    @Override
    public double least(double from, double to) {
      return 0;
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      return d.working().look(energy.as(SYMBOL));
    }
  }

  /**
   * A declared let-through of a pair above the device's own capacity: at that itself, and below it,
   * the device's own promise still holds.
   *
   * @param limit what is declared, from the device's own capacity to the rating of the pair
   * @param own the device's own capacity
   * @param rated whether that rating is stated; without it the pair may be declared for any current
   */
  record Pair(Limit limit, Figure own, boolean rated) implements EnergyBound {
    @Override
    public void addTo(Corners corners) {
      limit.addTo(corners);
    }

    @Override
    public Figure corner(double ampere, Dossier d) {
      Figure start = Corners.sourced(own, ampere);
      return start != null ? start : limit.corner(ampere, d);
    }

    @Override
    public double greatest(double from, double to) {
      return above(to) ? limit.greatest(from, to) : NEVER;
    }

    @Override
    public double least(double from, double to) {
      return limit.least(from, to);
    }

    /** The most that may pass if the pair is declared as far as is not excluded. */
    double atBest(double from, double to) {
      return rated || !above(to) ? greatest(from, to) : limit.energy().value();
    }

    private boolean above(double to) {
      return !Comparator.atMost(to, limit.fromA());
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      return limit.explain(from, to, end, d);
    }
  }

  /**
   * Above a known operating point of a cartridge fuse its energy does not rise (common practice).
   */
  record FusePoint(Figure current, double timeS, Figure capacity) implements EnergyBound {
    @Override
    public void addTo(Corners corners) {
      corners.add(current.value());
      corners.add(capacity.value());
    }

    @Override
    public Figure corner(double ampere, Dossier d) {
      Figure point = Corners.sourced(current, ampere);
      return point != null ? point : Corners.sourced(capacity, ampere);
    }

    @Override
    public double greatest(double from, double to) {
      boolean covered =
          Comparator.atMost(current.value(), from) && Comparator.atMost(to, capacity.value());
      return covered ? current.value() * current.value() * timeS : NEVER;
    }

    @Override
    public double least(double from, double to) {
      return 0;
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      // The column that gives the current is that of this time.
      Figure time = new Figure("tp", timeS, Unit.SECOND, current.source());
      return d.working().step(POINT, d.working().look(current.as("Ip")), time);
    }
  }

  /** No gG fuse lets through less than its least pre-arcing energy. */
  record PreArcing(Value least) implements EnergyBound {
    @Override
    public void addTo(Corners corners) {
      // It says the same of every current.
    }

    @Override
    public double greatest(double from, double to) {
      return NEVER;
    }

    @Override
    public double least(double from, double to) {
      return least.number();
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      return d.working().look(Figure.of(SYMBOL, least));
    }
  }

  /** A residual function breaks within its own time, up to the greatest current it breaks. */
  record ResidualTrip(Figure time, Figure upTo) implements EnergyBound {
    /** Whether it breaks this current. */
    boolean breaks(double ampere) {
      return Comparator.atMost(ampere, upTo.value());
    }

    @Override
    public void addTo(Corners corners) {
      corners.add(upTo.value());
    }

    @Override
    public Figure corner(double ampere, Dossier d) {
      return Corners.sourced(upTo, ampere);
    }

    @Override
    public double greatest(double from, double to) {
      return breaks(to) ? to * to * time.value() : NEVER;
    }

    @Override
    public double least(double from, double to) {
      return 0;
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      return d.working().step(SQUARE, end.as("I"), time.as("t"));
    }
  }
}
