package circuitverdict.quantity;

/** The relation a rule demands between an actual figure and its limit. */
public enum Comparator {
  AT_MOST("<="),
  AT_LEAST(">=");

  /** Two figures closer than this, relative, differ only by the rounding of binary arithmetic. */
  private static final double BINARY_ROUNDING = 1e-12;

  private final String symbol;

  Comparator(String symbol) {
    this.symbol = symbol;
  }

  /** The sign as the contract writes it. */
  public String symbol() {
    return symbol;
  }

  /** Whether the relation holds; false where either figure is not known. */
  public boolean holds(double actual, double limit) {
    return this == AT_MOST ? atMost(actual, limit) : atMost(limit, actual);
  }

  /** Margin to the limit in percent of the limit; negative where the relation does not hold. */
  public double marginPercent(double actual, double limit) {
    double room = this == AT_MOST ? limit - actual : actual - limit;
    if (room == 0 || room < 0 && holds(actual, limit)) {
      return 0;
    }
    return 100 * room / (limit == 0 ? Math.abs(actual) : Math.abs(limit));
  }

  /**
   * {@code a ≤ b}, figures within 1e-12 being equal; false for NaN, and for infinity against less.
   */
  public static boolean atMost(double a, double b) {
    if (a <= b) {
      return true;
    }
    double rounding = BINARY_ROUNDING * Math.max(Math.abs(a), Math.abs(b));
    return !Double.isInfinite(rounding) && a - b <= rounding;
  }
}
