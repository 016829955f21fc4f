package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * Derives, from the contract's own text and not from what the service made of it, every way of
 * being wrong: for each member reachable from a schema null, another type, below, above, infinite,
 * not whole, not listed, too long, of another form, too many, too few, missing, and an unknown
 * neighbour. A type inside itself is entered once.
 */
public final class NegativeCases {

  private static final String SCHEMAS = "#/components/schemas/";

  private final JsonNode schemas;
  private final List<NegativeCase> cases = new ArrayList<>();
  private final List<String> validBodies = new ArrayList<>();

  private NegativeCases(JsonNode schemas) {
    this.schemas = schemas;
  }

  /** All cases of a schema under {@code components.schemas}. */
  public static List<NegativeCase> of(String schemaName) {
    return derive(schemaName).cases;
  }

  /** For each member reachable, a body that is valid and holds it. */
  static List<String> validBodies(String schemaName) {
    return derive(schemaName).validBodies;
  }

  private static NegativeCases derive(String schemaName) {
    NegativeCases derived = new NegativeCases(document().at("/components/schemas"));
    JsonNode reference = new YAMLMapper().createObjectNode().put("$ref", SCHEMAS + schemaName);
    derived.visit(reference, "", value -> value, new HashSet<>());
    return derived;
  }

  static JsonNode document() {
    ClassLoader loader = NegativeCases.class.getClassLoader();
    try (InputStream contract = loader.getResourceAsStream("META-INF/openapi.yaml")) {
      return new YAMLMapper().readTree(contract);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Adds the cases of a value whose pointer is given; {@code inBody} puts a value in its place. */
  private void visit(
      JsonNode schema, String pointer, UnaryOperator<String> inBody, Set<String> entered) {
    JsonNode resolved = resolve(schema);
    validBodies.add(inBody.apply(sample(resolved)));
    add("null", "null", FaultCode.NULL_NOT_ALLOWED, pointer, inBody);
    String type = resolved.path("type").asText();
    add(
        "wrong type",
        type.equals("string") ? "12" : "\"x\"",
        FaultCode.WRONG_TYPE,
        pointer,
        inBody);
    switch (type) {
      case "object":
        visitObject(schema, resolved, pointer, inBody, entered);
        break;
      case "array":
        visitArray(resolved, pointer, inBody, entered);
        break;
      case "string":
        visitString(resolved, pointer, inBody);
        break;
      case "number":
      case "integer":
        visitNumber(resolved, pointer, inBody);
        break;
      default:
        break;
    }
  }

  private void visitObject(
      JsonNode schema,
      JsonNode resolved,
      String pointer,
      UnaryOperator<String> inBody,
      Set<String> entered) {
    String name = schema.path("$ref").asText();
    if (!name.isEmpty() && !entered.add(name)) {
      return;
    }
    Map<String, String> required = new LinkedHashMap<>();
    resolved
        .path("required")
        .forEach(
            member ->
                required.put(
                    member.asText(),
                    sample(resolve(resolved.path("properties").path(member.asText())))));
    add("unknown", with(required, "zzUnknown", "1"), FaultCode.UNKNOWN_MEMBER, pointer, inBody);
    for (String member : required.keySet()) {
      String lacking = with(required, member, null);
      add("missing " + member, lacking, FaultCode.MISSING_MEMBER, pointer, inBody);
    }
    for (Map.Entry<String, JsonNode> member : resolved.path("properties").properties()) {
      UnaryOperator<String> inObject =
          value -> inBody.apply(with(required, member.getKey(), value));
      visit(member.getValue(), pointer + "/" + member.getKey(), inObject, entered);
    }
    entered.remove(name);
  }

  private void visitArray(
      JsonNode resolved, String pointer, UnaryOperator<String> inBody, Set<String> entered) {
    JsonNode items = resolved.path("items");
    String item = sample(resolve(items));
    int most = resolved.path("maxItems").asInt();
    String tooMany = "[" + (item + ",").repeat(most) + item + "]";
    add("too many", tooMany, FaultCode.TOO_MANY_ITEMS, pointer, inBody);
    if (resolved.path("minItems").asInt(0) > 0) {
      add("too few", "[]", FaultCode.TOO_FEW_ITEMS, pointer, inBody);
    }
    int fillers = Math.max(0, resolved.path("minItems").asInt(0) - 1);
    String tail = ("," + item).repeat(fillers) + "]";
    visit(items, pointer + "/0", value -> inBody.apply("[" + value + tail), entered);
  }

  private void visitString(JsonNode resolved, String pointer, UnaryOperator<String> inBody) {
    if (resolved.has("x-extensible-enum") || resolved.has("enum")) {
      add("unknown value", "\"zz-unknown\"", FaultCode.UNKNOWN_VALUE, pointer, inBody);
      return;
    }
    String tooLong = '"' + "9".repeat(resolved.path("maxLength").asInt() + 1) + '"';
    add("too long", tooLong, FaultCode.TOO_LONG, pointer, inBody);
    if (resolved.has("pattern")) {
      add("other form", "\"§\"", FaultCode.PATTERN_MISMATCH, pointer, inBody);
    }
  }

  private void visitNumber(JsonNode resolved, String pointer, UnaryOperator<String> inBody) {
    BigDecimal least = bound(resolved, "minimum");
    BigDecimal most = bound(resolved, "maximum");
    String below = least.subtract(BigDecimal.ONE).toPlainString();
    String above = most.add(BigDecimal.ONE).toPlainString();
    add("below", below, FaultCode.BELOW_MINIMUM, pointer, inBody);
    add("above", above, FaultCode.ABOVE_MAXIMUM, pointer, inBody);
    add("infinite", "1e999", FaultCode.ABOVE_MAXIMUM, pointer, inBody);
    add("minus infinite", "-1e999", FaultCode.BELOW_MINIMUM, pointer, inBody);
    if (resolved.path("type").asText().equals("integer")) {
      String fraction = least.add(new BigDecimal("0.5")).toPlainString();
      add("not whole", fraction, FaultCode.NOT_AN_INTEGER, pointer, inBody);
    }
  }

  private void add(
      String what, String value, FaultCode code, String pointer, UnaryOperator<String> inBody) {
    String at = code == FaultCode.UNKNOWN_MEMBER ? pointer + "/zzUnknown" : pointer;
    cases.add(new NegativeCase(pointer + ": " + what, inBody.apply(value), code.code(), at));
  }

  /** A value that the schema takes. */
  private String sample(JsonNode schema) {
    switch (schema.path("type").asText()) {
      case "boolean":
        return "true";
      case "number":
      case "integer":
        // What lies above an end that is itself outside is not known so simply as the other end.
        String end = schema.has("exclusiveMinimum") ? "maximum" : "minimum";
        return bound(schema, end).toPlainString();
      case "array":
        String items = sample(resolve(schema.path("items"))) + ",";
        String list = items.repeat(schema.path("minItems").asInt(0));
        return "[" + (list.isEmpty() ? "" : list.substring(0, list.length() - 1)) + "]";
      case "object":
        Map<String, String> members = new LinkedHashMap<>();
        for (JsonNode member : schema.path("required")) {
          JsonNode memberSchema = schema.path("properties").path(member.asText());
          members.put(member.asText(), sample(resolve(memberSchema)));
        }
        return with(members, "", null);
      default:
        for (String source : List.of("x-extensible-enum", "enum", "examples")) {
          if (schema.path(source).size() > 0) {
            return schema.path(source).get(0).toString();
          }
        }
        return '"' + matching(schema.path("pattern").asText()) + '"';
    }
  }

  private static String matching(String pattern) {
    for (String text : List.of("x", "12345678", "EC000042", "EF000042", "EU000042")) {
      if (Pattern.compile(pattern).matcher(text).find()) {
        return text;
      }
    }
    throw new AssertionError("Give " + pattern + " an example in the contract");
  }

  private JsonNode resolve(JsonNode schema) {
    String reference = schema.path("$ref").asText();
    return reference.isEmpty() ? schema : schemas.path(reference.substring(SCHEMAS.length()));
  }

  private static BigDecimal bound(JsonNode schema, String keyword) {
    return new BigDecimal(schema.path(keyword).asText());
  }

  /** The object with one member set, or left out where the value is null. */
  private static String with(Map<String, String> members, String name, String value) {
    Map<String, String> all = new LinkedHashMap<>(members);
    if (value == null) {
      all.remove(name);
    } else {
      all.put(name, value);
    }
    StringJoiner object = new StringJoiner(",", "{", "}");
    all.forEach((member, text) -> object.add('"' + member + "\":" + text));
    return object.toString();
  }
}
