package circuitverdict.check;

import static circuitverdict.support.BoardCase.json;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.BoardCase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the circuits of a board have from it and from what is before it. */
class BoardInheritanceTest {
  private static final String DB2 = "/circuits/0";
  private static final String HEATER = "/circuits/0/circuits/1";
  private static final String RCCB =
      "{\"standard\": \"IEC 61008-1\", \"ratedCurrentA\": 80, \"poles\": 4, \"conditionalCapacityA\":"
          + " 10000, \"residual\": {\"operatingCurrentA\": 0.1, \"type\": \"A\", \"delay\": \"S\"}}";

  private static JsonNode of(JsonNode board, String place, String check) {
    return BoardCase.finding(BoardCase.item(BoardCase.answer(board), place), check);
  }

  private static String verdict(JsonNode finding) {
    return finding.path("verdict").textValue();
  }

  /** No name of a line is taken for one: only that circuit is not valid. */
  @ParameterizedTest
  @ValueSource(strings = {"L4", "L", "Lx", "L0", "LL", ""})
  void aNameOfNoLineIsAProblemOfTheCircuit(String name) {
    JsonNode live = json("['" + name + "', 'N']");
    JsonNode answer =
        BoardCase.answer(BoardCase.with(BoardCase.threeLevels(), HEATER + "/liveConductors", live));
    assertTrue(BoardCase.item(answer, HEATER).has("problem"));
    assertTrue(BoardCase.item(answer, "/circuits/0/circuits/2").has("answer"));
  }

  /** Marks on the device of a feeder say what its members would. */
  @Test
  void marksOnAFeedersDeviceAreRead() {
    String other = "'poles': 1, 'unidirectional': false";
    JsonNode marked =
        json("{'markings': ['BS EN 60898-1', 'C32', '6000', '3', '230/400V~'], " + other + "}");
    JsonNode stated =
        json(
            "{'standard': 'IEC 60898-1', 'characteristic': 'C', 'ratedCurrentA': 32,"
                + " 'breakingCapacityA': 6000, 'energyClass': 3, 'ratedVoltageV': 400,"
                + " 'ratedLineToEarthVoltageV': 230, "
                + other
                + "}");
    String at = DB2 + "/circuits/0/device";
    JsonNode byMarks = BoardCase.answer(BoardCase.with(BoardCase.threeLevels(), at, marked));
    JsonNode byMembers = BoardCase.answer(BoardCase.with(BoardCase.threeLevels(), at, stated));
    assertEquals(verdicts(byMembers), verdicts(byMarks));
    assertEquals(byMembers.path("totals"), byMarks.path("totals"));
  }

  private static List<String> verdicts(JsonNode answer) {
    List<String> verdicts = new ArrayList<>();
    for (JsonNode finding : answer.path("findings")) {
      verdicts.add(finding.path("check") + " " + finding.path("verdict"));
    }
    for (JsonNode item : answer.path("circuits")) {
      for (JsonNode finding : item.at("/answer/findings")) {
        verdicts.add(item.path("pointer") + " " + finding.path("check") + finding.path("verdict"));
      }
    }
    return verdicts;
  }

  /** A device of which not even the standard is known may be the one that must open. */
  @Test
  void anUndescribedDeviceIsNotPassedOver() {
    ObjectNode board =
        BoardCase.with(BoardCase.threeLevels(), DB2 + "/device", json("{'poles': 3}"));
    JsonNode rating =
        BoardCase.finding(BoardCase.answer(board), "assembly-rating", DB2 + "/assembly");
    assertEquals("not-determined", verdict(rating));
    assertTrue(
        BoardCase.missing(of(board, HEATER, "selectivity")).contains("/upstreamDevice/standard"));
  }

  /** In TT one residual device before them all serves every circuit, however deep. */
  @ParameterizedTest
  @ValueSource(strings = {"/incomer", "/residualDevice", DB2 + "/residualDevice"})
  void aResidualDeviceServesAllThatItIsBefore(String place) {
    ObjectNode board = tt();
    String check = "earth-fault-disconnection";
    assertEquals("does-not-comply", verdict(of(board, HEATER, check)));
    ObjectNode served = BoardCase.with(board, place, BoardCase.json(RCCB));
    assertEquals(
        "complies", verdict(of(served, HEATER, check)), () -> of(served, HEATER, check).toString());
  }

