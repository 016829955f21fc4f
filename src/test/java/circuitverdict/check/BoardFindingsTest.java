package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.BoardCase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is judged of a board beside its circuits. The oven draws 26.1 A from L1, the prover 13 A
 * from L2; 311.1, 536.4.3.2, 536.4.201 and 531.3.2 of BS 7671 (from memory).
 */
class BoardFindingsTest {
  private static final String INCOMER = "/incomer";

  private static ObjectNode board() {
    return BoardCase.mainBoard();
  }

  private static JsonNode finding(JsonNode board, String check, String subject) {
    return BoardCase.finding(BoardCase.answer(board), check, subject);
  }

  private static JsonNode demand(JsonNode board) {
    return finding(board, "board-demand", INCOMER);
  }

  /** Both on one line: 0.8·(26.1 + 13) = 31.28 A; below, at and above. */
  @ParameterizedTest
  @CsvSource({"31.2, does-not-comply", "31.28, complies", "32, complies"})
  void theIncomerCarriesTheDemand(double rated, String verdict) {
    ObjectNode board = board();
    board.withArray("/circuits/1/liveConductors").removeAll().add("L1").add("N");
    ObjectNode small = BoardCase.with(board, "/incomer/ratedCurrentA", rated);
    // The device upstream is no larger, so that the switch is protected.
    JsonNode found = demand(BoardCase.with(small, "/upstreamDevice/ratedCurrentA", 31.28));
    JsonNode carried = BoardCase.comparison(found, "In");
    assertEquals(verdict, carried.path("verdict").textValue());
    assertEquals(31.28, carried.at("/actual/value").doubleValue(), 1e-12);
  }

  @Test
  void theDeviceUpstreamCarriesTheDemand() {
    JsonNode found = demand(BoardCase.with(board(), "/upstreamDevice/ratedCurrentA", 20));
    assertEquals("does-not-comply", found.path("verdict").textValue());
    assertEquals(26.1, found.at("/actual/value").doubleValue(), 1e-12);
    assertEquals(20, found.at("/limit/value").doubleValue());
  }

  /** Each of all devices before the board carries it, not the nearest alone. */
  @Test
  void everyDeviceBeforeTheBoardCarriesTheDemand() {
    JsonNode device = BoardCase.json("{\"standard\": \"BS 88-3\", \"ratedCurrentA\": 80}");
    ObjectNode board = BoardCase.with(board(), "/device", device);
    JsonNode found = demand(BoardCase.with(board, "/upstreamDevice/ratedCurrentA", 16));
    assertEquals("does-not-comply", found.path("verdict").textValue());
  }

  /** Without a stated diversity all of it counts: 39.1 A, not 31.28; one circuit has none. */
  @Test
  void noDiversityIsTheStrictest() {
    ObjectNode board = board();
    assertEquals(26.1, drawn(board));
    board.withArray("/circuits/1/liveConductors").removeAll().add("L1").add("N");
    assertEquals(31.28, drawn(board), 1e-12);
    assertEquals(39.1, drawn(BoardCase.with(board, "/diversityFactor", null)), 1e-12);
    assertEquals(26.1, drawn(BoardCase.with(board, "/diversityFactor", 0.1)), 1e-12);
  }

  private static double drawn(JsonNode board) {
    return BoardCase.answer(board).at("/totals/0/lines/0/demandA").doubleValue();
  }

  /** What is known of a line may exceed what carries it, whatever the rest draws. */
  @Test
  void aKnownOverloadFailsWhateverElseIsDrawn() {
    ObjectNode board = BoardCase.with(board(), "/circuits/1/load/designCurrentA", null);
    assertEquals("not-determined", demand(board).path("verdict").textValue());
    JsonNode found = demand(BoardCase.with(board, "/upstreamDevice/ratedCurrentA", 20));
    assertEquals("does-not-comply", found.path("verdict").textValue());
  }

  /** Two lines are loaded: a switch of one pole, or an RCCB of two, serves no such board. */
  @ParameterizedTest
  @CsvSource({
    "IEC 60947-3, 1, does-not-comply",
    "IEC 60947-3, 2, complies",
    "IEC 61008-1, 2, does-not-comply",
    "IEC 61008-1, 3, complies"
  })
  void theIncomerHasAPoleForEachLine(String standard, int poles, String verdict) {
    ObjectNode board = BoardCase.with(board(), "/incomer/standard", standard);
    JsonNode found = demand(BoardCase.with(board, "/incomer/poles", poles));
    assertEquals(verdict, found.path("verdict").textValue(), found::toString);
  }

