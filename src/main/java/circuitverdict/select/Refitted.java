package circuitverdict.select;

import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;

/** Devices of the same kind with other data. */
final class Refitted {
  private Refitted() {}

  static ProtectiveDevice with(ProtectiveDevice old, DeviceData data) {
    if (old instanceof Breaker breaker) {
      return new Breaker(
          data, breaker.characteristic(), breaker.energyClass(), breaker.multiples());
    }
    if (old instanceof Fuse fuse) {
      return new Fuse(data, fuse.utilizationCategory());
    }
    if (old instanceof AdjustableBreaker breaker) {
      return new AdjustableBreaker(
          data, breaker.characteristic(), breaker.multiples(), breaker.settings());
    }
    return old;
  }
}
