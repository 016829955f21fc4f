package circuitverdict.device;

import circuitverdict.circuit.DeviceData.LetThroughPoint;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.List;

/** The maker's points, log–log between them, silent outside them: settles both ways. */
record MakersPoints(ProtectiveDevice device) implements EnergyBound {
  private List<LetThroughPoint> points() {
    return device.data().letThrough();
  }

  @Override
  public void addTo(Corners corners) {
    for (LetThroughPoint point : points()) {
      corners.add(point.prospectiveCurrentA());
    }
  }

  @Override
  public Figure corner(double ampere, Dossier d) {
    Pointer at = new Pointer(device.data().place(), "letThrough");
    for (LetThroughPoint point : points()) {
      if (point.prospectiveCurrentA() == ampere) {
        return new Figure("I", ampere, Unit.AMPERE, at);
      }
    }
    return null;
  }

  @Override
  public boolean settles(double from, double to) {
    return Comparator.atMost(first(), from) && Comparator.atMost(to, last());
  }

  @Override
  public double greatest(double from, double to) {
    return settles(from, to) ? Math.max(at(from), at(to)) : Double.POSITIVE_INFINITY;
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

  /** Energy at a current that its range reaches, its ends where only rounding lies beyond them. */
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
    return Double.POSITIVE_INFINITY;
  }

  private static double between(LetThroughPoint a, LetThroughPoint b, double current) {
    double share =
        StrictMath.log(current / a.prospectiveCurrentA())
            / StrictMath.log(b.prospectiveCurrentA() / a.prospectiveCurrentA());
    return a.energyA2s() * StrictMath.pow(b.energyA2s() / a.energyA2s(), share);
  }

  @Override
  public Figure explain(double from, double to, Figure end, Dossier d) {
    Figure energy =
        new Figure(
            EnergyBounds.SYMBOL,
            greatest(from, to),
            Unit.AMPERE_SQUARED_SECOND,
            new Pointer(device.data().place(), "letThrough"));
    return d.working().look(energy);
  }
}
