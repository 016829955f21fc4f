package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.Http.Reply;
import circuitverdict.support.BoardCase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks of whole boards, as a caller uses them. */
@QuarkusTest
class BoardChecksTest {

  /** What a circuit of the board does not state, and the board does. */
  private static ObjectNode alone(ObjectNode board, int index) {
    ObjectNode circuit = (ObjectNode) board.at("/circuits/" + index).deepCopy();
    for (String name : List.of("edition", "stage", "supply", "assembly", "premises")) {
      circuit.set(name, board.get(name));
    }
    circuit.set("incomer", Variations.tree("{\"standard\": \"IEC 60947-3\", \"poles\": 4}"));
    circuit.set("upstreamDevice", board.get("upstreamDevice"));
    return circuit;
  }

  /** The answer to a circuit is, byte for byte, that of the call for it alone. */
  @ParameterizedTest
  @CsvSource({"0, ", "1, ", "0, return=minimal"})
  void aCircuitIsAnsweredAsByItself(int index, String prefer) {
    ObjectNode board = Boards.ofContract("complies");
    String[] headers = prefer == null ? new String[0] : new String[] {"Prefer", prefer};
    Reply whole = Boards.send(board, headers);
    Reply single = Boards.send("/v1/circuit-checks", alone(board, index), headers);
    JsonNode item = whole.json().path("circuits").get(index);
    assertEquals(single.header("ETag"), item.path("etag").textValue());
    assertTrue(whole.text().contains("\"answer\":" + single.text()));
  }

  @Test
  void theOrderIsThatOfTheRequestEachBeforeWhatItFeeds() {
    JsonNode answer = Boards.answer(BoardCase.threeLevels());
    assertEquals(
        List.of(
            "/circuits/0",
            "/circuits/0/circuits/0",
            "/circuits/0/circuits/0/circuits/0",
            "/circuits/0/circuits/0/circuits/1",
            "/circuits/0/circuits/1",
            "/circuits/0/circuits/2"),
        answer.path("circuits").findValuesAsText("pointer").stream()
            .filter(text -> text.matches("(/circuits/\\d+)+"))
            .toList());
    int line = 1;
    for (JsonNode item : answer.path("circuits")) {
      assertEquals(line++, item.path("line").intValue());
    }
  }

  /** One bad circuit never spoils the rest, and never lets the whole comply. */
  @ParameterizedTest
  @CsvSource({
    "/cable/lengthM, -15, below-minimum, /circuits/1/cable/lengthM",
    "/cable/lengthM, \"long\", wrong-type, /circuits/1/cable/lengthM",
    "/cable/protectiveMeans, \"armour\", contradiction, /circuits/1/cable/protectiveMeans",
    "/colour, 1, unknown-member, /circuits/1/colour",
    "/stage, \"design\", contradiction, /circuits/1/stage",
    "/load, null, null-not-allowed, /circuits/1/load",
    "/diversityFactor, 2, above-maximum, /circuits/1/diversityFactor"
  })
  void oneBadCircuitSpoilsNoneOfTheRest(String member, String value, String code, String pointer) {
    ObjectNode board = Boards.ofContract("complies");
    JsonNode whole = Boards.answer(board);
    JsonNode answer =
        Boards.answer(BoardCase.with(board, "/circuits/1" + member, Variations.tree(value)));
    JsonNode bad = BoardCase.item(answer, "/circuits/1");
    assertEquals(422, bad.at("/problem/status").intValue());
    assertEquals(code, bad.at("/problem/errors/0/code").textValue());
    assertEquals(pointer, bad.at("/problem/errors/0/pointer").textValue());
    assertFalse(bad.has("answer"));
    assertEquals(whole.path("circuits").get(0), answer.path("circuits").get(0));
    assertEquals("not-determined", answer.path("verdict").textValue());
    assertEquals("circuit-not-valid", answer.path("reason").textValue());
    // What the board draws is not known either.
    JsonNode demand = BoardCase.finding(answer, "board-demand", "/incomer");
    assertEquals("not-determined", demand.path("verdict").textValue());
    assertEquals(List.of("/circuits/1"), BoardCase.missing(demand));
  }

  /** Each of many bad circuits is told, however many there are. */
  @Test
  void everyBadCircuitIsTold() {
    ObjectNode board = Boards.ofContract("complies");
    ArrayNode circuits = (ArrayNode) board.get("circuits");
    ObjectNode bad = BoardCase.with(circuits.get(0), "/cable/lengthM", -1);
    for (int i = 0; i < 150; i++) {
      circuits.add(bad);
    }
    JsonNode answer = Boards.answer(board);
    assertEquals(152, answer.path("circuits").size());
    for (int i = 2; i < 152; i++) {
      String pointer = "/circuits/" + i + "/cable/lengthM";
      JsonNode error = answer.path("circuits").get(i).at("/problem/errors/0");
      assertEquals(pointer, error.path("pointer").textValue());
    }
    assertEquals("complies", answer.at("/circuits/0/answer/verdict").textValue());
  }

