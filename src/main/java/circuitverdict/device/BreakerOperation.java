package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Value;

/**
 * Ia of breakers to IEC 60898-1 and RCBOs to IEC 61009-1: the upper limit of the magnetic band (5, 10,
 * 20 In), at which test e promises less than 0.1 s. The same current serves longer times: for type D
 * at 5 s too, a lower one being unread.
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
    Value upper = d.edition().table("magnetic-bands").at("upper", letter);
    if (upper == null) {
      d.missing(NoteCode.DEVICE_NOT_JUDGED, new Pointer(place, "characteristic"));
      return OperatingCurrent.unknown();
    }
    if (timeS < d.edition().constant("breaker-tests", "instantaneous").number()) {
      d.missing(NoteCode.MAKER_TIME_NEEDED, new Pointer("", "device"));
      return OperatingCurrent.unknown();
    }
    Figure current = d.working().step(IA, Figure.of("m", upper), rated);
    return new OperatingCurrent(
        current, d.edition().table("41.3").at("printed", letter, rated.value()), false);
  }
}
