package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * A breaker before which a fuse lies, in the zone of its thermal release, by guidance (536.4.1):
 * its drawn slow edge against the fuse's gates, straight between them on logarithmic axes. Between
 * two gates the drawn edge is convex and the other straight, so the ends of each stretch decide.
 *
 * @param opens drawn operating time of the breaker where the two come closest, s
 * @param holds time for which the fuse holds there, s
 */
public record DrawnOrder(Figure opens, Figure holds) {

  /** Where the two come closest; null where a time of one of them is not known. */
  public static DrawnOrder closest(Breaker breaker, Promises opening, Promises holding, Dossier d) {
    double end = opening.atOnce().current().value();
    boolean known = opening.operated().known() && holding.carried().known() && end > 0;
    if (!known || holding.holds().isEmpty() || opening.opens().isEmpty()) {
      return null;
    }
    DrawnCurve curve = DrawnCurve.of(breaker, d.edition());
    double longest = opening.opens().get(0).timeS();
    DrawnOrder closest = null;
    for (Promise gate : holding.holds()) {
      double current = Math.min(Math.max(gate.current().value(), opening.operated().value()), end);
      Figure holds = holdingAt(current, longest, holding);
      double drawn = Math.min(curve.timeS(current), longest);
      if (holds == null) {
        return null;
      }
      if (closest == null || drawn / holds.value() > closest.ratio()) {
        Figure opens =
            new Figure(
                "td",
                drawn,
                Unit.SECOND,
                d.edition().constant(Constant.BREAKER_TESTS_DRAWN_ASYMPTOTE).citation());
        closest = new DrawnOrder(opens, holds);
      }
    }
    return closest;
  }

  private double ratio() {
    return opens.value() / holds.value();
  }

  /** How long the fuse holds at a current: straight between two gates; null beyond the last. */
  private static Figure holdingAt(double current, double longest, Promises holding) {
    Promise before = null;
    for (Promise gate : holding.holds()) {
      double ampere = gate.current().value();
      double second = Math.min(gate.timeS(), longest);
      if (current <= ampere) {
        double time =
            before == null
                ? second
                : between(
                    before.current().value(), Math.min(before.timeS(), longest), gate, current);
        return new Figure("th", time, Unit.SECOND, gate.current().source());
      }
      before = gate;
    }
    return null;
  }

  private static double between(double fromA, double fromS, Promise to, double current) {
    double share = StrictMath.log(current / fromA) / StrictMath.log(to.current().value() / fromA);
    return fromS * StrictMath.pow(to.timeS() / fromS, share);
  }
}
