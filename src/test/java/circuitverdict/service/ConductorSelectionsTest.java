package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The smallest conductors that serve, as a caller asks for them and checks them again. */
@QuarkusTest
class ConductorSelectionsTest {
  private static final String PATH = "/v1/conductor-selections";

  private static JsonNode body(String example) {
    return Variations.tree(Calls.ofContract("selectConductors", example).body());
  }

  private static JsonNode answer(JsonNode body) {
    return Http.post(PATH, body.toString()).json();
  }

  private static JsonNode patched(String example, String patch) {
    return Variations.patched(body(example), Variations.tree(patch.replace('\'', '"')));
  }

  /** The circuit with a candidate in its place, checked as a whole. */
  private static JsonNode checked(JsonNode body, JsonNode candidate) {
    ObjectNode circuit = body.deepCopy();
    candidate
        .path("cable")
        .properties()
        .forEach(each -> ((ObjectNode) circuit.path("cable")).set(each.getKey(), each.getValue()));
    if (candidate.has("device")) {
      circuit.set("device", candidate.path("device"));
    }
    return Http.post("/v1/circuit-checks", circuit.toString()).json();
  }

  /**
   * Table 4D5, method C: 32 A wants 4 mm² (37 A), and 26.1 A over 22 m of it drops 11 mV/A/m: 6.3
   * V, 2.75 %, with 0.8 % before it within 5 %. 2.5 mm² carries 27 A.
   */
  @Test
  void theSmallestSizeIsTheOneThatTheTablesGive() {
    JsonNode answer = answer(body("complies"));
    assertEquals("complies", answer.path("verdict").asText());
    JsonNode best = answer.at("/selected/0");
    assertEquals(4, best.at("/cable/lineCsaMm2").doubleValue());
    assertEquals(1.5, best.at("/cable/protectiveCsaMm2").doubleValue());
    assertFalse(best.has("device"), best::toString);
    assertTrue(answer.path("summary").asText().startsWith("Run 4/1.5 mm²"), answer::toString);
    for (JsonNode rejected : answer.path("rejected")) {
      assertTrue(rejected.at("/cable/lineCsaMm2").doubleValue() < 4);
      assertEquals("overload-protection", rejected.at("/decidedBy/check").asText());
    }
    assertEquals(3, answer.path("rejectedCount").intValue(), answer::toString);
  }

  /** What is selected passes a check of its own, what is rejected fails by the same rule. */
  @Test
  void everyCandidateIsWhatACheckOfItSays() {
    for (String example :
        List.of("complies", "greatest-length", "with-device", "does-not-comply")) {
      JsonNode body = patched(example, "{'limit': 6}");
      JsonNode answer = answer(body);
      for (String list : List.of("selected", "undetermined", "rejected")) {
        for (JsonNode candidate : answer.path(list)) {
          JsonNode check = checked(body, candidate);
          assertEquals(candidate.path("verdict"), check.path("verdict"), candidate::toString);
        }
      }
      assertTrue(
          answer.path("selectedCount").intValue() + answer.path("rejectedCount").intValue() > 4);
    }
  }

  /** The greatest length holds, and a tenth of a metre more does not. */
  @Test
  void theGreatestLengthIsTheLastThatComplies() {
    JsonNode body = body("greatest-length");
    double before = 0;
    for (JsonNode candidate : answer(body).path("selected")) {
      double length = candidate.at("/cable/lengthM").doubleValue();
      assertTrue(length > before, candidate::toString);
      before = length;
      ObjectNode longer = candidate.deepCopy();
      ((ObjectNode) longer.path("cable")).put("lengthM", Math.round(10 * length + 1) / 10.0);
      assertFalse(
          checked(body, longer).path("verdict").asText().equals("complies"), candidate::toString);
    }
    assertTrue(before > 22);
  }

  @Test
  void aDeviceIsSelectedWithTheConductors() {
    JsonNode best = answer(body("with-device")).at("/selected/0");
    // 26.1 A: a rating of 32 A, and 4 mm² for it.
    assertEquals(32, best.at("/device/ratedCurrentA").doubleValue(), best::toString);
    assertEquals(4, best.at("/cable/lineCsaMm2").doubleValue());
  }

