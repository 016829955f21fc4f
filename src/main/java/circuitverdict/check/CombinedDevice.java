package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.conductor.Coordination;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.GeneralPurpose;
import circuitverdict.device.LetThrough;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Comparator;

/**
 * One device against overload and fault current (435.1): where its overload protection holds, its
 * own breaking capacity is not exceeded and it limits the current, the live conductors are deemed
 * protected against fault current. Not for conductors in parallel, nor for a class that states no
 * limit.
 */
final class CombinedDevice {
  private CombinedDevice() {}

  static boolean covers(Circuit circuit, LiveConductors live, Figure greatest, Dossier d) {
    ProtectiveDevice device = circuit.device();
    if (live == null) {
      return false;
    }
    for (Cable cable : Wiring.cables(circuit)) {
      if (cable.parallel() > 1) {
        return false;
      }
    }
    Figure capacity = BreakingCapacity.stated(device, d);
    return limitsCurrent(device, capacity, d)
        && Comparator.AT_MOST.holds(greatest.value(), capacity.value())
        && Coordination.protects(circuit, live, d);
  }

  private static boolean limitsCurrent(ProtectiveDevice device, Figure capacity, Dossier d) {
    if (Boolean.TRUE.equals(device.data().currentLimiting())) {
      boolean classed =
          !(device instanceof Breaker breaker)
              || breaker.energyClass() != null && breaker.energyClass() > 1;
      return classed && !"BS 3036".equals(device.data().standard());
    }
    if (device instanceof Fuse fuse) {
      return switch (device.data().standard()) {
        case "BS 88-2", "BS 88-3", "BS 1361" -> Boolean.TRUE.equals(GeneralPurpose.of(fuse, d));
        default -> false;
      };
    }
    return device instanceof Breaker breaker
        && capacity.known()
        && LetThrough.classLimit(breaker, capacity.value(), d) != null;
  }
}
