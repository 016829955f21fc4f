package circuitverdict.device;

import static circuitverdict.device.Devices.breaker;
import static circuitverdict.device.Devices.design;
import static circuitverdict.device.Devices.point;
import static circuitverdict.device.LetThroughBreakerTest.ampere;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import org.junit.jupiter.api.Test;

/**
 * A residual function counts with its own time up to IΔm; back-up counts above the device's Icn.
 */
class LetThroughResidualTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final Breaker B16 = breaker("B", 16.0, 6000.0, 3);

  private static Figure seconds(double value) {
    return Figure.derived("tr", value, Unit.SECOND);
  }

  private static LetThrough.Energy residual(Breaker breaker, double from, double to) {
    // 0.04 s at 5 IΔn, IΔm 500 A: engineering basis, section 2.
    return LetThrough.of(breaker, design())
        .withResidual(seconds(0.04), ampere(500))
        .over(ampere(from), ampere(to));
  }

  private static void is(double least, double greatest, LetThrough.Energy energy) {
    assertEquals(least, energy.least().value(), least * 1e-9);
    assertEquals(
        greatest, energy.greatest().value(), Double.isInfinite(greatest) ? 0 : greatest * 1e-9);
  }

  @Test
  void belowTheMagneticLimitTheResidualTimeGoverns() {
    is(0, 60 * 60 * 0.04, residual(B16, 60, 60));
    // Where the breaker alone promises nothing, and its own least no longer condemns.
    is(0, 20 * 20 * 0.04, residual(B16, 20, 20));
    is(0, 45 * 45 * 0.04, residual(B16, 40, 45));
  }

  @Test
  void itCountsUpToTheCurrentItBreaksAndNoFurther() {
    is(0, 500 * 500 * 0.04, residual(B16, 500, 500));
    double rounded = Math.nextUp(500.0);
    is(0, 500 * 500 * 0.04, residual(B16, rounded, rounded));
    is(0, 501 * 501 * 0.1, residual(B16, 501, 501));
    is(0, 35000, residual(B16, 100, 6000));
  }

  @Test
  void theBetterOfTheTwoTripsCounts() {
    // The breaker's maker shows less than the residual function's time would let through.
    Breaker quick = breaker("B", 16.0, 6000.0, 3, point(100, 300), point(500, 600));
    is(0, 600, residual(quick, 500, 500));
    // And more: then the residual function bounds it.
    Breaker slow = breaker("B", 16.0, 6000.0, 3, point(100, 30000), point(500, 30000));
    is(0, 10000, residual(slow, 500, 500));
    is(0, 10000, residual(slow, Math.nextUp(500.0), Math.nextUp(500.0)));
    is(30000, 30000, LetThrough.of(slow, design()).over(ampere(500), ampere(500)));
  }

  @Test
  void aboveWhatItBreaksTheLeastCountsAgain() {
    Breaker made = breaker("B", 16.0, 6000.0, 3, point(100, 30000), point(4000, 30000));
    is(30000, 30000, residual(made, 600, 4000));
    is(30000, 30000, residual(made, 400, 4000));
  }

  /** At IΔm itself the residual function still breaks: a point there condemns nothing. */
  @Test
  void aPointOfTheMakersAtWhatItBreaksCondemnsNothing() {
    Breaker made = breaker("B", 16.0, 6000.0, 3, point(500, 30000));
    is(0, 10000, residual(made, 500, 500));
    is(0, 35000, residual(made, 500, 600));
    Breaker above = breaker("B", 16.0, 6000.0, 3, point(501, 30000));
    is(30000, 35000, residual(above, 400, 600));
  }

  @Test
  void anUnknownTimeOrCapacityChangesNothing() {
    LetThrough noTime =
        LetThrough.of(B16, design()).withResidual(Figure.unknown("tr", Unit.SECOND), ampere(500));
    is(0, 216_000, noTime.over(ampere(60), ampere(60)));
    LetThrough noCapacity =
        LetThrough.of(B16, design())
            .withResidual(seconds(0.04), Figure.unknown("IΔm", Unit.AMPERE));
    is(0, 216_000, noCapacity.over(ampere(60), ampere(60)));
    is(1600, 5_760_000, noCapacity.over(ampere(40), ampere(40)));
  }

  @Test
  void theWorkingShowsTheResidualTime() {
    Dossier d = design();
    LetThrough.of(B16, d).withResidual(seconds(0.04), ampere(500)).over(ampere(60), ampere(60));
    assertEquals("60²·0.04", d.working().steps().get(0).substitution());
  }

  @Test
  void aDeclaredLetThroughOfThePairCountsAboveTheDevicesOwnCapacity() {
    LetThrough pair = LetThrough.of(B16, design()).withBackUp(50_000.0, ampere(10_000), true);
    is(0, 50_000, pair.over(ampere(7000), ampere(10000)));
    is(0, 35_000, pair.over(ampere(3000), ampere(6000)));
    is(0, 50_000, pair.over(ampere(3000), ampere(10000)));
    LetThrough alone = LetThrough.of(B16, design()).withBackUp(null, ampere(10_000), true);
    is(0, NEVER, alone.over(ampere(7000), ampere(10000)));
  }

  /** The device's own promise holds up to its Icn, equality included: the pair counts above it. */
  @Test
  void atItsOwnCapacityTheDevicesPromiseCountsNotThePairs() {
    LetThrough pair = LetThrough.of(B16, design()).withBackUp(20_000.0, ampere(10_000), true);
    for (double at : new double[] {6000 * (1 - 1e-9), 6000, Math.nextUp(6000.0)}) {
      is(0, 35_000, pair.over(ampere(at), ampere(at)));
      is(0, 35_000, pair.over(ampere(5000), ampere(at)));
    }
    double above = 6000 * (1 + 1e-9);
    is(0, 20_000, pair.over(ampere(above), ampere(above)));
    // A range that begins at Icn holds a current at which the device's own promise counts.
    is(0, 35_000, pair.over(ampere(6000), ampere(above)));
    is(0, 20_000, pair.over(ampere(7000), ampere(Math.nextUp(10_000.0))));
    is(0, NEVER, pair.over(ampere(7000), ampere(10_000 * (1 + 1e-9))));
  }

  @Test
  void aSmallDeclaredLetThroughDoesNotImproveWhatLiesBelow() {
    LetThrough pair = LetThrough.of(B16, design()).withBackUp(20_000.0, ampere(10_000), true);
    is(0, 35_000, pair.over(ampere(5000), ampere(5000)));
    is(0, 20_000, pair.over(ampere(7000), ampere(7000)));
    is(0, 35_000, pair.over(ampere(5000), ampere(7000)));
  }
}
