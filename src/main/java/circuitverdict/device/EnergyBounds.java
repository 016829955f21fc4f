package circuitverdict.device;

import circuitverdict.circuit.DeviceData.LetThroughPoint;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Value;
import java.util.List;

/** The kinds of evidence for let-through energy (434.5.2), each a bound. */
final class EnergyBounds {
  static final String SYMBOL = "I²t";
  private static final Formula SQUARE = Formula.of(SYMBOL, Unit.AMPERE_SQUARED_SECOND, "I²·t");
  private static final Formula POINT = Formula.of(SYMBOL, Unit.AMPERE_SQUARED_SECOND, "Ip²·tp");
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private EnergyBounds() {}

  /** The maker's points, log–log between them, silent outside them: settles both ways. */
  record Maker(ProtectiveDevice device) implements EnergyBound {
    private List<LetThroughPoint> points() {
      return device.data().letThrough();
    }

    @Override
    public double[] corners() {
      return points().stream().mapToDouble(LetThroughPoint::prospectiveCurrentA).toArray();
    }

    @Override
    public boolean settles(double from, double to) {
      return Comparator.atMost(first(), from) && Comparator.atMost(to, last());
    }

    @Override
    public double greatest(double from, double to) {
      return settles(from, to) ? Math.max(at(from), at(to)) : NEVER;
    }

    @Override
    public double least(double from, double to) {
      return settles(from, to) ? Math.max(at(from), at(to)) : 0;
    }

    private double first() {
      return points().get(0).prospectiveCurrentA();
    }

    private double last() {
      return points().get(points().size() - 1).prospectiveCurrentA();
    }

    /**
     * Energy at a current that its range reaches, its ends where only rounding lies beyond them.
     */
    private double at(double ampere) {
      List<LetThroughPoint> points = points();
      double current = Math.min(Math.max(ampere, first()), last());
      for (int i = 0; i < points.size(); i++) {
        LetThroughPoint next = points.get(i);
        if (current == next.prospectiveCurrentA()) {
          return next.energyA2s();
        }
        if (current < next.prospectiveCurrentA()) {
          return between(points.get(i - 1), next, current);
        }
      }
      return NEVER;
    }

    private static double between(LetThroughPoint a, LetThroughPoint b, double current) {
      double share =
          Math.log(current / a.prospectiveCurrentA())
              / Math.log(b.prospectiveCurrentA() / a.prospectiveCurrentA());
      return a.energyA2s() * Math.pow(b.energyA2s() / a.energyA2s(), share);
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      Figure energy =
          new Figure(
              SYMBOL,
              greatest(from, to),
              Unit.AMPERE_SQUARED_SECOND,
              new Pointer(device.data().place(), "letThrough"));
      return d.working().look(energy);
    }
  }

  /**
   * The current's square times the times promised by the device's standard, up to its capacity.
   * Beyond the longest adiabatic time it overstates the heating: no failure is stated by it.
   */
  record Promised(TripBand band, double capacityA, double adiabaticS) implements EnergyBound {
    @Override
    public double[] corners() {
      double[] corners = new double[band.steps().size() + 1];
      for (int i = 0; i < band.steps().size(); i++) {
        corners[i] = band.steps().get(i).fromA();
      }
      corners[band.steps().size()] = capacityA;
      return corners;
    }

    @Override
    public double greatest(double from, double to) {
      return Comparator.atMost(to, capacityA) ? to * to * band.latestS(from) : NEVER;
    }

    @Override
    public double least(double from, double to) {
      double earliest = band.earliestS(from);
      boolean promised = Comparator.atMost(to, capacityA);
      return promised && earliest <= adiabaticS ? to * to * earliest : 0;
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      TripBand.Step step = band.at(from);
      boolean own = step.source() != null && step.source().number() == step.latestS();
      Figure time =
          own ? Figure.of("t", step.source()) : Figure.derived("t", step.latestS(), Unit.SECOND);
      return d.working().step(SQUARE, end.as("I"), time);
    }

    @Override
    public Figure explainLeast(double from, double to, Figure end, Dossier d) {
      Figure time = Figure.derived("t", band.earliestS(from), Unit.SECOND);
      return d.working().step(SQUARE, end.as("I"), time);
    }
  }

  /** A limit that does not depend on the current within a range: an energy limiting class. */
  record Limit(Figure energy, double fromA, double toA) implements EnergyBound {
    @Override
    public double[] corners() {
      return new double[] {fromA, toA};
    }

    @Override
    public double greatest(double from, double to) {
      boolean covered = Comparator.atMost(fromA, from) && Comparator.atMost(to, toA);
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
   * @param rated whether that rating is stated; without it the pair may be declared for any current
   */
  record Pair(Limit limit, boolean rated) implements EnergyBound {
    @Override
    public double[] corners() {
      return limit.corners();
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
  record FusePoint(Figure current, double timeS, double capacityA) implements EnergyBound {
    @Override
    public double[] corners() {
      return new double[] {current.value(), capacityA};
    }

    @Override
    public double greatest(double from, double to) {
      boolean covered =
          Comparator.atMost(current.value(), from) && Comparator.atMost(to, capacityA);
      return covered ? current.value() * current.value() * timeS : NEVER;
    }

    @Override
    public double least(double from, double to) {
      return 0;
    }

    @Override
    public Figure explain(double from, double to, Figure end, Dossier d) {
      return d.working()
          .step(
              POINT, d.working().look(current.as("Ip")), Figure.derived("tp", timeS, Unit.SECOND));
    }
  }

  /** No gG fuse lets through less than its least pre-arcing energy. */
  record PreArcing(Value least) implements EnergyBound {
    @Override
    public double[] corners() {
      return new double[0];
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
  record ResidualTrip(Figure time, double breaksA) implements EnergyBound {
    /** Whether it breaks this current. */
    boolean breaks(double ampere) {
      return Comparator.atMost(ampere, breaksA);
    }

    @Override
    public double[] corners() {
      return new double[] {breaksA};
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
