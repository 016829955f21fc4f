package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is stated of a device beyond the end of its standard does not count. */
class BeyondTheStandardTest {
  /**
   * IEC 60898-1 and IEC 61009-1 clause 1: 25 kA (from memory); the greatest types of BS 1361 and BS
   * 3036 by the On-Site Guide, 33 and 4 kA; BS 88-3 common practice; BS 1362 from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "IEC 60898-1, 25000",
    "IEC 61009-1, 25000",
    "BS 1361, 33000",
    "BS 88-3, 33000",
    "BS 3036, 4000",
    "BS 1362, 6000"
  })
  void capacityEndsWithTheStandard(String standard, double greatest) {
    Scenario stated =
        at(greatest)
            .with("/device/standard", standard)
            .with("/device/ratedCurrentA", 13)
            .with("/device/breakingCapacityA", greatest + 10000);
    Finding found = complies(stated.finding(CheckName.BREAKING_CAPACITY));
    limit(greatest, found);
    assertTrue(remarks(found).contains(NoteCode.STANDARD_CAPACITY_COUNTS));
    Scenario beyond = stated.with("/supply/maximumFaultCurrentA", greatest + 1);
    open(beyond.finding(CheckName.BREAKING_CAPACITY));
    assertNotEquals(Verdict.COMPLIES, beyond.verdict(CheckName.LET_THROUGH_ENERGY));
  }

  /** Breakers to IEC 60947-2 and fuses to BS 88-2 are made for more. */
  @ParameterizedTest
  @CsvSource({"IEC 60947-2", "BS 88-2"})
  void otherStandardsGoFurther(String standard) {
    Scenario stated =
        at(60000).with("/device/standard", standard).with("/device/breakingCapacityA", 80000);
    limit(80000, complies(stated.finding(CheckName.BREAKING_CAPACITY)));
  }

  /** Clause 1: rated currents up to 125 A (from memory). */
  @ParameterizedTest
  @CsvSource({"125, true", "126, false"})
  void ratedCurrentEndsWithTheStandard(double rated, boolean known) {
    Scenario breaker =
        at(3000)
            .with("/device/ratedCurrentA", rated)
            .with("/load/designCurrentA", 10)
            .with("/cable/construction", "armoured-multicore")
            .with("/cable/lineCsaMm2", 95)
            .with("/cable/neutralCsaMm2", 95);
    for (CheckName check :
        new CheckName[] {
          CheckName.OVERLOAD_PROTECTION,
          CheckName.CONDUCTOR_RATING,
          CheckName.EARTH_FAULT_DISCONNECTION
        }) {
      Finding found = breaker.finding(check);
      assertEquals(!known, missing(found).contains("/device/ratedCurrentA"), found::toString);
      assertTrue(known || found.verdict() == Verdict.NOT_DETERMINED, found::toString);
    }
  }

  /** 440 V between phases (from memory): 254 V to earth. Then nothing says what a device breaks. */
  @ParameterizedTest
  @CsvSource({"254, true", "255, false", "400, false"})
  void capacityHoldsUpToAVoltage(double lineToEarth, boolean holds) {
    Scenario supply =
        at(3000)
            .with("/supply/ownership", "private")
            .with("/supply/lineToEarthVoltageV", lineToEarth);
    for (CheckName check :
        new CheckName[] {CheckName.BREAKING_CAPACITY, CheckName.LET_THROUGH_ENERGY}) {
      Finding found = supply.finding(check);
      if (holds) {
        complies(found);
      } else {
        open(found, "/supply/lineToEarthVoltageV");
      }
    }
  }

  @Test
  void anotherStandardsVoltageIsNotKnownEither() {
    Scenario supply =
        at(3000)
            .with("/supply/ownership", "private")
            .with("/supply/lineToEarthVoltageV", 400)
            .with("/device/standard", "IEC 60947-2");
    open(supply.finding(CheckName.BREAKING_CAPACITY), "/supply/lineToEarthVoltageV");
  }

  private static Scenario at(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current);
  }
}
