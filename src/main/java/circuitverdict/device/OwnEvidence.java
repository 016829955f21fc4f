package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/** What a device's own standard and its maker say of the energy it lets through (434.5.2). */
final class OwnEvidence {
  private OwnEvidence() {}

  static EnergyBound[] of(ProtectiveDevice device, Dossier d) {
    List<EnergyBound> bounds = new ArrayList<>(4);
    if (!device.data().letThrough().isEmpty()) {
      bounds.add(new MakersPoints(device));
    }
    Figure capacity = capacity(device, d);
    TripBand band = band(device, d);
    if (band != null && capacity.value() > 0) {
      double adiabatic = d.edition().constant(Constant.ADIABATIC_LONGEST).number();
      bounds.add(new EnergyBounds.Promised(device, band, capacity, adiabatic));
    }
    if (device instanceof Breaker breaker && capacity.value() > 0) {
      EnergyBound limit = limit(breaker, capacity.value(), capacity, d);
      if (limit != null) {
        bounds.add(limit);
      }
    }
    if (device instanceof Fuse fuse) {
      addFuse(fuse, capacity, bounds, d);
    }
    return bounds.toArray(EnergyBound[]::new);
  }

  /** The class by the row of a capacity, up to that and no further than the device's own. */
  static EnergyBound limit(Breaker breaker, double rowA, Figure capacity, Dossier d) {
    Value limit = LetThrough.classLimit(breaker, rowA, d);
    TripBand band = band(breaker, d);
    if (limit == null || band == null) {
      return null;
    }
    double magnetic = band.steps().get(band.steps().size() - 1).fromA();
    Figure upTo =
        rowA < capacity.value() ? new Figure("I", rowA, Unit.AMPERE, limit.citation()) : capacity;
    return new EnergyBounds.Limit(Figure.of(EnergyBounds.SYMBOL, limit), magnetic, upTo);
  }

  private static void addFuse(Fuse fuse, Figure capacity, List<EnergyBound> bounds, Dossier d) {
    Double rated = fuse.data().ratedCurrentA();
    if (rated == null || !FuseTimes.boundedAbovePoints(fuse, d)) {
      return;
    }
    for (FuseTimes.Point point : FuseTimes.points(fuse, rated, d.edition())) {
      bounds.add(new EnergyBounds.FusePoint(point.current(), point.timeS(), capacity));
    }
    Value least = FuseTimes.leastPreArcing(fuse, rated, d.edition());
    if (least != null) {
      bounds.add(new EnergyBounds.PreArcing(least));
    }
  }

  /** The device's own breaking capacity; none where it is not known. */
  static Figure capacity(ProtectiveDevice device, Dossier d) {
    Figure capacity = BreakingCapacity.stated(device, d);
    return capacity.known() ? capacity : Figure.derived("I", 0, Unit.AMPERE);
  }

  private static TripBand band(ProtectiveDevice device, Dossier d) {
    return d.once(Topic.TRIP_BAND, device, inner -> TripBand.of(device, inner.edition()));
  }
}
