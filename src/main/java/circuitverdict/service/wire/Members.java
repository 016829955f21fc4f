package circuitverdict.service.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;

/**
 * Members of an object that the contract has already found valid; null where one is absent.
 *
 * @param node the object, empty where it is absent
 * @param place JSON pointer of the object
 */
record Members(JsonNode node, String place) {
  private static final int MOST_TERMS = 1_024;
  private static final Map<String, String> TERMS = new ConcurrentHashMap<>();
  private static final ClassValue<Map<String, Enum<?>>> CONSTANTS =
      new ClassValue<>() {
        @Override
        protected Map<String, Enum<?>> computeValue(Class<?> type) {
          Map<String, Enum<?>> constants = new HashMap<>();
          for (Object constant : type.getEnumConstants()) {
            Enum<?> one = (Enum<?>) constant;
            String word = one.name().replace('_', '-');
            constants.put(word, one);
            constants.put(word.toLowerCase(Locale.ROOT), one);
          }
          return constants;
        }
      };

  static Members of(JsonNode node, String place) {
    return new Members(node == null ? MissingNode.getInstance() : node, place);
  }

  boolean has(String name) {
    return node.has(name);
  }

  Members object(String name) {
    return of(node.get(name), place + "/" + name);
  }

  Double number(String name) {
    JsonNode value = node.get(name);
    return value == null ? null : value.doubleValue();
  }

  Integer integer(String name) {
    JsonNode value = node.get(name);
    return value == null ? null : value.intValue();
  }

  Boolean bool(String name) {
    JsonNode value = node.get(name);
    return value == null ? null : value.booleanValue();
  }

  String text(String name) {
    JsonNode value = node.get(name);
    return value == null ? null : value.textValue();
  }

  /** A listed word as the constant that is named like it. */
  <E extends Enum<E>> E word(String name, Class<E> type) {
    String text = text(name);
    return text == null ? null : constant(type, text);
  }

  static <E extends Enum<E>> E constant(Class<E> type, String word) {
    Enum<?> constant = CONSTANTS.get(type).get(word);
    if (constant == null) {
      throw new IllegalArgumentException(type.getSimpleName() + " has no " + word);
    }
    return type.cast(constant);
  }

  /** A word of the tables or the standards, as the one object that it always is. */
  String term(String name) {
    String text = text(name);
    if (text == null) {
      return null;
    }
    String known = TERMS.get(text);
    if (known == null && TERMS.size() < MOST_TERMS) {
      known = text.intern();
      TERMS.put(known, known);
    }
    return known == null ? text : known;
  }

  /** The items of an array, each with its own place; none where it is absent. */
  <T> List<T> list(String name, BiFunction<JsonNode, String, T> map) {
    JsonNode array = node.get(name);
    if (array == null) {
      return List.of();
    }
    List<T> items = new ArrayList<>(array.size());
    for (int i = 0; i < array.size(); i++) {
      items.add(map.apply(array.get(i), place + "/" + name + "/" + i));
    }
    return items;
  }
}
