package circuitverdict.conductor;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ib where the kind of load is not stated, and of socket circuits with a rated outlet. */
class DesignCurrentOfKindsTest {
  private static final CheckName CHECK = CheckName.OVERLOAD_PROTECTION;

  /** Of an unknown kind the power may be a shaft's: drawn power is taken in a design, listed. */
  @ParameterizedTest
  @CsvSource({"design, true", "quotation, true", "sign-off, false"})
  void efficiencyOfAnUnknownKindIsTakenInADesign(String stage, boolean taken) {
    Scenario unknown = power().with("/stage", stage).without("/load/kind");
    Finding found = unknown.finding(CHECK);
    assertEquals(taken, assumptions(found).contains(NoteCode.ASSUMED_EFFICIENCY));
    if (taken) {
      assertEquals(10, found.comparisons().get(0).actual().value(), 1e-9);
    } else {
      open(found, "/load/efficiencyPercent");
    }
  }

  /** A stated efficiency counts for every kind: 2 300 W/(230·0.5) = 20 A. */
  @ParameterizedTest
  @CsvSource({"motor", "resistive", ","})
  void statedEfficiencyCounts(String kind) {
    Scenario stated = power().with("/load/efficiencyPercent", 50);
    Finding found =
        (kind == null ? stated.without("/load/kind") : stated.with("/load/kind", kind))
            .finding(CHECK);
    assertEquals(20, found.comparisons().get(0).actual().value(), 1e-9);
  }

  /**
   * Lamps of which the watts alone are known draw 1.8 times those (On-Site Guide, appendix A, from
   * memory): 20 of 58 W at 230 V, 9.08 A. With a power factor they are as any load.
   */
  @ParameterizedTest
  @CsvSource({"quotation, true", "design, true", "sign-off, false"})
  void lampsByTheirWatts(String stage, boolean taken) {
    Scenario lamps =
        power()
            .with("/stage", stage)
            .with("/load/kind", "discharge")
            .with("/load/ratedPowerW", 58)
            .with("/load/count", 20)
            .without("/load/powerFactor");
    Finding found = lamps.finding(CHECK);
    assertEquals(taken, assumptions(found).contains(NoteCode.ASSUMED_LAMP_INPUT));
    if (taken) {
      assertEquals(1.8 * 20 * 58 / 230, found.comparisons().get(0).actual().value(), 1e-9);
    } else {
      open(found, "/load/powerFactor");
    }
    Finding known = lamps.with("/load/powerFactor", 0.9).finding(CHECK);
    assertEquals(20 * 58 / 230.0 / 0.9, known.comparisons().get(0).actual().value(), 1e-9);
  }

  /** A stand-in carries a compliance, never a failure: 20 A at the most, 36 A by the factor. */
  @Test
  void lampsDoNotFailByTheirFactor() {
    Scenario lamps =
        power()
            .with("/stage", "design")
            .with("/load/kind", "discharge")
            .with("/load/ratedPowerW", 4600)
            .without("/load/powerFactor");
    open(lamps.finding(CHECK), "/load/powerFactor");
  }

  /** A rated outlet above the device is not made smaller by it: 45 A on a B32. */
  @ParameterizedTest
  @CsvSource({", 32", "16, 32", "32, 32", "45, 45"})
  void outletAboveTheDeviceIsItsDesignCurrent(Double outlet, double current) {
    Scenario sockets = sockets();
    Finding found =
        (outlet == null ? sockets : sockets.with("/load/ratedCurrentA", outlet)).finding(CHECK);
    assertEquals(current, found.comparisons().get(0).actual().value());
  }

  @Test
  void outletDoesNotStandForAnUnknownRating() {
    open(
        sockets().with("/load/ratedCurrentA", 16).without("/device/ratedCurrentA").finding(CHECK),
        "/device/ratedCurrentA");
  }

  private static Scenario sockets() {
    return Scenario.oven().with("/load/kind", "socket-outlets").without("/load/designCurrentA");
  }

  private static Scenario power() {
    return Scenario.oven().without("/load/designCurrentA").with("/load/ratedPowerW", 2300);
  }
}
