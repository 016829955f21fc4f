package circuitverdict.device;

import static circuitverdict.device.Devices.design;
import static circuitverdict.device.Devices.missing;
import static circuitverdict.device.Devices.set;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Settings;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Dossier.Strength;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Ia of breakers to IEC 60947-2: 1.2 times the setting, a delayed release only if its time fits.
 */
class AdjustableOperationTest {
  private static final Settings NONE = new Settings(null, null, null, null);

  private static void operates(
      double expected, Strength strength, AdjustableBreaker breaker, double timeS) {
    Dossier d = design();
    OperatingCurrent found = OperatingCurrent.within(breaker, timeS, d);
    assertEquals(expected, found.current().value(), 1e-9);
    assertEquals(strength, d.strength());
    assertNull(found.printed());
    assertFalse(found.tableLimits());
    assertTrue(d.missing().isEmpty());
  }

  private static void unknown(String why, AdjustableBreaker breaker, double timeS) {
    Dossier d = design();
    assertFalse(OperatingCurrent.within(breaker, timeS, d).current().known());
    assertEquals(List.of(why), missing(d));
  }

  @Test
  void theInstantaneousReleaseCountsWithTwentyPercentMore() {
    for (double time : new double[] {0.2, 0.4, 5}) {
      operates(600, Strength.RULE, set(50.0, null, null, 500.0), time);
    }
  }

  @Test
  void limitsStatedAsMultiplesOfTheRatingAlreadyHoldTheTolerance() {
    operates(280, Strength.RULE, Devices.adjustable(20.0, 10.0, 14.0, NONE), 0.4);
  }

  @Test
  void ofSettingAndMultiplesTheLessSensitiveOneCounts() {
    Settings ii = new Settings(null, null, null, 150.0);
    operates(280, Strength.RULE, Devices.adjustable(20.0, 10.0, 14.0, ii), 0.4);
  }

  @Test
  void aDelayedReleaseServesByGuidanceWhereItsWholeTimeFits() {
    // Delay 0.2 s and the test window of 0.2 s: 0.4 s in all; the rule itself takes Ii first.
    operates(600, Strength.RULE, set(50.0, 300.0, 0.2, 500.0), 0.4);
    assertEquals(360, guided(set(50.0, 300.0, 0.2, 500.0), 0.4));
    assertEquals(360, guided(set(50.0, 300.0, 0.5, null), 5));
    assertEquals(Double.NaN, guided(set(50.0, 300.0, 0.21, 500.0), 0.4));
  }

  /** 0.1 + 0.2 s in binary exceeds 0.3 s: no more than its rounding. */
  @Test
  void aDelayThatFitsButForBinaryRoundingFits() {
    assertEquals(360, guided(set(50.0, 300.0, 0.1, 500.0), 0.3));
    assertEquals(Double.NaN, guided(set(50.0, 300.0, 0.1 + 1e-9, 500.0), 0.3));
  }

  private static double guided(ProtectiveDevice breaker, double time) {
    return OperatingCurrent.byGuidance(breaker, time, design()).current().value();
  }

  @Test
  void aDelayedReleaseThatIsTooSlowDoesNotServe() {
    operates(600, Strength.RULE, set(50.0, 300.0, 0.21, 500.0), 0.4);
    operates(600, Strength.RULE, set(50.0, 300.0, null, 500.0), 0.4);
    unknown("/device/settings/instantaneousA", set(50.0, 300.0, 0.3, null), 0.4);
  }

  @Test
  void aDelayedReleaseThatIsNoMoreSensitiveThanTheInstantaneousOneIsNotLeantOn() {
    operates(336, Strength.RULE, set(50.0, 300.0, 0.1, 280.0), 0.4);
    operates(240, Strength.RULE, set(50.0, 300.0, 0.1, 200.0), 0.4);
  }

  @Test
  void belowTheTestWindowOnlyTheMakerKnows() {
    unknown("maker-time-needed /device", set(50.0, 300.0, 0.0, 500.0), 0.1);
    unknown("maker-time-needed /device", Devices.adjustable(20.0, 10.0, 14.0, NONE), 0.19);
  }

  @Test
  void settingsAreNeverAssumed() {
    unknown("/device/settings/instantaneousA", set(50.0, null, null, null), 0.4);
    unknown("/device/ratedCurrentA", Devices.adjustable(null, 10.0, 14.0, NONE), 0.4);
  }

  /** What carries Ir for ever does not trip below it: Ir, here taken as In, is then asked for. */
  @Test
  void aSettingBelowWhatTheDeviceCarriesIsNotBelieved() {
    operates(60, Strength.RULE, set(50.0, null, null, 50.0), 0.4);
    unknown("/device/settings/longTimeA", set(50.0, null, null, 49.0), 0.4);
    assertEquals(Double.NaN, guided(set(50.0, 49.0, 0.1, 500.0), 0.4));
  }

  @Test
  void theWorkingNamesTheSettingAndItsTolerance() {
    Dossier d = design();
    OperatingCurrent.within(set(50.0, null, null, 500.0), 0.4, d);
    assertEquals("(1 + δ)·Iset", d.working().steps().get(0).formulaText());
    assertEquals("(1 + 0.2)·500", d.working().steps().get(0).substitution());
    Dossier multiple = design();
    OperatingCurrent.within(Devices.adjustable(20.0, 10.0, 14.0, NONE), 0.4, multiple);
    assertEquals("14·20", multiple.working().steps().get(0).substitution());
  }
}
