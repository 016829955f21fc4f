package circuitverdict.service.wire;

/**
 * The check digit of a global trade item number: from the right the digits count 3 and 1 in turn,
 * and all of them with the check digit give a multiple of ten (GS1 General Specifications, section
 * 7.9, from memory).
 */
final class TradeItemNumber {
  private TradeItemNumber() {}

  /** Whether the check digit of a number of decimal digits is right. */
  static boolean isRight(String digits) {
    int sum = 0;
    for (int i = 0; i < digits.length(); i++) {
      int fromRight = digits.length() - 1 - i;
      sum += (digits.charAt(i) - '0') * (fromRight % 2 == 0 ? 1 : 3);
    }
    return sum % 10 == 0;
  }
}
