package circuitverdict.device;

import static circuitverdict.device.Devices.design;
import static circuitverdict.device.Devices.missing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.circuit.ProtectiveDevice.Settings;
import circuitverdict.circuit.Residual;
import circuitverdict.circuit.Residual.Delay;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Break times of IEC 61008-1 and 61009-1 by multiple of IΔn, and what a residual function breaks.
 */
class ResidualTimeTest {

  private static Residual residual(Delay delay) {
    return new Residual(null, 0.03, delay, null);
  }

  private static Figure latest(Delay delay, double multiple, Dossier d) {
    return ResidualTime.latest(
        Devices.rccb(residual(delay), null), Figure.derived("n", multiple, Unit.ONE), d);
  }

  @ParameterizedTest
  @CsvSource({
    // General: 0.3, 0.15, 0.04 s at 1, 2, 5 IΔn; S: 0.5, 0.2, 0.15 s (engineering basis, section
    // 2).
    "GENERAL, 1, 0.3",
    "GENERAL, 1.99, 0.3",
    "GENERAL, 2, 0.15",
    "GENERAL, 4, 0.15",
    "GENERAL, 4.4, 0.15",
    "GENERAL, 4.99, 0.15",
    "GENERAL, 5, 0.04",
    "GENERAL, 500, 0.04",
    "S, 1, 0.5",
    "S, 1.99, 0.5",
    "S, 2, 0.2",
    "S, 4, 0.2",
    "S, 4.99, 0.2",
    "S, 5, 0.15",
    "S, 500, 0.15",
    // Not stated: counts as S for the latest time.
    ", 1, 0.5",
    ", 2, 0.2",
    ", 4, 0.2",
    ", 4.99, 0.2",
    ", 5, 0.15"
  })
  void theTimeIsThatOfTheGreatestMultipleReached(Delay delay, double multiple, double seconds) {
    Dossier d = design();
    Figure time = latest(delay, multiple, d);
    assertEquals(seconds, time.value());
    assertEquals("tr", time.symbol());
    assertEquals(1, d.working().steps().size());
    assertTrue(d.missing().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"GENERAL", "S", "''"})
  void belowItsOperatingCurrentNothingIsPromised(String delay) {
    Delay kind = delay.isEmpty() ? null : Delay.valueOf(delay);
    assertFalse(latest(kind, 0.99, design()).known());
    assertFalse(latest(kind, 1 - 1e-11, design()).known());
    assertFalse(latest(kind, Double.NaN, design()).known());
  }

  /** 0.03·5 A over 0.03 A is 5 in arithmetic: figures within 1e-12 of each other are equal. */
  @Test
  void aMultipleReachedButForBinaryRoundingIsReached() {
    assertEquals(0.3, latest(Delay.GENERAL, Math.nextDown(1.0), design()).value());
    assertEquals(0.15, latest(Delay.GENERAL, Math.nextDown(2.0), design()).value());
    assertEquals(0.04, latest(Delay.GENERAL, Math.nextDown(5.0), design()).value());
    assertEquals(0.15, latest(Delay.GENERAL, 5 * (1 - 1e-11), design()).value());
  }

  @Test
  void anAdjustableDelayIsTheMakersToTell() {
    for (double multiple : new double[] {0.99, 1, 2, 4.99, 5}) {
      Dossier d = design();
      assertFalse(latest(Delay.ADJUSTABLE, multiple, d).known());
      assertEquals(List.of("maker-time-needed /device/residual"), missing(d));
    }
  }

  /** Only an adjustable function has a delay set in seconds (contract, delayS). */
  @Test
  void aDelayInSecondsWithoutItsKindIsAdjustable() {
    ProtectiveDevice set = Devices.rccb(new Residual(null, 0.03, null, 0.3), null);
    Dossier d = design();
    assertFalse(ResidualTime.latest(set, Figure.derived("n", 5, Unit.ONE), d).known());
    assertEquals(List.of("maker-time-needed /device/residual"), missing(d));
    assertFalse(ResidualTime.leastMultipleWithin(set, 5, design()).known());
  }

