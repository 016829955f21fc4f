package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

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
    if (device instanceof Breaker && beyond(rated, d)) {
      d.missing(NoteCode.NOT_IN_TABLES, new Pointer(place, "ratedCurrentA"));
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

  /** Whether the rated current is stated and one that the device's standard knows; else noted. */
  public static boolean withinStandard(ProtectiveDevice device, Dossier d) {
    Pointer at = new Pointer(device.data().place(), "ratedCurrentA");
    Figure rated = d.need("In", device.data().ratedCurrentA(), Unit.AMPERE, at);
    boolean beyond = device instanceof Breaker && beyond(rated, d);
    if (beyond) {
      d.missing(NoteCode.NOT_IN_TABLES, at);
    }
    return rated.known() && !beyond;
  }

  /** Whether it lies outside the standard of circuit-breakers for household use (clause 1). */
  private static boolean beyond(Figure rated, Dossier d) {
    double greatest = d.edition().constant(Constant.BREAKER_TESTS_GREATEST_RATED_CURRENT).number();
    return rated.known() && !Comparator.atMost(rated.value(), greatest);
  }
}
