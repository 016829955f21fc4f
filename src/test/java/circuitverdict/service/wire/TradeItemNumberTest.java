package circuitverdict.service.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TradeItemNumberTest {
  /** GS1's worked example of a check digit (6291041500213), and its lengths, from memory. */
  @ParameterizedTest
  @ValueSource(strings = {"6291041500213", "06291041500213", "96385074", "036000291452"})
  void rightOnes(String digits) {
    assertTrue(TradeItemNumber.isRight(digits));
  }

  /** Every single wrong digit is seen. */
  @Test
  void anyOtherDigitIsWrong() {
    String right = "6291041500213";
    int seen = 0;
    for (int i = 0; i < right.length(); i++) {
      for (char digit = '0'; digit <= '9'; digit++) {
        if (digit != right.charAt(i)) {
          assertFalse(
              TradeItemNumber.isRight(right.substring(0, i) + digit + right.substring(i + 1)));
          seen++;
        }
      }
    }
    assertEquals(9 * right.length(), seen);
  }
}
