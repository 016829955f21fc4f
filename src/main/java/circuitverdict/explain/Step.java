package circuitverdict.explain;

import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Shown;
import java.util.List;

/**
 * One step of the working.
 *
 * @param result the figure it yields
 * @param formula the formula as shown; the symbol itself for a figure that was looked up or given
 * @param comparator the relation demanded, in the step that closes a working; else null
 * @param operands the figures that were put in
 */
public record Step(Figure result, Formula formula, Comparator comparator, List<Figure> operands) {

  static Step of(Figure result, Formula formula, List<Figure> operands) {
    return new Step(result, formula, null, operands);
  }

  /** The step that closes a working: the figure that decides, held against its limit. */
  public static Step comparing(Figure actual, Comparator comparator, Figure limit) {
    return new Step(actual, null, comparator, List.of(actual, limit));
  }

  /** Whether it says what another says; what differs most is looked at first. */
  boolean same(Step other) {
    return this == other
        || formula == other.formula
            && Double.compare(result.value(), other.result.value()) == 0
            && equals(other);
  }

  /** The formula as shown. */
  public String formulaText() {
    if (comparator != null) {
      return relation(result.symbol(), comparator, operands.get(1).symbol());
    }
    return formula == null ? result.symbol() : formula.text();
  }

  /** The formula with the figures put in. */
  public String substitution() {
    if (comparator != null) {
      Figure limit = operands.get(1);
      Shown shown = Shown.of(result.value(), comparator, limit.value(), result.unit());
      return relation(shown.actual(), comparator, shown.limit());
    }
    return formula == null ? Shown.plain(result.value()) : formula.substituted(operands);
  }

  /** The relation as it is demanded, not as it turned out. */
  public static String relation(String actual, Comparator comparator, String limit) {
    return actual + (comparator == Comparator.AT_MOST ? " ≤ " : " ≥ ") + limit;
  }
}
