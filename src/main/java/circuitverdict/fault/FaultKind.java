package circuitverdict.fault;

import circuitverdict.explain.Formula;
import circuitverdict.quantity.Unit;

/** The kinds of fault that are followed from the source on, each with the formulas of its path. */
enum FaultKind {
  /** Between three lines, by the impedance of one; that between two follows from it. */
  LINE(""),
  /** Between line and protective conductor. */
  EARTH("s"),
  /** Between line and neutral. */
  NEUTRAL("n"),
  /** The greatest of any kind where it is stated as such: bounded by the line conductor alone. */
  ANY("a");

  /**
   * How impedances add up and what their modulus is. Where the angle of what is before is not
   * known, the least modulus of the sum is that of two at right angles, the greatest the sum of
   * both.
   *
   * @param resistance of the whole path, Ω
   * @param reactance of the whole path, Ω
   * @param modulus of the path, all angles known, Ω
   * @param bounded its bound where one is not, Ω
   */
  record Path(Formula resistance, Formula reactance, Formula modulus, Formula bounded) {
    private static Path of(String kind, boolean cold) {
      String side = kind + (cold ? "20" : "θ");
      String r = "R" + side;
      String x = "X" + side;
      String known = "√(" + r + "² + " + x + "²)";
      String bound = cold ? "√(Zo² + " + r + "² + " + x + "²)" : "Zo + " + known;
      return new Path(
          Formula.of(r, Unit.OHM, "Ro + Rc"),
          Formula.of(x, Unit.OHM, "Xo + Xc"),
          Formula.of("Z" + side, Unit.OHM, known),
          Formula.of("Z" + side, Unit.OHM, bound));
    }
  }

  private final Path cold;
  private final Path hot;

  FaultKind(String suffix) {
    this.cold = Path.of(suffix, true);
    this.hot = Path.of(suffix, false);
  }

  /** Its formulas for greatest currents (cold) or least ones. */
  Path path(boolean forGreatest) {
    return forGreatest ? cold : hot;
  }
}
