package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The validator refuses what it must; else every test that leans on it would prove nothing. */
class ResponseSchemasTest {
  private static final String ANSWER =
      """
      {"stage": "design", "verdict": "complies",
       "findings": [{"check": "voltage-drop", "verdict": "complies", "counted": true,
                    "clauses": [{"standard": "BS 7671:2018+A4:2026", "reference": "525"}],
                    "subject": "/cable"%s}],
       "cautions": [{"code": "designers-aid"}],
       "edition": {"id": "bs7671-2018-a4", "tablesDigest": "sha-256:0123456789abcdef"},
       "service": {"version": "1.0.0"}%s}""";

  @Test
  void takesAGoodAnswer() {
    assertEquals(List.of(), faults("", ""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ", \"invented\": 1",
        ", \"reason\": \"With Capitals\"",
        ", \"marginPercent\": \"12\"",
        ", \"comparator\": \"==\"",
        ", \"actual\": {\"symbol\": \"Zs\", \"unit\": \"kA\"}",
        ", \"actual\": {\"symbol\": \"Zs\", \"unit\": \"A\", \"invented\": 1}",
        ", \"missing\": [{\"code\": \"missing-input\", \"text\": null}]",
        ", \"clauses\": []",
        ", \"clauses\": [{\"confidence\": \"rumour\"}]"
      })
  void refusesABadFinding(String member) {
    assertFalse(faults(member, "").isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        ", \"invented\": {}",
        ", \"limits\": [{}]",
        ", \"remedies\": [{\"change\": {\"invented\": 1}, \"mends\": []}]",
        ", \"reference\": null"
      })
  void refusesABadAnswer(String member) {
    assertFalse(faults("", member).isEmpty());
  }

  @Test
  void refusesADateThatIsNone() {
    String edition =
        """
        {"id": "x", "standard": "x", "title": "x", "inForce": true, "published": "%s",
         "tablesDigest": "sha-256:0123456789abcdef"}""";
    assertEquals(
        List.of(), ResponseSchemas.faults("EditionSummary", edition.formatted("2026-04-15")));
    assertFalse(
        ResponseSchemas.faults("EditionSummary", edition.formatted("2026-13-45")).isEmpty());
  }

  private static List<String> faults(String inFinding, String inAnswer) {
    return ResponseSchemas.faults("Answer", ANSWER.formatted(inFinding, inAnswer));
  }
}
