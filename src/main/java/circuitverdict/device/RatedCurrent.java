package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;

/** The rated current In of a device, or for an adjustable one its setting Ir (433.1.1). */
public final class RatedCurrent {
  private RatedCurrent() {}

  /**
   * In or Ir in amperes; missing where neither is stated. For a design Ir may be taken as In,
   * listed.
   */
  public static Figure of(ProtectiveDevice device, Dossier d) {
    String place = device.data().place();
    Figure rated =
        d.need(
            "In", device.data().ratedCurrentA(), Unit.AMPERE, new Pointer(place, "ratedCurrentA"));
    if (device.data().standard() == null) {
      // Without its standard nobody knows whether In or a setting counts.
      d.missing(new Pointer(place, "standard"));
      return Figure.unknown("In", Unit.AMPERE);
    }
    if (!(device instanceof AdjustableBreaker breaker)) {
      return rated;
    }
    Pointer at = new Pointer(place + "/settings", "longTimeA");
    if (breaker.settings().longTimeA() != null) {
      return d.given("In", breaker.settings().longTimeA(), Unit.AMPERE, at);
    }
    if (!d.allows(Allowance.TABLE_DEFAULTS)) {
      d.missing(at);
      return Figure.unknown("In", Unit.AMPERE);
    }
    d.assume(NoteCode.ASSUMED_SETTING, at, rated);
    return rated;
  }
}
