package circuitverdict.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one number formatter. An actual that must not exceed is rounded up and its limit down, so that
 * the display never hides a failure; where that would make a compliance look like a failure, decimals
 * are added until the display agrees with the verdict.
 *
 * @param actual text of the actual figure
 * @param limit text of its limit
 */
public record Shown(String actual, String limit) {

  /** Digits that binary arithmetic can be trusted with; the rest is noise and is cut first. */
  private static final MathContext TRUSTED = new MathContext(12, RoundingMode.HALF_EVEN);

  private static final MathContext READABLE = new MathContext(6, RoundingMode.HALF_EVEN);
  private static final int MOST_DECIMALS = 12;

  /** Texts of a comparison, consistent with whether it holds. */
  public static Shown of(double actual, Comparator comparator, double limit, Unit unit) {
    boolean holds = comparator.holds(actual, limit);
    RoundingMode up = comparator == Comparator.AT_MOST ? RoundingMode.CEILING : RoundingMode.FLOOR;
    RoundingMode down = comparator == Comparator.AT_MOST ? RoundingMode.FLOOR : RoundingMode.CEILING;
    for (int decimals = unit.decimals(); decimals <= MOST_DECIMALS; decimals++) {
      BigDecimal a = rounded(actual, decimals, up);
      BigDecimal l = rounded(limit, decimals, down);
      int order = a.compareTo(l);
      boolean shownHolds = comparator == Comparator.AT_MOST ? order <= 0 : order >= 0;
      if (shownHolds == holds) {
        return new Shown(text(a, unit), text(l, unit));
      }
    }
    String same = text(trusted(limit), unit);
    return new Shown(same, same);
  }

  /** A figure rounded down at its unit's usual decimals: for limits shown alone. */
  public static String down(double value, Unit unit) {
    return text(rounded(value, unit.decimals(), RoundingMode.FLOOR), unit);
  }

  /** A figure rounded up at its unit's usual decimals: for actual values shown alone. */
  public static String up(double value, Unit unit) {
    return text(rounded(value, unit.decimals(), RoundingMode.CEILING), unit);
  }

  /** A figure to six significant digits, nearest: for substitutions, which decide nothing. */
  public static String plain(double value) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "∞" : "−∞";
    }
    if (value == Math.rint(value) && Math.abs(value) < 1e6) {
      return Long.toString((long) value);
    }
    BigDecimal rounded = new BigDecimal(value).round(READABLE).stripTrailingZeros();
    return rounded.toPlainString();
  }

  private static BigDecimal rounded(double value, int decimals, RoundingMode mode) {
    return trusted(value).setScale(decimals, mode);
  }

  private static BigDecimal trusted(double value) {
    return new BigDecimal(value).round(TRUSTED);
  }

  private static String text(BigDecimal value, Unit unit) {
    if (unit.keepsZeros() || value.signum() == 0) {
      return value.toPlainString();
    }
    return value.stripTrailingZeros().toPlainString();
  }
}
