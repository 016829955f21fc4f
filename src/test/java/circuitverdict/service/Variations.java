package circuitverdict.service;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The contract's deck oven with one thing changed, so that one check after another fails. */
final class Variations {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Merge patches (RFC 7396). What each does to the verdicts is for the tests to find. */
  private static final List<String> PATCHES =
      List.of(
          "{\"cable\": {\"lengthM\": 70}}",
          "{\"cable\": {\"lengthM\": 190}}",
          "{\"cable\": {\"lineCsaMm2\": 2.5, \"protectiveCsaMm2\": 1.5}}",
          "{\"cable\": {\"protectiveCsaMm2\": 1}}",
          "{\"cable\": {\"installation\": {\"groupedCircuits\": 6}}}",
          "{\"cable\": {\"installation\": {\"referenceMethod\": \"103\"}}}",
          "{\"cable\": {\"installation\": {\"ambientTemperatureC\": 55}}}",
          "{\"load\": {\"designCurrentA\": 38}}",
          "{\"load\": {\"use\": \"lighting\"}, \"cable\": {\"lengthM\": 40}}",
          "{\"device\": {\"characteristic\": \"D\"}}",
          "{\"device\": {\"characteristic\": \"C\"}, \"supply\": {\"loopImpedanceOhm\": 0.6}}",
          "{\"device\": {\"ratedCurrentA\": 63}}",
          "{\"device\": {\"breakingCapacityA\": 1500}}",
          "{\"supply\": {\"maximumFaultCurrentA\": 9000}}",
          "{\"supply\": {\"maximumFaultCurrentA\": 19000}}",
          "{\"supply\": {\"earthing\": \"TT\", \"earthElectrodeResistanceOhm\": 86,"
              + " \"loopImpedanceOhm\": 88.4}}",
          "{\"supply\": {\"voltageDropPercent\": 4.9}}",
          "{\"load\": {\"kind\": \"vehicle-charging\"}, \"premises\": {\"locations\": [\"outdoors\"]},"
              + " \"supply\": {\"openPenProtection\": false}}",
          "{\"premises\": {\"pollutionDegree\": 3}}",
          "{\"assembly\": {\"deviceDeclared\": false}}",
          "{\"supply\": {\"phases\": 3}, \"liveConductors\": [\"L1\", \"L2\", \"L3\", \"N\"]}",
          "{\"load\": {\"kind\": \"socket-outlets\"},"
              + " \"premises\": {\"locations\": [\"caravan-park\"]}}",
          "{\"assembly\": {\"deviceDeclared\": true, \"ambientTemperatureC\": 45}, \"device\":"
              + " {\"derating\": [{\"ambientTemperatureC\": 50, \"factor\": 0.8}]}}",
          "{\"stage\": \"sign-off\", \"device\": {\"characteristic\": \"D\"}}",
          "{\"edition\": \"bs7671-2008\", \"device\": {\"characteristic\": \"D\"}}",
          "{\"edition\": \"bs7671-2018-a2\", \"cable\": {\"lengthM\": 70}}",
          "{\"device\": {\"energyClass\": null}, \"requirements\": {\"evidence\": \"proved\"}}",
          "{\"load\": {\"kind\": \"motor\", \"inrush\": {\"starting\": \"direct-on-line\","
              + " \"currentMultiple\": 8, \"durationS\": 3}},"
              + " \"requirements\": {\"inrush\": \"required\"}}",
          "{\"requirements\": {\"selectivity\": \"required\"}, \"upstreamDevice\": {\"standard\":"
              + " \"IEC 60898-1\", \"characteristic\": \"B\", \"ratedCurrentA\": 20}}",
          "{\"device\": null}",
          "{\"cable\": null}",
          "{\"supply\": null}",
          "{\"load\": null}");

  private Variations() {}

  /** Circuit checks of the oven, varied. */
  static List<Call> ofOven() {
    Call oven = Calls.ofContract("checkCircuit", "complies");
    List<Call> calls = new ArrayList<>();
    for (String patch : PATCHES) {
      String body = patched(tree(oven.body()), tree(patch)).toString();
      calls.add(new Call(oven.operation(), patch, "POST", oven.address(), body));
    }
    return calls;
  }

  /** All circuits that the tests know, for the operations that run checks on one. */
  static List<Call> circuits() {
    List<Call> calls = new ArrayList<>(Calls.posts());
    calls.removeIf(call -> !call.address().matches("/v1/(circuit-checks|.*-verdicts)"));
    calls.addAll(ofOven());
    return calls;
  }

  /** JSON merge patch (RFC 7396): objects are merged, null removes, all else replaces. */
  static JsonNode patched(JsonNode target, JsonNode patch) {
    if (!patch.isObject()) {
      return patch;
    }
    ObjectNode result =
        target instanceof ObjectNode object ? object.deepCopy() : JSON.createObjectNode();
    for (Map.Entry<String, JsonNode> member : patch.properties()) {
      if (member.getValue().isNull()) {
        result.remove(member.getKey());
      } else {
        JsonNode old = result.path(member.getKey());
        result.set(member.getKey(), patched(old, member.getValue()));
      }
    }
    return result;
  }

  static JsonNode tree(String json) {
    try {
      return JSON.readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
