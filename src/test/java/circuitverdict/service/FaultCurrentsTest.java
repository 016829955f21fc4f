package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fault currents from the source on, as a caller uses them. */
@QuarkusTest
class FaultCurrentsTest {
  private static final String PATH = "/v1/fault-currents";

  private static JsonNode body(String example) {
    return Variations.tree(Calls.ofContract("computeFaultCurrents", example).body());
  }

  private static JsonNode answer(JsonNode body) {
    return Http.post(PATH, body.toString()).json();
  }

  private static JsonNode patched(String example, String patch) {
    return Variations.patched(body(example), Variations.tree(patch.replace('\'', '"')));
  }

  /** The supply of a point is a whole supply: what leaves from it is found the same from there. */
  @ParameterizedTest
  @CsvSource({"transformer, 1", "transformer, 2"})
  void thePointIsASupplyForTheNextCall(String example, int point) {
    JsonNode body = body(example);
    JsonNode points = answer(body).path("points");
    JsonNode left = body;
    for (int i = 1; i < point; i++) {
      left = left.at("/circuits/0");
    }
    ObjectNode rest = ((ObjectNode) left.at("/circuits/0")).deepCopy();
    rest.put("stage", "design").put("edition", "bs7671-2018-a4");
    rest.set("supply", points.get(point).path("supply"));
    JsonNode again = answer(rest).path("points");
    assertEquals(points.size() - point, again.size());
    for (int i = 1; i < again.size(); i++) {
      JsonNode expected = points.get(point + i).path("supply");
      JsonNode found = again.get(i).path("supply");
      // Loops are followed by resistance and reactance; currents by their bound.
      near(expected, found, "loopImpedanceOhm", 1e-9);
      near(expected, found, "lineToNeutralLoopImpedanceOhm", 1e-9);
      assertTrue(
          found.path("maximumFaultCurrentA").doubleValue()
              >= expected.path("maximumFaultCurrentA").doubleValue() - 1e-6);
    }
  }

  private static void near(JsonNode expected, JsonNode found, String name, double share) {
    double value = expected.path(name).doubleValue();
    assertTrue(value > 0, name);
    assertEquals(value, found.path(name).doubleValue(), value * share, name);
  }

  /** A circuit checked on the supply of its board: its Zs is the loop found at its far end. */
  @Test
  void aCheckOnThePointFindsTheSameLoop() {
    JsonNode body = body("transformer");
    JsonNode points = answer(body).path("points");
    ObjectNode oven = ((ObjectNode) body.at("/circuits/0/circuits/0")).deepCopy();
    oven.put("stage", "design");
    oven.set("supply", points.get(2).path("supply"));
    oven.set(
        "device",
        Variations.tree(
            "{\"standard\": \"IEC 60898-1\", \"characteristic\": \"B\", \"ratedCurrentA\": 32}"));
    JsonNode check = Http.post("/v1/circuit-checks", oven.toString()).json();
    double found = points.get(3).at("/supply/loopImpedanceOhm").doubleValue();
    for (JsonNode finding : check.path("findings")) {
      if (finding.path("check").asText().equals("earth-fault-disconnection")) {
        assertEquals(found, finding.at("/actual/value").doubleValue(), 1e-9);
        return;
      }
    }
    throw new AssertionError(check);
  }

  /** What is missing is named, and what does not rest on it is given all the same. */
  @Test
  void whatIsMissingIsNamed() {
    JsonNode answer = answer(body("incomplete"));
    assertEquals("not-determined", answer.path("verdict").asText());
    Set<String> missing = new TreeSet<>();
    answer.path("missing").forEach(each -> missing.add(each.path("pointer").asText()));
    assertTrue(missing.contains("/supply/transformer/loadLossW"), missing::toString);
    assertTrue(missing.contains("/supply/grid"), missing::toString);
    JsonNode greatest =
        answer(patched("incomplete", "{'supply': {'transformer': {'loadLossW': 5500}}}"));
    JsonNode point = greatest.at("/points/0/supply");
    // Without a network before it the transformer alone limits: 1.1·400/(√3·|KT·ZT|).
    double zt = 0.0475 * 160_000 / 500_000;
    double rt = 5500 * 160_000 / 250e9;
    double xt = Math.sqrt(zt * zt - rt * rt);
    double kt = 0.95 * 1.1 / (1 + 0.6 * xt * 500_000 / 160_000);
    assertEquals(
        1.1 * 400 / (Math.sqrt(3) * kt * zt),
        point.at("/faultCurrents/threePhase/maximumA").doubleValue(),
        1e-6);
    assertFalse(point.has("loopImpedanceOhm"));
    assertEquals("not-determined", greatest.path("verdict").asText());
  }

