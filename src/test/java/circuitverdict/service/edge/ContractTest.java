package circuitverdict.service.edge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContractTest {

  private static Contract contract(String schemaA) throws Exception {
    String document = "components: {schemas: {A: " + schemaA + "}}";
    return Contract.of(new ByteArrayInputStream(document.getBytes(StandardCharsets.UTF_8)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{oneOf: []}",
        "{type: [string, 'null']}",
        "{type: number, multipleOf: 2}",
        "{type: string, const: a}",
        "{type: object, properties: {}}",
        "{type: object, additionalProperties: true}",
        "{type: object, additionalProperties: false, required: [a]}",
        "{type: object, additionalProperties: false, patternProperties: {}}",
        "{type: array, items: {$ref: '#/components/schemas/B'}}",
        "{$ref: 'other.yaml'}",
      })
  void refusesToLoadWhatItCannotCheck(String schema) {
    assertThrows(IllegalStateException.class, () -> contract(schema));
  }

  @Test
  void readsExclusiveBounds() throws Exception {
    Contract contract = contract("{type: number, exclusiveMinimum: 0, exclusiveMaximum: 1}");
    ContractReader reader = new ContractReader(contract);
    assertEquals(0.5, reader.read("0.5".getBytes(StandardCharsets.UTF_8), "A").doubleValue());
    for (String outside : List.of("0", "1")) {
      byte[] body = outside.getBytes(StandardCharsets.UTF_8);
      assertThrows(InvalidRequest.class, () -> reader.read(body, "A"));
    }
  }

  @Test
  void aSecondLikeItemIsRefused() throws Exception {
    ContractReader reader =
        new ContractReader(contract("{type: array, uniqueItems: true, items: {type: boolean}}"));
    byte[] body = "[true,false,true]".getBytes(StandardCharsets.UTF_8);
    InvalidRequest refusal = assertThrows(InvalidRequest.class, () -> reader.read(body, "A"));
    assertEquals("/2", refusal.faults().get(0).pointer());
    assertEquals("duplicate-item", refusal.faults().get(0).code());
  }

  @Test
  void knowsItsClosedLists() {
    assertEquals(
        List.of("TN-S", "TN-C-S", "TT"),
        Contract.fromClassPath().closedLists().get("Supply.earthing"));
  }

  @Test
  void knowsTheMethodsOfAnAddress() {
    Contract contract = Contract.fromClassPath();
    assertEquals("[OPTIONS, POST]", contract.methods("/v1/circuit-checks").toString());
    assertEquals(
        "[GET, HEAD, OPTIONS]", contract.methods("/v1/editions/bs7671-2018-a4").toString());
    assertEquals(
        "[GET, HEAD, OPTIONS, POST]", contract.methods("/v1/loop-impedance-limits").toString());
    assertTrue(contract.methods("/v1/nowhere").isEmpty());
  }

  @Test
  void codesAreUnique() {
    List<String> codes = java.util.Arrays.stream(FaultCode.values()).map(FaultCode::code).toList();
    assertEquals(codes.size(), java.util.Set.copyOf(codes).size());
    assertTrue(codes.stream().allMatch(code -> code.matches("[a-z]+(-[a-z]+)*")));
  }
}
