package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.BoardCase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Three boards, one fed from the other, worked through by hand. Resistances of IEC 60228 (r 1.15,
 * 1.83, 7.41 and 12.1 mΩ/m at 20 °C for 16, 10, 2.5 and 1.5 mm²), × 1.28 to 90 °C and × 1.20 to 70
 * °C; mV/A/m of tables 4E4B and 4D2B.
 *
 * <pre>
 * Origin  declared Ze = 0.2 Ω, three-phase 3000 A
 * DB2     20 m of 16/16 mm², 90 °C:  0.2 + 0.020·(1.15 + 1.15)·1.28          = 0.25888 Ω
 * DB3     15 m of 10/10 mm², 70 °C:  0.25888 + 0.015·(1.83 + 1.83)·1.20      = 0.32476 Ω
 * heater  10 m of 2.5/1.5 mm²:       0.32476 + 0.010·(7.41 + 12.1)·1.20      = 0.55888 Ω
 *
 * Demand  DB3  L2: 10 + 6 = 16 A
 *         DB2  L1: 20 + 12 = 32 A, × 0.75 = 24 A; L2: 16 A of one circuit, which has no diversity
 *         DB1  L1: 24 A, L2: 16 A, L3: nothing
 *
 * Drop    DB2  24 A out, back √(24² + 16² − 24·16) = 21.166 A of one power factor: together 45.166 A;
 *              2.5·45.166·20/1000 = 2.2583 V of 400 V                = 0.56458 %
 *         DB3  16 A: 4.4·16·15/1000                        = 1.056 V = 0.45913 %
 *         heater 10 A: 18·10·10/1000                       = 1.800 V = 0.78261 %
 *         in all                                                       1.80632 %
 *
 * Greatest current  Z of the source 1.1·400/(√3·3000) = 0.084678 Ω, its angle not stated: with the
 *         cold 0.020·1.15 = 0.023 Ω no less than √(0.084678² + 0.023²) = 0.087746 Ω: 2895 A at DB2
 * </pre>
 */
class BoardTreeTest {
  private static final String DB2 = "/circuits/0";
  private static final String DB3 = "/circuits/0/circuits/0";
  private static final String HEATER = "/circuits/0/circuits/0/circuits/0";

  private static double actual(JsonNode answer, String place, String check) {
    return BoardCase.finding(BoardCase.item(answer, place), check)
        .at("/actual/value")
        .doubleValue();
  }

  @Test
  void loopsAreCarriedDown() {
    JsonNode answer = BoardCase.answer(BoardCase.threeLevels());
    String check = "earth-fault-disconnection";
    assertEquals(0.25888, actual(answer, DB2, check), 1e-9);
    assertEquals(0.32476, actual(answer, DB3, check), 1e-9);
    assertEquals(0.55888, actual(answer, HEATER, check), 1e-9);
  }

  @Test
  void voltageDropAddsUp() {
    JsonNode answer = BoardCase.answer(BoardCase.threeLevels());
    assertEquals(0.56458, actual(answer, DB2, "voltage-drop"), 6e-6);
    assertEquals(1.02371, actual(answer, DB3, "voltage-drop"), 6e-6);
    assertEquals(1.80632, actual(answer, HEATER, "voltage-drop"), 6e-6);
  }

  @Test
  void faultCurrentsAreCarriedDown() {
    JsonNode answer = BoardCase.answer(BoardCase.threeLevels());
    JsonNode points = answer.path("points");
    assertEquals(3, points.size());
    double three = points.get(1).at("/supply/faultCurrents/threePhase/maximumA").doubleValue();
    double source = 1.1 * 400 / (Math.sqrt(3) * 3000);
    assertEquals(1.1 * 400 / (Math.sqrt(3) * Math.hypot(source, 0.023)), three, 1e-6);
    // Of a board of one line no fault of three can flow: the greatest is that to neutral.
    JsonNode single = points.get(2).path("supply");
    assertEquals(
        single.at("/faultCurrents/lineToNeutral/maximumA").doubleValue(),
        single.path("maximumFaultCurrentA").doubleValue());
  }

  @Test
  void whatABoardDrawsIsTheLoadOfWhatFeedsIt() {
    JsonNode answer = BoardCase.answer(BoardCase.threeLevels());
    String expected =
        "[{'pointer':'','lines':[{'line':1,'connectedA':24,'demandA':24},"
            + "{'line':2,'connectedA':16,'demandA':16},{'line':3,'connectedA':0,'demandA':0}]},"
            + "{'pointer':'/circuits/0','lines':[{'line':1,'connectedA':32,'demandA':24},"
            + "{'line':2,'connectedA':16,'demandA':16}]},"
            + "{'pointer':'/circuits/0/circuits/0','lines':[{'line':2,'connectedA':16,'demandA':16}]}]";
    assertEquals(expected.replace('\'', '"'), answer.path("totals").toString());
    assertEquals(24, actual(answer, DB2, "overload-protection"));
  }

