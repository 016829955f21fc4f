package circuitverdict.conductor;

import static circuitverdict.conductor.DesignCurrentTest.ib;
import static circuitverdict.conductor.DesignCurrentTest.power;
import static circuitverdict.conductor.DesignCurrentTest.ring;
import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Design current of charging points, parts and outlets (311, 433.1.1). */
class DesignCurrentOutletsTest {
  private static final CheckName CHECK = CheckName.OVERLOAD_PROTECTION;

  private static final double EXACT = 1e-9;

  /** A charging point by its declared current: 7 400 W would give 32.2 A where 32 A is declared. */
  @Test
  void chargingPointIsTakenByItsDeclaredCurrent() {
    Scenario point = power(7400).with("/load/kind", "vehicle-charging");
    assertEquals(32, ib(point.with("/load/ratedCurrentA", 32)), EXACT);
    open(point.finding(CHECK), "/load/designCurrentA");
    assertEquals(
        30, ib(point.with("/load/ratedCurrentA", 32).with("/load/designCurrentA", 30)), EXACT);
  }

  /** 0.8·(10 A + 2 300 W/230 V) = 16 A. */
  @Test
  void partsAreSummedAndShared() {
    Scenario mixed =
        power(1)
            .without("/load/ratedPowerW")
            .with("/load/diversityFactor", 0.8)
            .withJson(
                "/load/parts",
                """
                [{"designCurrentA": 10},
                 {"kind": "resistive", "ratedPowerW": 2300, "powerFactor": 1}]
                """);
    assertEquals(16, ib(mixed), EXACT);
    assertEquals(20, ib(mixed.without("/load/diversityFactor")), EXACT);
  }

  @Test
  void partWithoutCurrentIsNamed() {
    Scenario mixed =
        power(1)
            .without("/load/ratedPowerW")
            .withJson("/load/parts", "[{\"designCurrentA\": 10}, {\"kind\": \"led\"}]");
    open(mixed.finding(CHECK), "/load/parts/1/designCurrentA");
  }

  /** A stated load of a socket circuit is taken; only without one Ib := In. */
  @Test
  void socketsWithStatedPowerAreTakenByIt() {
    Finding found = power(2300).with("/load/kind", "socket-outlets").finding(CHECK);
    assertEquals(10, found.comparisons().get(0).actual().value(), EXACT);
    assertFalse(assumptions(found).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
    Finding none = sockets().finding(CHECK);
    assertTrue(assumptions(none).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
    open(sockets().without("/device/ratedCurrentA").finding(CHECK), "/device/ratedCurrentA");
    assertFalse(
        assumptions(sockets().without("/device/ratedCurrentA").finding(CHECK))
            .contains(NoteCode.DESIGN_CURRENT_IS_RATING));
  }

  /** A ring is no exception where its load says what it draws: 2·32 A and 4·63 A of charging. */
  @ParameterizedTest
  @CsvSource({"32, 2, fixed, 64", "63, 4, socket-outlet, 252"})
  void chargingPointsOnARingAreTakenByTheirCurrents(
      double rated, int count, String connection, double current) {
    Scenario points =
        ring("vehicle-charging")
            .with("/load/connection", connection)
            .with("/load/ratedCurrentA", rated)
            .with("/load/count", count);
    fails(points.finding(CHECK));
    assertEquals(current, ib(points), EXACT);
    assertFalse(assumptions(points.finding(CHECK)).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
    open(ring("vehicle-charging").finding(CHECK), "/load/designCurrentA");
  }

  /** A stated other load has a current of its own, which is asked for. */
  @ParameterizedTest
  @CsvSource({
    "resistive, fixed, false",
    "motor, fixed, false",
    "led, socket-outlet, false",
    ", fixed, false",
    "mixed, fixed, false",
    "mixed, socket-outlet, false",
    ", socket-outlet, false",
    "socket-outlets, fixed, true"
  })
  void onlyOutletsOfARingTakeTheRating(String kind, String connection, boolean taken) {
    Scenario ring = kind == null ? ring("led").without("/load/kind") : ring(kind);
    Finding found = ring.with("/load/connection", connection).finding(CHECK);
    assertEquals(taken, assumptions(found).contains(NoteCode.DESIGN_CURRENT_IS_RATING));
    assertEquals(!taken, missing(found).contains("/load/designCurrentA"));
  }

  @Test
  void socketsWithoutADeviceNeedTheirCurrent() {
    open(sockets().without("/device").finding(CheckName.VOLTAGE_DROP), "/load/designCurrentA");
  }

  private static Scenario sockets() {
    return power(1).without("/load/ratedPowerW").with("/load/kind", "socket-outlets");
  }
}
