package circuitverdict.check;

import circuitverdict.explain.Figure;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Shown;
import circuitverdict.standard.Value;

/**
 * One comparison of a check.
 *
 * @param subject JSON pointer of what it is about
 * @param actual the figure that decides
 * @param least lower end of an actual known as an interval, else null
 * @param greatest upper end of it, else null; infinite where nothing bounds it
 * @param comparator the relation demanded
 * @param limit what it is held against
 * @param printed the limit as the standard prints it, or null
 * @param verdict of this comparison alone
 */
public record Comparison(
    String subject,
    Figure actual,
    Figure least,
    Figure greatest,
    Comparator comparator,
    Figure limit,
    Value printed,
    Verdict verdict) {

  /** Margin in percent of the limit. */
  public double marginPercent() {
    return comparator.marginPercent(actual.value(), limit.value());
  }

  /** Its figures as texts; null where nothing bounds the one that decides. */
  public Shown shown() {
    return Double.isInfinite(actual.value())
        ? null
        : Shown.of(actual.value(), comparator, limit.value(), limit.unit());
  }

  /** The figure that is shown: where nothing bounds an interval above, its lower end. */
  Figure compared() {
    return Double.isInfinite(actual.value()) && least != null ? least : actual;
  }

  static Comparison of(
      String subject, Figure actual, Comparator comparator, Figure limit, Value printed) {
    boolean known = actual.known() && limit.known();
    Verdict verdict =
        !known
            ? Verdict.NOT_DETERMINED
            : comparator.holds(actual.value(), limit.value())
                ? Verdict.COMPLIES
                : Verdict.DOES_NOT_COMPLY;
    return new Comparison(subject, actual, null, null, comparator, limit, printed, verdict);
  }

  static Comparison ofInterval(String subject, Figure least, Figure greatest, Figure limit) {
    Verdict verdict = Verdict.NOT_DETERMINED;
    if (greatest.known() && limit.known() && Comparator.atMost(greatest.value(), limit.value())) {
      verdict = Verdict.COMPLIES;
    } else if (least.known() && limit.known() && !Comparator.atMost(least.value(), limit.value())) {
      verdict = Verdict.DOES_NOT_COMPLY;
    }
    Figure deciding = verdict == Verdict.DOES_NOT_COMPLY ? least : greatest;
    return new Comparison(
        subject, deciding, least, greatest, Comparator.AT_MOST, limit, null, verdict);
  }
}
