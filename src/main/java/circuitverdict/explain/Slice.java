package circuitverdict.explain;

import circuitverdict.explain.Figure.Derived;
import java.util.ArrayList;
import java.util.List;

/**
 * The steps on which some figures rest; what was worked out besides is left out of an explanation.
 */
public final class Slice {
  private final List<Step> steps;
  private final boolean[] kept;

  private Slice(List<Step> steps) {
    this.steps = steps;
    this.kept = new boolean[steps.size()];
  }

  /** Of these steps those on which the figures rest, in their order. */
  public static List<Step> of(List<Step> steps, List<Figure> figures) {
    Slice slice = new Slice(steps);
    for (Figure figure : figures) {
      slice.keep(figure, steps.size());
    }
    List<Step> needed = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if (slice.kept[i]) {
        needed.add(steps.get(i));
      }
    }
    return needed;
  }

  /** Keeps the last step before an index that yields a figure, and what that one rests on. */
  private void keep(Figure figure, int before) {
    int found = -1;
    for (int i = before - 1; i >= 0; i--) {
      Figure result = steps.get(i).result();
      if (same(result.value(), figure.value()) && result.unit() == figure.unit()) {
        boolean named = result.symbol().equals(figure.symbol());
        if (named) {
          found = i;
          break;
        }
        // A figure may be called otherwise where it is used than where it was found.
        if (found < 0 && figure.source() == Derived.STEP) {
          found = i;
        }
      }
    }
    if (found < 0 || kept[found]) {
      return;
    }
    kept[found] = true;
    for (Figure operand : steps.get(found).operands()) {
      if (operand != steps.get(found).result()) {
        keep(operand, found);
      }
    }
  }

  private static boolean same(double a, double b) {
    return Double.doubleToLongBits(a) == Double.doubleToLongBits(b);
  }
}
