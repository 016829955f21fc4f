package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.TableName;

/**
 * The slow edge of a breaker's thermal zone as it is drawn: a smooth curve through the tests of IEC
 * 60898-1, rising without bound towards the drawn asymptote. It is only drawn and promises nothing:
 * of a start it speaks by guidance.
 */
public final class DrawnCurve {
  private final double asymptoteA;
  private final double tripA;
  private final double tripS;
  private final double exponent;

  private DrawnCurve(
      double asymptoteA, double tripA, double tripS, double thermalA, double thermalS) {
    this.asymptoteA = asymptoteA;
    this.tripA = tripA;
    this.tripS = tripS;
    this.exponent =
        StrictMath.log(tripS / thermalS) / StrictMath.log(excess(thermalA) / excess(tripA));
  }

  /** The curve of a breaker whose rated current is stated. */
  public static DrawnCurve of(Breaker breaker, Edition edition) {
    double in = breaker.data().ratedCurrentA();
    return new DrawnCurve(
        edition.constant(Constant.BREAKER_TESTS_DRAWN_ASYMPTOTE).number() * in,
        edition.constant(Constant.BREAKER_TESTS_CONVENTIONAL_TRIPPING).number() * in,
        edition.table(TableName.BREAKER_TEST_TIMES).at("conventional", in).number(),
        edition.constant(Constant.BREAKER_TESTS_THERMAL_TEST).number() * in,
        edition.table(TableName.BREAKER_TEST_TIMES).at("thermal-latest", in).number());
  }

  /** Drawn operating time at a current in amperes, s; infinite up to the asymptote. */
  public double timeS(double currentA) {
    if (currentA <= asymptoteA) {
      return Double.POSITIVE_INFINITY;
    }
    return tripS * StrictMath.pow(excess(tripA) / excess(currentA), exponent);
  }

  private double excess(double currentA) {
    double ratio = currentA / asymptoteA;
    return ratio * ratio - 1;
  }
}
