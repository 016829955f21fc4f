package circuitverdict.explain;

import circuitverdict.explain.Figure.Derived;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * The steps on which some figures rest; what was worked out besides is left out of an explanation.
 */
public final class Slice {
  private final List<Step> steps;
  private final boolean[] kept;
  private int count;

  Slice(List<Step> steps) {
    this.steps = steps;
    this.kept = new boolean[steps.size()];
  }

  /** Keeps the steps on which a figure rests. */
  public void keep(Figure figure) {
    keep(figure, kept.length);
  }

  /** What is kept, in the order in which it was found. */
  public List<Step> steps() {
    return closedBy(null);
  }

  /** The same, and one more step at the end; none where it is null. */
  public List<Step> closedBy(Step last) {
    Step[] needed = new Step[count + (last == null ? 0 : 1)];
    int at = 0;
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        needed[at++] = steps.get(i);
      }
    }
    if (last != null) {
      needed[at] = last;
    }
    return Collections.unmodifiableList(Arrays.asList(needed));
  }

  /** Keeps the last step before an index that yields a figure, and what that one rests on. */
  private void keep(Figure figure, int before) {
    int found = -1;
    for (int i = before - 1; i >= 0; i--) {
      Figure result = steps.get(i).result();
      if (result == figure) {
        found = i;
        break;
      }
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
    count++;
    List<Figure> operands = steps.get(found).operands();
    for (int i = 0; i < operands.size(); i++) {
      Figure operand = operands.get(i);
      if (operand != steps.get(found).result()) {
        keep(operand, found);
      }
    }
  }

  private static boolean same(double a, double b) {
    return Double.doubleToLongBits(a) == Double.doubleToLongBits(b);
  }
}
