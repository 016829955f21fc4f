package circuitverdict.device;

import static circuitverdict.device.Devices.design;
import static circuitverdict.device.Devices.fuse;
import static circuitverdict.device.Devices.missing;
import static circuitverdict.device.Devices.signOff;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ia of fuses by Tables 41.2 and 41.4 and the 0.1 s gate of IEC 60269-1. */
class FuseOperationTest {

  private static void unknown(String why, Fuse fuse, double timeS, Dossier d) {
    OperatingCurrent found = OperatingCurrent.within(fuse, timeS, d);
    assertFalse(found.current().known());
    assertNull(found.printed());
    assertEquals(List.of(why), missing(d));
  }

  @ParameterizedTest
  @CsvSource({
    // Standard, In, time, Ia, printed Zs: Tables 41.2 and 41.4, 18th Edition.
    "BS 88-2, 32, 0.4, 220, 0.99",
    "BS 88-2, 32, 5, 129, 1.70",
    "BS 88-3, 20, 0.4, 113, 1.93",
    "BS 88-3, 100, 5, 575, 0.38",
    "BS 3036, 30, 0.4, 210, 1.04",
    "BS 3036, 30, 5, 87, 2.51",
    "BS 1362, 13, 0.4, 95, 2.30",
    // Between the two the current of the shorter time, above 5 s that of 5 s.
    "BS 88-2, 32, 0.8, 220, 0.99",
    "BS 88-2, 32, 1, 220, 0.99",
    "BS 88-2, 32, 4.99, 220, 0.99",
    "BS 88-2, 32, 10, 129, 1.70"
  })
  void theTablesServeTheirTimesAndTheTimesBetween(
      String standard, double in, double time, double current, String printed) {
    Dossier d = design();
    String category = standard.equals("BS 88-2") ? "gG" : null;
    OperatingCurrent found = OperatingCurrent.within(fuse(standard, in, category), time, d);
    assertEquals(current, found.current().value());
    assertEquals("Ia", found.current().symbol());
    assertEquals(printed, found.printed().printed());
    assertTrue(found.tableLimits());
    assertTrue(d.missing().isEmpty());
    assertTrue(d.assumptions().isEmpty());
    assertEquals(1, d.working().steps().size());
  }

  @Test
  void bs1361HasACurrentButNoPrintedImpedanceInThe18thEdition() {
    OperatingCurrent found = OperatingCurrent.within(fuse("BS 1361", 30.0, null), 0.4, design());
    // 230 V over 1.15 Ω (Table 41.2, 2008).
    assertEquals(200, found.current().value());
    assertNull(found.printed());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.2, 0.39})
  void belowFourTenthsOfASecondTheGateServes(double time) {
    OperatingCurrent found = OperatingCurrent.within(fuse("BS 88-2", 32.0, "gG"), time, design());
    // 350 A within 0.1 s: IEC 60269-1 table 3, from memory.
    assertEquals(350, found.current().value());
    assertNull(found.printed());
  }

  @Test
  void noGateServesBelowATenthOfASecondOrOtherFuses() {
    String why = "not-in-tables /device/ratedCurrentA";
    unknown(why, fuse("BS 88-2", 32.0, "gG"), 0.07, design());
    unknown(why, fuse("BS 88-3", 32.0, null), 0.2, design());
    unknown(why, fuse("BS 3036", 30.0, null), 0.2, design());
    unknown(why, fuse("BS 88-2", 10.0, "gG"), 0.2, design());
  }

  @Test
  void aRatingThatTheTablesLackIsNotGuessed() {
    String why = "not-in-tables /device/ratedCurrentA";
    unknown(why, fuse("BS 88-2", 35.0, "gG"), 0.4, design());
    unknown(why, fuse("BS 88-2", 100.0, "gG"), 0.4, design());
    assertEquals(
        520, OperatingCurrent.within(fuse("BS 88-2", 100.0, "gG"), 5, design()).current().value());
  }

  @ParameterizedTest
  @ValueSource(strings = {"aM", "gM"})
  void motorFusesAreRefused(String category) {
    String why = "device-not-judged /device/utilizationCategory";
    unknown(why, fuse("BS 88-2", 32.0, category), 0.4, design());
    unknown(why, fuse("BS 88-2", 32.0, category), 5, signOff());
  }

  @Test
  void generalPurposeIsAssumedAtDesignAndListed() {
    Dossier d = design();
    assertEquals(
        220, OperatingCurrent.within(fuse("BS 88-2", 32.0, null), 0.4, d).current().value());
    assertEquals(1, d.assumptions().size());
    assertEquals(NoteCode.ASSUMED_GENERAL_PURPOSE, d.assumptions().get(0).code());
    assertEquals("/device/utilizationCategory", d.assumptions().get(0).pointer().text());
  }

  @Test
  void generalPurposeIsNotAssumedAtSignOff() {
    unknown("/device/utilizationCategory", fuse("BS 88-2", 32.0, null), 0.4, signOff());
    assertEquals(
        240,
        OperatingCurrent.within(fuse("BS 88-3", 32.0, null), 0.4, signOff()).current().value());
  }

  @Test
  void aRatingThatIsNotStatedIsMissing() {
    unknown("/device/ratedCurrentA", fuse("BS 88-2", null, "gG"), 0.4, design());
  }
}
