package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Compiles schemas to shapes. It knows the keywords that the contract's style allows and refuses
 * any other: a rule that the contract states is never silently left unchecked.
 */
final class ShapeCompiler {

  private static final String SCHEMAS = "#/components/schemas/";

  /** Keywords that say nothing about what is valid. */
  private static final Set<String> ANNOTATIONS =
      Set.of(
          "title",
          "description",
          "default",
          "example",
          "examples",
          "format",
          "deprecated",
          "readOnly",
          "writeOnly",
          "externalDocs",
          "$comment");

  private static final Map<String, Set<String>> KEYWORDS =
      Map.of(
          "object", Set.of("type", "properties", "required", "additionalProperties"),
          "array", Set.of("type", "items", "minItems", "maxItems", "uniqueItems"),
          "string", Set.of("type", "minLength", "maxLength", "pattern", "enum"),
          "boolean", Set.of("type"),
          "number", NumberKeywords.ALL,
          "integer", NumberKeywords.ALL);

  private static final class NumberKeywords {
    static final Set<String> ALL =
        Set.of("type", "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum");
  }

  private final JsonNode schemas;
  private final Map<String, Shape> named = new LinkedHashMap<>();

  ShapeCompiler(JsonNode schemas) {
    this.schemas = schemas;
  }

  /** The shape of a schema of {@code components.schemas}. */
  Shape named(String name) {
    Shape known = named.get(name);
    if (known != null) {
      return known;
    }
    JsonNode schema = schemas.get(name);
    if (schema == null) {
      throw new IllegalStateException("The contract has no schema " + name);
    }
    return compile(schema, name, name);
  }

  /** The shape of a schema that stands at {@code where} in the contract. */
  Shape compile(JsonNode schema, String where) {
    return compile(schema, where, null);
  }

  private Shape compile(JsonNode schema, String where, String name) {
    JsonNode reference = schema.get("$ref");
    if (reference != null) {
      refuseOthers(schema, Set.of("$ref"), where);
      if (!reference.asText().startsWith(SCHEMAS)) {
        throw new IllegalStateException(where + " refers outside the contract's schemas");
      }
      return named(reference.asText().substring(SCHEMAS.length()));
    }
    String type = schema.path("type").asText();
    Set<String> keywords = KEYWORDS.get(type);
    if (keywords == null) {
      throw new IllegalStateException(where + " is of no known type: " + schema.path("type"));
    }
    refuseOthers(schema, keywords, where);
    if (type.equals("object")) {
      return object(schema, where, name);
    }
    Shape shape = plain(type, schema, where);
    if (name != null) {
      named.put(name, shape);
    }
    return shape;
  }

  private Shape plain(String type, JsonNode schema, String where) {
    switch (type) {
      case "array":
        return new ArrayShape(
            compile(schema.path("items"), where + "/items"),
            schema.path("minItems").asInt(0),
            schema.path("maxItems").asInt(Integer.MAX_VALUE),
            schema.path("uniqueItems").asBoolean(false));
      case "string":
        return string(schema);
      case "boolean":
        return new BooleanShape();
      default:
        return new NumberShape(
            type.equals("integer"),
            bound(schema, "minimum", "exclusiveMinimum"),
            bound(schema, "maximum", "exclusiveMaximum"));
    }
  }

  private ObjectShape object(JsonNode schema, String where, String name) {
    JsonNode additional = schema.path("additionalProperties");
    if (!additional.isBoolean() || additional.booleanValue()) {
      throw new IllegalStateException(where + " must be closed (additionalProperties: false)");
    }
    ObjectShape shape = new ObjectShape();
    if (name != null) {
      // Known before its members are: they may lead back to it.
      named.put(name, shape);
    }
    Map<String, Shape> members = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> member : schema.path("properties").properties()) {
      String memberWhere = where + "/" + member.getKey();
      members.put(member.getKey(), compile(member.getValue(), memberWhere));
    }
    List<String> required = texts(schema.path("required"));
    if (!members.keySet().containsAll(required)) {
      throw new IllegalStateException(where + " requires a member that it does not have");
    }
    shape.close(members, required);
    return shape;
  }

  private static StringShape string(JsonNode schema) {
    List<String> allowed = texts(schema.path("x-extensible-enum"));
    if (allowed.isEmpty()) {
      allowed = texts(schema.path("enum"));
    }
    Pattern pattern = null;
    if (schema.has("pattern")) {
      String source = schema.get("pattern").asText();
      // In the contract's regular expressions $ is the very end; in Java a line end may follow it.
      boolean anchored = source.endsWith("$") && !source.endsWith("\\$");
      pattern =
          Pattern.compile(anchored ? source.substring(0, source.length() - 1) + "\\z" : source);
    }
    return new StringShape(
        schema.path("minLength").asInt(0),
        schema.path("maxLength").asInt(Integer.MAX_VALUE),
        pattern,
        allowed);
  }

  private static NumberShape.Bound bound(JsonNode schema, String inclusive, String exclusive) {
    boolean isExclusive = schema.has(exclusive);
    JsonNode bound = schema.get(isExclusive ? exclusive : inclusive);
    if (bound == null) {
      return null;
    }
    BigDecimal value = new BigDecimal(bound.asText());
    String shown = value.stripTrailingZeros().toPlainString();
    return new NumberShape.Bound(value.doubleValue(), isExclusive, shown);
  }

  private static void refuseOthers(JsonNode schema, Set<String> keywords, String where) {
    for (Map.Entry<String, JsonNode> keyword : schema.properties()) {
      String name = keyword.getKey();
      if (!keywords.contains(name) && !ANNOTATIONS.contains(name) && !name.startsWith("x-")) {
        throw new IllegalStateException(where + " uses " + name + ", which nothing here checks");
      }
    }
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(text -> texts.add(text.asText()));
    return texts;
  }
}
