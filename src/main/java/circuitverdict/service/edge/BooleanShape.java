package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;

/** True or false. */
record BooleanShape() implements Shape {

  @Override
  public String wanted() {
    return "true or false";
  }

  @Override
  public void check(JsonNode value, Place place, Faults faults) {
    if (!value.isBoolean()) {
      reportType(value, place, faults);
    }
  }
}
