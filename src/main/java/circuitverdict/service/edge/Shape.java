package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;

/**
 * What the contract allows a value to be, compiled once from a schema. A shape adds everything
 * wrong with a value to the faults; it never throws and never changes the value.
 */
sealed interface Shape permits ObjectShape, ArrayShape, NumberShape, StringShape, BooleanShape {

  void check(JsonNode value, Place place, Faults faults);

  /** The JSON type in words, with its article: what is wanted. */
  String wanted();

  /** Reports a value of another type; null has a code of its own. */
  default void reportType(JsonNode value, Place place, Faults faults) {
    if (value.isNull()) {
      String what = place.subject() + " must not be null: leave it out, or give " + wanted() + ".";
      faults.add(FaultCode.NULL_NOT_ALLOWED, place, what);
      return;
    }
    String given;
    switch (value.getNodeType()) {
      case STRING:
        given = "text";
        break;
      case NUMBER:
        given = "a number";
        break;
      case ARRAY:
        given = "an array";
        break;
      case OBJECT:
        given = "an object";
        break;
      case BOOLEAN:
        given = "true or false";
        break;
      default:
        given = value.getNodeType().name().toLowerCase(Locale.ROOT);
        break;
    }
    String detail = place.subject() + " must be " + wanted() + ", not " + given + ".";
    faults.add(FaultCode.WRONG_TYPE, place, detail);
  }
}
