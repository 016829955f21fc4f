package circuitverdict.explain;

import java.util.ArrayList;
import java.util.List;

/**
 * Evaluates formulas and keeps what it did. The silent twin evaluates the same formulas and keeps
 * nothing, so that verdicts never depend on whether they are explained.
 */
public final class Working {
  private static final Working SILENT = new Working(null);

  private final List<Step> steps;

  private Working(List<Step> steps) {
    this.steps = steps;
  }

  /** A working that keeps its steps. */
  public static Working recording() {
    return new Working(new ArrayList<>());
  }

  /** The twin that keeps nothing. */
  public static Working silent() {
    return SILENT;
  }

  /**
   * Evaluates a formula of figures, given in the order of its operands.
   *
   * @return the result; NaN where an operand is not known
   */
  public Figure step(Formula formula, Figure... operands) {
    double value = formula.evaluate(operands);
    Figure result = Figure.derived(formula.symbol(), value, formula.unit());
    if (steps != null && !Double.isNaN(value) && !Double.isInfinite(value)) {
      add(Step.of(result, formula, List.of(operands)));
    }
    return result;
  }

  /** Keeps a figure that was looked up or given as a step of its own. */
  public Figure look(Figure figure) {
    if (steps != null && figure.known() && !Double.isInfinite(figure.value())) {
      add(Step.of(figure, null, List.of(figure)));
    }
    return figure;
  }

  /** What two comparisons need is worked out twice and told once. */
  private void add(Step step) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).same(step)) {
        return;
      }
    }
    steps.add(step);
  }

  /** Another working that keeps as much as this one. */
  Working fresh() {
    return steps == null ? this : recording();
  }

  /** Takes over the steps of another working. */
  void adopt(Working other) {
    if (steps != null && other != this && steps.isEmpty()) {
      steps.addAll(other.steps);
    } else if (steps != null && other != this) {
      for (int i = 0; i < other.steps.size(); i++) {
        add(other.steps.get(i));
      }
    }
  }

  /** Whether steps are kept. */
  public boolean records() {
    return steps != null;
  }

  /** A choice among the steps so far. */
  public Slice slice() {
    return new Slice(steps == null ? List.of() : steps);
  }

  /** The steps so far; empty for the silent twin. */
  public List<Step> steps() {
    return steps == null ? List.of() : List.copyOf(steps);
  }
}
