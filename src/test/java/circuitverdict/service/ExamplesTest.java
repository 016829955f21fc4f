package circuitverdict.service;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.ContractDocument.Operation;
import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
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
    assertEquals(17, Calls.ofFiles().size(), "files in src/test/resources/requests");
  }

  @Test
  void everyVerdictThatAnOperationCanHaveHasItsExample() {
    Set<String> all = Set.of("complies", "does-not-comply", "not-determined");
    Set<String> ofLimits = Set.of("complies", "not-determined");
    Map<String, Set<String>> expected =
        Map.ofEntries(
            entry("checkCircuit", all),
            entry("checkBoard", all),
            entry("judgeMeasurements", all),
            entry("selectDevices", all),
            entry("selectConductors", all),
            entry("judgeBreakingCapacity", all),
            entry("judgeLetThrough", all),
            entry("judgeSelectivity", all),
            entry("compareEditions", all),
            entry("computeFaultCurrents", ofLimits),
            entry("getLoopImpedanceLimit", ofLimits),
            entry("listLoopImpedanceLimits", ofLimits));
    Map<String, Set<String>> shown = new TreeMap<>();
    Set<String> ofFindings = new TreeSet<>();
    for (Call call : Calls.ofContract()) {
      JsonNode answer = Http.send(call).json();
      if (answer.has("verdict")) {
        shown
            .computeIfAbsent(call.operation(), id -> new TreeSet<>())
            .add(answer.path("verdict").textValue());
      }
      ofFindings.addAll(answer.path("findings").findValuesAsText("verdict"));
    }
    assertEquals(expected, shown);
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