  /** The main device meets the currents of the busbars: 3100 A of three lines. */
  @ParameterizedTest
  @CsvSource({
    "IEC 60898-1, breakingCapacityA, 3100, complies",
    "IEC 60898-1, breakingCapacityA, 1500, does-not-comply",
    "IEC 60898-1, , 0, not-determined",
    "IEC 61008-1, conditionalCapacityA, 3100, complies",
    "IEC 61008-1, conditionalCapacityA, 2000, does-not-comply",
    "IEC 61008-1, , 0, not-determined"
  })
  void theMainDeviceBreaksOrStandsWhatFlowsThere(
      String standard, String member, double capacity, String verdict) {
    JsonNode device =
        BoardCase.json(
            "{\"standard\": \""
                + standard
                + "\", \"ratedCurrentA\": 63, \"poles\": 4, \"residual\": {\"operatingCurrentA\":"
                + " 0.3, \"type\": \"A\", \"delay\": \"general\"}}");
    ObjectNode board = BoardCase.with(board(), INCOMER, device);
    // Behind no fuse of a unit to IEC 61439-3: nothing but its own capacity counts.
    board = BoardCase.with(board, "/assembly/standard", "IEC 61439-2");
    board = member == null ? board : BoardCase.with(board, "/incomer/" + member, capacity);
    JsonNode found = finding(board, "breaking-capacity", INCOMER);
    assertEquals(verdict, found.path("verdict").textValue(), found::toString);
  }

  /**
   * A switch of 63 A behind a fuse of 80 A: its circuits' devices, 32 A on L1, keep it within. One
   * of 25 A nothing protects.
   */
  @ParameterizedTest
  @CsvSource({
    "80, complies, 80",
    "63, complies, 32",
    "32, complies, 32",
    "31, does-not-comply, 32"
  })
  void aSwitchIsProtectedFromOverload(double rated, String verdict, double by) {
    JsonNode found = demand(BoardCase.with(board(), "/incomer/ratedCurrentA", rated));
    JsonNode protectedBy = BoardCase.comparison(found, "In,switch");
    assertEquals(verdict, protectedBy.path("verdict").textValue());
    assertEquals(by, protectedBy.at("/actual/value").doubleValue());
  }

  /** An incomer that breaks overloads itself needs no such protection. */
  @Test
  void aBreakerProtectsItself() {
    JsonNode breaker =
        BoardCase.json(
            "{\"standard\": \"IEC 60898-1\", \"characteristic\": \"C\", \"ratedCurrentA\": 32,"
                + " \"poles\": 3}");
    JsonNode found = demand(BoardCase.with(board(), INCOMER, breaker));
    assertEquals("complies", found.path("verdict").textValue());
    for (JsonNode comparison : found.path("comparisons")) {
      assertFalse(comparison.at("/limit/symbol").asText().equals("In,switch"));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/incomer, /incomer",
    "/incomer/ratedCurrentA, /incomer/ratedCurrentA",
    "/incomer/standard, /incomer/standard",
    "/circuits/0/load/designCurrentA, /circuits/0/load/designCurrentA",
    "/circuits/0/liveConductors, /circuits/0/liveConductors"
  })
  void whatIsNotStatedIsAskedFor(String left, String missing) {
    JsonNode found = demand(BoardCase.with(board(), left, null));
    assertEquals("not-determined", found.path("verdict").textValue());
    assertTrue(BoardCase.missing(found).contains(missing), found::toString);
    assertTrue(found.path("counted").booleanValue());
  }

  /** On a single-phase supply all is drawn from one line, whatever it is called. */
  @Test
  void ofOnePhaseAllIsOnOneLine() {
    ObjectNode board = board();
    board.set(
        "supply",
        BoardCase.json(
            "{\"point\": \"origin\", \"earthing\": \"TN-C-S\", \"phases\": 1, \"basis\":"
                + " \"declared\", \"ownership\": \"public\", \"loopImpedanceOhm\": 0.28,"
                + " \"maximumFaultCurrentA\": 1550}"));
    JsonNode totals = BoardCase.answer(board).path("totals");
    assertEquals(1, totals.at("/0/lines").size());
    assertEquals(39.1, totals.at("/0/lines/0/connectedA").doubleValue(), 1e-12);
  }

