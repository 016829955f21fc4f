package circuitverdict.service.edge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ContractReaderTest {

  private static final ContractReader READER = new ContractReader(Contract.fromClassPath());

  private static JsonNode read(String body) {
    return READER.read(body.getBytes(StandardCharsets.UTF_8), "Circuit");
  }

  private static InvalidRequest refusal(String body) {
    return refusal(body.getBytes(StandardCharsets.UTF_8));
  }

  private static InvalidRequest refusal(byte[] body) {
    InvalidRequest refusal = assertThrows(InvalidRequest.class, () -> READER.read(body, "Circuit"));
    String json = new String(refusal.problem().toJson(), StandardCharsets.UTF_8);
    assertFalse(json.contains("jackson"), json);
    assertFalse(json.contains("java"), json);
    assertFalse(json.contains("Exception"), json);
    return refusal;
  }

  private static List<String> codes(InvalidRequest refusal) {
    return refusal.faults().stream().map(Fault::code).toList();
  }

  /** Energy of a fault that is cleared is never 0: such a figure would pass every conductor. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"device\":{\"letThrough\":[{\"prospectiveCurrentA\":1000,\"energyA2s\":0}]}}",
        "{\"backUp\":{\"limitedLetThroughA2s\":0}}"
      })
  void refusesALetThroughOfNothing(String body) {
    assertEquals(List.of("below-minimum"), codes(refusal(body)));
    read(body.replace(":0}", ":1e-3}"));
  }

  /** IEC 60898-1, test b: 1.45·In is the conventional tripping current (engineering basis, 2). */
  @Test
  void refusesAnUpperMagneticLimitBelowTheConventionalTrippingCurrent() {
    String body = "{\"device\":{\"magneticMultiples\":{\"upper\":%s}}}";
    assertEquals(List.of("below-minimum"), codes(refusal(body.formatted("1.449"))));
    read(body.formatted("1.45"));
  }

  @Test
  void takesAValidCircuitAsItIs() {
    JsonNode circuit =
        read("{\"stage\":\"design\",\"cable\":{\"lengthM\":22},\"supply\":{\"phases\":1.0}}");
    assertEquals(22, circuit.at("/cable/lengthM").doubleValue());
    assertEquals(1, circuit.at("/supply/phases").intValue());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''|empty-body",
        "' \t\r\n '|empty-body",
        "{|malformed-json",
        "{\"stage\" \"design\"}|malformed-json",
        "{\"stage\":\"design\"} x|malformed-json",
        "{\"stage\":\"design\"}{}|malformed-json",
        "{\"limit\":NaN}|malformed-json",
        "{\"limit\":Infinity}|malformed-json",
        "{\"limit\":-Infinity}|malformed-json",
        "{\"limit\":+1}|malformed-json",
        "{\"limit\":01}|malformed-json",
        "{\"limit\":.5}|malformed-json",
        "{\"limit\":0x1}|malformed-json",
        "{'limit':1}|malformed-json",
        "{limit:1}|malformed-json",
        "{\"limit\":1,}|malformed-json",
        "/* c */ {}|malformed-json",
        "{\"limit\":1} // c|malformed-json",
        "{\"reference\":\"\u0001\"}|malformed-json",
        "{\"reference\":\"\\q\"}|malformed-json",
        "tru|malformed-json",
        "{\"limit\":1,\"limit\":1}|duplicate-member",
        "{\"limit\":1,\"\\u006cimit\":2}|duplicate-member",
      })
  void whatIsNotJsonIs400(String body, String code) {
    InvalidRequest refusal = refusal(body == null ? "" : body);
    assertEquals(400, refusal.status());
    assertEquals(ProblemCatalogue.MALFORMED_JSON, refusal.type());
    assertEquals(List.of(code), codes(refusal));
  }

  @Test
  void namesLineAndColumn() {
    String detail = refusal("{\n  \"limit\": 1,\n  \"offset\" 2\n}").problem().detail();
    assertTrue(detail.contains("line 3, column 12"), detail);
  }

  @Test
  void pointsAtTheDuplicate() {
    InvalidRequest refusal = refusal("{\"cable\":{\"lengthM\":1,\"lengthM\":2}}");
    assertEquals("/cable/lengthM", refusal.faults().get(0).pointer());
  }

  @Test
  void refusesDeepNesting() {
    String open = "{\"circuits\":[";
    assertEquals(List.of("too-deep"), codes(refusal(open.repeat(21) + "]}".repeat(21))));
    assertEquals(List.of("too-deep"), codes(refusal("[".repeat(100_000))));
    assertNotNull(read(open.repeat(20) + "]}".repeat(20)));
  }

  @Test
  void refusesAbsurdNumbers() {
    assertEquals(400, refusal("{\"limit\":" + "9".repeat(101) + "}").status());
    assertEquals(400, refusal("{\"limit\":0." + "9".repeat(200_000) + "}").status());
    assertEquals(List.of("above-maximum"), codes(refusal("{\"limit\":" + "9".repeat(100) + "}")));
    assertEquals(List.of("above-maximum"), codes(refusal("{\"diversityFactor\":1e999999999}")));
    assertEquals(1e-300, read("{\"diversityFactor\":1e-300}").at("/diversityFactor").asDouble());
    assertNotNull(read("{\"diversityFactor\":1e-999999999}"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-32", "ISO-8859-1"})
  void refusesOtherEncodings(String charset) throws Exception {
    assertEquals(400, refusal("{\"reference\":\"Küche\"}".getBytes(charset)).status());
  }

  @Test
  void refusesBytesThatAreNotUtf8() {
    byte[] start = "{\"reference\":\"".getBytes(StandardCharsets.US_ASCII);
    int[][] broken = {{0xC0, 0x80}, {0xED, 0xA0, 0x80}, {0xF5, 0x80, 0x80, 0x80}, {0x80}, {0xE2}};
    for (int[] bytes : broken) {
      byte[] body = new byte[start.length + bytes.length + 2];
      System.arraycopy(start, 0, body, 0, start.length);
      for (int i = 0; i < bytes.length; i++) {
        body[start.length + i] = (byte) bytes[i];
      }
      body[body.length - 2] = '"';
      body[body.length - 1] = '}';
      assertEquals(List.of("malformed-text"), codes(refusal(body)));
    }
  }

  @Test
  void refusesHalvesOfSurrogatePairs() {
    InvalidRequest value = refusal("{\"reference\":\"a\\ud83d\"}");
    assertEquals(List.of("malformed-text"), codes(value));
    assertEquals(422, value.status());
    assertEquals(400, refusal("{\"cable\":{\"a\\ud83d\":1}}").status());
  }

  @Test
  void countsCodePoints() {
    assertNotNull(read("{\"reference\":\"" + "😀".repeat(120) + "\"}"));
    String tooLong = "{\"reference\":\"" + "😀".repeat(121) + "\"}";
    assertEquals(List.of("too-long"), codes(refusal(tooLong)));
  }

  @Test
  void anEndOfLineIsNoEndOfText() {
    assertNotNull(read("{\"device\":{\"gtin\":\"12345678\"}}"));
    String line = "{\"device\":{\"gtin\":\"12345678\\n\"}}";
    assertEquals(List.of("pattern-mismatch"), codes(refusal(line)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"null", "[]", "12", "\"x\"", "true"})
  void theBodyIsAnObject(String body) {
    InvalidRequest refusal = refusal(body);
    assertEquals(422, refusal.status());
    assertEquals("", refusal.faults().get(0).pointer());
    assertEquals(body.equals("null") ? "null-not-allowed" : "wrong-type", codes(refusal).get(0));
  }

  @Test
  void collectsEverythingInOrder() {
    InvalidRequest refusal =
        refusal(
            "{\"stage\":\"desing\",\"cable\":{\"lenghtM\":3,\"lengthM\":-1,\"lineCsaMm2\":\"6\"},"
                + "\"device\":null,\"liveConductors\":[\"L1\",7],\"readings\":[{}]}");
    assertEquals(
        List.of(
            "unknown-value",
            "unknown-member",
            "below-minimum",
            "wrong-type",
            "null-not-allowed",
            "wrong-type",
            "missing-member"),
        codes(refusal));
    assertEquals(
        List.of(
            "/stage",
            "/cable/lenghtM",
            "/cable/lengthM",
            "/cable/lineCsaMm2",
            "/device",
            "/liveConductors/1",
            "/readings/0"),
        refusal.faults().stream().map(Fault::pointer).toList());
    assertTrue(refusal.faults().get(0).detail().contains("\"design\""));
    assertEquals(List.of("quotation", "design", "sign-off"), refusal.faults().get(0).allowed());
    assertTrue(refusal.faults().get(1).detail().contains("`lengthM`"));
    assertTrue(refusal.faults().get(6).detail().contains("`kind`"));
  }

  @Test
  void listsAHundredFaultsAtMost() {
    String members =
        IntStream.range(0, 5000).mapToObj(i -> "\"x" + i + "\":1").collect(Collectors.joining(","));
    assertEquals(100, refusal("{" + members + "}").faults().size());
  }

  @Test
  void escapesPointersAndCutsLongOnes() throws Exception {
    assertEquals("/a~1b~0c", refusal("{\"a/b~c\":1}").faults().get(0).pointer());
    InvalidRequest refusal = refusal("{\"cable\":{\"" + "n".repeat(40_000) + "\":1}}");
    JsonNode problem = new JsonMapper().readTree(refusal.problem().toJson());
    assertEquals("/cable", problem.at("/errors/0/pointer").asText());
    assertTrue(problem.at("/errors/0/detail").asText().length() <= 300);
  }

  @Test
  void anUnknownEditionAloneIsAProblemOfItsOwn() {
    InvalidRequest alone = refusal("{\"edition\":\"bs7671-1966\"}");
    assertEquals(ProblemCatalogue.UNKNOWN_EDITION, alone.type());
    assertTrue(alone.faults().get(0).allowed().contains("bs7671-2018-a4"));
    assertEquals(
        ProblemCatalogue.INVALID_REQUEST,
        refusal("{\"edition\":\"bs7671-1966\",\"limit\":0}").type());
  }
}
