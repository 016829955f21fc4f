package circuitverdict.check;

import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.support.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The energy limiting class stands on the device (EN 60898-1 annex ZA, types B and C up to 32 A):
 * where it is not stated and would limit the energy, it is asked for before the maker's data.
 */
class EnergyClassNeededTest {
  @ParameterizedTest
  @CsvSource({
    "B, 32, , 6000, true",
    "C, 32, , 6000, true",
    "B, 32, 1, 6000, false",
    "B, 40, , 6000, false",
    "D, 32, , 6000, false",
    "B, 32, , 5000, false"
  })
  void classIsAskedForWhereItWouldLimit(
      String type, double rated, Integer energyClass, double capacity, boolean asked) {
    Scenario unclassed =
        Scenario.oven()
            .without("/device/energyClass")
            .with("/device/characteristic", type)
            .with("/device/ratedCurrentA", rated)
            .with("/device/breakingCapacityA", capacity)
            .with("/cable/protectiveCsaMm2", 1);
    Scenario breaker =
        energyClass == null ? unclassed : unclassed.with("/device/energyClass", energyClass);
    Finding found = open(breaker.finding(CheckName.PROTECTIVE_CONDUCTOR), "/device/letThrough");
    assertEquals(asked, missing(found).contains("/device/energyClass"), found::toString);
  }
}
