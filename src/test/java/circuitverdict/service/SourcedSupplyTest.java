package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.Http.Reply;
import circuitverdict.support.BoardCase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every call takes a transformer in place of the figures of the supply. */
@QuarkusTest
class SourcedSupplyTest {
  private static final String OVEN = "/v1/circuit-checks";

  /** The supply of the transformer at its own terminals, and what follows from it. */
  private static JsonNode network() {
    ObjectNode network =
        (ObjectNode)
            Variations.tree(Calls.ofContract("computeFaultCurrents", "transformer").body());
    network.remove(List.of("cable", "circuits", "furtherCables"));
    return network;
  }

  private static JsonNode found() {
    JsonNode answer = Http.post("/v1/fault-currents", network().toString()).json();
    return answer.at("/points/0/supply");
  }

  private static ObjectNode oven(JsonNode supply) {
    ObjectNode oven =
        (ObjectNode) Variations.tree(Calls.ofContract("checkCircuit", "complies").body());
    oven.put("stage", "design");
    oven.set("supply", supply);
    return oven;
  }

  /** The same answer as with the figures that the calculation of fault currents gives. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        OVEN,
        "/v1/breaking-capacity-verdicts",
        "/v1/let-through-verdicts",
        "/v1/selectivity-verdicts",
        "/v1/device-selections"
      })
  void theAnswerIsThatWithTheFiguresThatFollow(String path) {
    JsonNode byFigures = Boards.send(path, oven(found())).json();
    JsonNode bySource = Boards.send(path, oven(network().get("supply"))).json();
    for (String member :
        List.of("verdict", "summary", "findings", "limits", "remedies", "selected", "missing")) {
      assertEquals(byFigures.path(member), bySource.path(member), member);
    }
    assertEquals(found(), bySource.at("/points/0/supply"));
    assertFalse(bySource.at("/points/0/working").isEmpty());
    assertFalse(byFigures.has("points"));
  }

  /** What stood in for what the transformer does not state is told with the rest. */
  @Test
  void whatStoodInIsTold() {
    JsonNode answer = Boards.send(OVEN, oven(network().get("supply"))).json();
    List<String> codes = answer.path("assumptions").findValuesAsText("code");
    assertTrue(codes.contains("assumed-zero-sequence"), codes::toString);
  }

  /** A figure that cannot be found leaves what needs it open, at every stage. */
  @ParameterizedTest
  @ValueSource(strings = {"quotation", "design", "sign-off"})
  void whatCannotBeFoundIsMissing(String stage) {
    ObjectNode supply = network().get("supply").deepCopy();
    supply.with("transformer").remove("impedanceVoltagePercent");
    ObjectNode oven = oven(supply);
    oven.put("stage", stage);
    JsonNode answer = Boards.send(OVEN, oven).json();
    assertEquals("not-determined", answer.path("verdict").textValue());
    assertTrue(
        answer
            .path("missing")
            .findValuesAsText("pointer")
            .contains("/supply/transformer/impedanceVoltagePercent"));
  }

  /** Nothing typical stands in for a transformer that is described but in part. */
  @ParameterizedTest
  @ValueSource(strings = {"grid", "transformer/loadLossW", "transformer/impedanceVoltagePercent"})
  void nothingTypicalStandsInForIt(String left) {
    ObjectNode oven = oven(network().get("supply"));
    oven.put("stage", "quotation");
    oven = BoardCase.with(oven, "/supply/" + left, null);
    JsonNode answer = Boards.send(OVEN, oven).json();
    List<String> codes = answer.path("assumptions").findValuesAsText("code");
    assertFalse(codes.contains("typical-loop-impedance"), codes::toString);
    assertFalse(codes.contains("typical-fault-current"), codes::toString);
    assertNotEquals("complies", answer.path("verdict").textValue());
  }

  /** What was computed with a stand-in is said to be so, and signs nothing off. */
  @Test
  void whatRestsOnAStandInIsEstimated() {
    ObjectNode supply = network().get("supply").deepCopy();
    supply.with("transformer").remove("zeroSequenceImpedancePercent");
    JsonNode point = Boards.send(OVEN, oven(supply)).json().at("/points/0/supply");
    assertEquals("estimated", point.path("basis").textValue());
    ObjectNode signed = oven(point);
    signed.put("stage", "sign-off").put("edition", "bs7671-2018-a4");
    JsonNode answer = Boards.send(OVEN, signed).json();
    assertEquals("not-determined", answer.path("verdict").textValue());
    for (JsonNode finding : answer.path("findings")) {
      if (finding.path("check").textValue().matches("breaking-capacity|earth-fault.*")) {
        assertEquals("not-determined", finding.path("verdict").textValue(), finding::toString);
      }
    }
  }

  /** Typical figures serve a quotation alone, currents as loops. */
  @ParameterizedTest
  @CsvSource({
    "quotation, typical, complies",
    "design, typical, not-determined",
    "design, estimated, complies",
    "sign-off, estimated, not-determined"
  })
  void theBasisOfACurrentCounts(String stage, String basis, String verdict) {
    ObjectNode supply = (ObjectNode) found();
    supply.put("basis", basis);
    ObjectNode oven = oven(supply);
    oven.put("stage", stage).put("edition", "bs7671-2018-a4");
    oven = BoardCase.with(oven, "/device/breakingCapacityA", 25_000);
    JsonNode answer = Boards.send("/v1/breaking-capacity-verdicts", oven).json();
    assertEquals(verdict, answer.path("verdict").textValue(), answer::toString);
  }

  @ParameterizedTest
  @CsvSource({
    "loopImpedanceOhm, 0.3",
    "maximumFaultCurrentA, 16000",
    "lineToNeutralLoopImpedanceOhm, 0.3"
  })
  void figuresBesideATransformerAreRefused(String member, double value) {
    ObjectNode supply = network().get("supply").deepCopy();
    supply.put(member, value);
    Reply reply = Boards.send(OVEN, oven(supply));
    assertEquals(422, reply.status());
    assertEquals("/supply/" + member, reply.json().at("/errors/0/pointer").textValue());
  }

  /** A transformer is computed: nothing rests on what readings rest on. */
  @Test
  void whatNothingRestsOnIsTold() {
    ObjectNode supply = network().get("supply").deepCopy();
    supply.put("basis", "measured-cold").put("instrumentUncertaintyPercent", 5);
    JsonNode cautions = Boards.send(OVEN, oven(supply)).json().path("cautions");
    List<String> pointers = cautions.findValuesAsText("pointer");
    assertTrue(
        pointers.containsAll(List.of("/supply/basis", "/supply/instrumentUncertaintyPercent")),
        pointers::toString);
  }

  /** The drop up to the transformer's point counts as stated. */
  @Test
  void theDropUpToThePointIsKept() {
    ObjectNode supply = network().get("supply").deepCopy();
    supply.put("point", "board").put("voltageDropPercent", 1.5);
    ObjectNode figures = (ObjectNode) found();
    figures.put("point", "board").put("voltageDropPercent", 1.5);
    figures.remove("originLoopImpedanceOhm");
    assertEquals(drop(oven(figures)), drop(oven(supply)));
    assertTrue(drop(oven(supply)) > 1.5);
  }

  private static double drop(JsonNode oven) {
    for (JsonNode finding : Boards.send(OVEN, oven).json().path("findings")) {
      if (finding.path("check").textValue().equals("voltage-drop")) {
        return finding.at("/actual/value").doubleValue();
      }
    }
    throw new AssertionError("no voltage drop");
  }
}
