package circuitverdict.service;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The contract as the tests read it: the file itself, not what the service made of it. */
final class ContractDocument {
  private static final ContractDocument CONTRACT = new ContractDocument();

  private final JsonNode root = read();

  private ContractDocument() {}

  static ContractDocument contract() {
    return CONTRACT;
  }

  private static JsonNode read() {
    try (InputStream in = ContractDocument.class.getResourceAsStream("/META-INF/openapi.yaml")) {
      return new YAMLMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** An operation of the contract. */
  record Operation(String id, String method, String path, JsonNode node) {
    boolean hasBody() {
      return node.has("requestBody");
    }

    @Override
    public String toString() {
      return id;
    }
  }

  JsonNode root() {
    return root;
  }

  List<Operation> operations() {
    List<Operation> operations = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : root.path("paths").properties()) {
      for (String method : List.of("get", "post")) {
        JsonNode node = path.getValue().path(method);
        if (node.isObject()) {
          String id = node.path("operationId").asText();
          operations.add(new Operation(id, method.toUpperCase(), path.getKey(), node));
        }
      }
    }
    return operations;
  }

  Operation operation(String id) {
    return operations().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
  }

  /** The response that the contract declares for a status, references followed. */
  JsonNode response(Operation operation, int status) {
    JsonNode response = resolve(operation.node().path("responses").path(String.valueOf(status)));
    if (response.isMissingNode()) {
      throw new AssertionError(operation + " declares no " + status);
    }
    return response;
  }

  /** The name under components.schemas of a response's only body. */
  String schemaName(Operation operation, int status, String mediaType) {
    JsonNode content = response(operation, status).path("content").path(mediaType);
    if (content.isMissingNode()) {
      throw new AssertionError(operation + " declares no " + mediaType + " for " + status);
    }
    String reference = content.at("/schema/$ref").asText();
    return reference.substring("#/components/schemas/".length());
  }

  /** The node itself, or what its reference names. */
  JsonNode resolve(JsonNode node) {
    String reference = node.path("$ref").asText();
    return reference.isEmpty() ? node : root.at(reference.substring(1));
  }
}
