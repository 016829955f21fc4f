package circuitverdict.device;

import static circuitverdict.device.Devices.design;
import static circuitverdict.device.Devices.missing;
import static circuitverdict.device.Devices.signOff;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.circuit.ProtectiveDevice.Settings;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Icn, Icu and Ics: stated, by the standard's own rule, or missing. */
class BreakingCapacityTest {

  private static DeviceData data(String standard, Double capacity, Double service) {
    return new DeviceData(
        "/device", null, standard, 32.0, capacity, service, 1, null, null, List.of());
  }

  private static Figure service(ProtectiveDevice device, Dossier d) {
    return BreakingCapacity.service(device, BreakingCapacity.of(device, d), d);
  }

  @ParameterizedTest
  @CsvSource({
    // IEC 60898-1 table 18: Icn and Ics in amperes.
    "1500, 1500",
    "3000, 3000",
    "4500, 4500",
    "6000, 6000",
    "10000, 7500",
    "15000, 7500",
    "20000, 10000",
    "25000, 12500",
    // The floor of 6000 A between 6 and 10 kA, and of 7500 A above.
    "7000, 6000",
    "9000, 6750",
    "12000, 7500"
  })
  void theServiceCapacityFollowsTheRatedOne(double icn, double ics) {
    Breaker breaker = Devices.breaker("B", 32.0, icn, null);
    Dossier d = design();
    assertEquals(ics, service(breaker, d).value());
    assertEquals("Ics", service(breaker, d).symbol());
    assertTrue(d.missing().isEmpty());
  }

  @Test
  void theWorkingShowsTheFloorOnlyWhereThereIsOne() {
    Dossier small = design();
    service(Devices.breaker("B", 32.0, 6000.0, null), small);
    assertEquals("ks·Icn", small.working().steps().get(0).formulaText());
    Dossier great = design();
    service(Devices.breaker("B", 32.0, 10000.0, null), great);
    assertEquals("max(ks·Icn; Ics,min)", great.working().steps().get(0).formulaText());
    assertEquals("max(0.75·10000; 6000)", great.working().steps().get(0).substitution());
  }

  @Test
  void aStatedServiceCapacityGoesBeforeTheRule() {
    Breaker breaker = new Breaker(data("IEC 60898-1", 10000.0, 10000.0), "B", null, Multiples.NONE);
    Dossier d = design();
    assertEquals(10000, service(breaker, d).value());
    assertTrue(d.working().steps().isEmpty());
  }

  @Test
  void theRuleIsThatOfIec60898AndOfNoOtherStandard() {
    Settings settings = new Settings(32.0, null, null, 300.0);
    AdjustableBreaker industrial =
        new AdjustableBreaker(data("IEC 60947-2", 25000.0, null), null, Multiples.NONE, settings);
    assertFalse(service(industrial, design()).known());
    assertEquals("Icu", BreakingCapacity.of(industrial, design()).symbol());
    AdjustableBreaker stated =
        new AdjustableBreaker(
            data("IEC 60947-2", 25000.0, 12500.0), null, Multiples.NONE, settings);
    assertEquals(12500, service(stated, design()).value());
    assertFalse(service(Devices.fuse("BS 88-2", 32.0, "gG"), design()).known());
  }

  @Test
  void aBreakersCapacityIsNeverAssumed() {
    Breaker breaker = Devices.breaker("B", 32.0, null, null);
    Dossier d = design();
    assertFalse(BreakingCapacity.of(breaker, d).known());
    assertEquals(List.of("/device/breakingCapacityA"), missing(d));
    assertTrue(d.assumptions().isEmpty());
    Dossier quiet = design();
    assertFalse(BreakingCapacity.stated(breaker, quiet).known());
    assertTrue(quiet.missing().isEmpty());
    assertFalse(service(breaker, design()).known());
    Figure stated = BreakingCapacity.of(Devices.breaker("B", 32.0), design());
    assertEquals(6000, stated.value());
    assertEquals("Icn", stated.symbol());
    assertEquals(6000, BreakingCapacity.stated(Devices.breaker("B", 32.0), signOff()).value());
  }

  @ParameterizedTest
  @CsvSource({
    // The standards' own capacities, the lesser of two types: type I of BS 88-3 and BS 1361, S1 of
    // BS 3036.
    "BS 88-2, 50000",
    "BS 88-3, 16000",
    "BS 1361, 16500",
    "BS 3036, 1000",
    "BS 1362, 6000"
  })
  void theStandardsOwnCapacityServesForAFuseAndIsListed(String standard, double capacity) {
    Fuse fuse = Devices.fuse(standard, 30.0, null);
    Dossier d = design();
    Figure found = BreakingCapacity.of(fuse, d);
    assertEquals(capacity, found.value());
    assertEquals("Icu", found.symbol());
    assertEquals(NoteCode.ASSUMED_BREAKING_CAPACITY, d.assumptions().get(0).code());
    Dossier quiet = design();
    assertEquals(capacity, BreakingCapacity.stated(fuse, quiet).value());
    assertEquals(1, quiet.assumptions().size());
  }

  @Test
  void atSignOffAFusesCapacityMustBeStated() {
    Fuse fuse = Devices.fuse("BS 88-3", 32.0, null);
    Dossier d = signOff();
    assertFalse(BreakingCapacity.of(fuse, d).known());
    assertEquals(List.of("/device/breakingCapacityA"), missing(d));
    Dossier quiet = signOff();
    assertFalse(BreakingCapacity.stated(fuse, quiet).known());
    assertTrue(quiet.missing().isEmpty());
    Fuse stated = new Fuse(data("BS 88-3", 16500.0, null), null);
    assertEquals(16500, BreakingCapacity.of(stated, signOff()).value());
    assertEquals(16500, BreakingCapacity.stated(stated, design()).value());
  }

  @Test
  void aFuseOfAStandardWithoutAFigureIsMissingIt() {
    Dossier d = design();
    assertFalse(BreakingCapacity.of(Devices.fuse("BS 646", 5.0, null), d).known());
    assertEquals(List.of("/device/breakingCapacityA"), missing(d));
  }
}
