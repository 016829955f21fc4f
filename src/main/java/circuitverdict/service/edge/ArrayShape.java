package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.Set;

/**
 * A list of values of one shape.
 *
 * @param items what each item must be
 * @param minimumItems the least count taken
 * @param maximumItems the greatest count taken; items beyond it are not looked at
 * @param unique whether an item may stand only once
 */
record ArrayShape(Shape items, int minimumItems, int maximumItems, boolean unique)
    implements Shape {

  @Override
  public String wanted() {
    return "an array";
  }

  @Override
  public void check(JsonNode value, Place place, Faults faults) {
    if (!value.isArray()) {
      reportType(value, place, faults);
      return;
    }
    int count = value.size();
    if (count < minimumItems) {
      String detail = place.subject() + " must have at least " + minimumItems + " items.";
      faults.add(FaultCode.TOO_FEW_ITEMS, place, detail);
    }
    if (count > maximumItems) {
      String detail = place.subject() + " must have at most " + maximumItems + " items.";
      faults.add(FaultCode.TOO_MANY_ITEMS, place, detail);
    }
    Set<JsonNode> seen = unique ? new HashSet<>() : null;
    int checked = Math.min(count, maximumItems);
    for (int i = 0; i < checked && !faults.isFull(); i++) {
      JsonNode item = value.get(i);
      Place itemPlace = place.item(i);
      items.check(item, itemPlace, faults);
      if (seen != null && !seen.add(item)) {
        String detail = itemPlace.subject() + " stands there already.";
        faults.add(FaultCode.DUPLICATE_ITEM, itemPlace, detail);
      }
    }
  }
}
