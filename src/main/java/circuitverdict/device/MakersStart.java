package circuitverdict.device;

import circuitverdict.circuit.DeviceData.OperatingTime;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.List;

/**
 * The maker's time–current curve beside what the standard promises. Both of its edges fall as the
 * current rises: the earliest time of the next point above holds below it, the latest of the point
 * before holds above it. The better of maker and standard counts.
 */
record MakersStart(StartBand promised, List<OperatingTime> points) implements StartBand {

  /** The band with its maker's points, where there are any. */
  static StartBand over(StartBand promised, ProtectiveDevice device) {
    List<OperatingTime> points = device.data().operatingTimes();
    return promised == null || points.isEmpty() ? promised : new MakersStart(promised, points);
  }

  @Override
  public Figure earliest(Figure current) {
    Figure own = StartBand.never("te");
    for (OperatingTime point : points) {
      boolean above = Comparator.atMost(current.value(), point.currentA());
      if (above && point.earliestS() != null) {
        own = Figure.greater(figure("te", point.earliestS(), point, "earliestS"), own);
      }
    }
    return Figure.greater(own, promised.earliest(current));
  }

  @Override
  public Figure latest(Figure current) {
    Figure own = StartBand.never("tl");
    for (OperatingTime point : points) {
      boolean below = Comparator.atMost(point.currentA(), current.value());
      if (below && point.latestS() != null) {
        own = Figure.lesser(figure("tl", point.latestS(), point, "latestS"), own);
      }
    }
    return Figure.lesser(own, promised.latest(current));
  }

  private static Figure figure(String symbol, double time, OperatingTime point, String member) {
    return new Figure(symbol, time, Unit.SECOND, new Pointer(point.place(), member));
  }

  @Override
  public Figure drawn(Figure current, Dossier d) {
    // A typical curve says nothing where the maker's own is known.
    return StartBand.never("td");
  }

  @Override
  public Figure instantaneous(Dossier d) {
    return promised.instantaneous(d);
  }

  @Override
  public Figure pulse(Dossier d) {
    return promised.pulse(d);
  }

  @Override
  public boolean byPeak() {
    return promised.byPeak();
  }

  @Override
  public Figure carried() {
    return promised.carried();
  }
}
