package circuitverdict.device;

import static circuitverdict.device.Devices.design;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** I2 of 433.1.1(iii), and the rated current or setting it starts from. */
class ConventionalCurrentTest {

  private static Figure of(ProtectiveDevice device, Dossier d) {
    return ConventionalCurrent.of(device, RatedCurrent.of(device, d), d);
  }

  @ParameterizedTest
  @CsvSource({
    // gG: 2.1 to 4 A, 1.9 below 16 A, 1.6 from 16 A (IEC 60269-1); BS 3036 twice; BS 1362 1.9.
    "BS 88-2, 4, 8.4", "BS 88-2, 6, 11.4", "BS 88-2, 10, 19", "BS 88-2, 15, 28.5",
    "BS 88-2, 16, 25.6", "BS 88-2, 63, 100.8", "BS 88-2, 100, 160", "BS 88-2, 200, 320",
    "BS 88-2, 630, 1008", "BS 3036, 30, 60", "BS 1362, 13, 24.7"
  })
  void fusesByTheirStandard(String standard, double in, double expected) {
    Dossier d = design();
    assertEquals(expected, of(Devices.fuse(standard, in, null), d).value(), 1e-9);
    assertEquals("kf·In", d.working().steps().get(0).formulaText());
  }

  @Test
  void breakersByTestB() {
    // 1.45 In: IEC 60898-1 table 7, IEC 61009-1.
    assertEquals(46.4, of(Devices.breaker("B", 32.0), design()).value(), 1e-9);
    Breaker rcbo =
        new Breaker(Devices.data("IEC 61009-1", 20.0, 6000.0, null), "C", null, Multiples.NONE);
    assertEquals(29, of(rcbo, design()).value(), 1e-9);
  }

  @Test
  void adjustableBreakersByTheirSetting() {
    // 1.30 Ir: IEC 60947-2.
    assertEquals(104, of(Devices.set(80.0, null, null, 500.0), design()).value(), 1e-9);
    assertEquals(80, RatedCurrent.of(Devices.set(80.0, null, null, null), design()).value());
    assertEquals("In", RatedCurrent.of(Devices.set(80.0, null, null, null), design()).symbol());
  }

  @Test
  void whereTheTablesHoldNoMultipleItIsUnknownButNotMissing() {
    for (ProtectiveDevice device :
        List.of(Devices.fuse("BS 88-3", 32.0, null), Devices.fuse("BS 1361", 30.0, null))) {
      Dossier d = design();
      assertFalse(of(device, d).known());
      assertTrue(d.missing().isEmpty());
    }
  }

  @Test
  void withoutARatingItIsUnknownAndTheRatingMissing() {
    Dossier d = design();
    assertFalse(of(Devices.breaker("B", null), d).known());
    assertEquals(List.of("/device/ratedCurrentA"), Devices.missing(d));
    Dossier setting = design();
    assertFalse(of(Devices.set(null, null, null, 500.0), setting).known());
    assertEquals(List.of("/device/ratedCurrentA"), Devices.missing(setting));
    assertFalse(
        ConventionalCurrent.of(
                Devices.breaker("B", 32.0), Figure.unknown("In", Unit.AMPERE), design())
            .known());
  }
}