  /** A stated load of the feeder counts where it is more, and must not be less. */
  @ParameterizedTest
  @CsvSource({"23.9, 24, does-not-comply", "24, 24, complies", "30, 30, complies"})
  void aStatedLoadOfTheFeederIsNoLessThanItsBoardDraws(
      double stated, double counts, String verdict) {
    ObjectNode board = BoardCase.threeLevels();
    JsonNode load = BoardCase.json("{\"kind\": \"mixed\", \"designCurrentA\": " + stated + "}");
    JsonNode answer = BoardCase.answer(BoardCase.with(board, DB2 + "/load", load));
    assertEquals(counts, actual(answer, DB2, "overload-protection"));
    JsonNode demand = BoardCase.finding(answer, "board-demand", DB2 + "/incomer");
    assertEquals(verdict, BoardCase.comparison(demand, "Ib").path("verdict").textValue());
    // So much may each of its lines carry.
    assertEquals(counts, answer.at("/totals/0/lines/0/connectedA").doubleValue());
    assertEquals(stated, answer.at("/totals/0/lines/1/connectedA").doubleValue(), 1e-9);
  }

  /** Leaving out the diversity never helps. */
  @Test
  void noDiversityIsTheStrictest() {
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), DB2 + "/diversityFactor", null);
    assertEquals(32, actual(BoardCase.answer(board), DB2, "overload-protection"));
  }

  /** All on one line: out and back, 5.04 % and not the half of it. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void theDropOfUnequalLinesCountsWithTheNeutral(boolean stated) {
    ObjectNode board = BoardCase.with(BoardCase.threeLevels(), DB2 + "/cable/lengthM", 100);
    ((ArrayNode) board.at(DB2 + "/circuits")).remove(0);
    board = BoardCase.with(board, DB2 + "/circuits/0/load/designCurrentA", 20);
    board = BoardCase.with(board, DB2 + "/circuits/1/load/designCurrentA", 20);
    board = BoardCase.with(board, DB2 + "/diversityFactor", null);
    if (stated) {
      JsonNode load = BoardCase.json("{\"kind\": \"mixed\", \"designCurrentA\": 40}");
      board = BoardCase.with(board, DB2 + "/load", load);
    }
    // Three-phase 2.5 mV/A/m of 400 V, 40 A out and 40 A back.
    assertEquals(
        100 * 2.5 * 80 * 100 / 1000 / 400,
        actual(BoardCase.answer(board), DB2, "voltage-drop"),
        1e-9);
  }

  /** A load of one line on a way of three is drawn from one of them. */
  @Test
  void aLoadOfOneLineOfThreeIsNotAlike() {
    ObjectNode board = BoardCase.threeLevels();
    ((ArrayNode) board.at(DB2 + "/circuits")).remove(0);
    ((ArrayNode) board.at(DB2 + "/circuits")).remove(1);
    String heater = DB2 + "/circuits/0";
    JsonNode live = board.at(DB2 + "/liveConductors");
    board = BoardCase.with(board, heater + "/liveConductors", live);
    board = BoardCase.with(board, heater + "/load/ratedVoltageV", 230);
    assertEquals(
        100 * 2.5 * 40 * 20 / 1000 / 400,
        actual(BoardCase.answer(board), DB2, "voltage-drop"),
        1e-9);
  }

  /**
   * 40 A of cos φ 0.6 on L1, 53.13° behind, and 40 A of a resistance on L2, 120° behind: they are
   * 66.87° apart, and 2·40·cos 33.43° = 66.76 A return.
   */
  @Test
  void theNeutralCurrentIsTheVectorSum() {
    ObjectNode board = BoardCase.threeLevels();
    ((ArrayNode) board.at(DB2 + "/circuits")).remove(0);
    board = BoardCase.with(board, DB2 + "/diversityFactor", null);
    String first = DB2 + "/circuits/0";
    board = BoardCase.with(board, first + "/load/designCurrentA", 40);
    board = BoardCase.with(board, first + "/load/kind", "motor");
    board = BoardCase.with(board, first + "/load/powerFactor", 0.6);
    board = BoardCase.with(board, DB2 + "/circuits/1/load/designCurrentA", 40);
    board.withArray(DB2 + "/circuits/1/liveConductors").removeAll().add("L2").add("N");
    double back = 2 * 40 * Math.cos(Math.toRadians((120 - Math.toDegrees(Math.acos(0.6))) / 2));
    assertEquals(66.76, back, 0.005);
    assertEquals(
        100 * 2.5 * (40 + back) * 20 / 1000 / 400,
        actual(BoardCase.answer(board), DB2, "voltage-drop"),
        1e-9);
  }

  /** What is stated of the drop counts where it is more, never where it is less. */
  @ParameterizedTest
  @CsvSource({"30, 45.166", "50, 50"})
  void aStatedCurrentOfTheDropIsNoWayOut(double stated, double counts) {
    JsonNode load =
        BoardCase.json("{\"kind\": \"mixed\", \"voltageDropCurrentA\": " + stated + "}");
    JsonNode answer =
        BoardCase.answer(BoardCase.with(BoardCase.threeLevels(), DB2 + "/load", load));
    assertEquals(100 * 2.5 * counts * 20 / 1000 / 400, actual(answer, DB2, "voltage-drop"), 1e-5);
  }

  /** A load between two lines of three: 2/√3 of what a balanced one drops. */
  @Test
  void theDropOfALoadBetweenTwoLinesIsThatOfTwo() {
    ObjectNode board = BoardCase.threeLevels();
    ((ArrayNode) board.at(DB2 + "/circuits")).remove(0);
    ((ArrayNode) board.at(DB2 + "/circuits")).remove(1);
    for (String place : List.of(DB2, DB2 + "/circuits/0")) {
      ArrayNode live =
          ((ObjectNode) board.at(place)).putArray("liveConductors").add("L1").add("L2");
      if (place.equals(DB2)) {
        live.add("L3");
      }
    }
    double balanced = 100 * 2.5 * 20 * 20 / 1000 / 400;
    assertEquals(
        balanced * 2 / Math.sqrt(3), actual(BoardCase.answer(board), DB2, "voltage-drop"), 1e-9);
  }

  /** Selectivity is judged to each device before a circuit, the nearest in its own answer. */
  @Test
  void selectivityIsJudgedToEachDeviceUpstream() {
    JsonNode answer = BoardCase.answer(BoardCase.threeLevels());
    assertEquals(List.of(), subjects(BoardCase.item(answer, DB2)));
    assertEquals(List.of("/upstreamDevice"), subjects(BoardCase.item(answer, DB3)));
    JsonNode heater = BoardCase.item(answer, HEATER);
    assertEquals(List.of(DB2 + "/device", "/upstreamDevice"), subjects(heater));
    assertFalse(heater.at("/selectivity/0/finding/counted").booleanValue());
    ObjectNode required =
        BoardCase.with(
            BoardCase.threeLevels(),
            "/requirements",
            BoardCase.json("{\"selectivity\": \"required\"}"));
    JsonNode counted = BoardCase.item(BoardCase.answer(required), HEATER);
    assertTrue(counted.at("/selectivity/0/finding/counted").booleanValue());
  }

  private static List<String> subjects(JsonNode item) {
    List<String> subjects = new ArrayList<>();
    item.path("selectivity").forEach(each -> subjects.add(each.path("pointer").textValue()));
    return subjects;
  }

  /** Down the tree loops and drops rise and fault currents fall, whatever the lengths. */
  @Test
  void whatIsFedIsFurtherFromTheSource() {
    long seed = 20261127;
    Random random = new Random(seed);
    for (int i = 0; i < 60; i++) {
      ObjectNode board = BoardCase.threeLevels();
      for (String place : List.of(DB2, DB3, HEATER)) {
        board = BoardCase.with(board, place + "/cable/lengthM", 1 + random.nextInt(60));
      }
      board = BoardCase.with(board, DB2 + "/diversityFactor", 0.1 + 0.9 * random.nextDouble());
      JsonNode answer = BoardCase.minimal(board);
      String told = "seed " + seed + ": " + board;
      rising(answer, "loopImpedanceOhm", told);
      rising(answer, "voltageDropPercent", told);
      JsonNode points = answer.path("points");
      for (int p = 1; p < points.size(); p++) {
        String current = "/supply/maximumFaultCurrentA";
        double nearer = points.get(p - 1).at(current).doubleValue();
        assertTrue(points.get(p).at(current).doubleValue() < nearer, told);
      }
      double heater = actual(answer, HEATER, "voltage-drop");
      assertTrue(heater > points.get(2).at("/supply/voltageDropPercent").doubleValue(), told);
    }
  }

  private static void rising(JsonNode answer, String member, String told) {
    double before = 0;
    for (JsonNode point : answer.path("points")) {
      double value = point.path("supply").path(member).asDouble(before);
      assertTrue(value >= before, () -> member + ", " + told);
      before = value;
    }
    assertTrue(before > 0, told);
  }
}
