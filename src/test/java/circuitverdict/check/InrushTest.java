package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Motors on breakers: IEC 60898-1 table 7, clause 512 and common practice. A 5.5 kW mixer of 87 %
 * and cos φ 0.83 draws 5 500/(√3·400·0.83·0.87) = 10.994 A, started with 7 times 76.96 A.
 */
class InrushTest {
  static final CheckName CHECK = CheckName.INRUSH;
  private static final double STARTING = 7 * 5500 / (Math.sqrt(3) * 400 * 0.83 * 0.87);

  /** Table 7: C16 does not trip at once up to 5·16 = 80 A; the drawn curve gives 6.6 s. */
  @Test
  void motorRidesItsStartOnTypeCByGuidance() {
    Finding found = complies(mixer().finding(CHECK));
    assertEquals(Strength.GUIDANCE, found.strength());
    actual(STARTING, found);
    limit(80, found);
    assertEquals(List.of("512"), clauses(found));
    // 3 600 s·(excess(1.45 In)/excess(76.96 A))^1.4539, excess = (I/1.35 In)² − 1 (from memory).
    assertEquals(6.622, step("td", found), 0.01);
    assertTrue(assumptions(found).contains(NoteCode.ASSUMED_SYMMETRIC_START));
    assertTrue(
        remarks(found).containsAll(List.of(NoteCode.LOAD_STARTS, NoteCode.TYPE_C_RIDES_START)));
  }

  /** B16 may trip at once from 3·16 = 48 A and must from 80 A: nobody knows between. */
  @Test
  void betweenTheLimitsTheMakersCurveIsAskedFor() {
    Finding found = openBecause(Reason.BETWEEN_BOUNDS, on("B", 16).finding(CHECK));
    assertEquals(List.of(NoteCode.MAKER_CURVE_NEEDED), wanted(found));
    actual(STARTING, found);
    limit(48, found);
    assertTrue(remarks(found).contains(NoteCode.TYPE_C_RIDES_START));
  }

  /** Table 7, test e: from 5·10 = 50 A a B10 trips within 0.1 s. */
  @ParameterizedTest
  @CsvSource({"0.09, open", "0.1, open", "0.1001, fails", "1.5, fails"})
  void certainTripFails(double seconds, String verdict) {
    Finding found = on("B", 10).with("/load/inrush/durationS", seconds).finding(CHECK);
    if (verdict.equals("fails")) {
      actual(seconds, fails(found));
      limit(0.1, found);
      assertEquals(Strength.RULE, found.strength());
    } else {
      open(found);
    }
  }

  /** Table 7, test e: 5·In at its limit, a starting current just below and above. */
  @ParameterizedTest
  @CsvSource({"0.999, open", "1, fails", "1.001, fails"})
  void certainTripBeginsAtTheUpperLimit(double share, String verdict) {
    Scenario motor = stated(50 * share / 7).with("/device/characteristic", "B");
    Finding found = motor.with("/device/ratedCurrentA", 10).finding(CHECK);
    assertEquals(verdict.equals("fails"), found.verdict() == Verdict.DOES_NOT_COMPLY);
  }

  /** Table 7, test d: 5·16 = 80 A, the symmetrical current just below, at and above it. */
  @ParameterizedTest
  @CsvSource({"0.999, true", "1, true", "1.001, false"})
  void lowerMagneticLimitDividesByGuidance(double share, boolean holds) {
    Finding found = stated(80 * share / 7).finding(CHECK);
    if (holds) {
      complies(found);
    } else {
      open(found);
    }
  }

  /** A fully offset wave peaks at 2·√2 times its r.m.s. value: below √2·Imag it proves the peak. */
  @ParameterizedTest
  @CsvSource({"0.999, true", "1, true", "1.001, false"})
  void fullyOffsetPeakBelowTheLimitNeedsNoAssumption(double share, boolean proved) {
    Finding found = complies(stated(40 * share / 7).finding(CHECK));
    assertEquals(!proved, assumptions(found).contains(NoteCode.ASSUMED_SYMMETRIC_START));
  }

  /** A stated peak is held against √2·80 A. */
  @ParameterizedTest
  @CsvSource({"0.999, true", "1, true", "1.001, false"})
  void statedPeakIsHeldAgainstTheLowerLimit(double share, boolean holds) {
    Scenario motor = stated(8).with("/load/inrush/peakCurrentA", 80 * Math.sqrt(2) * share);
    if (holds) {
      assertFalse(
          assumptions(complies(motor.finding(CHECK))).contains(NoteCode.ASSUMED_SYMMETRIC_START));
    } else {
      assertTrue(wanted(open(motor.finding(CHECK))).contains(NoteCode.MAKER_CURVE_NEEDED));
    }
  }

