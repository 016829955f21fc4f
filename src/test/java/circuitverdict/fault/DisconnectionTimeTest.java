package circuitverdict.fault;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.Circuit;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Greatest disconnection times and to which circuits they apply (411.3.2, Table 41.1). */
class DisconnectionTimeTest {
  private static final String A2 = "bs7671-2018-a2";
  private static final String FIRST = "bs7671-2008";

  /** 411.3.2.2: sockets up to 63 A, fixed equipment up to 32 A; worked example A12. */
  @ParameterizedTest
  @CsvSource({
    "TN-S, fixed, 32, 0.4, 0.4",
    "TN-S, fixed, 32.1, 5, 5",
    "TN-C-S, fixed, 63, 5, 5",
    "TN-C-S, socket-outlet, 32, 0.4, 0.4",
    "TN-C-S, socket-outlet, 63, 0.4, 0.4",
    "TN-C-S, socket-outlet, 63.1, 5, 5",
    "TN-C-S, , 32, 0.4, 0.4",
    "TN-C-S, , 33, 0.4, 5",
    "TN-C-S, , 63, 0.4, 5",
    "TN-C-S, , 64, 5, 5",
    "TT, fixed, 32, 0.2, 0.2",
    "TT, fixed, 33, 1, 1",
    "TT, socket-outlet, 63, 0.2, 0.2",
    "TT, , 40, 0.2, 1"
  })
  void scopeOfTheTable(
      String earthing, String connection, double rated, double least, double most) {
    assertTimes(circuit(A2, earthing, connection, rated), least, most);
  }

  /** BS 7671:2008, 411.3.2.2: all final circuits up to 32 A, sockets or not. */
  @ParameterizedTest
  @CsvSource({
    "socket-outlet, 32, 0.4",
    "socket-outlet, 33, 5",
    "socket-outlet, 63, 5",
    "fixed, 32, 0.4"
  })
  void firstIssueOfTheSeventeenthEditionEndsAtThirtyTwo(
      String connection, double rated, double time) {
    assertTimes(circuit(FIRST, "TN-C-S", connection, rated), time, time);
  }

  /** 411.3.2.3 and .4: distribution circuits take 5 s in TN and 1 s in TT, whatever they feed. */
  @ParameterizedTest
  @CsvSource({"TN-S, 5", "TN-C-S, 5", "TT, 1"})
  void distributionCircuitsHaveTheirOwnTime(String earthing, double time) {
    Scenario circuit =
        circuit(A2, earthing, "socket-outlet", 16).with("/circuitKind", "distribution");
    assertTimes(circuit, time, time);
  }

  /** Final unless stated. */
  @Test
  void circuitIsFinalUnlessStated() {
    assertTimes(circuit(A2, "TN-S", "fixed", 16).with("/circuitKind", "final"), 0.4, 0.4);
  }

  /** Table 41.1 by nominal voltage: above 50 to 120, to 230, to 400 V, above. */
  @ParameterizedTest
  @CsvSource({
    "TN-S, 110, 0.8", "TN-S, 120, 0.8", "TN-S, 121, 0.4", "TN-S, 230, 0.4", "TN-S, 231, 0.2",
    "TN-S, 400, 0.2", "TN-S, 401, 0.1", "TT, 120, 0.3", "TT, 230, 0.2", "TT, 240, 0.07",
    "TT, 401, 0.04"
  })
  void timeFollowsTheVoltage(String earthing, double volts, double time) {
    Scenario circuit =
        circuit(A2, earthing, "fixed", 16)
            .with("/supply/ownership", "private")
            .with("/supply/lineToEarthVoltageV", volts);
    assertTimes(circuit, time, time);
  }

  /** One socket anywhere sets the 63 A bound; fixed counts only where all parts are. */
  @ParameterizedTest
  @CsvSource({"fixed, socket-outlet, 0.4, 0.4", "fixed, fixed, 5, 5", "fixed, , 0.4, 5"})
  void socketAnywhereCounts(String first, String second, double least, double most) {
    String other = second == null ? "{}" : "{\"connection\": \"" + second + "\"}";
    Scenario circuit =
        circuit(A2, "TN-S", null, 40)
            .withJson("/load/parts", "[{\"connection\": \"" + first + "\"}, " + other + "]");
    assertTimes(circuit, least, most);
  }

  @Test
  void kindOfLoadTellsOfSocketsToo() {
    assertTimes(circuit(A2, "TN-S", null, 40).with("/load/kind", "socket-outlets"), 0.4, 0.4);
  }

  /** Unknown rating: the strictest is the table's, the mildest the other time. */
  @Test
  void unknownRatingLeavesBothOpen() {
    Scenario circuit = circuit(A2, "TN-S", "fixed", 40).without("/device/ratedCurrentA");
    assertTimes(circuit, 0.4, 5);
  }

  @Test
  void earthingIsNeeded() {
    Scenario circuit = circuit(A2, "TN-S", "fixed", 16).without("/supply/earthing");
    Dossier d = dossier(circuit);
    DisconnectionTime time = time(circuit, d);
    assertFalse(time.strictest().known());
    assertFalse(time.mildest().known());
    assertTrue(d.missing().stream().anyMatch(note -> At.EARTHING.equals(note.pointer())));
  }

  @Test
  void voltageIsNeeded() {
    Scenario circuit =
        circuit(A2, "TN-S", "fixed", 16)
            .without("/supply/ownership")
            .without("/supply/lineToEarthVoltageV");
    Dossier d = dossier(circuit);
    assertFalse(time(circuit, d).strictest().known());
    assertTrue(d.missing().stream().anyMatch(note -> At.VOLTAGE.equals(note.pointer())));
  }

  private static void assertTimes(Scenario scenario, double least, double most) {
    DisconnectionTime time = time(scenario, dossier(scenario));
    assertEquals(least, time.strictest().value(), "strictest");
    assertEquals(most, time.mildest().value(), "mildest");
  }

  private static DisconnectionTime time(Scenario scenario, Dossier d) {
    Circuit circuit = scenario.circuit();
    return DisconnectionTime.of(circuit, d);
  }

  private static Scenario circuit(
      String edition, String earthing, String connection, double rated) {
    Scenario circuit =
        Scenario.oven()
            .with("/edition", edition)
            .with("/supply/earthing", earthing)
            .with("/device/ratedCurrentA", rated)
            .without("/load/connection");
    return connection == null ? circuit : circuit.with("/load/connection", connection);
  }
}
