package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.ContractDocument.Operation;
import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example of the contract, and every kept request, is answered as the contract says. */
@QuarkusTest
class ExamplesTest {

  static List<Call> calls() {
    return Calls.all();
  }

  @ParameterizedTest
  @MethodSource("calls")
  void isAnsweredInFullByTheContract(Call call) {
    answeredByTheContract(call, Http.send(call));
  }

  @ParameterizedTest
  @MethodSource("calls")
  void isAnsweredMinimallyByTheContract(Call call) {
    answeredByTheContract(call, Http.send(call, "Prefer", "return=minimal"));
  }

  @Test
  void everyOperationHasAnExampleAndEveryBuiltOneARequestOfACaller() {
    Set<String> operations =
        ContractDocument.contract().operations().stream()
            .map(Operation::id)
            .collect(Collectors.toSet());
    assertEquals(
        operations, Calls.ofContract().stream().map(Call::operation).collect(Collectors.toSet()));
    assertEquals(11, Calls.ofFiles().size(), "files in src/test/resources/requests");
  }

  @Test
  void circuitChecksShowEveryVerdict() {
    List<JsonNode> answers =
        Calls.ofContract().stream()
            .filter(call -> call.operation().equals("checkCircuit"))
            .map(call -> Http.send(call).json())
            .toList();
    assertEquals(
        Set.of("complies", "does-not-comply", "not-determined"),
        answers.stream()
            .map(answer -> answer.path("verdict").textValue())
            .collect(Collectors.toSet()));
    Set<String> ofFindings =
        answers.stream()
            .flatMap(answer -> answer.path("findings").valueStream())
            .map(finding -> finding.path("verdict").textValue())
            .collect(Collectors.toSet());
    assertTrue(ofFindings.contains("not-applicable"), ofFindings::toString);
  }

  @ParameterizedTest
  @MethodSource("calls")
  void theExampleIsValidByItsOwnSchema(Call call) {
    if (call.isPost()) {
      Operation operation = ContractDocument.contract().operation(call.operation());
      String reference =
          operation.node().at("/requestBody/content/application~1json/schema/$ref").asText();
      String schema = reference.substring(reference.lastIndexOf('/') + 1);
      assertEquals(List.of(), ResponseSchemas.faults(schema, call.body()));
    }
  }

  @Test
  void theNameOfAnExampleIsItsVerdict() {
    Map<String, String> named = Map.of("complies", "", "does-not-comply", "", "not-determined", "");
    for (Call call : Calls.ofContract()) {
      if (named.containsKey(call.name())) {
        assertEquals(
            call.name(), Http.send(call).json().path("verdict").textValue(), call::toString);
      }
    }
  }

  private static void answeredByTheContract(Call call, Reply reply) {
    assertEquals(200, reply.status(), reply::text);
    assertEquals("application/json", reply.mediaType());
    Operation operation = ContractDocument.contract().operation(call.operation());
    String schema = ContractDocument.contract().schemaName(operation, 200, "application/json");
    assertEquals(List.of(), ResponseSchemas.faults(schema, reply.text()), reply::text);
  }
}