  /** Table 7, test c: up to 2.55·16 = 40.8 A nothing trips before 1 s. */
  @ParameterizedTest
  @CsvSource({"0.999, RULE", "1, RULE", "1.001, GUIDANCE"})
  void beforeTheEarliestTimeItIsTheStandardsPromise(double share, Strength strength) {
    Finding found = complies(stated(5).with("/load/inrush/durationS", share).finding(CHECK));
    assertEquals(strength, found.strength());
  }

  /** Table 7, test a: 1.13 In for an hour, so a start of 600 s below it is proved. */
  @Test
  void longStartBelowTheConventionalCurrentIsProved() {
    Scenario slow =
        stated(5)
            .with("/load/inrush/currentMultiple", 3.6)
            .with("/load/inrush/durationS", 600)
            .with("/stage", "sign-off");
    assertEquals(Strength.RULE, complies(slow.finding(CHECK)).strength());
    open(slow.with("/load/inrush/currentMultiple", 3.62).finding(CHECK));
  }

  /** What outlasts the drawn curve is not called a failure: that curve promises nothing. */
  @ParameterizedTest
  @CsvSource({"6.5, true", "6.7, false", "59.9, false"})
  void drawnCurveNeverFails(double seconds, boolean holds) {
    Finding found = mixer().with("/load/inrush/durationS", seconds).finding(CHECK);
    if (holds) {
      complies(found);
    } else {
      assertTrue(wanted(open(found)).contains(NoteCode.MAKER_CURVE_NEEDED));
    }
    // Test c: beyond 60 s a C16 has tripped for certain.
    fails(mixer().with("/load/inrush/durationS", 60.1).finding(CHECK));
  }

  @Test
  void proofIsRefusedToGuidance() {
    Scenario strict = mixer().with("/requirements/evidence", "proved");
    Finding found = openBecause(Reason.PROOF_WANTED, strict.finding(CHECK));
    open(found, "/requirements/evidence");
  }

  /** At sign-off no symmetrical peak is assumed; on D16 even an offset one stays below. */
  @Test
  void signOffAsksForThePeak() {
    Scenario signed = mixer().with("/stage", "sign-off").with("/requirements/evidence", "guidance");
    Finding found = open(signed.finding(CHECK), "/load/inrush/peakCurrentA");
    assertTrue(remarks(found).contains(NoteCode.TYPE_D_RIDES_START));
    complies(signed.with("/device/characteristic", "D").finding(CHECK));
  }

  /** At the changeover the motor in delta draws up to three times its current in star. */
  @ParameterizedTest
  @CsvSource({"2.42, true", "2.43, false"})
  void changeoverToDeltaCounts(double multiple, boolean holds) {
    Scenario motor =
        mixer()
            .with("/load/inrush/starting", "star-delta")
            .with("/load/inrush/currentMultiple", multiple);
    if (holds) {
      actual(3 * multiple * STARTING / 7, complies(motor.finding(CHECK)));
    } else {
      open(motor.finding(CHECK));
    }
  }

  /** Two of them: together 153.9 A, one alone 76.96 A; a B16 trips at once from 80 A. */
  @Test
  void oneOfSeveralIsAllThatStartsForCertain() {
    Scenario two = stated(22).with("/load/count", 2).with("/device/characteristic", "B");
    open(two.finding(CHECK));
    fails(two.with("/load/designCurrentA", 23).finding(CHECK));
    fails(two.without("/load/count").finding(CHECK));
  }

  /** What the requirement says decides whether it counts, nothing else. */
  @ParameterizedTest
  @CsvSource({"required, true", "reported, false", ", false"})
  void countsOnlyWhereRequired(String wanted, boolean counted) {
    Scenario motor = on("B", 10).without("/requirements/inrush");
    motor = wanted == null ? motor : motor.with("/requirements/inrush", wanted);
    assertEquals(counted, fails(motor.finding(CHECK)).counted());
  }

  /** Premises never decide the letter. */
  @Test
  void premisesChangeNothing() {
    Finding shop = mixer().finding(CHECK);
    for (String use : List.of("domestic", "industrial", "agricultural")) {
      assertEquals(shop, mixer().with("/premises/use", use).finding(CHECK));
    }
  }

  static Scenario mixer() {
    return Scenario.read("spiral-mixer");
  }

  private static Scenario on(String letter, double rated) {
    return mixer().with("/device/characteristic", letter).with("/device/ratedCurrentA", rated);
  }

  /** A motor of this running current, started with seven times as much for 1.5 s. */
  private static Scenario stated(double running) {
    return mixer().without("/load/ratedPowerW").with("/load/designCurrentA", running);
  }
}
