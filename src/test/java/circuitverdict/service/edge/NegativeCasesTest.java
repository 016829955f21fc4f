package circuitverdict.service.edge;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every derived way of being wrong is refused for the right reason in the right place. */
class NegativeCasesTest {

  private static final ContractReader READER = new ContractReader(Contract.fromClassPath());

  static Stream<NegativeCase> circuits() {
    return NegativeCases.of("Circuit").stream();
  }

  static Stream<NegativeCase> loopImpedanceQueries() {
    return NegativeCases.of("LoopImpedanceQuery").stream();
  }

  static Stream<String> validCircuits() {
    return NegativeCases.validBodies("Circuit").stream();
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void refusesCircuits(NegativeCase negative) throws Exception {
    refuses(negative, "Circuit");
  }

  @ParameterizedTest
  @MethodSource("loopImpedanceQueries")
  void refusesLoopImpedanceQueries(NegativeCase negative) throws Exception {
    refuses(negative, "LoopImpedanceQuery");
  }

  @ParameterizedTest
  @MethodSource("validCircuits")
  void takesTheSameBodiesWithGoodValues(String body) {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    assertDoesNotThrow(() -> READER.read(bytes, "Circuit"), body);
  }

  private static void refuses(NegativeCase negative, String schema) throws Exception {
    byte[] body = negative.body().getBytes(StandardCharsets.UTF_8);
    InvalidRequest refusal =
        assertThrows(InvalidRequest.class, () -> READER.read(body, schema), negative::body);
    assertEquals(422, refusal.status());
    List<Fault> faults = refusal.faults();
    assertTrue(
        faults.stream()
            .anyMatch(
                fault ->
                    fault.code().equals(negative.code())
                        && fault.pointer().equals(negative.pointer())),
        () -> negative.code() + " at " + negative.pointer() + " expected, not " + faults);
    for (Fault fault : faults) {
      assertFalse(
          new JsonMapper()
              .readTree(withoutInfinities(negative))
              .at(fault.pointer())
              .isMissingNode(),
          () -> fault.pointer() + " does not resolve");
      assertTrue(fault.detail().length() <= 300, fault::detail);
      assertTrue(fault.pointer().startsWith(negative.pointer()), fault::pointer);
    }
  }

  private static String withoutInfinities(NegativeCase negative) {
    return negative.body().replace("1e999", "1");
  }
}
