package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A number within bounds. A whole number may be written with a fraction of zero, as in JSON Schema.
 *
 * @param integer whether only whole numbers are taken
 * @param minimum the least taken, or null
 * @param maximum the greatest taken, or null
 */
record NumberShape(boolean integer, Bound minimum, Bound maximum) implements Shape {

  /**
   * One end of the range.
   *
   * @param value the end
   * @param exclusive whether the end itself lies outside
   * @param shown the end as the contract states it, without exponent
   */
  record Bound(double value, boolean exclusive, String shown) {}

  @Override
  public String wanted() {
    return integer ? "a whole number" : "a number";
  }

  @Override
  public void check(JsonNode value, Place place, Faults faults) {
    if (!value.isNumber()) {
      reportType(value, place, faults);
      return;
    }
    double number = value.doubleValue();
    if (integer && number != Math.rint(number)) {
      String detail = place.subject() + " must be a whole number.";
      faults.add(FaultCode.NOT_AN_INTEGER, place, detail);
    }
    if (minimum != null && isBelow(number)) {
      String relation = minimum.exclusive ? " must be above " : " must be at least ";
      faults.add(FaultCode.BELOW_MINIMUM, place, place.subject() + relation + minimum.shown + ".");
    }
    if (maximum != null ? isAbove(number) : number == Double.POSITIVE_INFINITY) {
      String relation =
          maximum != null && maximum.exclusive ? " must be below " : " must be at most ";
      String bound = maximum == null ? "1.797e308" : maximum.shown;
      faults.add(FaultCode.ABOVE_MAXIMUM, place, place.subject() + relation + bound + ".");
    }
  }

  private boolean isBelow(double number) {
    return minimum.exclusive ? number <= minimum.value : number < minimum.value;
  }

  private boolean isAbove(double number) {
    return maximum.exclusive ? number >= maximum.value : number > maximum.value;
  }
}
