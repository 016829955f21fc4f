package circuitverdict.explain;

import circuitverdict.quantity.Unit;
import circuitverdict.standard.Source;
import circuitverdict.standard.Value;

/**
 * A number with what it is called, its unit and where it comes from.
 *
 * @param symbol the trade's symbol
 * @param value the number; NaN where it is not known, infinite where nothing bounds it
 * @param unit its unit
 * @param source a citation, a member of the request, or {@link Derived}
 */
public record Figure(String symbol, double value, Unit unit, Source source) {

  /** A value of a table. */
  public static Figure of(String symbol, Value value) {
    return new Figure(symbol, value.number(), value.unit(), value.citation());
  }

  /** A figure that is not known. */
  public static Figure unknown(String symbol, Unit unit) {
    return new Figure(symbol, Double.NaN, unit, Derived.STEP);
  }

  /** A figure that follows from what was said before it. */
  public static Figure derived(String symbol, double value, Unit unit) {
    return new Figure(symbol, value, unit, Derived.STEP);
  }

  /** The same number under another symbol. */
  public Figure as(String other) {
    return new Figure(other, value, unit, source);
  }

  /** Whether the number is known. */
  public boolean known() {
    return !Double.isNaN(value);
  }

  /** Of two known figures the smaller; the known one where only one is. */
  public static Figure lesser(Figure a, Figure b) {
    return !b.known() || a.value <= b.value ? a : b;
  }

  /** Of two known figures the greater; the known one where only one is. */
  public static Figure greater(Figure a, Figure b) {
    return !b.known() || a.value >= b.value ? a : b;
  }

  /** The source of a figure computed in an earlier step. */
  public enum Derived implements Source {
    STEP
  }
}
