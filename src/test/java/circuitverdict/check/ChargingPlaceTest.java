package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A stated place of charging (722): whatever can charge a vehicle there is a charging point, on
 * protective multiple earthing (722.411.4.1) and on a ring (433.1.204: loads spread along it).
 */
class ChargingPlaceTest {
  private static final CheckName CHECK = CheckName.EARTHING_ARRANGEMENT;
  private static final String PLACE = "[\"vehicle-charging\", \"outdoors\"]";

  /** A fixed heater, lamp, motor, welding or X-ray set charges none, wherever it stands. */
  @ParameterizedTest
  @CsvSource({"resistive", "motor", "led", "discharge", "filament", "welding", "x-ray"})
  void fixedLoadThatCannotChargeIsNotConcerned(String kind) {
    Scenario load = of(kind);
    for (Scenario each :
        List.of(
            load.without("/premises"),
            load.withJson("/premises/locations", "[]"),
            load.withJson("/premises/locations", PLACE))) {
      assertEquals(Verdict.NOT_APPLICABLE, each.verdict(CHECK));
    }
  }

  /** An outlet takes the cable of a vehicle too, whatever is said to be plugged in. */
  @ParameterizedTest
  @CsvSource({
    "electronic, fixed",
    "electronic, ",
    "transformer, fixed",
    "socket-outlets, socket-outlet",
    "resistive, socket-outlet",
    "led, socket-outlet"
  })
  void whatCanChargeIsAChargingPointThere(String kind, String connection) {
    Scenario load = connected(of(kind), connection);
    Scenario there = load.withJson("/premises/locations", PLACE);
    fails(there.finding(CHECK));
    complies(there.with("/supply/openPenProtection", true).finding(CHECK));
    open(there.without("/supply/openPenProtection").finding(CHECK), "/supply/openPenProtection");
    Scenario indoors = load.withJson("/premises/locations", "[\"vehicle-charging\"]");
    open(indoors.finding(CHECK), "/supply/openPenProtection");
    for (String elsewhere : new String[] {"[]", "[\"outdoors\"]"}) {
      Scenario placed = load.withJson("/premises/locations", elsewhere);
      assertEquals(Verdict.NOT_APPLICABLE, placed.verdict(CHECK));
    }
    Scenario unplaced = load.without("/premises").without("/supply/openPenProtection");
    assertEquals(List.of("/premises/locations"), missing(open(unplaced.finding(CHECK))));
  }

  /** Whether a heater hangs on an outlet decides there, and is asked for. */
  @Test
  void connectionIsAskedForWhereItDecides() {
    Scenario load = of("resistive").without("/load/connection");
    Scenario there = load.withJson("/premises/locations", PLACE);
    assertEquals(List.of("/load/connection"), missing(open(there.finding(CHECK))));
    open(load.without("/premises").finding(CHECK), "/premises/locations");
    assertEquals(
        Verdict.NOT_APPLICABLE,
        load.withJson("/premises/locations", "[\"outdoors\"]").verdict(CHECK));
  }

  /** Parts are connected as the whole is, unless they say otherwise. */
  @ParameterizedTest
  @CsvSource({
    "fixed, '{\"kind\": \"led\"}', false",
    "fixed, '{\"kind\": \"electronic\"}', true",
    "fixed, '{\"kind\": \"led\", \"connection\": \"socket-outlet\"}', true",
    "socket-outlet, '{\"kind\": \"led\"}', true",
    "socket-outlet, '{\"kind\": \"led\", \"connection\": \"fixed\"}', false"
  })
  void onePartThatCanChargeIsEnough(String connection, String part, boolean concerned) {
    Scenario parts =
        connected(of("mixed"), connection)
            .withJson(
                "/load/parts", "[{\"kind\": \"motor\", \"connection\": \"fixed\"}, " + part + "]")
            .withJson("/premises/locations", PLACE);
    assertEquals(
        concerned ? Verdict.DOES_NOT_COMPLY : Verdict.NOT_APPLICABLE, parts.verdict(CHECK));
  }

  /** Charging at 13 A is a long load at one point: 32 A on 27 A a leg then holds by no rule. */
  @ParameterizedTest
  @CsvSource({"socket-outlets, ", "socket-outlets, 3", "resistive, 3", "electronic, 3"})
  void ringThatServesThePlaceIsNotCovered(String kind, Integer count) {
    Scenario outlets = RingLoadTest.feeding(kind, "socket-outlet");
    Scenario ring = count == null ? outlets : outlets.with("/load/count", count);
    for (CheckName check :
        new CheckName[] {CheckName.OVERLOAD_PROTECTION, CheckName.CONDUCTOR_RATING}) {
      for (String places : new String[] {"[]", "[\"outdoors\"]", "[\"vehicle-charging\"]", PLACE}) {
        Scenario placed = ring.withJson("/premises/locations", places);
        judged(!places.contains("vehicle-charging"), placed.finding(check));
        complies(placed.with("/cable/lineCsaMm2", 4).finding(check));
      }
    }
  }

  /** Places that are not stated are not known: 20 A a leg settles a failure, In a compliance. */
  @Test
  void placesOfARingAreAskedFor() {
    Scenario ring = RingLoadTest.feeding("socket-outlets", "socket-outlet").without("/premises");
    for (CheckName check :
        new CheckName[] {CheckName.OVERLOAD_PROTECTION, CheckName.CONDUCTOR_RATING}) {
      open(ring.finding(check), "/premises/locations");
      fails(ring.with("/cable/installation/referenceMethod", "101").finding(check));
      complies(ring.with("/cable/lineCsaMm2", 4).finding(check));
    }
    Scenario fixed = ring.with("/load/kind", "resistive").with("/load/connection", "fixed");
    assertFalse(
        missing(fixed.finding(CheckName.OVERLOAD_PROTECTION)).contains("/premises/locations"));
  }

  private static Scenario of(String kind) {
    return Scenario.oven().with("/load/kind", kind).with("/supply/openPenProtection", false);
  }

  private static Scenario connected(Scenario load, String connection) {
    return connection == null
        ? load.without("/load/connection")
        : load.with("/load/connection", connection);
  }
}
