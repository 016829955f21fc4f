package circuitverdict.check;

import static circuitverdict.support.Facts.missing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Facts;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Unknown never passes: each needed input removed in turn leaves its check open, naming it. */
class NeededInputsTest {

  @ParameterizedTest
  @CsvSource({
    "OVERLOAD_PROTECTION, /device",
    "OVERLOAD_PROTECTION, /device/standard",
    "OVERLOAD_PROTECTION, /device/ratedCurrentA",
    "OVERLOAD_PROTECTION, /load/designCurrentA",
    "OVERLOAD_PROTECTION, /cable/lineCsaMm2",
    "OVERLOAD_PROTECTION, /cable/construction",
    "OVERLOAD_PROTECTION, /cable/insulation",
    "OVERLOAD_PROTECTION, /cable/conductor",
    "OVERLOAD_PROTECTION, /cable/installation/referenceMethod",
    "OVERLOAD_PROTECTION, /cable/installation/ambientTemperatureC",
    "OVERLOAD_PROTECTION, /cable/installation/groupedCircuits",
    "CONDUCTOR_RATING, /device",
    "CONDUCTOR_RATING, /device/ratedCurrentA",
    "CONDUCTOR_RATING, /cable/lineCsaMm2",
    "CONDUCTOR_RATING, /cable/installation/referenceMethod",
    "CONDUCTOR_RATING, /cable/installation/ambientTemperatureC",
    "CONDUCTOR_RATING, /cable/installation/groupedCircuits",
    "VOLTAGE_DROP, /load/designCurrentA",
    "VOLTAGE_DROP, /cable/lengthM",
    "VOLTAGE_DROP, /cable/lineCsaMm2",
    "EARTH_FAULT_DISCONNECTION, /device",
    "EARTH_FAULT_DISCONNECTION, /supply/earthing",
    "EARTH_FAULT_DISCONNECTION, /supply/loopImpedanceOhm",
    "EARTH_FAULT_DISCONNECTION, /cable/lengthM",
    "BREAKING_CAPACITY, /device",
    "BREAKING_CAPACITY, /device/breakingCapacityA",
    "BREAKING_CAPACITY, /supply/maximumFaultCurrentA",
    "BREAKING_CAPACITY, /supply/instrumentUncertaintyPercent",
    "LET_THROUGH_ENERGY, /device",
    "LET_THROUGH_ENERGY, /device/breakingCapacityA",
    "LET_THROUGH_ENERGY, /supply/maximumFaultCurrentA",
    "LET_THROUGH_ENERGY, /cable/insulation",
    "LET_THROUGH_ENERGY, /cable/lineCsaMm2",
    "PROTECTIVE_CONDUCTOR, /device",
    "PROTECTIVE_CONDUCTOR, /device/breakingCapacityA",
    "PROTECTIVE_CONDUCTOR, /supply/maximumFaultCurrentA",
    "PROTECTIVE_CONDUCTOR, /supply/loopImpedanceOhm",
    "PROTECTIVE_CONDUCTOR, /cable/protectiveCsaMm2",
    "PROTECTIVE_CONDUCTOR, /cable/lengthM",
    "INRUSH, /device",
    "INRUSH, /device/standard",
    "INRUSH, /device/ratedCurrentA",
    "INRUSH, /device/characteristic",
    "INRUSH, /load/kind",
    "INRUSH, /load/inrush/durationS",
    "INRUSH, /load/inrush/currentMultiple",
    "ADDITIONAL_PROTECTION, /device",
    "ADDITIONAL_PROTECTION, /device/standard",
    "ADDITIONAL_PROTECTION, /device/residual/operatingCurrentA",
    "ADDITIONAL_PROTECTION, /device/residual/type",
    "ADDITIONAL_PROTECTION, /device/residual/delay",
    "EARTHING_ARRANGEMENT, /supply/earthing",
    "EARTHING_ARRANGEMENT, /supply/openPenProtection",
    "DEVICE_SUITABILITY, /device",
    "DEVICE_SUITABILITY, /device/standard",
    "DEVICE_SUITABILITY, /device/ratedCurrentA",
    "DEVICE_SUITABILITY, /supply/phases",
    "DEVICE_SUITABILITY, /supply/localGeneration",
    "DEVICE_SUITABILITY, /residualDevice",
    "DEVICE_SUITABILITY, /residualDevice/poles",
    "DEVICE_SUITABILITY, /residualDevice/standard",
    "DEVICE_SUITABILITY, /residualDevice/ratedCurrentA",
    "DEVICE_SUITABILITY, /residualDevice/conditionalCapacityA",
    "COMMISSIONING, /device",
    "COMMISSIONING, /supply/loopImpedanceOhm",
    "COMMISSIONING, /cable/protectiveCsaMm2",
    "COMMISSIONING, /cable/lengthM"
  })
  void neededInputLeavesItsCheckOpen(CheckName check, String pointer) {
    Scenario circuit = check == CheckName.ADDITIONAL_PROTECTION ? guarded() : whole();
    Facts.complies(circuit.finding(check));
    Finding found = circuit.without(pointer).finding(check);
    assertEquals(Verdict.NOT_DETERMINED, found.verdict(), found::toString);
    assertTrue(missing(found).contains(pointer), () -> pointer + " in " + found);
  }

