package circuitverdict.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one number formatter. An actual that must not exceed is rounded up and its limit down, so
 * that the display never hides a failure; where that would make a compliance look like a failure,
 * decimals are added until the display agrees with the verdict.
 *
 * @param actual text of the actual figure
 * @param limit text of its limit
 */
public record Shown(String actual, String limit) {

  /** Digits that binary arithmetic can be trusted with; the rest is noise and is cut first. */
  private static final MathContext TRUSTED = new MathContext(12, RoundingMode.HALF_EVEN);

  private static final MathContext READABLE = new MathContext(6, RoundingMode.HALF_EVEN);
  private static final int MOST_DECIMALS = 12;

  /** Scaled figures below this keep all their trusted digits in a double and a long. */
  private static final double USUAL = 1e11;

  /** What the twelve trusted digits leave of a figure, relative. */
  private static final double NOISE = 5e-12;

  /** Texts of a comparison, consistent with whether it holds. */
  public static Shown of(double actual, Comparator comparator, double limit, Unit unit) {
    boolean holds = comparator.holds(actual, limit);
    Shown usual = usual(actual, comparator, limit, unit, holds);
    if (usual != null) {
      return usual;
    }
    RoundingMode up = comparator == Comparator.AT_MOST ? RoundingMode.CEILING : RoundingMode.FLOOR;
    RoundingMode down =
        comparator == Comparator.AT_MOST ? RoundingMode.FLOOR : RoundingMode.CEILING;
    for (int decimals = unit.decimals(); decimals <= MOST_DECIMALS; decimals++) {
      BigDecimal a = rounded(actual, decimals, up);
      BigDecimal l = rounded(limit, decimals, down);
      int order = a.compareTo(l);
      boolean shownHolds = comparator == Comparator.AT_MOST ? order <= 0 : order >= 0;
      boolean vanishes = actual > 0 && a.signum() == 0 || limit > 0 && l.signum() == 0;
      if (shownHolds == holds && !vanishes) {
        return new Shown(text(a, unit), text(l, unit));
      }
    }
    if (!holds) {
      // Apart by less than twelve digits show: only all digits tell the failure.
      return new Shown(
          new BigDecimal(actual).toPlainString(), new BigDecimal(limit).toPlainString());
    }
    String same = text(trusted(limit), unit);
    return new Shown(same, same);
  }

  /**
   * The usual case without the weight of arbitrary precision: figures of usual size that the unit's
   * own decimals tell apart. Null where it is not the usual case.
   */
  private static Shown usual(
      double actual, Comparator comparator, double limit, Unit unit, boolean holds) {
    double scale = TENS[unit.decimals()];
    double a = Math.abs(actual) * scale;
    double l = Math.abs(limit) * scale;
    if (!(actual >= 0 && limit >= 0 && a < USUAL && l < USUAL)) {
      return null;
    }
    boolean atMost = comparator == Comparator.AT_MOST;
    long shownActual = atMost ? up(a) : down(a);
    long shownLimit = atMost ? down(l) : up(l);
    boolean shownHolds = atMost ? shownActual <= shownLimit : shownActual >= shownLimit;
    // What is there is not shown as nothing.
    boolean vanishes = actual > 0 && shownActual == 0 || limit > 0 && shownLimit == 0;
    return shownHolds == holds && !vanishes
        ? new Shown(text(shownActual, unit), text(shownLimit, unit))
        : null;
  }

  private static long up(double scaled) {
    long nearest = Math.round(scaled);
    return Math.abs(scaled - nearest) <= NOISE * scaled ? nearest : (long) Math.ceil(scaled);
  }

  private static long down(double scaled) {
    long nearest = Math.round(scaled);
    return Math.abs(scaled - nearest) <= NOISE * scaled ? nearest : (long) Math.floor(scaled);
  }

  private static String text(long scaled, Unit unit) {
    StringBuilder out = new StringBuilder(16);
    decimal(out, scaled, unit.decimals(), unit.keepsZeros() && scaled != 0);
    return out.toString();
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
    StringBuilder out = new StringBuilder(16);
    plain(out, value);
    return out.toString();
  }

  /** The same at the end of a text. */
  public static void plain(StringBuilder out, double value) {
    double size = Math.abs(value);
    if (Double.isInfinite(value)) {
      out.append(value > 0 ? "∞" : "−∞");
    } else if (value == Math.rint(value) && size < 1e15) {
      out.append((long) value);
    } else if (size < 1e-3 || size >= 1e6) {
      out.append(new BigDecimal(value).round(READABLE).stripTrailingZeros().toPlainString());
    } else {
      plainDecimal(out, value, size);
    }
  }

  /** The same for the usual sizes, without the weight of arbitrary precision. */
  private static void plainDecimal(StringBuilder out, double value, double size) {
    int decimals = 5;
    for (double bound = 10; size >= bound; bound *= 10) {
      decimals--;
    }
    for (double bound = 1; size < bound && decimals < 8; bound /= 10) {
      decimals++;
    }
    if (value < 0) {
      out.append('-');
    }
    decimal(out, Math.round(size * TENS[decimals]), decimals, false);
  }

  /** A whole number of the last decimal as text. */
  private static void decimal(StringBuilder out, long scaled, int decimals, boolean keepZeros) {
    long digits = scaled;
    int left = decimals;
    while (!keepZeros && left > 0 && digits % 10 == 0) {
      digits /= 10;
      left--;
    }
    if (left == 0) {
      out.append(digits);
      return;
    }
    long unit = (long) TENS[left];
    long fraction = digits % unit;
    out.append(digits / unit).append('.');
    for (long bound = unit / 10; bound > fraction && bound > 1; bound /= 10) {
      out.append('0');
    }
    out.append(fraction);
  }

  private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8};

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
