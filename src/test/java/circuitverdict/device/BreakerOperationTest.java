package circuitverdict.device;

import static circuitverdict.device.Devices.breaker;
import static circuitverdict.device.Devices.design;
import static circuitverdict.device.Devices.missing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ia of breakers to IEC 60898-1: 5, 10 and 20 In at every time from 0.1 s on. */
class BreakerOperationTest {

  private static OperatingCurrent within(ProtectiveDevice device, double timeS, Dossier d) {
    return OperatingCurrent.within(device, timeS, d);
  }

  @ParameterizedTest
  @CsvSource({
    // Type, In, Ia (upper magnetic limit), printed Zs of Table 41.3 (18th Edition).
    "B, 32, 160, 1.37",
    "B, 6, 30, 7.28",
    "C, 16, 160, 1.37",
    "C, 125, 1250, 0.17",
    "D, 10, 200, 1.09",
    "D, 63, 1260, 0.17"
  })
  void theUpperMagneticLimitServesEveryTimeFromATenthOfASecond(
      String letter, double in, double current, String printed) {
    // 0.1 s, the times of Table 41.1 and 5 s; type D counts 20 In at 5 s too.
    for (double time : new double[] {0.1, 0.2, 0.4, 0.8, 1, 5}) {
      Dossier d = design();
      OperatingCurrent found = within(breaker(letter, in), time, d);
      assertEquals(current, found.current().value());
      assertEquals("Ia", found.current().symbol());
      assertEquals(printed, found.printed().printed());
      assertFalse(found.tableLimits());
      assertTrue(d.missing().isEmpty());
      assertEquals("m·In", d.working().steps().get(0).formulaText());
    }
  }

  @Test
  void aRatingThatIsNotPrintedIsStillJudgedByTheExpression() {
    OperatingCurrent found = within(breaker("B", 13.0), 0.4, design());
    assertEquals(65, found.current().value());
    assertNull(found.printed());
  }

  @Test
  void belowATenthOfASecondOnlyTheMakerKnows() {
    // 0.07 s and 0.04 s of Table 41.1, TT: test e promises no less than 0.1 s.
    for (double time : new double[] {0.04, 0.07, Math.nextDown(0.1)}) {
      Dossier d = design();
      assertFalse(within(breaker("B", 32.0), time, d).current().known());
      assertEquals(List.of("maker-time-needed /device"), missing(d));
    }
  }

  @Test
  void whatIsNotStatedIsMissing() {
    Dossier rating = design();
    assertFalse(within(breaker("B", null), 0.4, rating).current().known());
    assertEquals(List.of("/device/ratedCurrentA"), missing(rating));
    Dossier letter = design();
    assertFalse(within(breaker(null, 32.0), 0.4, letter).current().known());
    assertEquals(List.of("/device/characteristic"), missing(letter));
    Dossier both = design();
    assertFalse(within(breaker(null, null), 0.4, both).current().known());
    assertEquals(List.of("/device/ratedCurrentA", "/device/characteristic"), missing(both));
  }

  @Test
  void theLimitOfAnotherLetterIsNeverAssumed() {
    Dossier d = design();
    OperatingCurrent found = within(breaker("K", 32.0), 0.4, d);
    assertFalse(found.current().known());
    assertNull(found.printed());
    assertEquals(List.of("/device/magneticMultiples/upper"), missing(d));
  }

  @Test
  void aStatedLimitServesWithoutAPrintedImpedance() {
    // Type K at 14 In: trade practice, from memory.
    OperatingCurrent found = within(Devices.stated("K", 10.0, 10.0, 14.0), 0.4, design());
    assertEquals(140, found.current().value());
    assertNull(found.printed());
  }

  @Test
  void aStatedLimitOnlyEverRaisesTheCurrentOfALetter() {
    OperatingCurrent raised = within(Devices.stated("D", 10.0, 10.0, 30.0), 0.4, design());
    assertEquals(300, raised.current().value());
    assertNull(raised.printed());
    OperatingCurrent kept = within(Devices.stated("D", 10.0, 10.0, 15.0), 0.4, design());
    assertEquals(200, kept.current().value());
    assertEquals("1.09", kept.printed().printed());
  }

  @Test
  void devicesWithoutAnOvercurrentReleaseAreNotJudged() {
    for (ProtectiveDevice device : List.of(Devices.rccb(null, null), Devices.other())) {
      Dossier d = design();
      OperatingCurrent found = within(device, 0.4, d);
      assertFalse(found.current().known());
      assertFalse(found.tableLimits());
      assertNull(found.printed());
      assertTrue(missing(d).get(0).endsWith("/device/standard"), missing(d).toString());
    }
  }
}
