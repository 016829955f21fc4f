package circuitverdict.service.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.edge.Fault;
import circuitverdict.service.edge.InvalidRequest;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** All that is wrong with a circuit is told at once; a broken value contradicts nothing. */
class ContradictionsBesideFaultsTest {
  private static final ContractReader READER = new ContractReader(Contract.fromClassPath());
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String CIRCUIT =
      """
      {
        "edition": "bs7671-2018-a4", "stage": "sign-off", "circuitKind": "final",
        "supply": {"point": "board", "earthing": "TN-S", "phases": 1,
          "lineToEarthVoltageV": 230, "ownership": "public", "loopImpedanceOhm": 0.35,
          "originLoopImpedanceOhm": 0.2, "maximumFaultCurrentA": 3000,
          "faultCurrents": {"lineToNeutral": {"maximumA": 2000}}, "voltageDropPercent": 1},
        "liveConductors": ["L1", "N"],
        "load": {"kind": "mixed", "canOverload": true,
          "parts": [{"designCurrentA": 5, "diversityFactor": 0.5}]},
        "cable": {"construction": "multicore", "protectiveMeans": "core", "arrangement": "radial"},
        "furtherCables": [{"construction": "multicore", "parallelCables": 2}],
        "device": {"standard": "IEC 60898-1", "ratedCurrentA": 16,
          "magneticMultiples": {"lower": 3, "upper": 5}, "residual": {"delay": "general"},
          "letThrough": [{"prospectiveCurrentA": 1000, "energyA2s": 5000},
            {"prospectiveCurrentA": 2000, "energyA2s": 9000}]}
      }
      """;

  private static List<String> told(JsonNode body) {
    byte[] bytes = body.toString().getBytes(StandardCharsets.UTF_8);
    InvalidRequest refusal =
        assertThrows(InvalidRequest.class, () -> READER.read(bytes, "Circuit", Contradictions::of));
    assertEquals(422, refusal.status());
    return refusal.faults().stream().map(ContradictionsBesideFaultsTest::line).toList();
  }

  private static String line(Fault fault) {
    return fault.code() + " " + fault.pointer();
  }

  private static ObjectNode circuit() throws Exception {
    return (ObjectNode) JSON.readTree(CIRCUIT);
  }

  private static void set(JsonNode body, String pointer, JsonNode value) {
    int cut = pointer.lastIndexOf('/');
    JsonNode parent = body.at(pointer.substring(0, cut));
    String last = pointer.substring(cut + 1);
    if (parent instanceof ArrayNode array) {
      array.set(Integer.parseInt(last), value);
    } else {
      ((ObjectNode) parent).set(last, value);
    }
  }

  @Test
  void theCircuitItselfIsRight() throws Exception {
    byte[] bytes = circuit().toString().getBytes(StandardCharsets.UTF_8);
    assertEquals(circuit(), READER.read(bytes, "Circuit", Contradictions::of));
  }

  @Test
  void whatContradictsIsToldBesideWhatBreaksTheContract() throws Exception {
    ObjectNode body = circuit();
    body.put("surplus", 1);
    set(body, "/supply/originLoopImpedanceOhm", JSON.readTree("0.4"));
    set(body, "/supply/voltageDropPercent", JSON.readTree("\"1\""));
    set(body, "/cable/protectiveMeans", JSON.readTree("\"armour\""));
    set(body, "/device/ratedCurrentA", JSON.readTree("-16"));
    assertEquals(
        List.of(
            "wrong-type /supply/voltageDropPercent",
            "below-minimum /device/ratedCurrentA",
            "unknown-member /surplus",
            "contradiction /supply/originLoopImpedanceOhm",
            "contradiction /cable/protectiveMeans"),
        told(body));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/supply/loopImpedanceOhm | -1 | below-minimum",
        "/supply/loopImpedanceOhm | \"0.1\" | wrong-type",
        "/supply/maximumFaultCurrentA | 0.5e9 | above-maximum",
        "/edition | 5 | wrong-type",
        "/edition | \"bs7671-1925\" | unknown-value",
        "/liveConductors/0 | \"X1\" | unknown-value",
        "/liveConductors/0 | 1 | wrong-type",
        "/device/letThrough/0/prospectiveCurrentA | \"2000\" | wrong-type",
        "/device/magneticMultiples/upper | 0.1 | below-minimum",
        "/load | 7 | wrong-type",
        "/load/parts | {} | wrong-type",
        "/furtherCables | {\"construction\": \"singles\"} | wrong-type",
      })
  void aBrokenValueContradictsNothing(String pointer, String value, String code) throws Exception {
    ObjectNode body = circuit();
    set(body, pointer, JSON.readTree(value));
    assertEquals(List.of(code + " " + pointer), told(body));
  }

  @Test
  void aValueOfAnyTypeAnywhereIsRefusedOrTaken() throws Exception {
    List<String> places = new ArrayList<>();
    collect(circuit(), "", places);
    assertTrue(places.size() > 40, places::toString);
    for (String place : places) {
      for (String value :
          new String[] {"null", "true", "1", "1e308", "\"L1\"", "[]", "[7]", "{}"}) {
        ObjectNode body = circuit();
        set(body, place, JSON.readTree(value));
        byte[] bytes = body.toString().getBytes(StandardCharsets.UTF_8);
        try {
          READER.read(bytes, "Circuit", Contradictions::of);
        } catch (InvalidRequest refusal) {
          assertEquals(422, refusal.status(), place + " " + value);
        }
      }
    }
  }

  private static void collect(JsonNode node, String place, List<String> places) {
    if (!place.isEmpty()) {
      places.add(place);
    }
    node.properties()
        .forEach(each -> collect(each.getValue(), place + "/" + each.getKey(), places));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      collect(node.get(i), place + "/" + i, places);
    }
  }
}