  /** Singles with a protective conductor of their own: each line size with every smaller one. */
  @Test
  void aProtectiveConductorOfItsOwnIsSelectedToo() {
    JsonNode singles =
        patched(
            "complies",
            "{'limit': 100, 'cable': {'construction': 'singles', 'protectiveMeans': 'separate',"
                + " 'protectiveConductor': 'copper', 'installation': {'referenceMethod': 'B'}}}");
    JsonNode answer = answer(singles);
    List<String> sizes = new ArrayList<>();
    for (JsonNode each : answer.path("selected")) {
      sizes.add(
          each.at("/cable/lineCsaMm2").asText()
              + "/"
              + each.at("/cable/protectiveCsaMm2").asText());
      assertEquals(each.at("/cable/lineCsaMm2"), each.at("/cable/neutralCsaMm2"));
    }
    assertEquals("4", answer.at("/selected/0/cable/lineCsaMm2").asText(), answer::toString);
    assertTrue(sizes.indexOf("4/4") > sizes.indexOf(sizes.get(0)), sizes::toString);
  }

  /** What the caller states stays. */
  @Test
  void aStatedSizeIsKept() {
    JsonNode answer = answer(patched("complies", "{'cable': {'lineCsaMm2': 10}}"));
    assertEquals(
        1, answer.path("selectedCount").intValue() + answer.path("rejectedCount").intValue());
    assertEquals(10, answer.at("/selected/0/cable/lineCsaMm2").doubleValue());
    assertEquals(4, answer.at("/selected/0/cable/protectiveCsaMm2").doubleValue());
  }

  /**
   * 22 m of two live conductors at 1 for each mm² and metre and of the protective one at 2: of
   * 4/1.5 mm² 22·(2·4 + 2·1.5) = 242.
   */
  @Test
  void theCheapestByTheCallersWeightsComesFirst() {
    String weights =
        "{'preferences': {'weights': [{'of': 'live-conductor', 'value': 1},"
            + " {'of': 'protective-conductor', 'value': 2}]}}";
    JsonNode answer = answer(patched("complies", weights));
    assertEquals(242, answer.at("/selected/0/cost/value").doubleValue(), 1e-9);
    double before = 0;
    for (JsonNode each : answer.path("selected")) {
      double cost = each.at("/cost/value").doubleValue();
      assertTrue(cost >= before, answer::toString);
      before = cost;
    }
    // Weights choose among what complies and change no verdict.
    assertEquals(answer(body("complies")).path("selectedCount"), answer.path("selectedCount"));
    assertFalse(answer(body("complies")).at("/selected/0").has("cost"));
    // Where conductors cost nothing and the device does, the least rated one comes first.
    JsonNode device =
        answer(
            patched("with-device", "{'preferences': {'weights': [{'of': 'device', 'value': 3}]}}"));
    double rated = device.at("/selected/0/device/ratedCurrentA").doubleValue();
    assertEquals(3 * rated, device.at("/selected/0/cost/value").doubleValue(), 1e-9);
  }

  /** Lighting by the guide is the demand of what feeds final circuits, never of one of them. */
  @Test
  void diversityBetweenCircuitsIsOfDistributionCircuits() {
    String rule =
        "{'load': {'designCurrentA': null, 'ratedPowerW': 3000, 'demandRule': 'household-lighting'}%s}";
    JsonNode refused =
        Http.post("/v1/conductor-selections", patched("complies", rule.formatted("")).toString())
            .json();
    assertEquals("/load/demandRule", refused.at("/errors/0/pointer").textValue());
    JsonNode answer =
        answer(patched("complies", rule.formatted(", 'circuitKind': 'distribution'")));
    assertEquals(
        "assumed-guide-demand",
        answer.path("assumptions").findValuesAsText("code").stream()
            .filter(code -> code.contains("guide"))
            .findFirst()
            .orElse(null));
  }
}
