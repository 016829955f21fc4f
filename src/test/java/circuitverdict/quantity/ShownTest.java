package circuitverdict.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The display never hides a failure and never contradicts the verdict (principle 4). */
class ShownTest {

  @Test
  void aLimitIsShownRoundedDown() {
    // 0.728 is shown as 0.72: engineering basis, principle 4.
    assertEquals("0.72", Shown.down(0.728, Unit.OHM));
    assertEquals("0.72", Shown.of(0.5, Comparator.AT_MOST, 0.728, Unit.OHM).limit());
  }

  @Test
  void anActualIsShownRoundedUp() {
    assertEquals("0.73", Shown.up(0.721, Unit.OHM));
    assertEquals("0.51", Shown.of(0.501, Comparator.AT_MOST, 0.728, Unit.OHM).actual());
  }

  @Test
  void whereTheActualMustReachALimitTheSidesChange() {
    Shown shown = Shown.of(20.06, Comparator.AT_LEAST, 19.94, Unit.AMPERE);
    assertEquals(new Shown("20", "20"), shown);
    assertEquals("20.1", Shown.of(25, Comparator.AT_LEAST, 20.01, Unit.AMPERE).limit());
  }

  @Test
  void aFailureByLessThanTheLastDigitIsStillSeen() {
    Shown shown = Shown.of(0.7281, Comparator.AT_MOST, 0.728, Unit.OHM);
    assertEquals(new Shown("0.73", "0.72"), shown);
  }

  @Test
  void decimalsAreAddedWhereAComplianceWouldLookLikeAFailure() {
    // Up to two decimals 0.727 against 0.728 would read 0.73 against 0.72.
    assertEquals(new Shown("0.727", "0.728"), Shown.of(0.727, Comparator.AT_MOST, 0.728, Unit.OHM));
  }

  @Test
  void ninetyTimesSevenTenthsReadsAsSixtyThree() {
    assertEquals(new Shown("63", "63"), Shown.of(90 * 0.7, Comparator.AT_LEAST, 63, Unit.AMPERE));
  }

  @Test
  void figuresThatOnlyEndlessDecimalsCouldTellApartAreShownAlike() {
    Shown shown = Shown.of(0.01 / 3, Comparator.AT_MOST, 0.01 / 3, Unit.AMPERE);
    assertEquals(shown.limit(), shown.actual());
    assertEquals(0.01 / 3, Double.parseDouble(shown.limit()), 1e-14);
  }

  @ParameterizedTest
  @EnumSource(Comparator.class)
  void theDisplayNeverContradictsTheVerdict(Comparator comparator) {
    long seed = 20260415;
    Random random = new Random(seed);
    for (int i = 0; i < 20_000; i++) {
      Unit unit = Unit.values()[random.nextInt(Unit.values().length)];
      double limit = Math.pow(10, random.nextDouble() * 7 - 2);
      // Near the limit on both sides, as near as 1e-10 of it.
      double distance = Math.pow(10, -random.nextDouble() * 10);
      double actual = limit * (1 + (random.nextBoolean() ? distance : -distance));
      Shown shown = Shown.of(actual, comparator, limit, unit);
      BigDecimal a = new BigDecimal(shown.actual());
      BigDecimal l = new BigDecimal(shown.limit());
      boolean reads = comparator == Comparator.AT_MOST ? a.compareTo(l) <= 0 : a.compareTo(l) >= 0;
      assertEquals(
          comparator.holds(actual, limit),
          reads,
          "seed " + seed + ": " + actual + " and " + limit + " shown as " + shown);
    }
  }

  @Test
  void theShownActualNeverFlattersTheActual() {
    Random random = new Random(7);
    for (int i = 0; i < 5_000; i++) {
      double actual = random.nextDouble() * 1000;
      double limit = random.nextDouble() * 1000;
      Shown shown = Shown.of(actual, Comparator.AT_MOST, limit, Unit.OHM);
      assertTrue(Double.parseDouble(shown.actual()) >= actual * (1 - 1e-11));
      assertTrue(Double.parseDouble(shown.limit()) <= limit * (1 + 1e-11));
    }
  }

  @Test
  void aPlainFigureHasSixSignificantDigits() {
    assertEquals("1.36563", Shown.plain(218.5 / 160));
    assertEquals("0.00123457", Shown.plain(0.00123456789));
    assertEquals("13225", Shown.plain(13225));
    assertEquals("0.3", Shown.plain(0.3));
    assertEquals("-4", Shown.plain(-4));
    assertEquals("1234567", Shown.plain(1234567));
    assertEquals("1234570", Shown.plain(1234567.5));
    assertEquals("∞", Shown.plain(Double.POSITIVE_INFINITY));
    assertEquals("−∞", Shown.plain(Double.NEGATIVE_INFINITY));
  }
}
