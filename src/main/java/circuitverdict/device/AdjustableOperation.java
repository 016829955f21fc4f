package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Settings;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * Ia of breakers to IEC 60947-2: the setting plus its tolerance, if the whole time fits. A magnetic
 * limit stated as a multiple of In already contains the tolerance.
 */
final class AdjustableOperation {
  private static final Formula OF_SETTING =
      Formula.of(OperatingCurrent.SYMBOL, Unit.AMPERE, "(1 + δ)·Iset");
  private static final Formula OF_MULTIPLE =
      Formula.of(OperatingCurrent.SYMBOL, Unit.AMPERE, "m·In");

  private AdjustableOperation() {}

  static OperatingCurrent within(AdjustableBreaker breaker, double timeS, Dossier d) {
    double instantaneous = d.edition().constant(Constant.ADJUSTABLE_TESTS_INSTANTANEOUS).number();
    Figure current = Figure.unknown(OperatingCurrent.SYMBOL, Unit.AMPERE);
    if (instantaneous <= timeS) {
      current = instantaneous(breaker, d);
    }
    if (!current.known()) {
      boolean stated =
          breaker.multiples().upper() != null || breaker.settings().instantaneousA() != null;
      if (stated && instantaneous > timeS) {
        d.missing(NoteCode.MAKER_TIME_NEEDED, new Pointer("", "device"));
      } else if (!stated) {
        d.missing(new Pointer(breaker.data().place() + "/settings", "instantaneousA"));
      }
    }
    return new OperatingCurrent(current, null, false);
  }

  /**
   * Ia of the delayed release, where its whole time fits; unknown otherwise. The standard promises
   * no greatest clearing time of it: its own test window added to the delay is guidance.
   */
  static Figure delayed(AdjustableBreaker breaker, double timeS, Dossier d) {
    Settings settings = breaker.settings();
    double window = d.edition().constant(Constant.ADJUSTABLE_TESTS_INSTANTANEOUS).number();
    boolean fits =
        settings.shortTimeA() != null
            && settings.shortTimeDelayS() != null
            && Comparator.atMost(settings.shortTimeDelayS() + window, timeS);
    return fits
        ? ofSetting(breaker, settings.shortTimeA(), "shortTimeA", d)
        : Figure.unknown(OperatingCurrent.SYMBOL, Unit.AMPERE);
  }

  private static Figure instantaneous(AdjustableBreaker breaker, Dossier d) {
    Figure set = Figure.unknown(OperatingCurrent.SYMBOL, Unit.AMPERE);
    if (breaker.settings().instantaneousA() != null) {
      set = ofSetting(breaker, breaker.settings().instantaneousA(), "instantaneousA", d);
    }
    if (breaker.multiples().upper() == null) {
      return set;
    }
    String place = breaker.data().place();
    Figure multiple =
        d.given(
            "m",
            breaker.multiples().upper(),
            Unit.ONE,
            new Pointer(place + "/magneticMultiples", "upper"));
    Figure rated =
        d.need(
            "In", breaker.data().ratedCurrentA(), Unit.AMPERE, new Pointer(place, "ratedCurrentA"));
    Figure fixed = d.working().step(OF_MULTIPLE, multiple, rated);
    // Stated both ways, the less sensitive one counts.
    return set.known() ? Figure.greater(set, fixed) : fixed;
  }

  private static Figure ofSetting(
      AdjustableBreaker breaker, double setting, String member, Dossier d) {
    // A setting below what the device carries cannot be meant so, or Ir is less than assumed.
    double carried = RatedCurrent.of(breaker, d.trial()).value();
    if (carried > setting) {
      d.missing(new Pointer(breaker.data().place() + "/settings", "longTimeA"));
      return Figure.unknown(OperatingCurrent.SYMBOL, Unit.AMPERE);
    }
    Figure tolerance = d.constant("δ", Constant.ADJUSTABLE_TESTS_MAGNETIC_TOLERANCE);
    Figure set =
        d.given(
            "Iset",
            setting,
            Unit.AMPERE,
            new Pointer(breaker.data().place() + "/settings", member));
    return d.working().step(OF_SETTING, tolerance, set);
  }
}
