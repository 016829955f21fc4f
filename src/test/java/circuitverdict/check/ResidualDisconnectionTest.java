package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Disconnection by a residual device: RA·IΔn ≤ 50 V and its break time (411.5.3, 411.4.4). */
class ResidualDisconnectionTest {
  private static final CheckName CHECK = CheckName.EARTH_FAULT_DISCONNECTION;

  /**
   * Break times of IEC 61009-1 at the least residual current as a multiple of IΔn = 0.3 A, in TT
   * within 0.2 s: 0.3 s at 1, 0.15 s at 2, 0.04 s at 5 times; S: 0.5, 0.2, 0.15 s. 0.95·230/Zs.
   */
  @ParameterizedTest
  @CsvSource({
    "general, 1.99, 0.3, false",
    "general, 2, 0.15, true",
    "general, 4.99, 0.15, true",
    "general, 5, 0.04, true",
    "S, 1.99, 0.5, false",
    "S, 2, 0.2, true",
    "S, 5, 0.15, true",
    ", 1.99, 0.5, false",
    ", 5, 0.15, true"
  })
  void breakTimeFollowsTheLeastCurrent(String delay, double multiple, double time, boolean holds) {
    double zs = 218.5 / (0.3 * multiple) * (1 - 1e-12);
    Scenario rcbo =
        tt(0.3)
            .with("/supply/loopImpedanceOhm", zs - 0.276936)
            .with("/supply/earthElectrodeResistanceOhm", 10);
    Scenario delayed =
        delay == null
            ? rcbo.without("/device/residual/delay")
            : rcbo.with("/device/residual/delay", delay);
    Finding found = delayed.finding(CHECK);
    judged(holds, found);
    assertEquals(time, found.comparisons().get(1).actual().value());
    assertEquals(0.2, found.comparisons().get(1).limit().value());
    assertEquals("/device", found.comparisons().get(1).subject());
  }

  /** Below IΔn nothing is promised. */
  @Test
  void currentBelowTheRatingPromisesNoTime() {
    Finding found = tt(0.03).with("/supply/loopImpedanceOhm", 8000).finding(CHECK);
    fails(found);
    assertEquals("mΔ", found.comparisons().get(1).actual().symbol());
  }

  /** Only the maker knows the latest time of an adjustable delay. */
  @Test
  void adjustableDelayAsksTheMaker() {
    Finding found = tt(0.3).with("/device/residual/delay", "adjustable").finding(CHECK);
    open(found, "/device/residual");
    assertEquals(NoteCode.MAKER_TIME_NEEDED, found.missing().get(0).code());
  }

  /** In TN the overcurrent pair governs where it complies, else the residual one. */
  @Test
  void overcurrentPairGovernsInTnWhereItComplies() {
    Finding short_ = tn(0.5).finding(CHECK);
    limit(1.365625, complies(short_));
    assertTrue(remarks(short_).contains(NoteCode.OVERCURRENT_GOVERNS));
    assertTrue(clauses(short_).contains("411.4.4"));
    assertFalse(remarks(short_).contains(NoteCode.RESIDUAL_GOVERNS));
  }

  /** Worked example A06: 1.84 Ω behind a B30 fails, and complies with a 30 mA device. */
  @Test
  void residualPairGovernsInTnWhereItDoesNot() {
    Scenario rcbo = tn(1.84).with("/device/ratedCurrentA", 30);
    Finding found = complies(rcbo.finding(CHECK));
    assertTrue(remarks(found).contains(NoteCode.RESIDUAL_GOVERNS));
    assertFalse(remarks(found).contains(NoteCode.OVERCURRENT_GOVERNS));
    assertEquals(50 / 0.03, found.comparisons().get(0).limit().value(), 1e-9);
    assertEquals(1.84, found.comparisons().get(0).actual().value(), 1e-9);
    assertEquals("Zs,max", found.comparisons().get(0).limit().symbol());
    Finding bare = fails(rcbo.without("/device/residual").finding(CHECK));
    limit(218.5 / 150, bare);
    actual(1.84, bare);
  }

  /** In TN RA is the loop, even where an electrode is stated. */
  @Test
  void electrodeDoesNotCountInTn() {
    Finding found = tn(1.84).with("/supply/earthElectrodeResistanceOhm", 5000).finding(CHECK);
    assertEquals(1.84, complies(found).comparisons().get(0).actual().value(), 1e-9);
  }

  /** The device before the circuit serves as well, under its own pointer. */
  @Test
  void residualDeviceBeforeTheCircuitServes() {
    Finding found =
        tt(0.03)
            .without("/device/residual")
            .withJson(
                "/residualDevice",
                "{\"standard\": \"IEC 61008-1\", \"ratedCurrentA\": 63,"
                    + " \"residual\": {\"operatingCurrentA\": 0.1, \"delay\": \"general\"}}")
            .finding(CHECK);
    assertEquals(500, complies(found).comparisons().get(0).limit().value(), 1e-9);
    assertEquals("/residualDevice", found.comparisons().get(1).subject());
  }

