package circuitverdict.property;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Request bodies, read and varied member by member. */
final class Bodies {
  private static final ObjectMapper JSON = new ObjectMapper();

  private Bodies() {}

  /** An empty body. */
  static ObjectNode empty() {
    return JSON.createObjectNode();
  }

  /** Pointers of every member and every item, outer ones first. */
  static List<String> pointers(ObjectNode body) {
    List<String> pointers = new ArrayList<>();
    collect(body, "", pointers);
    return pointers;
  }

  private static void collect(JsonNode node, String at, List<String> pointers) {
    if (node instanceof ObjectNode object) {
      object
          .properties()
          .forEach(
              member -> {
                pointers.add(at + "/" + member.getKey());
                collect(member.getValue(), at + "/" + member.getKey(), pointers);
              });
    }
    // A point of the maker's data, a number of his or a limit that he declares is whole or not
    // there: the contract demands all its members.
    boolean whole =
        at.endsWith("/letThrough")
            || at.endsWith("/derating")
            || at.endsWith("/countLimits")
            || at.endsWith("/selectivity");
    if (node instanceof ArrayNode array && !whole) {
      for (int i = 0; i < array.size(); i++) {
        pointers.add(at + "/" + i);
        collect(array.get(i), at + "/" + i, pointers);
      }
    }
  }

  /** A copy without one member or item. */
  static ObjectNode without(ObjectNode body, String pointer) {
    ObjectNode copy = body.deepCopy();
    JsonPointer at = JsonPointer.compile(pointer);
    JsonNode parent = copy.at(at.head());
    if (parent instanceof ObjectNode object) {
      object.remove(at.last().getMatchingProperty());
    }
    if (parent instanceof ArrayNode array) {
      array.remove(at.last().getMatchingIndex());
    }
    return copy;
  }

  /** A copy with one member set, in an object that exists or is made. */
  static ObjectNode with(ObjectNode body, String pointer, Object value) {
    ObjectNode copy = body.deepCopy();
    set(copy, pointer, value);
    return copy;
  }

  /** Sets one member, in an object that exists or is made. */
  static void set(ObjectNode body, String pointer, Object value) {
    JsonPointer at = JsonPointer.compile(pointer);
    JsonNode parent = body;
    for (JsonPointer step = at; !step.tail().matches(); step = step.tail()) {
      JsonNode next =
          parent instanceof ArrayNode array
              ? array.get(step.getMatchingIndex())
              : parent.get(step.getMatchingProperty());
      parent = next == null ? ((ObjectNode) parent).putObject(step.getMatchingProperty()) : next;
    }
    ((ObjectNode) parent).set(at.last().getMatchingProperty(), JSON.valueToTree(value));
  }

  /** The number at a pointer, or null. */
  static Double number(ObjectNode body, String pointer) {
    JsonNode node = body.at(pointer);
    return node.isNumber() ? Double.valueOf(node.doubleValue()) : null;
  }

  /** The word at a pointer, or null. */
  static String text(ObjectNode body, String pointer) {
    return body.at(pointer).textValue();
  }
}