  /** RA of the installation, and of the protective conductors down to each board. */
  @Test
  void theElectrodeIsKnownDownTheTree() {
    ObjectNode board = BoardCase.with(tt(), "/incomer", BoardCase.json(RCCB));
    JsonNode points = BoardCase.answer(board).path("points");
    String electrode = "/supply/earthElectrodeResistanceOhm";
    // 20 m of 16 mm² at 90 °C, then 15 m of 10 mm² at 70 °C (IEC 60228).
    double db2 = 80 + 0.020 * 1.15 * 1.28;
    assertEquals(db2, points.get(1).at(electrode).doubleValue(), 1e-9);
    assertEquals(db2 + 0.015 * 1.83 * 1.2, points.get(2).at(electrode).doubleValue(), 1e-9);
  }

  private static ObjectNode tt() {
    ObjectNode board = BoardCase.threeLevels();
    ObjectNode supply = (ObjectNode) board.get("supply");
    supply.put("earthing", "TT").put("loopImpedanceOhm", 100);
    supply.put("earthElectrodeResistanceOhm", 80);
    ((ObjectNode) supply.get("faultCurrents")).remove("lineToEarth");
    return board;
  }

  /** Two devices of the same data are two devices. */
  @Test
  void equalDevicesInSeriesAreHeldAgainstEachOther() {
    ObjectNode board = BoardCase.with(tt(), "/incomer", BoardCase.json(RCCB));
    board = BoardCase.with(board, DB2 + "/incomer", BoardCase.json(RCCB));
    JsonNode item = BoardCase.item(BoardCase.answer(board), HEATER);
    List<String> upstream = new ArrayList<>();
    item.path("selectivity").forEach(each -> upstream.add(each.path("pointer").textValue()));
    assertEquals(List.of(DB2 + "/incomer", "/incomer", "/upstreamDevice"), upstream);
  }