  /** Of two in a row one suffices: 150 Ω·0.5 A is 75 V, 150 Ω·0.1 A is 15 V. */
  @Test
  void oneOfTwoInARowSuffices() {
    Scenario two =
        tt(0.5)
            .with("/supply/loopImpedanceOhm", 151)
            .with("/supply/earthElectrodeResistanceOhm", 150);
    fails(two.finding(CHECK));
    Finding found =
        complies(
            two.withJson(
                    "/residualDevice",
                    "{\"standard\": \"IEC 61008-1\", \"ratedCurrentA\": 63,"
                        + " \"residual\": {\"operatingCurrentA\": 0.1, \"delay\": \"general\"}}")
                .finding(CHECK));
    assertEquals(500, found.comparisons().get(0).limit().value(), 1e-9);
    assertEquals("/residualDevice", found.comparisons().get(1).subject());
  }

  /** 411.5.4: in TT the overcurrent device may do it, and no residual one takes that away. */
  @Test
  void overcurrentPairServesInTtWhereTheResidualOneIsOpen() {
    Scenario open = tn(0.5).with("/supply/earthing", "TT");
    Finding found = complies(open.without("/device/residual/operatingCurrentA").finding(CHECK));
    limit(1.365625, found);
    assertTrue(remarks(found).contains(NoteCode.OVERCURRENT_GOVERNS));
    assertTrue(clauses(found).contains("411.5.4"));
    open(
        open.with("/supply/loopImpedanceOhm", 2)
            .without("/device/residual/operatingCurrentA")
            .finding(CHECK),
        "/device/residual/operatingCurrentA");
  }

  /** IEC 60947-2 knows adjustable delays: one that is not stated has no latest time. */
  @Test
  void delayOfAnAdjustableBreakerIsAskedFor() {
    Scenario breaker =
        tt(0.3)
            .with("/device/standard", "IEC 60947-2")
            .with("/device/settings/longTimeA", 32)
            .with("/device/settings/instantaneousA", 320);
    complies(breaker.with("/device/residual/delay", "general").finding(CHECK));
    open(breaker.without("/device/residual/delay").finding(CHECK), "/device/residual/delay");
  }

  /** Its own function comes first. */
  @Test
  void ownResidualFunctionComesFirst() {
    Finding found =
        tt(0.03)
            .withJson(
                "/residualDevice",
                "{\"standard\": \"IEC 61008-1\","
                    + " \"residual\": {\"operatingCurrentA\": 0.1, \"delay\": \"general\"}}")
            .finding(CHECK);
    assertEquals(50 / 0.03, found.comparisons().get(0).limit().value(), 1e-9);
    assertEquals("/device", found.comparisons().get(1).subject());
  }

  /** 40 A, connection unknown: 0.15 s serves both times, 0.3 s only the 1 s of fixed equipment. */
  @ParameterizedTest
  @CsvSource({"2, complies", "1.5, open"})
  void unknownConnectionIsAskedForOnlyWhereItDecides(double multiple, String verdict) {
    double zs = 218.5 / (0.3 * multiple) * (1 - 1e-12);
    Scenario unknown =
        tt(0.3)
            .with("/device/ratedCurrentA", 40)
            .with("/supply/loopImpedanceOhm", zs - 0.276936)
            .with("/supply/earthElectrodeResistanceOhm", 10)
            .without("/load/connection")
            .without("/load/kind");
    Finding found = unknown.finding(CHECK);
    if (verdict.equals("open")) {
      open(found, "/load/connection");
      Finding fixed = complies(unknown.with("/load/connection", "fixed").finding(CHECK));
      assertEquals(1, fixed.comparisons().get(1).limit().value());
      fails(unknown.with("/load/connection", "socket-outlet").finding(CHECK));
    } else {
      assertEquals(0.2, complies(found).comparisons().get(1).limit().value());
    }
  }

  /** Table 41.1 at 400 V in TT allows 0.07 s; S at 1.27 IΔn takes 0.5 s. */
  @Test
  void tooSlowForBothTimesFails() {
    Finding found =
        tt(0.3)
            .with("/supply/ownership", "private")
            .with("/supply/lineToEarthVoltageV", 400)
            .with("/circuitKind", "final")
            .with("/device/residual/delay", "S")
            .with("/supply/loopImpedanceOhm", 1000)
            .finding(CHECK);
    fails(found);
    assertEquals(0.07, found.comparisons().get(1).limit().value());
  }

  @ParameterizedTest
  @CsvSource({"/device/residual/operatingCurrentA", "/supply/loopImpedanceOhm", "/cable/lengthM"})
  void whatTheRuleNeedsIsAskedFor(String pointer) {
    open(tt(0.03).without(pointer).finding(CHECK), pointer);
  }

  static Scenario tt(double operating) {
    return rcbo(operating)
        .with("/supply/earthing", "TT")
        .with("/supply/loopImpedanceOhm", 21)
        .with("/supply/earthElectrodeResistanceOhm", 20);
  }

  private static Scenario tn(double zs) {
    return rcbo(0.03).with("/supply/loopImpedanceOhm", zs - 0.276936);
  }

  private static Scenario rcbo(double operating) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .with("/device/standard", "IEC 61009-1")
        .with("/device/residual/operatingCurrentA", operating)
        .with("/device/residual/delay", "general");
  }
}
