package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.Http.Reply;
import circuitverdict.service.edge.ProblemCatalogue;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** What stands around the operations: the contract as served, its pages, health and metrics. */
@QuarkusTest
class ServedContractTest {
  private static final YAMLMapper YAML = new YAMLMapper();

  @Test
  void theServedContractIsTheFileKeptByHand() throws IOException {
    JsonNode file = YAML.readTree(Path.of("openapi", "openapi.yaml").toFile());
    JsonNode served = YAML.readTree(Http.get("/q/openapi").bytes());
    assertEquals(sorted(file), sorted(served));
    JsonNode json = Http.get("/q/openapi?format=json").json();
    assertEquals(sorted(file), sorted(json));
  }

  @Test
  void theContractIsServedUnderVersion31() {
    assertTrue(Http.get("/q/openapi").text().contains("openapi: 3.1"));
  }

  @Test
  void swaggerUiAnswers() {
    Reply page = Http.get("/q/swagger-ui/");
    assertEquals(200, page.status());
    assertTrue(page.text().contains("swagger-ui"), page.text());
  }

  @Test
  void healthAnswers() {
    for (String probe : List.of("", "/live", "/ready", "/started")) {
      Reply health = Http.get("/q/health" + probe);
      assertEquals(200, health.status(), probe);
      assertEquals("UP", health.json().path("status").textValue(), probe);
    }
  }

  @Test
  void metricsCountRequestsByPathAndStatus() {
    Http.send(Calls.ofContract("checkCircuit", "complies"));
    String metrics = Http.get("/q/metrics").text();
    assertTrue(
        metrics
            .lines()
            .anyMatch(
                line ->
                    line.startsWith("http_server_requests_seconds_count{")
                        && line.contains("method=\"POST\"")
                        && line.contains("status=\"200\"")
                        && line.contains("uri=\"/v1/circuit-checks\"")),
        metrics);
  }

  @Test
  void everyOperationDeclaresEveryProblemThatTheServiceKnowsAndNoOther() {
    Set<String> known = new TreeSet<>();
    for (ProblemCatalogue problem : ProblemCatalogue.values()) {
      known.add(String.valueOf(problem.status()));
    }
    for (ContractDocument.Operation operation : ContractDocument.contract().operations()) {
      Set<String> declared = new TreeSet<>();
      operation.node().path("responses").fieldNames().forEachRemaining(declared::add);
      assertTrue(declared.contains("200"), operation::toString);
      declared.removeIf(status -> status.compareTo("400") < 0);
      assertEquals(known, declared, operation::toString);
    }
  }

  @Test
  void operationIdsAreUnique() {
    Set<String> seen = new HashSet<>();
    Predicate<ContractDocument.Operation> twice = operation -> !seen.add(operation.id());
    assertEquals(
        List.of(), ContractDocument.contract().operations().stream().filter(twice).toList());
  }

  /** Members in one order, numbers in one form: 1 and 1.0 are the same number in JSON. */
  private static String sorted(JsonNode node) {
    StringBuilder text = new StringBuilder();
    write(node, "", text);
    return text.toString();
  }

  private static void write(JsonNode node, String place, StringBuilder text) {
    if (node.isObject()) {
      TreeSet<String> names = new TreeSet<>();
      node.fieldNames().forEachRemaining(names::add);
      names.forEach(name -> write(node.get(name), place + "/" + name, text));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        write(node.get(i), place + "/" + i, text);
      }
    }
    if (node.isEmpty() || node.isValueNode()) {
      String value = node.isNumber() ? String.valueOf(node.doubleValue()) : node.toString();
      text.append(place).append(' ').append(value).append('\n');
    }
  }
}
