package circuitverdict.explain;

import java.util.List;

/**
 * One step of the working.
 *
 * @param result the figure it yields
 * @param formula the formula as shown; the symbol itself for a figure that was looked up or given
 * @param operands the figures that were put in
 */
public record Step(Figure result, Formula formula, List<Figure> operands) {

  /** The formula as shown. */
  public String formulaText() {
    return formula == null ? result.symbol() : formula.text();
  }

  /** The formula with the figures put in. */
  public String substitution() {
    return formula == null
        ? circuitverdict.quantity.Shown.plain(result.value())
        : formula.substituted(operands);
  }
}
