package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Ia of breakers to IEC 60898-1 and RCBOs to IEC 61009-1: the upper limit of the magnetic band (5,
 * 10, 20 In), at which test e promises less than 0.1 s. The same current serves longer times: for
 * type D at 5 s too, a lower one being unread. Other letters count with the limit stated for the
 * device.
 */
final class BreakerOperation {
  private static final Formula IA = Formula.of(OperatingCurrent.SYMBOL, Unit.AMPERE, "m·In");

  private BreakerOperation() {}

  static OperatingCurrent within(Breaker breaker, double timeS, Dossier d) {
    String place = breaker.data().place();
    Figure rated = RatedCurrent.of(breaker, d);
    String letter = d.need(breaker.characteristic(), new Pointer(place, "characteristic"));
    if (letter == null || !rated.known()) {
      return OperatingCurrent.unknown();
    }
    MagneticBand band = MagneticBand.of(breaker, d.edition());
    if (band == null) {
      d.missing(new Pointer(place + "/magneticMultiples", "upper"));
      return OperatingCurrent.unknown();
    }
    if (timeS < d.edition().constant(Constant.BREAKER_TESTS_INSTANTANEOUS).number()) {
      d.missing(NoteCode.MAKER_TIME_NEEDED, new Pointer("", "device"));
      return OperatingCurrent.unknown();
    }
    Value tabled = d.edition().table(TableName.MAGNETIC_BANDS).at("upper", letter);
    boolean standard = tabled != null && tabled.number() == band.upper();
    Figure multiple =
        standard
            ? Figure.of("m", tabled)
            : d.given(
                "m", band.upper(), Unit.ONE, new Pointer(place + "/magneticMultiples", "upper"));
    Figure current = d.working().step(IA, multiple, rated);
    Value printed = d.edition().table(TableName.TABLE_41_3).at("printed", letter, rated.value());
    return new OperatingCurrent(current, standard ? printed : null, false);
  }
}
