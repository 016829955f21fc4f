package circuitverdict.device;

import static circuitverdict.device.Devices.breaker;
import static circuitverdict.device.Devices.design;
import static circuitverdict.device.Devices.point;
import static circuitverdict.device.LetThroughBreakerTest.ampere;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import org.junit.jupiter.api.Test;

/** The maker's let-through data settle both ways within their range and say nothing beyond it. */
class LetThroughMakerTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  /** Energy that doubles as the current quadruples: a straight line in log–log. */
  private static final Breaker MADE =
      breaker("B", 16.0, 6000.0, 3, point(1000, 8000), point(4000, 16000));

  private static LetThrough.Energy over(Breaker breaker, double from, double to) {
    return LetThrough.of(breaker, design()).over(ampere(from), ampere(to));
  }

  private static void is(double least, double greatest, LetThrough.Energy energy) {
    assertEquals(least, energy.least().value(), least * 1e-9);
    assertEquals(
        greatest, energy.greatest().value(), Double.isInfinite(greatest) ? 0 : greatest * 1e-9);
  }

  @Test
  void betweenPointsItIsInterpolatedLogLog() {
    // Half way in log current is half way in log energy: 8000·√2.
    is(8000 * Math.sqrt(2), 8000 * Math.sqrt(2), over(MADE, 2000, 2000));
    is(8000, 8000, over(MADE, 1000, 1000));
    is(16000, 16000, over(MADE, 4000, 4000));
  }

  @Test
  void overARangeItSettlesTheGreatestBothWays() {
    is(16000, 16000, over(MADE, 1000, 4000));
    LetThrough.Energy energy = over(MADE, 1500, 2000);
    is(8000 * Math.sqrt(2), 8000 * Math.sqrt(2), energy);
    assertEquals(2000, energy.decidingA());
  }

  @Test
  void aPeakBetweenTheEndsIsNotMissed() {
    Breaker peak =
        breaker("B", 16.0, 6000.0, 3, point(1000, 8000), point(2000, 20000), point(4000, 16000));
    LetThrough.Energy energy = over(peak, 1000, 4000);
    is(20000, 20000, energy);
    is(20000, 20000, over(peak, 2000, 3000));
  }

  @Test
  void beyondItsRangeItSaysNothing() {
    // Below and above the range the class limit is all there is.
    is(0, 35000, over(MADE, 4001, 4001));
    is(0, 35000, over(MADE, 999, 999));
    // Over a range that leaves it, the part inside is still certain to be reached.
    is(16000, 35000, over(MADE, 3000, 5000));
    is(16000, 35000, over(MADE, 500, 4000));
  }

  @Test
  void itsEndsAreReachedWhereOnlyBinaryRoundingLacks() {
    double first = Math.nextDown(1000.0);
    double last = Math.nextUp(4000.0);
    is(8000, 8000, over(MADE, first, first));
    is(16000, 16000, over(MADE, last, last));
    is(16000, 16000, over(MADE, first, last));
    assertEquals(16000, LetThrough.byMaker(MADE, ampere(last), design()).value());
  }

  @Test
  void itGoesBeforeTheClassEvenWhereItIsWorse() {
    Breaker worse = breaker("B", 16.0, 6000.0, 3, point(1000, 50000), point(4000, 50000));
    is(50000, 50000, over(worse, 2000, 2000));
  }

  @Test
  void itReachesAboveTheDevicesOwnCapacity() {
    Breaker strong = breaker("B", 16.0, 6000.0, 3, point(1000, 8000), point(10000, 40000));
    is(40000, 40000, over(strong, 7000, 10000));
    is(40000, NEVER, over(strong, 7000, 10001));
    Breaker unstated = breaker("B", 16.0, null, null, point(1000, 8000), point(10000, 40000));
    is(40000, 40000, over(unstated, 7000, 10000));
  }

  /**
   * Both are the maker's evidence of what passes: above the device's own capacity, as far as the
   * pair is declared, the lesser counts (engineering basis, section 5). What the device lets
   * through alone is then no longer certain.
   */
  @Test
  void aPairThatLimitsMoreIsTakenBeforeItAboveTheDevicesOwnCapacity() {
    Breaker strong = breaker("B", 16.0, 6000.0, 3, point(6000, 20000), point(10000, 40000));
    is(0, 30000, paired(strong, 30000, 10_000, true).over(ampere(9000), ampere(10_000)));
    is(20000, 30000, paired(strong, 30000, 10_000, true).over(ampere(6000), ampere(10_000)));
    is(20000, 20000, paired(strong, 10000, 10_000, true).over(ampere(6000), ampere(10_000)));
    is(20000, 20000, paired(strong, 10000, 10_000, true).over(ampere(6000), ampere(6000)));
    // Beyond its rating it says nothing, and where it limits less nothing more.
    is(40000, 40000, paired(strong, 30000, 9000, true).over(ampere(8000), ampere(10_000)));
    is(40000, 40000, paired(strong, 50000, 10_000, true).over(ampere(8000), ampere(10_000)));
  }

  /**
   * A pair whose rating is not stated passes nothing, but may be declared as far as it is asked.
   */
  @Test
  void aPairOfUnstatedRatingOnlyLeavesItUncertain() {
    Breaker strong = breaker("B", 16.0, 6000.0, 3, point(6000, 20000), point(10000, 40000));
    is(0, 40000, paired(strong, 10000, 0, false).over(ampere(9000), ampere(10_000)));
    is(20000, 40000, paired(strong, 10000, 0, false).over(ampere(6000), ampere(10_000)));
    is(40000, 40000, paired(strong, 50000, 0, false).over(ampere(9000), ampere(10_000)));
  }

  private static LetThrough paired(Breaker breaker, double limited, double upTo, boolean rated) {
    return LetThrough.of(breaker, design()).withBackUp(limited, ampere(upTo), rated);
  }

  @Test
  void aSinglePointSpeaksForItsOwnCurrentOnly() {
    Breaker one = breaker("B", 16.0, 6000.0, 3, point(3000, 12000));
    is(12000, 12000, over(one, 3000, 3000));
    is(0, 35000, over(one, 3001, 3001));
    is(0, 35000, over(one, 2999, 2999));
  }

  /** A fault at the point's very current is one of the range: its energy is certainly reached. */
  @Test
  void aPointThatTheRangeTouchesSettlesItThere() {
    Breaker worse = breaker("B", 16.0, 6000.0, 3, point(3000, 50000));
    is(50000, 50000, over(worse, 100, 6000));
    is(50000, 50000, over(worse, 3000, 6000));
    is(50000, 50000, over(worse, 100, 3000));
    is(0, 35000, over(worse, 3001, 6000));
    is(0, 35000, over(worse, 100, 2999));
    Breaker better = breaker("B", 16.0, 6000.0, 3, point(3000, 12000));
    is(12000, 35000, over(better, 500, 6000));
    // The ends of a curve, touched from without.
    is(8000, 35000, over(MADE, 600, 1000));
    is(16000, 35000, over(MADE, 4000, 6000));
  }

  @Test
  void itsSourceIsTheMemberOfTheRequest() {
    Dossier d = design();
    Figure greatest = LetThrough.of(MADE, d).over(ampere(1000), ampere(4000)).greatest();
    assertEquals(new Pointer("/device", "letThrough"), greatest.source());
    assertEquals("16000", d.working().steps().get(0).substitution());
  }

  @Test
  void atACurrentItIsToldUnderItsOwnSymbolAndOnlyWhereShown() {
    Figure shown = LetThrough.byMaker(MADE, ampere(4000), design());
    assertEquals(16000, shown.value());
    assertEquals("I²t,Icn", shown.symbol());
    assertFalse(LetThrough.byMaker(MADE, ampere(6000), design()).known());
    assertFalse(LetThrough.byMaker(MADE, ampere(900), design()).known());
    Figure none = LetThrough.byMaker(breaker("B", 16.0), ampere(4000), design());
    assertFalse(none.known());
    assertEquals(Unit.AMPERE_SQUARED_SECOND, none.unit());
  }
}