  /** In TT the earth fault closes through the electrodes, of which a transformer tells nothing. */
  @Test
  void inTtNoEarthFaultCurrentFollowsFromTheTransformer() {
    JsonNode answer = answer(patched("transformer", "{'supply': {'earthing': 'TT'}}"));
    for (JsonNode point : answer.path("points")) {
      assertFalse(point.path("supply").has("loopImpedanceOhm"), point::toString);
      assertFalse(point.at("/supply/faultCurrents").has("lineToEarth"), point::toString);
      assertTrue(point.path("supply").has("lineToNeutralLoopImpedanceOhm"), point::toString);
    }
    assertEquals("tt-path", answer.at("/points/0/remarks/0/code").asText());
  }

  /**
   * A stated figure is followed as a bound: angles not known, the nearest and the farthest count.
   */
  @Test
  void aDeclaredSupplyIsFollowedByBounds() {
    JsonNode point = answer(body("declared")).at("/points/1/supply");
    double zo = 1.1 * 400 / (Math.sqrt(3) * 16_000);
    double line = 22 * 3.08 / 1000;
    assertEquals(
        1.1 * 400 / (Math.sqrt(3) * Math.hypot(zo, line)),
        point.path("maximumFaultCurrentA").doubleValue(),
        1e-6);
    // IEC 60228: 3.08 and 7.41 Ω/km, 1.20 at 70 °C.
    assertEquals(
        0.35 + 22 * (3.08 + 7.41) * 1.2 / 1000, point.path("loopImpedanceOhm").doubleValue(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'supply': {'maximumFaultCurrentA': 9000}} | /supply/maximumFaultCurrentA",
        "{'supply': {'loopImpedanceOhm': 0.1}} | /supply/loopImpedanceOhm",
        "{'supply': {'transformer': {'loadLossW': 24000}}} | /supply/transformer/loadLossW",
        "{'supply': {'transformer': {'resistanceToReactanceRatio': 0.2}}}"
            + " | /supply/transformer/resistanceToReactanceRatio",
        "{'supply': {'grid': {'minimumShortCircuitPowerVA': 300000000}}}"
            + " | /supply/grid/minimumShortCircuitPowerVA",
        "{'supply': {'originLoopImpedanceOhm': 0.01}} | /supply/originLoopImpedanceOhm",
        "{'supply': {'lineToEarthVoltageV': 120}} | /supply/transformer/secondaryVoltageV",
        "{'supply': {'grid': {'nominalVoltageV': 6600}}} | /supply/transformer/primaryVoltageV",
        "{'circuits': [{'cable': {'arrangement': 'ring', 'parallelCables': 4}}]}"
            + " | /circuits/0/cable/parallelCables",
        "{'circuits': [{'cable': {'construction': 'singles', 'protectiveMeans': 'core'}}]}"
            + " | /circuits/0/cable/protectiveMeans",
        "{'circuits': [{'liveConductors': ['L1']}]} | /circuits/0/liveConductors",
        "{'circuits': [{'stage': 'design'}]} | /circuits/0/stage",
        "{'circuits': [{'supply': {}}]} | /circuits/0/supply",
        "{'circuits': [{'liveConductors': ['L1', 'L2']}], 'liveConductors': ['L1', 'N']}"
            + " | /circuits/0/liveConductors",
        "{'circuits': [{'circuits': [{'circuits': [{'circuits': [{'circuits': [{}]}]}]}]}]}"
            + " | /circuits/0/circuits/0/circuits/0/circuits/0/circuits/0",
      })
  void contradictionsAreNamedAtTheirPlace(String patch, String pointer) {
    Http.Reply reply = Http.post(PATH, patched("transformer", patch).toString());
    assertEquals(422, reply.status(), reply::text);
    List<String> named = new ArrayList<>();
    reply.json().path("errors").forEach(each -> named.add(each.path("pointer").asText()));
    assertEquals(List.of(pointer), named, reply::text);
  }

