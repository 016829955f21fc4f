package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A closed set of members. A type that contains itself is one shape that refers to itself. */
final class ObjectShape implements Shape {

  // Written once by close(), before the contract is handed to anyone.
  private Map<String, Shape> members;
  private List<String> names;
  private List<String> required;

  /** Completes the shape; members may refer to shapes that are still open. */
  void close(Map<String, Shape> memberShapes, List<String> requiredNames) {
    names = List.copyOf(memberShapes.keySet());
    members = new HashMap<>(memberShapes);
    required = List.copyOf(requiredNames);
  }

  /** Names of the members, in the contract's order. */
  List<String> names() {
    return names;
  }

  /** Names of those that must be there. */
  List<String> required() {
    return required;
  }

  /** What the member must be, or null where there is no such member. */
  Shape member(String name) {
    return members.get(name);
  }

  @Override
  public String wanted() {
    return "an object";
  }

  @Override
  public void check(JsonNode value, Place place, Faults faults) {
    if (!value.isObject()) {
      reportType(value, place, faults);
      return;
    }
    for (Map.Entry<String, JsonNode> entry : value.properties()) {
      if (faults.isFull()) {
        return;
      }
      String name = entry.getKey();
      Shape shape = members.get(name);
      if (shape == null) {
        reportUnknown(name, place, faults);
      } else {
        shape.check(entry.getValue(), place.member(name), faults);
      }
    }
    for (int i = 0; i < required.size(); i++) {
      if (!value.has(required.get(i))) {
        String detail = place.subject() + " lacks the member `" + required.get(i) + "`.";
        faults.add(FaultCode.MISSING_MEMBER, place, detail);
      }
    }
  }

  private void reportUnknown(String name, Place place, Faults faults) {
    String nearest = Text.nearest(name, names);
    String hint = nearest == null ? "." : "; did you mean `" + nearest + "`?";
    String detail = place.subject() + " has no member `" + Text.fit(name, 60) + "`" + hint;
    faults.add(FaultCode.UNKNOWN_MEMBER, place.member(name), detail, names);
  }
}