  /** General: 0.15 s at 2 IΔn; S: 0.2 s at 2 IΔn (engineering basis, section 2). */
  @Test
  void theLeastMultipleWithinATimeFollowsFromTheSameTimes() {
    assertEquals(2, leastMultiple(Delay.GENERAL, 0.2));
    assertEquals(2, leastMultiple(Delay.S, 0.2));
    assertEquals(2, leastMultiple(null, 0.2));
    assertEquals(1, leastMultiple(Delay.GENERAL, 0.4));
    assertEquals(Double.NaN, leastMultiple(Delay.S, 0.1));
    assertEquals(Double.NaN, leastMultiple(Delay.ADJUSTABLE, 5));
  }

  /** General keeps 0.1 s at 5 IΔn, S never (engineering basis, section 2); none keeps 0.01 s. */
  @Test
  void whyThereIsNoLeastMultipleIsNamed() {
    List<String> maker = List.of("maker-time-needed /device/residual");
    List<String> delay = List.of("/device/residual/delay");
    assertEquals(maker, named(0.1, cbr(residual(Delay.ADJUSTABLE))));
    assertEquals(maker, named(0.1, cbr(new Residual(null, 0.03, null, 0.3))));
    assertEquals(maker, named(0.1, cbr(residual(Delay.S))));
    assertEquals(delay, named(0.1, cbr(residual(null))));
    assertEquals(delay, named(0.1, Devices.rccb(residual(null), null)));
    assertEquals(maker, named(0.01, Devices.rccb(residual(null), null)));
    assertEquals(maker, named(0.01, Devices.rccb(residual(Delay.GENERAL), null)));
  }

  private static List<String> named(double timeS, ProtectiveDevice device) {
    Dossier d = design();
    assertFalse(ResidualTime.leastMultipleWithin(device, timeS, d).known());
    return missing(d);
  }

  private static AdjustableBreaker cbr(Residual residual) {
    return new AdjustableBreaker(
        Devices.data("IEC 60947-2", 100.0, 25000.0, residual),
        null,
        Multiples.NONE,
        new Settings(null, null, null, null));
  }

  private static double leastMultiple(Delay delay, double timeS) {
    ProtectiveDevice device = Devices.rccb(residual(delay), null);
    return ResidualTime.leastMultipleWithin(device, timeS, design()).value();
  }

  @Test
  void anRccbBreaksItsStatedCapacityOrTheLeastOfItsStandard() {
    Figure stated = ResidualTime.breaks(Devices.rccb(residual(null), 1500.0), design());
    assertEquals(1500, stated.value());
    assertEquals("IΔm", stated.symbol());
    // IEC 61008-1: at least 500 A, from memory.
    Figure least = ResidualTime.breaks(Devices.rccb(residual(null), null), design());
    assertTrue(least.value() >= 500);
    assertEquals("IΔm", least.symbol());
  }

  @Test
  void aBreakerWithAResidualFunctionBreaksItsOwnCapacity() {
    Breaker rcbo =
        new Breaker(
            Devices.data("IEC 61009-1", 32.0, 10000.0, residual(null)), "B", null, Multiples.NONE);
    assertEquals(10000, ResidualTime.breaks(rcbo, design()).value());
    assertEquals(25000, ResidualTime.breaks(cbr(residual(null)), design()).value());
    Dossier d = design();
    assertFalse(ResidualTime.breaks(Devices.breaker("B", 32.0, null, null), d).known());
    assertTrue(d.missing().isEmpty());
  }

  @Test
  void otherDevicesBreakNoResidualCurrent() {
    assertFalse(ResidualTime.breaks(Devices.fuse("BS 88-2", 32.0, "gG"), design()).known());
    assertFalse(ResidualTime.breaks(Devices.other(), design()).known());
  }

  @Test
  void aResidualFunctionIsThereOnlyWhereItIsStated() {
    ProtectiveDevice none = null;
    assertFalse(ResidualTime.has(none));
    assertFalse(ResidualTime.has(Devices.breaker("B", 32.0)));
    assertTrue(ResidualTime.has(Devices.rccb(residual(Delay.S), null)));
  }
}
