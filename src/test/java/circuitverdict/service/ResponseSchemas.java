package circuitverdict.service;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The contract's schemas as JSON Schema 2020-12, which OpenAPI 3.1 schemas are. Here an {@code
 * x-extensible-enum} is an {@code enum}: clients must bear values they do not know, but this
 * version of the service answers none that its own contract does not list.
 */
final class ResponseSchemas {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final JsonNode SCHEMAS =
      closed(ContractDocument.contract().root().at("/components/schemas"));
  private static final Map<String, Schema> COMPILED = new ConcurrentHashMap<>();

  private ResponseSchemas() {}

  /** What is wrong with a document by the schema of that name; empty where nothing is. */
  static List<String> faults(String schemaName, String document) {
    Schema schema = COMPILED.computeIfAbsent(schemaName, ResponseSchemas::compile);
    return schema
        .validate(
            document,
            InputFormat.JSON,
            context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
        .stream()
        .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
        .toList();
  }

  private static Schema compile(String schemaName) {
    if (!SCHEMAS.has(schemaName)) {
      throw new AssertionError("The contract has no schema " + schemaName);
    }
    ObjectNode root = JSON.createObjectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("$ref", "#/components/schemas/" + schemaName);
    root.set("$defs", SCHEMAS);
    String text = root.toString().replace("#/components/schemas/", "#/$defs/");
    return REGISTRY.getSchema(text, InputFormat.JSON);
  }

  private static JsonNode closed(JsonNode schemas) {
    JsonNode copy = schemas.deepCopy();
    close(copy);
    return copy;
  }

  private static void close(JsonNode node) {
    if (node instanceof ObjectNode object && object.has("x-extensible-enum")) {
      object.set("enum", object.remove("x-extensible-enum"));
    }
    node.forEach(ResponseSchemas::close);
  }
}
