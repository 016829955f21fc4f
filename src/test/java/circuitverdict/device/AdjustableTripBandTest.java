package circuitverdict.device;

import static circuitverdict.device.Devices.EDITION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice.Settings;
import org.junit.jupiter.api.Test;

/**
 * Breakers to IEC 60947-2: conventional 1.05 and 1.30 Ir, magnetic settings within 20 %,
 * instantaneous within 0.2 s, delayed releases by their delay (engineering basis, section 2).
 */
class AdjustableTripBandTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static TripBand set(Double ir, Double isd, Double tsd, Double ii) {
    return TripBand.of(Devices.set(ir, isd, tsd, ii), EDITION);
  }

  @Test
  void theConventionalCurrentsAreMultiplesOfTheSetting() {
    TripBand band = set(100.0, null, null, 1000.0);
    // 1.05 and 1.30 Ir; 2 h above 63 A: IEC 60947-2.
    assertEquals(7200, band.earliestS(104.9));
    assertEquals(NEVER, band.latestS(104.9));
    assertEquals(0, band.earliestS(105.1));
    assertEquals(NEVER, band.latestS(129.9));
    assertEquals(7200, band.latestS(130.1));
    assertEquals(3600, set(63.0, null, null, 1000.0).latestS(90));
  }

  @Test
  void theInstantaneousReleaseOperatesForCertainTwentyPercentAboveItsSetting() {
    TripBand band = set(100.0, null, null, 1000.0);
    assertEquals(7200, band.latestS(1199.9));
    assertEquals(0.2, band.latestS(1200));
    assertEquals(0.2, band.latestS(25000));
    assertEquals(0, band.earliestS(1000));
  }

  /** The standard promises no greatest clearing time of a delayed release. */
  @Test
  void aDelayedReleasePromisesNothing() {
    TripBand band = set(100.0, 500.0, 0.3, 1000.0);
    assertEquals(7200, band.latestS(600));
    assertEquals(7200, band.latestS(1199.9));
    assertEquals(0.2, band.latestS(1200));
    assertEquals(7200, set(100.0, 500.0, 0.3, null).latestS(25000));
  }

  @Test
  void aDelayedReleaseAboveTheInstantaneousOneOrWithoutItsDelaySaysNothing() {
    assertEquals(0.2, set(100.0, 1000.0, 0.3, 1000.0).latestS(1200));
    assertEquals(7200, set(100.0, 500.0, null, 1000.0).latestS(700));
    assertEquals(7200, set(100.0, null, 0.3, 1000.0).latestS(700));
  }

  @Test
  void theSettingCountsNotTheRatingAndTheRatingOnlyWithoutASetting() {
    Settings none = new Settings(null, null, null, null);
    TripBand rated = TripBand.of(Devices.adjustable(100.0, 8.0, 12.0, none), EDITION);
    assertEquals(7200, rated.latestS(131));
    // Magnetic limits stated as multiples of In already hold the tolerance.
    assertEquals(7200, rated.latestS(1199.9));
    assertEquals(0.2, rated.latestS(1200));
    Settings lower = new Settings(50.0, null, null, null);
    TripBand set = TripBand.of(Devices.adjustable(100.0, 8.0, 12.0, lower), EDITION);
    assertEquals(3600, set.latestS(66));
    assertEquals(0.2, set.latestS(1200));
    assertNull(TripBand.of(Devices.adjustable(null, 8.0, 12.0, none), EDITION));
  }

  @Test
  void multiplesWithoutARatingPromiseNoInstantaneousTrip() {
    Settings only = new Settings(50.0, null, null, null);
    TripBand band = TripBand.of(Devices.adjustable(null, 8.0, 12.0, only), EDITION);
    assertEquals(3600, band.latestS(20000));
  }

  @Test
  void ofSettingAndMultiplesTheLessSensitiveOneCounts() {
    Settings both = new Settings(100.0, null, null, 500.0);
    TripBand band = TripBand.of(Devices.adjustable(100.0, 8.0, 12.0, both), EDITION);
    assertEquals(7200, band.latestS(1199));
    assertEquals(0.2, band.latestS(1200));
  }

  @Test
  void theStepsFollowOneAnotherAndNameTheirValues() {
    TripBand band = set(100.0, 500.0, 0.3, 1000.0);
    assertEquals(4, band.steps().size());
    for (int i = 1; i < band.steps().size(); i++) {
      assertEquals(band.steps().get(i - 1).toA(), band.steps().get(i).fromA());
      assertTrue(band.steps().get(i).latestS() <= band.steps().get(i - 1).latestS());
    }
    assertNull(band.at(110).latest());
    assertEquals(7200, band.at(300).latest().number());
    assertEquals(7200, band.at(700).latest().number());
    assertEquals(0.2, band.at(2000).latest().number());
  }
}
