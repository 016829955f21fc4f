package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Will only the downstream device open, asked over HTTP. */
@QuarkusTest
class SelectivityVerdictsTest {
  private static final Set<String> UNCOUNTED = Set.of("selectivity", "inrush", "commissioning");

  private static final String PATH = "/v1/selectivity-verdicts";

  private static JsonNode ask(String path, String patch) {
    JsonNode open = Variations.tree(Calls.ofContract("judgeSelectivity", "not-determined").body());
    JsonNode body = Variations.patched(open, Variations.tree(patch.replace('\'', '"')));
    return Http.post(path, body.toString()).json();
  }

  /** The question itself counts, required or not; among other checks only where it is required. */
  @Test
  void theQuestionItselfCounts() {
    JsonNode answer = ask(PATH, "{}");
    assertEquals("not-determined", answer.path("verdict").textValue());
    assertEquals("check-not-determined", answer.path("reason").textValue());
    assertTrue(answer.at("/findings/0/counted").booleanValue());
    for (JsonNode finding : ask("/v1/circuit-checks", "{}").path("findings")) {
      String check = finding.path("check").textValue();
      assertEquals(!UNCOUNTED.contains(check) && applies(finding), counted(finding));
    }
    String required = "{'requirements': {'selectivity': 'required'}}";
    for (JsonNode finding : ask("/v1/circuit-checks", required).path("findings")) {
      String check = finding.path("check").textValue();
      boolean counts = check.equals("selectivity") || !UNCOUNTED.contains(check);
      assertEquals(counts && applies(finding), counted(finding));
    }
  }

  private static boolean counted(JsonNode finding) {
    return finding.path("counted").booleanValue();
  }

  private static boolean applies(JsonNode finding) {
    return !finding.path("verdict").textValue().equals("not-applicable");
  }

  /** 5·63 = 315 A: up to there by guidance, and no further. */
  @Test
  void theLimitOfSelectivityIsTold() {
    JsonNode finding = ask(PATH, "{}").at("/findings/0");
    assertEquals(315, finding.at("/limit/value").doubleValue());
    assertEquals("Is", finding.at("/limit/symbol").textValue());
    JsonNode within = ask(PATH, "{'supply': {'maximumFaultCurrentA': 315}}");
    assertEquals("complies", within.path("verdict").textValue());
    assertEquals(315, within.at("/limits/0/value").doubleValue());
    assertEquals("selectivity", within.at("/limits/0/governedBy").textValue());
  }

  @Test
  void whatItDoesNotReadIsTold() {
    JsonNode answer =
        ask(
            PATH,
            "{'cable': {'lengthM': 20}, 'load': {'kind': 'motor'}, 'device': {'conditionalCapacityA': 6000},"
                + " 'upstreamDevice': {'energyClass': 3}}");
    List<String> told = new ArrayList<>();
    for (JsonNode caution : answer.path("cautions")) {
      if (caution.path("code").textValue().equals("member-not-used")) {
        told.add(caution.path("pointer").textValue());
      }
    }
    told.sort(null);
    assertEquals(
        List.of("/cable", "/device/conditionalCapacityA", "/load", "/upstreamDevice/energyClass"),
        told);
  }

  /** What only selectivity reads is told where that is not the question. */
  @Test
  void otherQuestionsTellWhatOnlySelectivityReads() {
    List<String> told = new ArrayList<>();
    String patch = "{'device': {'selectivity': [{'upstreamId': 'Q1', 'limitCurrentA': 100}]}}";
    for (JsonNode caution : ask("/v1/breaking-capacity-verdicts", patch).path("cautions")) {
      if (caution.has("pointer")) {
        told.add(caution.path("pointer").textValue());
      }
    }
    told.sort(null);
    assertEquals(List.of("/device/selectivity", "/upstreamDevice/characteristic"), told);
  }

  /**
   * B63 behind C40 fails on overload: 1.13·63 A is carried, 1.45·40 = 58 A opens. 25 A is the
   * nearest rating with 1.45·25 = 36.25 A within 1.13·40 = 45.2 A, and 5·25 A below 5·40 A.
   */
  @Test
  void aSmallerRatingMendsIt() {
    JsonNode answer =
        ask(
            PATH,
            "{'supply': {'maximumFaultCurrentA': 190}, 'device': {'ratedCurrentA': 63,"
                + " 'energyClass': null}, 'upstreamDevice': {'ratedCurrentA': 40}}");
    assertEquals("does-not-comply", answer.path("verdict").textValue());
    assertEquals(
        25, answer.at("/remedies/0/change/device/ratedCurrentA").doubleValue(), answer::toString);
    assertEquals("selectivity", answer.at("/remedies/0/mends/0").textValue());
  }

  /** What the maker declares is declared of this device: no other one is offered in its place. */
  @Test
  void declaredDataLeaveNoOtherDeviceToOffer() {
    JsonNode answer =
        ask(
            PATH,
            "{'supply': {'maximumFaultCurrentA': 190}, 'device': {'ratedCurrentA': 63,"
                + " 'selectivity': [{'upstreamId': 'Q1', 'limitCurrentA': 100}]},"
                + " 'upstreamDevice': {'ratedCurrentA': 40}}");
    assertEquals("does-not-comply", answer.path("verdict").textValue());
    assertFalse(answer.has("remedies"));
  }
}
