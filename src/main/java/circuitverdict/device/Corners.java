package circuitverdict.device;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Figure.Derived;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.Arrays;

/** The currents within a range at which what bounds say of an energy changes. */
final class Corners {
  private static final double[] NONE = {};

  private final double from;
  private final double to;
  private double[] inside = NONE;
  private int count;

  private Corners(double from, double to) {
    this.from = from;
    this.to = to;
  }

  /** The range divided at every corner strictly inside it. */
  static double[] within(double from, double to, EnergyBound[] bounds) {
    Corners corners = new Corners(from, to);
    for (EnergyBound bound : bounds) {
      bound.addTo(corners);
    }
    return corners.divided();
  }

  /** Adds a current, if it lies strictly inside the range. */
  void add(double corner) {
    if (Comparator.atMost(corner, from) || Comparator.atMost(to, corner)) {
      return;
    }
    if (count == inside.length) {
      inside = Arrays.copyOf(inside, count + 8);
    }
    inside[count++] = corner;
  }

  private double[] divided() {
    double[] all = new double[count + 2];
    all[0] = from;
    System.arraycopy(inside, 0, all, 1, count);
    all[count + 1] = to;
    Arrays.sort(all);
    return all;
  }

  /** The corner at a current as its bound knows it; how it is found only where that is told. */
  static Figure figure(double ampere, EnergyBound[] bounds, Dossier d) {
    if (d.working().records()) {
      for (EnergyBound bound : bounds) {
        Figure corner = bound.corner(ampere, d);
        if (corner != null) {
          return corner;
        }
      }
    }
    return Figure.derived("I", ampere, Unit.AMPERE);
  }

  /** This figure, if it is the corner and says where it comes from; else null. */
  static Figure sourced(Figure figure, double ampere) {
    return figure.value() == ampere && figure.source() != Derived.STEP ? figure : null;
  }
}
