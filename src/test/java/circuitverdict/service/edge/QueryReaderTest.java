package circuitverdict.service.edge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QueryReaderTest {

  private static final String PATH = "/v1/loop-impedance-limits";
  private static final QueryReader READER = new QueryReader(Contract.fromClassPath());

  private static Map<String, List<String>> good() {
    Map<String, List<String>> query = new LinkedHashMap<>();
    query.put("standard", List.of("IEC 60898-1"));
    query.put("characteristic", List.of("B"));
    query.put("ratedCurrentA", List.of("32"));
    query.put("disconnectionTimeS", List.of("4e-1"));
    return query;
  }

  @Test
  void givesTypedValues() {
    JsonNode values = READER.read(PATH, good());
    assertEquals("B", values.path("characteristic").textValue());
    assertEquals(32, values.path("ratedCurrentA").doubleValue());
    assertEquals(0.4, values.path("disconnectionTimeS").doubleValue());
    assertTrue(values.path("edition").isMissingNode());
  }

  @ParameterizedTest
  @CsvSource({
    "ratedCurrentA,'',wrong-type",
    "ratedCurrentA,abc,wrong-type",
    "ratedCurrentA,32A,wrong-type",
    "ratedCurrentA,+32,wrong-type",
    "ratedCurrentA,0x20,wrong-type",
    "ratedCurrentA,NaN,wrong-type",
    "ratedCurrentA,Infinity,wrong-type",
    "ratedCurrentA,' 32',wrong-type",
    "ratedCurrentA,-1,below-minimum",
    "ratedCurrentA,1e999,above-maximum",
    "ratedCurrentA,999999999999999999999999999,above-maximum",
    "magneticMultipleUpper,1.449,below-minimum",
    "standard,BS 9999,unknown-value",
    "edition,bs7671-1966,unknown-value",
    "curve,B,unknown-parameter",
  })
  void refuses(String parameter, String value, String code) {
    Map<String, List<String>> query = good();
    query.put(parameter, List.of(value));
    InvalidRequest refusal = assertThrows(InvalidRequest.class, () -> READER.read(PATH, query));
    assertEquals(422, refusal.status());
    assertEquals(1, refusal.faults().size());
    assertEquals(code, refusal.faults().get(0).code());
    assertEquals(parameter, refusal.faults().get(0).parameter());
  }

  @Test
  void refusesMissingAndRepeatedAtOnce() {
    Map<String, List<String>> query = good();
    query.remove("standard");
    query.put("ratedCurrentA", List.of("32", "32"));
    InvalidRequest refusal = assertThrows(InvalidRequest.class, () -> READER.read(PATH, query));
    assertEquals(
        List.of("missing-parameter", "repeated-parameter"),
        refusal.faults().stream().map(Fault::code).toList());
  }
}