  /** No value of what is missing could cure these: they fail all the same. */
  @ParameterizedTest
  @CsvSource({
    "OVERLOAD_PROTECTION, /load/designCurrentA, 33, /cable/installation/referenceMethod",
    "CONDUCTOR_RATING, /cable/lineCsaMm2, 0.75, /device/ratedCurrentA",
    "VOLTAGE_DROP, /cable/lengthM, 90, /load/use",
    "EARTH_FAULT_DISCONNECTION, /supply/loopImpedanceOhm, 1.4, /cable/lengthM",
    "BREAKING_CAPACITY, /device/breakingCapacityA, 3000, /cable/lengthM"
  })
  void failureThatNothingCouldCureStands(
      CheckName check, String pointer, double value, String missing) {
    Scenario alone = whole().without("/residualDevice");
    Facts.fails(alone.with(pointer, value).without(missing).finding(check));
  }

  /** One open check leaves the whole circuit open, one failed check fails it. */
  @Test
  void wholeCircuitFollowsItsWorstCheck() {
    assertEquals(Verdict.COMPLIES, guarded().result().verdict());
    Result open = guarded().without("/cable/lengthM").result();
    assertEquals(Verdict.NOT_DETERMINED, open.verdict());
    assertEquals(Reason.CHECK_NOT_DETERMINED, open.reason());
    Result failed = guarded().without("/cable/lengthM").with("/load/designCurrentA", 33).result();
    assertEquals(Verdict.DOES_NOT_COMPLY, failed.verdict());
    assertEquals(Reason.CHECK_FAILS, failed.reason());
  }

  /** Findings always stand in the same order, all of them present. */
  @Test
  void findingsStandInOrder() {
    assertEquals(
        CheckName.ofCircuits(), whole().result().findings().stream().map(Finding::check).toList());
    assertEquals(CheckName.ofCircuits(), CircuitCheck.all().stream().map(Check::name).toList());
  }

  /**
   * A charging point outdoors on one phase, behind a residual device that opens both conductors, so
   * that every check applies and complies.
   */
  private static Scenario whole() {
    return Scenario.oven()
        .without("/liveConductors")
        .with("/supply/localGeneration", false)
        .with("/residualDevice/standard", "IEC 61008-1")
        .with("/residualDevice/poles", 2)
        .with("/residualDevice/ratedCurrentA", 63)
        .with("/residualDevice/conditionalCapacityA", 6000)
        .with("/residualDevice/residual/operatingCurrentA", 0.03)
        .with("/supply/phases", 1)
        .without("/supply/faultCurrents")
        .with("/load/kind", "vehicle-charging")
        .withJson("/premises/locations", "[\"outdoors\"]")
        .with("/supply/openPenProtection", true)
        .with("/load/inrush/currentMultiple", 1.2)
        .with("/load/inrush/durationS", 0.5);
  }

  /** The same with the additional protection that a charging point is owed. */
  private static Scenario guarded() {
    return whole()
        .without("/residualDevice")
        .with("/device/poles", 2)
        .with("/device/standard", "IEC 61009-1")
        .withJson(
            "/device/residual",
            "{\"operatingCurrentA\": 0.03, \"type\": \"B\", \"delay\": \"general\"}");
  }
}