  /** Greatest current 3100 A, fuse 80 A; below, at and above what the assembly is rated for. */
  @ParameterizedTest
  @CsvSource({"3100, 80, complies", "3099, 100, does-not-comply", "16000, 79, does-not-comply"})
  void theAssemblyIsWithinItsConditionalRating(double rating, double fuse, String verdict) {
    ObjectNode board = BoardCase.with(board(), "/assembly/conditionalRatingA", rating);
    JsonNode found =
        finding(
            BoardCase.with(board, "/assembly/maximumUpstreamFuseA", fuse),
            "assembly-rating",
            "/assembly");
    assertEquals(verdict, found.path("verdict").textValue());
  }

  /**
   * Its maker names fuses that limit: behind another device guidance speaks up to 10 kA (IEC
   * 61439-1, 10.11.2, from memory), and no proof.
   */
  @ParameterizedTest
  @CsvSource({"IEC 60898-1, ", "BS 3036, ", "BS 88-2, aM"})
  void anotherDeviceIsNoSuchFuse(String standard, String category) {
    ObjectNode board = BoardCase.with(board(), "/upstreamDevice/standard", standard);
    board = BoardCase.with(board, "/upstreamDevice/utilizationCategory", category);
    JsonNode found = finding(board, "assembly-rating", "/assembly");
    assertEquals("complies", found.path("verdict").textValue());
    assertTrue(found.path("remarks").findValuesAsText("code").contains("by-guidance"));
    JsonNode proved = BoardCase.json("{\"evidence\": \"proved\"}");
    found = finding(BoardCase.with(board, "/requirements", proved), "assembly-rating", "/assembly");
    assertEquals("not-determined", found.path("verdict").textValue());
    for (String kind : List.of("threePhase", "lineToNeutral", "lineToEarth")) {
      board = BoardCase.with(board, "/supply/faultCurrents/" + kind + "/maximumA", 10_001);
    }
    board = BoardCase.with(board, "/supply/maximumFaultCurrentA", 10_001);
    found = finding(board, "assembly-rating", "/assembly");
    assertEquals(List.of("/upstreamDevice/standard"), BoardCase.missing(found));
  }

  private static ObjectNode shared(double first, Double second, String line) {
    JsonNode rcd =
        BoardCase.json(
            "{\"id\": \"R1\", \"standard\": \"IEC 61008-1\", \"ratedCurrentA\": 63, \"poles\": 4,"
                + " \"residual\": {\"operatingCurrentA\": 0.03, \"type\": \"A\"}}");
    ObjectNode board = board();
    for (int i = 0; i < 2; i++) {
      board = BoardCase.with(board, "/circuits/" + i + "/residualDevice", rcd);
    }
    board = BoardCase.with(board, "/circuits/0/load/protectiveConductorCurrentA", first);
    board = BoardCase.with(board, "/circuits/1/load/protectiveConductorCurrentA", second);
    board.withArray("/circuits/1/liveConductors").removeAll().add(line).add("N");
    return board;
  }

  /** Together no more than 0.3·30 mA = 9 mA; on different lines they do not add as numbers. */
  @ParameterizedTest
  @CsvSource({
    "0.004, 0.005, L1, complies, true",
    "0.004, 0.0051, L1, does-not-comply, true",
    "0.004, 0.0051, L2, not-determined, true",
    "0.004, 0.005, L2, complies, true",
    "0.004, , L1, not-determined, false",
    "0.0091, , L1, does-not-comply, true"
  })
  void standingCurrentsAddUp(
      double first, Double second, String line, String verdict, boolean counted) {
    JsonNode found =
        finding(shared(first, second, line), "residual-grouping", "/circuits/0/residualDevice");
    assertEquals(verdict, found.path("verdict").textValue(), found::toString);
    assertEquals(counted, found.path("counted").booleanValue());
  }

