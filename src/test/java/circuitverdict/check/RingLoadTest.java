package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a ring feeds (433.1.204): final circuits of accessories to BS 1363, and nothing else. */
class RingLoadTest {
  private static final CheckName CHECK = CheckName.OVERLOAD_PROTECTION;

  /** Off the accessories of the clause a ring carries In as one cable: 32 A on 27 A. */
  @ParameterizedTest
  @CsvSource({
    "resistive, fixed, false",
    "motor, fixed, false",
    ", fixed, false",
    "mixed, fixed, false",
    "vehicle-charging, fixed, false",
    "vehicle-charging, socket-outlet, false",
    "vehicle-charging, , false",
    "socket-outlets, fixed, true",
    "socket-outlets, , true",
    "resistive, socket-outlet, true"
  })
  void ruleIsForSocketOutlets(String kind, String connection, boolean covered) {
    Scenario ring = feeding(kind, connection).with("/load/count", 6);
    for (CheckName check : new CheckName[] {CHECK, CheckName.CONDUCTOR_RATING}) {
      judged(covered, ring.finding(check));
    }
    assertEquals(covered, remarks(ring.finding(CHECK)).contains(NoteCode.RING_RULE));
    Scenario strong = ring.with("/cable/lineCsaMm2", 4).with("/cable/protectiveCsaMm2", 2.5);
    complies(strong.finding(CHECK));
    complies(strong.finding(CheckName.CONDUCTOR_RATING));
  }

  /**
   * Where it is not said what the ring feeds, 20 A a leg settles a failure, and In a compliance.
   */
  @ParameterizedTest
  @CsvSource({", /load/kind", "mixed, /load/connection", "led, /load/connection"})
  void whatTheRingFeedsIsAskedFor(String kind, String pointer) {
    Scenario ring = feeding(kind, null);
    for (CheckName check : new CheckName[] {CHECK, CheckName.CONDUCTOR_RATING}) {
      open(ring.finding(check), pointer);
      fails(ring.with("/cable/installation/referenceMethod", "101").finding(check));
      complies(ring.with("/cable/lineCsaMm2", 4).finding(check));
    }
    assertFalse(
        missing(ring.without("/cable/installation/referenceMethod").finding(CHECK))
            .contains(pointer));
  }

  @Test
  void withoutALoadNothingSaysThatItFeedsOutlets() {
    Scenario ring = RingCircuitTest.ring().without("/load").with("/load/use", "other");
    open(ring.finding(CHECK), "/load/kind");
    open(ring.without("/load").finding(CHECK), "/load/kind");
  }

  /** Of a mixed load every part; one that is only fixed is no such accessory. */
  @ParameterizedTest
  @CsvSource({
    "'{\"kind\": \"socket-outlets\", \"ratedCurrentA\": 13}', complies",
    "'{\"kind\": \"socket-outlets\"}', /load/parts/1/ratedCurrentA",
    "'{\"kind\": \"socket-outlets\", \"ratedCurrentA\": 16}', fails",
    "'{\"kind\": \"led\", \"connection\": \"socket-outlet\", \"designCurrentA\": 2}', complies",
    "'{\"kind\": \"resistive\", \"connection\": \"fixed\"}', /load/parts/1/connection",
    "'{\"kind\": \"resistive\"}', /load/parts/1/connection",
    "'{}', /load/parts/1/kind",
    "'{\"kind\": \"vehicle-charging\", \"connection\": \"socket-outlet\"}', fails"
  })
  void everyPartIsAnOutlet(String part, String answer) {
    Finding found =
        feeding("mixed", null)
            .withJson(
                "/load/parts",
                "[{\"kind\": \"socket-outlets\", \"ratedCurrentA\": 13}, " + part + "]")
            .finding(CHECK);
    switch (answer) {
      case "complies" -> complies(found);
      case "fails" -> fails(found);
      default -> open(found, answer);
    }
  }

  @Test
  void partsAreConnectedAsTheWholeIs() {
    String parts =
        "[{\"kind\": \"led\", \"designCurrentA\": 2},"
            + " {\"kind\": \"resistive\", \"designCurrentA\": 9}]";
    complies(feeding("mixed", "socket-outlet").withJson("/load/parts", parts).finding(CHECK));
    fails(feeding("mixed", "fixed").withJson("/load/parts", parts).finding(CHECK));
    open(
        feeding("mixed", null).withJson("/load/parts", parts).finding(CHECK),
        "/load/parts/0/connection",
        "/load/parts/1/connection");
  }

  /** BS 1363 accessories are rated 13 A; an outlet for more is another one. */
  @ParameterizedTest
  @CsvSource({"13, true", "13.1, false", "16, false", "32, false"})
  void outletIsOneOfThirteenAmperes(double rated, boolean covered) {
    Scenario outlets = feeding("socket-outlets", "socket-outlet");
    judged(covered, outlets.with("/load/ratedCurrentA", rated).finding(CHECK));
    judged(
        covered,
        feeding("mixed", null)
            .withJson(
                "/load/parts", "[{\"kind\": \"socket-outlets\", \"ratedCurrentA\": " + rated + "}]")
            .finding(CHECK));
  }

  static Scenario feeding(String kind, String connection) {
    Scenario ring =
        RingCircuitTest.ring().without("/load/connection").with("/load/designCurrentA", 30);
    Scenario of = kind == null ? ring.without("/load/kind") : ring.with("/load/kind", kind);
    return connection == null ? of : of.with("/load/connection", connection);
  }
}