  /** What is wrong with the board itself is wrong with all that leaves from it. */
  @ParameterizedTest
  @CsvSource({
    "/diversityFactor, 0, /diversityFactor",
    "/supply/phases, 2, /supply/phases",
    "/supply/colour, 2, /supply/colour",
    "/circuits, {}, /circuits",
    "/incomer, 3, /incomer"
  })
  void aBadBoardIsRefused(String member, String value, String pointer) {
    ObjectNode board = Boards.ofContract("complies");
    Reply reply =
        Http.post(Boards.PATH, BoardCase.with(board, member, Variations.tree(value)).toString());
    assertEquals(422, reply.status());
    assertEquals(pointer, reply.json().at("/errors/0/pointer").textValue());
  }

  /** Circuits behind one that is not valid are judged on a supply of which nothing is known. */
  @Test
  void whatABadFeederFeedsIsNotDetermined() {
    ObjectNode board =
        BoardCase.with(BoardCase.threeLevels(), "/circuits/0/cable/lengthM", Variations.tree("-1"));
    JsonNode answer = Boards.answer(board);
    assertEquals(6, answer.path("circuits").size());
    assertTrue(BoardCase.item(answer, "/circuits/0").has("problem"));
    JsonNode heater = BoardCase.item(answer, "/circuits/0/circuits/1");
    JsonNode disconnection = BoardCase.finding(heater, "earth-fault-disconnection");
    assertEquals("not-determined", disconnection.path("verdict").textValue());
    assertTrue(BoardCase.missing(disconnection).contains("/supply/loopImpedanceOhm"));
  }

  /** An RCCB as main switch serves every circuit that has no residual function of its own. */
  @Test
  void aResidualIncomerProtectsItsCircuits() {
    ObjectNode outlets =
        BoardCase.with(
            Boards.ofContract("complies"),
            "/circuits/0/load",
            Variations.tree(
                "{\"kind\": \"socket-outlets\", \"use\": \"other\", \"designCurrentA\": 20,"
                    + " \"connection\": \"socket-outlet\", \"ratedCurrentA\": 13,"
                    + " \"residualWaveform\": \"pulsating-direct\"}"));
    JsonNode rccb =
        Variations.tree(
            "{\"standard\": \"IEC 61008-1\", \"ratedCurrentA\": 80, \"poles\": 4,"
                + " \"residual\": {\"operatingCurrentA\": 0.03, \"type\": \"A\","
                + " \"delay\": \"general\"}}");
    String check = "additional-protection";
    assertEquals("does-not-comply", verdict(Boards.answer(outlets), check));
    JsonNode behind = Boards.answer(BoardCase.with(outlets, "/incomer", rccb));
    assertEquals("complies", verdict(behind, check));
  }

  private static String verdict(JsonNode answer, String check) {
    JsonNode finding = BoardCase.finding(BoardCase.item(answer, "/circuits/0"), check);
    return finding.path("verdict").textValue();
  }

  /** A circuit's own statements stand before those of its board. */
  @Test
  void aCircuitsOwnStatementsComeFirst() {
    JsonNode shower =
        Variations.tree(
            "{\"use\": \"commercial\", \"operatedBy\": \"ordinary-persons\","
                + " \"locations\": [\"bath-or-shower\"]}");
    ObjectNode board = Boards.ofContract("complies");
    JsonNode answer = Boards.answer(BoardCase.with(board, "/circuits/0/premises", shower));
    assertEquals("does-not-comply", verdict(answer, "additional-protection"));
  }

  /** From a transformer fault levels follow, and the circuits are judged by them. */
  @Test
  void theSourceMayBeATransformer() {
    ObjectNode network =
        (ObjectNode)
            Variations.tree(Calls.ofContract("computeFaultCurrents", "transformer").body());
    JsonNode points = Http.post("/v1/fault-currents", network.toString()).json().path("points");
    ObjectNode board = Boards.ofContract("complies");
    board.set("supply", network.get("supply"));
    JsonNode answer = Boards.answer(board);
    JsonNode breaking =
        BoardCase.finding(BoardCase.item(answer, "/circuits/0"), "breaking-capacity");
    assertEquals(
        points.get(0).at("/supply/faultCurrents/lineToNeutral/maximumA").doubleValue(),
        breaking.at("/actual/value").doubleValue());
    assertEquals("/supply", answer.at("/points/0/pointer").textValue());
  }
}