  /** A residual device that circuits share opens for all of them on a fault in one. */
  @Test
  void aSharedResidualDeviceIsNotSelective() {
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), "/incomer", json(RCCB));
    board.set("requirements", json("{'selectivity': 'required'}"));
    JsonNode item = BoardCase.item(BoardCase.answer(board), HEATER);
    JsonNode shared = item.at("/selectivity/0");
    assertEquals("/incomer", shared.path("pointer").textValue());
    assertEquals("does-not-comply", shared.at("/finding/verdict").textValue());
    assertTrue(shared.at("/finding/counted").booleanValue());
  }

  /** A circuit's own device upstream hides none of the board's. */
  @Test
  void theBoardsOwnDeviceIsJudgedBesideAStatedOne() {
    JsonNode own = json("{'standard': 'BS 88-3', 'ratedCurrentA': 80}");
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), HEATER + "/upstreamDevice", own);
    JsonNode item = BoardCase.item(BoardCase.answer(board), HEATER);
    assertEquals(DB2 + "/device", item.at("/selectivity/0/pointer").textValue());
  }

  /** Each requirement stands until the same one is stated otherwise. */
  @Test
  void requirementsAreTakenOverOneByOne() {
    ObjectNode board = BoardCase.threeLevels();
    board.set("requirements", json("{'selectivity': 'required', 'evidence': 'proved'}"));
    ObjectNode own =
        BoardCase.with(board, HEATER + "/requirements", json("{'evidence': 'guidance'}"));
    assertTrue(of(own, HEATER, "selectivity").path("counted").booleanValue());
    own = BoardCase.with(board, HEATER + "/requirements", json("{'selectivity': 'preferred'}"));
    assertFalse(of(own, HEATER, "selectivity").path("counted").booleanValue());
  }

  /** What only stands in for the supply's figures fails no circuit, however deep. */
  @ParameterizedTest
  @CsvSource({"quotation, loopImpedanceOhm", "design, basis"})
  void aStandInFailsNothingFurtherDown(String stage, String left) {
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), "/stage", stage);
    ObjectNode supply = (ObjectNode) board.get("supply");
    supply.put("loopImpedanceOhm", 0.8);
    supply.remove(left);
    board = BoardCase.with(board, HEATER + "/cable/lengthM", 40);
    board = BoardCase.with(board, HEATER + "/device/ratedCurrentA", 32);
    JsonNode found = of(board, HEATER, "earth-fault-disconnection");
    assertEquals("not-determined", verdict(found), found::toString);
    assertEquals("stand-in-fails", found.path("reason").textValue());
    assertEquals("estimated", BoardCase.answer(board).at("/points/1/supply/basis").textValue());
  }

  /** The circuit that feeds the board of the request begins at the transformer as computed. */
  @Test
  void theRequestsOwnCircuitBeginsAtTheTransformer() {
    ObjectNode board = BoardCase.threeLevels();
    board.set(
        "supply",
        json(
            "{'point': 'origin', 'phases': 3, 'earthing': 'TN-S', 'ownership': 'private',"
                + " 'transformer': {'ratedPowerVA': 500000}}"));
    board.put("stage", "quotation");
    ObjectNode feeder = (ObjectNode) board.at(DB2);
    for (String name : List.of("liveConductors", "cable", "device")) {
      board.set(name, feeder.get(name));
    }
    JsonNode answer = BoardCase.answer(board);
    JsonNode own = BoardCase.item(answer, "");
    assertEquals("not-determined", verdict(BoardCase.finding(own, "earth-fault-disconnection")));
    assertFalse(own.toString().contains("typical-loop-impedance"), own::toString);
  }

  /** The drop up to a transformer's own point counts as stated. */
  @Test
  void theDropUpToATransformerIsKept() {
    ObjectNode board = BoardCase.mainBoard();
    ObjectNode supply =
        (ObjectNode)
            json(
                "{'phases': 3, 'earthing': 'TN-S', 'ownership': 'private', 'transformer':"
                    + " {'ratedPowerVA': 500000, 'primaryVoltageV': 11000, 'secondaryVoltageV': 400,"
                    + " 'impedanceVoltagePercent': 4.75, 'loadLossW': 5500}, 'grid':"
                    + " {'nominalVoltageV': 11000, 'maximumShortCircuitPowerVA': 250000000,"
                    + " 'minimumShortCircuitPowerVA': 120000000}}");
    supply.put("point", "board").put("voltageDropPercent", 2);
    board.set("supply", supply);
    double drop = of(board, "/circuits/0", "voltage-drop").at("/actual/value").doubleValue();
    assertTrue(drop > 2, () -> "drop " + drop);
  }

  /** At another frequency nothing of the board is judged either. */
  @Test
  void atAnotherFrequencyNothingIsJudged() {
    JsonNode answer =
        BoardCase.answer(BoardCase.with(BoardCase.mainBoard(), "/supply/frequencyHz", 60));
    for (JsonNode finding : answer.path("findings")) {
      assertEquals("not-determined", verdict(finding));
    }
  }

  /** What a ring feeds may leave it anywhere. */
  @Test
  void aRingFeedsNoBoard() {
    JsonNode answer =
        BoardCase.answer(
            BoardCase.with(BoardCase.threeLevels(), DB2 + "/cable/arrangement", "ring"));
    assertEquals(
        DB2 + "/cable/arrangement",
        BoardCase.item(answer, DB2).at("/problem/errors/0/pointer").textValue());
  }

  /** A residual device of the board itself stands what flows at its busbars, whatever is behind. */
  @ParameterizedTest
  @CsvSource({"3000, complies", "2999, does-not-comply"})
  void aResidualDeviceOfTheBoardStandsWhatFlowsThere(double conditional, String verdict) {
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), "/residualDevice", json(RCCB));
    board = BoardCase.with(board, "/residualDevice/conditionalCapacityA", conditional);
    board = BoardCase.with(board, "/assembly/standard", "IEC 61439-2");
    JsonNode found =
        BoardCase.finding(BoardCase.answer(board), "breaking-capacity", "/residualDevice");
    assertEquals(verdict, verdict(found), found::toString);
  }

  /** What a circuit's own device detects, a device before it must not be blinded by. */
  @ParameterizedTest
  @CsvSource({"AC, does-not-comply", "A, does-not-comply", "B, complies"})
  void aSharedDeviceSuitsEveryLoadBehindIt(String type, String verdict) {
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), "/incomer", json(RCCB));
    board = BoardCase.with(board, "/incomer/residual/type", type);
    for (String way :
        List.of(
            HEATER,
            "/circuits/0/circuits/2",
            "/circuits/0/circuits/0/circuits/0",
            "/circuits/0/circuits/0/circuits/1")) {
      board = BoardCase.with(board, way + "/load/residualWaveform", "sinusoidal");
    }
    board = BoardCase.with(board, HEATER + "/load/residualWaveform", "smooth-direct");
    JsonNode own = json(RCCB.replace("0.1,", "0.03,").replace("\"A\"", "\"B\""));
    board = BoardCase.with(board, HEATER + "/residualDevice", own);
    JsonNode found =
        BoardCase.finding(BoardCase.answer(board), "residual-grouping", "/incomer/residual/type");
    assertEquals(verdict, verdict(found), found::toString);
  }

  /** The most sensitive of several in series serves as additional protection. */
  @Test
  void theMostSensitiveDeviceServes() {
    ObjectNode board = BoardCase.with(tt(), DB2 + "/incomer", json(RCCB));
    JsonNode sensitive = json(RCCB.replace("0.1,", "0.03,").replace("\"S\"", "\"general\""));
    board = BoardCase.with(board, "/incomer", sensitive);
    JsonNode found = of(board, HEATER, "earth-fault-disconnection");
    assertTrue(found.toString().contains("0.03"), found::toString);
  }

  /** 30 % of 30 mA is 9 mA: what flows in the boards below flows in the device too. */
  @ParameterizedTest
  @CsvSource({
    "0.004, 0.001, complies",
    "0.004, 0.0011, does-not-comply",
    "0.0045, , not-determined"
  })
  void standingCurrentsOfTheBoardsBelowAddUp(double first, Double second, String verdict) {
    ObjectNode board = BoardCase.threeLevels();
    JsonNode rccb = json(RCCB.replace("0.1,", "0.03,").replace("\"S\"", "\"general\""));
    board = BoardCase.with(board, "/incomer", rccb);
    // All on L1: DB3 goes, two circuits of DB2 stay, and two more stand beside the feeder.
    ((ArrayNode) board.at(DB2 + "/circuits")).remove(0);
    String standing = "/load/protectiveConductorCurrentA";
    board = BoardCase.with(board, DB2 + "/circuits/0" + standing, first);
    board = BoardCase.with(board, DB2 + "/circuits/1" + standing, second == null ? null : second);
    ((ArrayNode) board.get("circuits")).add(board.at(DB2 + "/circuits/0"));
    JsonNode found = BoardCase.finding(BoardCase.answer(board), "residual-grouping", "/incomer");
    assertEquals(verdict, verdict(found), found::toString);
  }

  /** At sign-off a group of which a current is not stated keeps the board from complying. */
  @Test
  void atSignOffWhatIsNotStatedCounts() {
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), "/incomer", json(RCCB));
    JsonNode design = BoardCase.finding(BoardCase.answer(board), "residual-grouping", "/incomer");
    assertFalse(design.path("counted").booleanValue());
    board = BoardCase.with(board, "/stage", "sign-off");
    JsonNode signed = BoardCase.finding(BoardCase.answer(board), "residual-grouping", "/incomer");
    assertTrue(signed.path("counted").booleanValue());
  }

  /** Numbers are the same however they are written. */
  @Test
  void oneDeviceMayBeWrittenTwoWays() {
    ObjectNode board = BoardCase.threeLevels();
    JsonNode one = json("{'id': 'R', 'standard': 'IEC 61008-1', 'ratedCurrentA': 63}");
    JsonNode other = json("{'id': 'R', 'standard': 'IEC 61008-1', 'ratedCurrentA': 63.0}");
    board = BoardCase.with(board, HEATER + "/residualDevice", one);
    board = BoardCase.with(board, "/circuits/0/circuits/2/residualDevice", other);
    assertTrue(BoardCase.item(BoardCase.answer(board), "/circuits/0/circuits/2").has("answer"));
  }

  /** Of a board that is fed, what lacks of its supply lacks of the circuit that feeds it. */
  @Test
  void whatLacksOfAFedBoardIsNamedWhereItCanBeStated() {
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), DB2 + "/cable/lengthM", null);
    JsonNode found =
        BoardCase.finding(BoardCase.answer(board), "assembly-rating", DB2 + "/assembly");
    assertEquals("not-determined", verdict(found));
    assertEquals(List.of(DB2 + "/cable"), BoardCase.missing(found));
  }
}
