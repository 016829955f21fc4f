package circuitverdict.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Comparisons are exact but for the rounding of binary arithmetic: equality complies, figures
 * within 1e-12 of each other, relative, are equal (engineering basis, principle 4).
 */
class ComparatorTest {

  @Test
  void binaryRoundingOfNinetyTimesSevenTenthsDoesNotDecide() {
    // 90 · 0.7 is 63 in decimals and 62.99999999999999 in binary arithmetic.
    double product = 90 * 0.7;
    assertTrue(product < 63, "the example must really miss 63");
    assertTrue(Comparator.AT_LEAST.holds(product, 63));
    assertTrue(Comparator.AT_MOST.holds(63, product));
    assertTrue(Comparator.AT_MOST.holds(product, 63));
    assertTrue(Comparator.AT_LEAST.holds(63, product));
  }

  @ParameterizedTest
  @CsvSource({"1.3656", "0.03", "6000", "35000", "1e-9"})
  void figuresOneTrillionthApartAreEqualAndTenAreNot(double limit) {
    double within = limit * (1 + 0.9e-12);
    double beyond = limit * (1 + 1e-11);
    assertTrue(Comparator.AT_MOST.holds(within, limit));
    assertTrue(Comparator.AT_LEAST.holds(limit, within));
    assertFalse(Comparator.AT_MOST.holds(beyond, limit));
    assertFalse(Comparator.AT_LEAST.holds(limit, beyond));
  }

  @Test
  void equalityComplies() {
    assertTrue(Comparator.AT_MOST.holds(32, 32));
    assertTrue(Comparator.AT_LEAST.holds(32, 32));
    assertTrue(Comparator.AT_MOST.holds(0, 0));
  }

  @Test
  void eachRelationLooksTheRightWay() {
    assertTrue(Comparator.AT_MOST.holds(1, 2));
    assertFalse(Comparator.AT_MOST.holds(2, 1));
    assertTrue(Comparator.AT_LEAST.holds(2, 1));
    assertFalse(Comparator.AT_LEAST.holds(1, 2));
  }

  @Test
  void whatIsNotKnownNeverHolds() {
    for (Comparator comparator : Comparator.values()) {
      assertFalse(comparator.holds(Double.NaN, 1));
      assertFalse(comparator.holds(1, Double.NaN));
      assertFalse(comparator.holds(Double.NaN, Double.NaN));
    }
  }

  @Test
  void nothingBoundedIsNeverAtMostSomething() {
    assertFalse(Comparator.AT_MOST.holds(Double.POSITIVE_INFINITY, 13225));
    assertTrue(Comparator.AT_MOST.holds(13225, Double.POSITIVE_INFINITY));
  }

  @Test
  void theMarginIsInPercentOfTheLimitAndNegativeForAFailure() {
    // 0.8 of a limit of 2 leaves 60 %; 2.5 exceeds it by 25 %: arithmetic.
    assertEquals(60, Comparator.AT_MOST.marginPercent(0.8, 2), 1e-12);
    assertEquals(-25, Comparator.AT_MOST.marginPercent(2.5, 2), 1e-12);
    assertEquals(25, Comparator.AT_LEAST.marginPercent(2.5, 2), 1e-12);
    assertEquals(-60, Comparator.AT_LEAST.marginPercent(0.8, 2), 1e-12);
    assertEquals(0, Comparator.AT_MOST.marginPercent(2, 2));
  }

  @Test
  void theMarginToALimitOfNothingIsTakenFromTheActual() {
    assertEquals(-100, Comparator.AT_MOST.marginPercent(5, 0), 1e-12);
    assertEquals(0, Comparator.AT_MOST.marginPercent(0, 0));
  }
}