  /** 32 A and 16 A on one line behind an RCCB: 48 A at most, and 80 A by the fuse. */
  @ParameterizedTest
  @CsvSource({"48, complies", "47, does-not-comply"})
  void aSharedRccbIsProtectedFromOverload(double rated, String verdict) {
    ObjectNode board = shared(0.001, 0.001, "L1");
    for (int i = 0; i < 2; i++) {
      board = BoardCase.with(board, "/circuits/" + i + "/residualDevice/ratedCurrentA", rated);
    }
    JsonNode found = finding(board, "board-demand", "/circuits/0/residualDevice");
    assertEquals(verdict, found.path("verdict").textValue(), found::toString);
    assertEquals(48, found.at("/actual/value").doubleValue());
  }

  @Test
  void oneDeviceIsDescribedOneWay() {
    ObjectNode board =
        BoardCase.with(shared(0.001, 0.001, "L1"), "/circuits/1/residualDevice/ratedCurrentA", 40);
    JsonNode bad = BoardCase.item(BoardCase.answer(board), "/circuits/1");
    assertEquals("/circuits/1/residualDevice", bad.at("/problem/errors/0/pointer").textValue());
  }

  /**
   * Neither a fuse upstream that is not stated nor a device of no known rating protects a switch.
   */
  @Test
  void whatProtectsASwitchIsAskedFor() {
    ObjectNode board = BoardCase.with(board(), "/incomer/ratedCurrentA", 31);
    JsonNode without = demand(BoardCase.with(board, "/upstreamDevice", null));
    assertEquals("not-determined", without.path("verdict").textValue());
    assertTrue(BoardCase.missing(without).contains("/upstreamDevice"), without::toString);
    JsonNode unrated = demand(BoardCase.with(board, "/upstreamDevice/ratedCurrentA", null));
    assertEquals("not-determined", unrated.path("verdict").textValue());
    assertTrue(BoardCase.missing(unrated).contains("/upstreamDevice/ratedCurrentA"));
    JsonNode open = demand(BoardCase.with(board, "/circuits/0/device/ratedCurrentA", null));
    assertEquals(
        "not-determined", BoardCase.comparison(open, "In,switch").path("verdict").asText());
  }

  /** An assembly without a rating, or without a fuse before it, is open. */
  @ParameterizedTest
  @CsvSource({
    "/assembly/conditionalRatingA, /assembly/conditionalRatingA",
    "/assembly/maximumUpstreamFuseA, /assembly/maximumUpstreamFuseA",
    "/upstreamDevice/ratedCurrentA, /upstreamDevice/ratedCurrentA",
    "/upstreamDevice, /upstreamDevice"
  })
  void whatTheAssemblyRestsOnIsAskedFor(String left, String missing) {
    JsonNode found = finding(BoardCase.with(board(), left, null), "assembly-rating", "/assembly");
    assertEquals("not-determined", found.path("verdict").textValue());
    assertEquals(List.of(missing), BoardCase.missing(found));
  }

  /** Currents that contradict the loops rate no assembly. */
  @Test
  void contradictingCurrentsRateNothing() {
    ObjectNode board = BoardCase.with(board(), "/supply/faultCurrents", null);
    board = BoardCase.with(board, "/supply/maximumFaultCurrentA", 100);
    JsonNode found = finding(board, "assembly-rating", "/assembly");
    assertEquals("not-determined", found.path("verdict").textValue());
  }

  /** What is wrong with the type, or not known of a load, of a shared device. */
  @Test
  void theTypeOfASharedDeviceIsAskedFor() {
    ObjectNode board = shared(0.001, 0.001, "L1");
    String at = "/circuits/0/residualDevice/residual/type";
    JsonNode found = finding(board, "residual-grouping", at);
    // Heaters: sinusoidal by their nature is not what is stated.
    assertFalse(found.path("verdict").textValue().equals("does-not-comply"));
    for (int i = 0; i < 2; i++) {
      board = BoardCase.with(board, "/circuits/" + i + "/residualDevice/residual/type", null);
    }
    JsonNode untyped = finding(board, "residual-grouping", at);
    assertEquals("not-determined", untyped.path("verdict").textValue());
    assertEquals(List.of(at), BoardCase.missing(untyped));
  }
}
