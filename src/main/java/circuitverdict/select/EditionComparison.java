package circuitverdict.select;

import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Comparison;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Step;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Citation;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The same circuit under two editions: which findings move, and which of the values that they rest
 * on differ. A clause that only has another number moves nothing.
 *
 * @param from the result under the first edition
 * @param to the result under the second
 * @param moved the findings that differ
 */
public record EditionComparison(Result from, Result to, List<Move> moved) {

  /**
   * A finding that differs.
   *
   * @param from under the first edition
   * @param to under the second
   * @param because values that differ; without one the rule itself
   */
  public record Move(Finding from, Finding to, List<Cause> because) {}

  /**
   * A value on which a finding rests, as each edition has it.
   *
   * @param symbol its symbol
   * @param unit its unit
   * @param from the first edition's value; null where it does not use it
   * @param to the second's; null where it does not use it
   */
  public record Cause(String symbol, Unit unit, Figure from, Figure to) {}

  /** Judges the circuit under both. */
  public static EditionComparison of(
      Circuit circuit, Edition first, Edition second, List<Check> checks) {
    Result from = CircuitCheck.run(checks, circuit, first, true);
    Result to = CircuitCheck.run(checks, circuit, second, true);
    return new EditionComparison(from, to, moved(from.findings(), to.findings()));
  }

  /** The findings that differ, of those that are of one check about one thing. */
  public static List<Move> moved(List<Finding> from, List<Finding> to) {
    List<Move> moved = new ArrayList<>();
    for (Finding before : from) {
      for (Finding after : to) {
        boolean same = before.check() == after.check() && before.subject().equals(after.subject());
        if (same && differ(before, after)) {
          moved.add(new Move(before, after, causes(before, after)));
        }
      }
    }
    return List.copyOf(moved);
  }

  private static boolean differ(Finding before, Finding after) {
    if (before.verdict() != after.verdict() || before.counted() != after.counted()) {
      return true;
    }
    Comparison one = before.governing();
    Comparison other = after.governing();
    if (one == null || other == null) {
      return one != other;
    }
    return !same(one.actual(), other.actual()) || !same(one.limit(), other.limit());
  }

  private static boolean same(Figure one, Figure other) {
    boolean equal =
        Double.compare(one.value(), other.value()) == 0
            || Comparator.atMost(one.value(), other.value())
                && Comparator.atMost(other.value(), one.value());
    return equal && one.unit() == other.unit() && one.symbol().equals(other.symbol());
  }

  private static List<Cause> causes(Finding before, Finding after) {
    Map<String, Figure> first = tabled(before);
    Map<String, Figure> second = tabled(after);
    List<Cause> causes = new ArrayList<>();
    for (Map.Entry<String, Figure> each : first.entrySet()) {
      Figure other = second.get(each.getKey());
      Figure figure = each.getValue();
      if (other == null || !same(figure, other)) {
        causes.add(new Cause(each.getKey(), figure.unit(), figure, other));
      }
    }
    for (Map.Entry<String, Figure> each : second.entrySet()) {
      if (!first.containsKey(each.getKey())) {
        causes.add(new Cause(each.getKey(), each.getValue().unit(), null, each.getValue()));
      }
    }
    return List.copyOf(causes);
  }

  /** The values of tables that a finding's working rests on, by symbol; the first of each. */
  private static Map<String, Figure> tabled(Finding finding) {
    Map<String, Figure> tabled = new LinkedHashMap<>();
    for (Step step : finding.working()) {
      for (Figure figure : step.operands()) {
        if (figure.source() instanceof Citation) {
          tabled.putIfAbsent(figure.symbol(), figure);
        }
      }
    }
    Comparison governing = finding.governing();
    if (governing != null && governing.limit().source() instanceof Citation) {
      tabled.putIfAbsent(governing.limit().symbol(), governing.limit());
    }
    return tabled;
  }
}
