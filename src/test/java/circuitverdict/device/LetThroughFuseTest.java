package circuitverdict.device;

import static circuitverdict.device.Devices.design;
import static circuitverdict.device.Devices.fuse;
import static circuitverdict.device.Devices.signOff;
import static circuitverdict.device.LetThroughBreakerTest.ampere;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Energy of fuses: never above a known operating point (common practice), never below the gate. */
class LetThroughFuseTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final Fuse GG32 = fuse("BS 88-2", 32.0, "gG");

  private static LetThrough.Energy at(Fuse fuse, double current, Dossier d) {
    return LetThrough.of(fuse, d).over(ampere(current), ampere(current));
  }

  private static double greatest(Fuse fuse, double current) {
    return at(fuse, current, design()).greatest().value();
  }

  @ParameterizedTest
  @CsvSource({
    // Points of a 32 A gG fuse: 129 A 5 s, 220 A 0.4 s (Tables 41.4, 41.2), 350 A 0.1 s (gate).
    "128, Infinity",
    "128.99999999999999, 83205",
    "129, 83205",
    "200, 83205",
    "220, 19360",
    "300, 19360",
    "350, 12250",
    "6000, 12250",
    "50000, 12250",
    "50000.00000000001, 12250",
    "50001, Infinity"
  })
  void theLeastPointBelowTheCurrentBoundsIt(double current, double expected) {
    assertEquals(expected, greatest(GG32, current), expected == NEVER ? 0 : 1e-6);
  }

  @ParameterizedTest
  @CsvSource({
    "BS 88-2, 16, gG",
    "BS 88-2, 100, gG",
    "BS 88-3, 32,",
    "BS 88-3, 100,",
    "BS 1361, 30,",
    "BS 1362, 13,"
  })
  void theBoundNeverRisesWithTheCurrent(String standard, double in, String category) {
    Fuse fuse = fuse(standard, in, category);
    double before = NEVER;
    for (double current = in; current < 6000; current *= 1.01) {
      double here = greatest(fuse, current);
      assertTrue(here <= before, standard + " at " + current);
      before = here;
    }
    assertTrue(before < NEVER, "bounded at last");
  }

  @Test
  void overARangeTheLowestCurrentDecides() {
    LetThrough.Energy energy = LetThrough.of(GG32, design()).over(ampere(230), ampere(6000));
    assertEquals(19360, energy.greatest().value(), 1e-6);
    assertEquals(350, energy.decidingA());
  }

  @Test
  void theLeastIsThePreArcingEnergyOfGgFusesAlone() {
    // 1 800 A²s: IEC 60269-1 table 7 for 32 A, from memory.
    for (double current : new double[] {50, 350, 6000, 90000}) {
      assertEquals(1800, at(GG32, current, design()).least().value());
    }
    assertEquals(0, at(fuse("BS 88-3", 32.0, null), 6000, design()).least().value());
    assertEquals(0, at(fuse("BS 88-2", 10.0, "gG"), 6000, design()).least().value());
  }

  @Test
  void otherCartridgeFusesAreBoundByTheWiringRulesAlone() {
    Fuse bs88part3 = fuse("BS 88-3", 32.0, null);
    // 137 A 5 s, 240 A 0.4 s: Tables 41.4 and 41.2.
    assertEquals(NEVER, greatest(bs88part3, 136));
    assertEquals(137 * 137 * 5, greatest(bs88part3, 137), 1e-6);
    assertEquals(240 * 240 * 0.4, greatest(bs88part3, 240), 1e-6);
    assertEquals(240 * 240 * 0.4, greatest(bs88part3, 16000), 1e-6);
    assertEquals(NEVER, greatest(bs88part3, 16001));
  }

  @Test
  void rewireableAndMotorFusesHaveNoBound() {
    assertEquals(NEVER, greatest(fuse("BS 3036", 30.0, null), 500));
    assertEquals(NEVER, greatest(fuse("BS 88-2", 32.0, "aM"), 500));
    assertEquals(0, at(fuse("BS 88-2", 32.0, "aM"), 500, design()).least().value());
    assertEquals(NEVER, greatest(fuse("BS 88-2", null, "gG"), 500));
  }

  @Test
  void generalPurposeAndCapacityAreTakenAtDesignAndNotAtSignOff() {
    Fuse unstated = fuse("BS 88-2", 32.0, null);
    assertEquals(12250, at(unstated, 1000, design()).greatest().value(), 1e-6);
    assertEquals(NEVER, at(unstated, 1000, signOff()).greatest().value());
    assertEquals(0, at(unstated, 1000, signOff()).least().value());
    Fuse stated =
        new Fuse(
            new circuitverdict.circuit.DeviceData(
                "/device",
                null,
                "BS 88-2",
                32.0,
                50000.0,
                null,
                1,
                null,
                null,
                java.util.List.of()),
            "gG");
    assertEquals(12250, at(stated, 50000, signOff()).greatest().value(), 1e-6);
    assertEquals(NEVER, at(stated, 50001, signOff()).greatest().value());
    // Without a stated capacity sign-off has no promise at any current.
    assertEquals(NEVER, at(GG32, 1000, signOff()).greatest().value());
  }

  @Test
  void theWorkingShowsThePointThatBounds() {
    Dossier d = design();
    at(GG32, 1000, d);
    assertEquals("Ip", d.working().steps().get(0).formulaText());
    assertEquals("Ip²·tp", d.working().steps().get(1).formulaText());
    assertEquals("350²·0.1", d.working().steps().get(1).substitution());
  }
}
