package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;

/** The rated current In of a device, or for an adjustable one its setting Ir (433.1.1). */
public final class RatedCurrent {
  private RatedCurrent() {}

  /** In or Ir in amperes; missing where neither is stated. */
  public static Figure of(ProtectiveDevice device, Dossier d) {
    String place = device.data().place();
    if (device instanceof AdjustableBreaker breaker && breaker.settings().longTimeA() != null) {
      return d.given(
          "In", breaker.settings().longTimeA(), Unit.AMPERE, new Pointer(place + "/settings", "longTimeA"));
    }
    return d.need("In", device.data().ratedCurrentA(), Unit.AMPERE, new Pointer(place, "ratedCurrentA"));
  }
}
