package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Value;

/**
 * Ia: the current that operates a device for certain within a time (411.4.4).
 *
 * @param current Ia, A; unknown where the device or its data are not
 * @param printed greatest loop impedance as the wiring rules print it, Ω; null where they do not
 * @param tableLimits whether the printed impedance, not the current, is the standard's own figure
 */
public record OperatingCurrent(Figure current, Value printed, boolean tableLimits) {
  static final String SYMBOL = "Ia";

  /** Ia within a time in seconds; what is missing for it is noted. */
  public static OperatingCurrent within(ProtectiveDevice device, double timeS, Dossier d) {
    if (device instanceof Breaker breaker) {
      return BreakerOperation.within(breaker, timeS, d);
    }
    if (device instanceof AdjustableBreaker breaker) {
      return AdjustableOperation.within(breaker, timeS, d);
    }
    if (device instanceof Fuse fuse) {
      return FuseOperation.within(fuse, timeS, d);
    }
    NotJudged.note(device, d);
    return unknown();
  }

  /**
   * Ia by guidance: of a delayed release whose delay and test window fit; unknown where there is
   * none.
   */
  public static OperatingCurrent byGuidance(ProtectiveDevice device, double timeS, Dossier d) {
    return device instanceof AdjustableBreaker breaker
        ? new OperatingCurrent(AdjustableOperation.delayed(breaker, timeS, d), null, false)
        : unknown();
  }

  static OperatingCurrent unknown() {
    return new OperatingCurrent(Figure.unknown(SYMBOL, Unit.AMPERE), null, false);
  }
}
