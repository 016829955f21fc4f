package circuitverdict.check;

import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charging points on protective multiple earthing, and TT (722.411.4.1, 411.5). */
class EarthingArrangementTest {
  private static final CheckName CHECK = CheckName.EARTHING_ARRANGEMENT;
  private static final String PLACE = "[\"vehicle-charging\", \"outdoors\"]";

  /**
   * 722.411.4.1: outdoors only with a stated measure; so too indoors, as a vehicle outdoors might
   * be charged from there, which nothing says.
   */
  @ParameterizedTest
  @CsvSource({
    "'[\"outdoors\"]', true, complies",
    "'[\"outdoors\"]', false, fails",
    "'[\"outdoors\"]', , open",
    "'[]', , indoors",
    "'[]', false, indoors",
    "'[]', true, complies",
    "'[\"vehicle-charging\"]', false, indoors",
    "'[\"vehicle-charging\", \"outdoors\"]', false, fails",
    ", true, complies",
    ", false, open",
    ", , open"
  })
  void chargingPointOnMultipleEarthing(String locations, Boolean measure, String verdict) {
    Finding found = charging(locations, measure).finding(CHECK);
    assertTrue(clauses(found).contains("722.411.4.1"));
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> fails(found);
      case "indoors" -> {
        open(found, "/supply/openPenProtection");
        assertEquals(List.of(NoteCode.CHARGING_OUTDOORS_TOO), wanted(found));
      }
      default -> {
        open(found);
        assertEquals(locations == null, missing(found).contains("/premises/locations"));
        assertEquals(measure == null, missing(found).contains("/supply/openPenProtection"));
        assertFalse(missing(found).contains("/load/kind"));
      }
    }
  }

  /**
   * 704.411.3.1 (from memory): only where all is bonded, of which nothing is said; else TN-S, TT.
   */
  @ParameterizedTest
  @CsvSource({"TN-C-S, NOT_DETERMINED", "TN-S, NOT_APPLICABLE"})
  void constructionSiteOnMultipleEarthingIsNotDetermined(String earthing, Verdict verdict) {
    Finding found =
        Scenario.oven()
            .with("/supply/earthing", earthing)
            .with("/supply/openPenProtection", true)
            .withJson("/premises/locations", "[\"construction-site\"]")
            .finding(CHECK);
    assertEquals(verdict, found.verdict());
    assertEquals(verdict == Verdict.NOT_DETERMINED, clauses(found).contains("704.411.3.1"));
  }

  /** A distribution circuit feeds no point itself; one that is said to is held to the rule. */
  @ParameterizedTest
  @CsvSource({
    "mixed, NOT_APPLICABLE",
    "electronic, NOT_APPLICABLE",
    "vehicle-charging, NOT_DETERMINED"
  })
  void distributionCircuitFeedsNoPoint(String kind, Verdict verdict) {
    Scenario board = of(kind).with("/circuitKind", "distribution");
    assertEquals(verdict, board.withJson("/premises/locations", "[]").verdict(CHECK));
    Verdict there = board.withJson("/premises/locations", PLACE).verdict(CHECK);
    assertEquals(Verdict.NOT_DETERMINED, there);
  }

  /** The place tells of a charging point where the load may be one. */
  @ParameterizedTest
  @CsvSource({"socket-outlets", "mixed", "''"})
  void placeTellsOfAChargingPoint(String kind) {
    Scenario place = of(kind).withJson("/premises/locations", PLACE);
    fails(place.with("/supply/openPenProtection", false).finding(CHECK));
    complies(place.with("/supply/openPenProtection", true).finding(CHECK));
    open(place.finding(CHECK), "/supply/openPenProtection");
  }

  /** Applicability follows from what is stated: a socket-outlet may stand at a charging point. */
  @ParameterizedTest
  @CsvSource({"sign-off", "design", "quotation"})
  void placeOfSocketOutletsIsAskedFor(String stage) {
    Scenario sockets = of("socket-outlets").with("/stage", stage);
    Scenario unplaced = sockets.without("/premises");
    Finding found = open(unplaced.finding(CHECK));
    assertEquals(List.of("/premises/locations"), missing(found));
    assertTrue(found.counted());
    open(unplaced.with("/supply/openPenProtection", false).finding(CHECK), "/premises/locations");
    // A measure serves a charging point, but no caravan or boat (708.411.4, from memory).
    open(unplaced.with("/supply/openPenProtection", true).finding(CHECK), "/premises/locations");
    complies(unplaced.with("/supply/earthing", "TN-S").finding(CHECK));
    for (String places : new String[] {"[]", "[\"outdoors\"]"}) {
      Scenario placed = sockets.withJson("/premises/locations", places);
      assertEquals(Verdict.NOT_APPLICABLE, placed.verdict(CHECK));
    }
  }

  /**
   * 708.411.4 and 709.411.4 (from memory): no measure lets protective multiple earthing serve
   * caravans or boats, which socket-outlets supply (708.55.1, 709.55.1).
   */
  @ParameterizedTest
  @CsvSource({"caravan-park, 708.411.4", "marina, 709.411.4"})
  void caravansAndBoatsAreNotOnMultipleEarthing(String place, String clause) {
    String places = "[\"outdoors\", \"%s\"]".formatted(place);
    Scenario sockets = of("socket-outlets").withJson("/premises/locations", places);
    Finding found = fails(sockets.with("/supply/openPenProtection", true).finding(CHECK));
    assertTrue(clauses(found).contains(clause));
    assertEquals(List.of(NoteCode.CARAVAN_OR_BOAT), remarks(found));
    fails(sockets.with("/supply/frequencyHz", 60).finding(CHECK));
    fails(
        Scenario.oven()
            .with("/load/connection", "socket-outlet")
            .withJson("/premises/locations", places)
            .finding(CHECK));
    // A separate earthing conductor of the network, an electrode of its own.
    assertEquals(Verdict.NOT_APPLICABLE, sockets.with("/supply/earthing", "TN-S").verdict(CHECK));
    complies(
        sockets
            .with("/supply/earthing", "TT")
            .with("/residualDevice/standard", "IEC 61008-1")
            .with("/residualDevice/residual/operatingCurrentA", 0.03)
            .finding(CHECK));
    // What is fixed at the place is none of them.
    assertEquals(
        Verdict.NOT_APPLICABLE,
        Scenario.oven().withJson("/premises/locations", places).verdict(CHECK));
  }

  /** Where the connection is not stated, or the circuit only feeds what feeds them. */
  @ParameterizedTest
  @CsvSource({"/load/kind, mixed", "/circuitKind, distribution"})
  void whatMayServeCaravansIsNotDetermined(String pointer, String value) {
    Scenario park =
        Scenario.oven()
            .without("/load/connection")
            .with(pointer, value)
            .with("/supply/openPenProtection", true)
            .withJson("/premises/locations", "[\"caravan-park\"]");
    assertEquals(
        List.of(NoteCode.CARAVAN_EARTHING), wanted(open(park.finding(CHECK), "/supply/earthing")));
    open(park.without("/premises/locations").finding(CHECK), "/premises/locations");
  }

  @Test
  void onePartOfSocketOutletsIsEnough() {
    Scenario parts =
        of("mixed")
            .withJson("/load/parts", "[{\"kind\": \"led\"}, {\"kind\": \"socket-outlets\"}]");
    open(parts.without("/premises").finding(CHECK), "/premises/locations");
  }

  @Test
  void onePartOfAMixedLoadIsEnough() {
    Scenario mixed =
        charging("[\"outdoors\"]", false)
            .with("/load/kind", "mixed")
            .withJson("/load/parts", "[{\"kind\": \"led\"}, {\"kind\": \"vehicle-charging\"}]");
    fails(mixed.finding(CHECK));
  }

  /** Other loads on TN: the rule does not apply, and is not counted. */
  @ParameterizedTest
  @CsvSource({"TN-C-S", "TN-S"})
  void otherLoadsOnTnAreNotConcerned(String earthing) {
    Scenario oven = Scenario.oven();
    Finding found =
        (earthing == null
                ? oven.without("/supply/earthing")
                : oven.with("/supply/earthing", earthing))
            .finding(CHECK);
    assertEquals(Verdict.NOT_APPLICABLE, found.verdict());
    assertEquals(Reason.NO_SUCH_DUTY, found.reason());
    assertFalse(found.counted());
    assertEquals(null, found.governing());
  }

  @Test
  void statedPartsTellThatThereIsNoChargingPoint() {
    Scenario parts =
        Scenario.oven().without("/load/kind").withJson("/load/parts", "[{\"kind\": \"led\"}]");
    assertEquals(Verdict.NOT_APPLICABLE, parts.verdict(CHECK));
  }

  /** Applicability follows from what is stated: an unknown load outdoors is asked for. */
  @ParameterizedTest
  @CsvSource({"/load/kind, ", "/load/kind, mixed"})
  void unknownLoadOnMultipleEarthingIsAskedFor(String pointer, String kind) {
    Scenario unknown = Scenario.oven().withJson("/premises/locations", "[\"outdoors\"]");
    Scenario load = kind == null ? unknown.without(pointer) : unknown.with(pointer, kind);
    Finding found = load.finding(CHECK);
    open(found, "/load/kind", "/supply/openPenProtection");
    assertEquals(Reason.MISSING_INPUT, found.reason());
    assertTrue(found.counted());
    open(load.with("/supply/openPenProtection", false).finding(CHECK), "/load/kind");
  }

  /** A load of unknown kind may be a charging point, wherever it is: the measure settles it. */
  @Test
  void unknownLoadMeetsTheStrictestDemand() {
    open(
        Scenario.oven().without("/load/kind").finding(CHECK),
        "/load/kind",
        "/supply/openPenProtection");
    complies(
        Scenario.oven()
            .without("/load/kind")
            .without("/premises/locations")
            .with("/supply/openPenProtection", true)
            .finding(CHECK));
  }

  @Test
  void earthingOfAChargingPointIsNeeded() {
    open(
        charging("[\"outdoors\"]", true).without("/supply/earthing").finding(CHECK),
        "/supply/earthing");
    open(
        Scenario.oven().without("/load/kind").without("/supply/earthing").finding(CHECK),
        "/supply/earthing");
  }

  /** A separate earthing terminal of the network needs no measure. */
  @Test
  void chargingPointOnTnSComplies() {
    Finding found =
        charging("[\"outdoors\"]", false).with("/supply/earthing", "TN-S").finding(CHECK);
    assertTrue(clauses(complies(found)).contains("722.411.4.1"));
  }

  /**
   * Engineering basis, section 5: a load that is not stated makes nothing inapplicable; TN-S meets
   * the strictest demand that it could make.
   */
  @ParameterizedTest
  @CsvSource({"/load/kind, ", "/load/kind, mixed", "/load, "})
  void unknownLoadOnTnSMeetsTheStrictestDemand(String pointer, String kind) {
    Scenario tnS = Scenario.oven().with("/supply/earthing", "TN-S").without("/premises/locations");
    Scenario load = kind == null ? tnS.without(pointer) : tnS.with(pointer, kind);
    Finding found = complies(load.finding(CHECK));
    assertTrue(found.counted());
    assertTrue(clauses(found).contains("722.411.4.1"));
  }

  /** 411.5: TT needs a residual device, whatever it feeds. */
  @ParameterizedTest
  @CsvSource({"/device", "/residualDevice"})
  void ttNeedsAResidualDevice(String place) {
    Scenario tt =
        Scenario.oven()
            .with("/supply/earthing", "TT")
            .with("/supply/earthElectrodeResistanceOhm", 20);
    Finding found = open(tt.finding(CHECK), "/residualDevice");
    assertTrue(clauses(found).contains("411.5"));
    String standard = place.equals("/device") ? "IEC 61009-1" : "IEC 61008-1";
    Scenario with =
        tt.with(place + "/standard", standard).with(place + "/residual/operatingCurrentA", 0.03);
    Finding fitted = complies(with.finding(CHECK));
    assertTrue(clauses(fitted).contains("411.5"));
    complies(
        with.with("/load/kind", "vehicle-charging")
            .with(place + "/residual/operatingCurrentA", 0.03)
            .finding(CHECK));
  }

  private static Scenario of(String kind) {
    Scenario oven = Scenario.oven();
    return kind.isEmpty() ? oven.without("/load/kind") : oven.with("/load/kind", kind);
  }

  private static Scenario charging(String locations, Boolean measure) {
    Scenario point = Scenario.oven().with("/load/kind", "vehicle-charging");
    Scenario placed =
        locations == null
            ? point.without("/premises/locations")
            : point.withJson("/premises/locations", locations);
    return measure == null ? placed : placed.with("/supply/openPenProtection", measure);
  }
}
