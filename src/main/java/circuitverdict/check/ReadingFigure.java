package circuitverdict.check;

import circuitverdict.circuit.Reading;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;

/** A reading's figure, widened by its instrument's uncertainty to the side that is worse. */
final class ReadingFigure {
  private ReadingFigure() {}

  /** The greatest that it may be. Missing where it is not stated. */
  static Figure greatest(
      String symbol, Reading reading, Double stated, String member, Unit unit, Dossier d) {
    return widened(symbol, "(1 + u/100)", reading, stated, member, unit, d);
  }

  /** The least that it may be. */
  static Figure least(
      String symbol, Reading reading, Double stated, String member, Unit unit, Dossier d) {
    return widened(symbol, "(1 − u/100)", reading, stated, member, unit, d);
  }

  private static Figure widened(
      String symbol,
      String factor,
      Reading reading,
      Double stated,
      String member,
      Unit unit,
      Dossier d) {
    Pointer where = new Pointer(reading.place(), member);
    if (stated != null && stated == 0) {
      // Nothing has no resistance, and nothing opens or flows without any time or current.
      d.missing(NoteCode.READING_IMPLAUSIBLE, where);
      return Figure.unknown(symbol, unit);
    }
    Figure read = d.need(symbol, stated, unit, where);
    Pointer at = new Pointer(reading.place(), "instrumentUncertaintyPercent");
    if (reading.uncertaintyPercent() == null) {
      d.assume(NoteCode.ASSUMED_EXACT_READING, at);
      return d.working().look(read);
    }
    Figure uncertainty = d.given("u", reading.uncertaintyPercent(), Unit.PERCENT, at);
    Formula formula = Formula.of(symbol, unit, "m·" + factor);
    return d.working().step(formula, read.as("m"), uncertainty);
  }
}
