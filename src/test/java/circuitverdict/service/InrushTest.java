package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The start of a motor over HTTP: in circuit checks, their remedies and device selections. */
@QuarkusTest
class InrushTest {
  private static final String CHECKS = "/v1/circuit-checks";
  private static final String MIXER = Calls.ofContract("checkCircuit", "starting").body();

  /** 512: 76.96 A of 80 A on C16, by guidance, counted since it is required. */
  @Test
  void startThatIsRiddenCompliesByGuidance() {
    JsonNode answer = Http.post(CHECKS, MIXER).json();
    JsonNode finding = inrush(answer);
    assertEquals("complies", finding.path("verdict").textValue());
    assertTrue(finding.path("counted").booleanValue());
    assertEquals(80, finding.at("/limit/value").doubleValue());
    assertTrue(codes(finding.path("remarks")).contains("by-guidance"));
    assertTrue(codes(finding.path("remarks")).contains("type-c-rides-start"));
    assertTrue(codes(answer.path("assumptions")).contains("assumed-symmetric-start"));
  }

  /** Table 7, test e: a B10 trips at 76.96 A for certain; as reported that fails no circuit. */
  @Test
  void certainTripFailsTheCircuitOnlyWhereRequired() {
    String tripping =
        patched("{\"device\": {\"characteristic\": \"B\", \"ratedCurrentA\": 10}}", MIXER);
    JsonNode required = Http.post(CHECKS, tripping).json();
    assertEquals("does-not-comply", inrush(required).path("verdict").textValue());
    assertTrue(required.path("summary").textValue().contains("inrush"));
    JsonNode reported =
        Http.post(CHECKS, patched("{\"requirements\": {\"inrush\": \"reported\"}}", tripping))
            .json();
    assertEquals("does-not-comply", inrush(reported).path("verdict").textValue());
    assertFalse(inrush(reported).path("counted").booleanValue());
    assertFalse(reported.path("summary").textValue().contains("inrush"));
  }

  /** A greater letter mends a start that trips for certain, if it breaks nothing else. */
  @Test
  void greaterLetterIsARemedy() {
    String tripping =
        patched(
            "{\"device\": {\"characteristic\": \"B\", \"currentLimiting\": true},"
                + " \"load\": {\"inrush\": {\"currentMultiple\": 8}},"
                + " \"supply\": {\"loopImpedanceOhm\": 0.2}}",
            MIXER);
    JsonNode answer = Http.post(CHECKS, tripping).json();
    assertEquals("does-not-comply", inrush(answer).path("verdict").textValue());
    boolean mended = false;
    for (JsonNode remedy : answer.path("remedies")) {
      mended |= remedy.at("/change/device/characteristic").asText().equals("D");
    }
    assertTrue(mended, answer.path("remedies")::toString);
  }

  /**
   * Least rating first, then what rides the start, then B before C: 76.96 A trip a B13 for certain
   * (5·13 = 65 A), may trip a C13 from 65 A, and ride a C16 by guidance.
   */
  @ParameterizedTest
  @CsvSource({"required, 16", "reported, 13"})
  void selectionPrefersTheLeastLetterThatRides(String requirement, double rated) {
    ObjectNode body =
        (ObjectNode)
            Variations.tree(
                patched("{\"requirements\": {\"inrush\": \"" + requirement + "\"}}", MIXER));
    body.remove("device");
    JsonNode answer = Http.post("/v1/device-selections", body.toString()).json();
    JsonNode best = answer.at("/selected/0/device");
    assertEquals(rated, best.path("ratedCurrentA").doubleValue(), answer::toString);
    assertEquals("C", best.path("characteristic").textValue());
  }

  @Test
  void membersOfAnInrushAreUsed() {
    JsonNode answer = Http.post(CHECKS, MIXER).json();
    assertFalse(answer.path("cautions").toString().contains("/load/inrush"));
    assertFalse(answer.path("cautions").toString().contains("/requirements/inrush"));
    for (JsonNode caution : answer.path("cautions")) {
      assertFalse(caution.path("text").asText().contains("inrush"), caution::toString);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "currentMultiple, 0.9, below-minimum",
    "currentMultiple, 31, above-maximum",
    "durationS, 0, below-minimum",
    "peakCurrentA, -1, below-minimum",
    "starting, '\"by-hand\"', unknown-value"
  })
  void boundsAreTheContracts(String member, String value, String code) {
    String body = patched("{\"load\": {\"inrush\": {\"" + member + "\": " + value + "}}}", MIXER);
    JsonNode problem = Http.post(CHECKS, body).json();
    assertEquals(code, problem.at("/errors/0/code").textValue(), problem::toString);
    assertEquals("/load/inrush/" + member, problem.at("/errors/0/pointer").textValue());
  }

  private static String patched(String patch, String body) {
    return Variations.patched(Variations.tree(body), Variations.tree(patch)).toString();
  }

  private static JsonNode inrush(JsonNode answer) {
    for (JsonNode finding : answer.path("findings")) {
      if (finding.path("check").textValue().equals("inrush")) {
        return finding;
      }
    }
    throw new AssertionError("no inrush in " + answer);
  }

  private static java.util.Set<String> codes(JsonNode notes) {
    java.util.Set<String> codes = new java.util.TreeSet<>();
    notes.forEach(note -> codes.add(note.path("code").textValue()));
    return codes;
  }
}
