package circuitverdict.device;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Figure.Derived;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.Arrays;
import java.util.List;

/** The currents at which what bounds say of an energy changes. */
final class Corners {
  private Corners() {}

  /** The range divided at every corner strictly inside it. */
  static double[] within(double from, double to, List<EnergyBound> bounds) {
    double[] all = new double[16];
    int count = 0;
    all[count++] = from;
    for (EnergyBound bound : bounds) {
      for (double corner : bound.corners()) {
        boolean inside = !Comparator.atMost(corner, from) && !Comparator.atMost(to, corner);
        if (inside) {
          if (count + 2 > all.length) {
            all = Arrays.copyOf(all, all.length * 2);
          }
          all[count++] = corner;
        }
      }
    }
    all[count++] = to;
    double[] corners = Arrays.copyOf(all, count);
    Arrays.sort(corners);
    return corners;
  }

  /** The corner at a current as its bound knows it; how it is found only where that is told. */
  static Figure figure(double ampere, List<EnergyBound> bounds, Dossier d) {
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