  /** Nothing is handed on of what nothing may rest on: it would be taken as calculated. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'supply': {'basis': 'measured-cold'}} | /supply/instrumentUncertaintyPercent",
        "{'supply': {'basis': null}} | /supply/instrumentUncertaintyPercent",
        "{'supply': {'frequencyHz': 60}} | /supply/frequencyHz",
        "{'supply': {'localGeneration': true}} | /supply/localGeneration",
        "{'supply': {'maximumFaultCurrentA': 300}} | /supply",
      })
  void whatNothingMayRestOnIsWithheld(String patch, String pointer) {
    JsonNode answer = answer(patched("declared", patch));
    assertEquals("not-determined", answer.path("verdict").asText(), answer::toString);
    Set<String> missing = new TreeSet<>();
    answer.path("missing").forEach(each -> missing.add(each.path("pointer").asText()));
    assertTrue(missing.contains(pointer), missing::toString);
    for (JsonNode point : answer.path("points")) {
      assertFalse(point.path("supply").has("loopImpedanceOhm"), point::toString);
      assertFalse(point.path("supply").has("maximumFaultCurrentA"), point::toString);
    }
  }

  /** Beyond the supply the protective conductors add to an electrode: the loop stands for both. */
  @Test
  void anElectrodeIsNotHandedOnAsItWasRead() {
    JsonNode tt =
        patched(
            "declared",
            "{'supply': {'earthing': 'TT', 'basis': 'measured-cold', 'loopImpedanceOhm': 55,"
                + " 'earthElectrodeResistanceOhm': 48, 'instrumentUncertaintyPercent': 10}}");
    for (JsonNode point : answer(tt).path("points")) {
      assertFalse(point.path("supply").has("earthElectrodeResistanceOhm"), point::toString);
      assertTrue(point.at("/supply/loopImpedanceOhm").doubleValue() > 60, point::toString);
    }
  }

  /** More of what limits never gives more current, nor less of a loop. */
  @ParameterizedTest
  @CsvSource({
    "/cable/lengthM, 40, 41",
    "/circuits/0/cable/lengthM, 55, 80",
    "/supply/transformer/impedanceVoltagePercent, 4.75, 5",
    "/supply/transformer/ratedPowerVA, 500000, 400000",
    "/supply/grid/maximumShortCircuitPowerVA, 250000000, 200000000",
    "/supply/grid/minimumShortCircuitPowerVA, 120000000, 100000000",
    "/circuits/0/cable/protectiveCsaMm2, 70, 50",
  })
  void moreOfWhatLimitsNeverGivesMoreCurrent(String pointer, double less, double more) {
    JsonNode before = answer(with(pointer, less)).path("points");
    JsonNode after = answer(with(pointer, more)).path("points");
    boolean differs = false;
    for (int i = 0; i < before.size(); i++) {
      for (Map.Entry<String, JsonNode> kind :
          before.get(i).at("/supply/faultCurrents").properties()) {
        for (Map.Entry<String, JsonNode> figure : kind.getValue().properties()) {
          double old = figure.getValue().doubleValue();
          double now =
              after
                  .get(i)
                  .at("/supply/faultCurrents/" + kind.getKey() + "/" + figure.getKey())
                  .doubleValue();
          assertTrue(now <= old * (1 + 1e-12), pointer + " at " + i + " " + figure);
          differs |= now < old;
        }
      }
    }
    assertTrue(differs, pointer);
  }

  private static JsonNode with(String pointer, double value) {
    ObjectNode body = (ObjectNode) body("transformer").deepCopy();
    int end = pointer.lastIndexOf('/');
    ((ObjectNode) body.at(pointer.substring(0, end))).put(pointer.substring(end + 1), value);
    return body;
  }
}
