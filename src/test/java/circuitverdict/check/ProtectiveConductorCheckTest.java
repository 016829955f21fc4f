package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The energy of earth faults against k²S² of the protective conductor, and guidance (543.1.3). */
class ProtectiveConductorCheckTest {
  private static final CheckName CHECK = CheckName.PROTECTIVE_CONDUCTOR;

  /** k = 115, a core of a 70 °C cable (Table 54.3): 115²·2.5² = 82 656.25 A²s. */
  @ParameterizedTest
  @CsvSource({"82656.25, true", "82656.26, false"})
  void energyDoesNotExceedWhatTheConductorStands(double energy, boolean holds) {
    Finding found = oven(3000).withJson("/device/letThrough", flat(energy)).finding(CHECK);
    judged(holds, found);
    assertEquals(Strength.RULE, found.strength());
    assertTrue(clauses(found).contains("543.1.3"));
    actual(energy, found);
    limit(82656.25, found);
  }

  /** EN 60898-1 annex ZA, B32, 6 kA, class 3: 45 000 A²s, up to Icn and no further. */
  @ParameterizedTest
  @CsvSource({"6000, true", "6001, false"})
  void classOfTheOwnCapacityProvesItUpToThatCapacity(double current, boolean holds) {
    Finding found = oven(current).finding(CHECK);
    if (holds) {
      actual(45000, complies(found));
    } else {
      openBecause(Reason.BETWEEN_BOUNDS, found);
      assertTrue(wanted(found).contains(NoteCode.BACK_UP_EVIDENCE_NEEDED));
    }
  }

  /** Without a class I²·0.1 s of test e: 0.1·909.15² = 82 656 A²s. */
  @ParameterizedTest
  @CsvSource({"909, true", "910, false"})
  void promisedTimeProvesItWithoutAClass(double current, boolean holds) {
    Finding found = oven(current).without("/device/energyClass").finding(CHECK);
    if (holds) {
      actual(0.1 * current * current, complies(found));
    } else {
      openBecause(Reason.BETWEEN_BOUNDS, found);
      assertTrue(wanted(found).contains(NoteCode.MAKER_DATA_NEEDED));
    }
  }

  /** A reading is widened by its uncertainty: 866·1.05 = 909.3 A, above the 909.15 A of test e. */
  @ParameterizedTest
  @CsvSource({"declared, COMPLIES", "measured-cold, NOT_DETERMINED"})
  void readingOfTheGreatestCurrentIsWidened(String basis, Verdict verdict) {
    Scenario read = oven(866).without("/device/energyClass").with("/supply/basis", basis);
    assertEquals(verdict, read.verdict(CHECK));
  }

  /** Both ends: a fault below 5·In, 160 A, is promised to be cleared only in a minute. */
  @Test
  void leastCurrentOfTheFarEndCounts() {
    complies(oven(3000).with("/supply/loopImpedanceOhm", 1.0).finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS, oven(3000).with("/supply/loopImpedanceOhm", 1.2).finding(CHECK));
  }

  /** Nothing is taken from a loop that is not known: it can only fail, never comply. */
  @Test
  void withoutALoopNothingComplies() {
    Scenario dark = oven(3000).without("/supply/loopImpedanceOhm");
    open(dark.finding(CHECK), "/supply/loopImpedanceOhm");
    fails(dark.withJson("/device/letThrough", flat(90000)).finding(CHECK));
  }

  /** Nor from a greatest current that is not known: the least one flows whatever that is. */
  @Test
  void withoutAGreatestCurrentNothingComplies() {
    Scenario dark = oven(3000).without("/supply/maximumFaultCurrentA");
    Finding found = dark.withJson("/device/letThrough", flat(1000)).finding(CHECK);
    open(found, "/supply/maximumFaultCurrentA");
    fails(dark.withJson("/device/letThrough", flat(90000)).finding(CHECK));
  }

  /** The far end lets at least 383 A flow: no more than 300 A at the board cannot be true. */
  @Test
  void greatestCurrentBelowTheLeastContradicts() {
    Finding found = open(oven(300).finding(CHECK), "/supply/maximumFaultCurrentA");
    assertTrue(remarks(found).contains(NoteCode.CURRENTS_CONTRADICT));
  }

  /** A further cable of 1 mm², 115² = 13 225 A²s, is the weakest: 45 000 A²s is not proved. */
  @Test
  void everyCableOfTheCircuitIsHeld() {
    String further =
        """
        [{"construction": "flat-twin-and-earth", "conductor": "copper",
          "insulation": "thermoplastic-70", "lineCsaMm2": 1.5, "protectiveCsaMm2": 1,
          "lengthM": 2}]
        """;
    Scenario longer = oven(3000).withJson("/furtherCables", further);
    openBecause(Reason.BETWEEN_BOUNDS, longer.finding(CHECK));
    Finding found = fails(longer.withJson("/device/letThrough", flat(13226)).finding(CHECK));
    assertEquals("/furtherCables/0", found.governing().subject());
    limit(13225, found);
  }

  @ParameterizedTest
  @CsvSource({
    "/device",
    "/supply/maximumFaultCurrentA",
    "/device/breakingCapacityA",
    "/cable/insulation",
    "/cable/protectiveCsaMm2"
  })
  void whatTheProofNeedsIsAskedFor(String pointer) {
    open(oven(3000).without(pointer).finding(CHECK), pointer);
  }

  @Test
  void meansOfACableThatLeavesThemOpenIsAskedFor() {
    open(
        oven(3000)
            .with("/cable/construction", "multicore")
            .without("/cable/protectiveMeans")
            .finding(CHECK),
        "/cable/protectiveMeans");
  }

  /** Scope: bonding is never judged, and every finding says so. */
  @Test
  void bondingIsSaidNotToBeCovered() {
    assertTrue(remarks(oven(3000).finding(CHECK)).contains(NoteCode.BONDING_NOT_COVERED));
    assertTrue(remarks(oven(9000).finding(CHECK)).contains(NoteCode.BONDING_NOT_COVERED));
  }

  /** IEC 61008-1: 0.04 s at five times IΔn, up to IΔm: 0.04·1 000² = 40 000 A²s. */
  @ParameterizedTest
  @CsvSource({"1000, COMPLIES", "999, NOT_DETERMINED"})
  void residualDeviceCountsUpToWhatItBreaks(double breaks, Verdict verdict) {
    Finding found =
        residual().with("/residualDevice/residualMakingBreakingA", breaks).finding(CHECK);
    assertEquals(verdict, found.verdict());
    if (verdict == Verdict.COMPLIES) {
      actual(40000, found);
    }
  }

  /** Not stated, IΔm is the least of the standard, 500 A (from memory), and listed. */
  @ParameterizedTest
  @CsvSource({"500, COMPLIES", "1000, NOT_DETERMINED"})
  void whatItBreaksIsTheLeastOfTheStandardUnlessStated(double greatest, Verdict verdict) {
    Finding found =
        residual()
            .with("/supply/loopImpedanceOhm", 0.45)
            .with("/supply/maximumFaultCurrentA", greatest)
            .finding(CHECK);
    assertEquals(verdict, found.verdict());
    assertTrue(assumptions(found).contains(NoteCode.ASSUMED_RESIDUAL_CAPACITY));
  }

  /** A delay not stated counts as S: 0.15 s, no better than the breaker's 0.1 s: 100 000 A²s. */
  @Test
  void delayNotStatedCountsAsDelayed() {
    Scenario broad = residual().with("/residualDevice/residualMakingBreakingA", 1500);
    complies(broad.finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS, broad.without("/residualDevice/residual/delay").finding(CHECK));
  }

  /** An RCBO breaks up to its Icn: 0.04·1 400² = 78 400 A²s. */
  @Test
  void residualFunctionOfTheBreakerItselfCountsUpToItsCapacity() {
    Scenario own =
        oven(1400)
            .without("/device/energyClass")
            .with("/device/standard", "IEC 61009-1")
            .with("/device/residual/operatingCurrentA", 0.03)
            .with("/device/residual/delay", "general");
    actual(78400, complies(own.finding(CHECK)));
    assertFalse(own.with("/device/breakingCapacityA", 1399).verdict(CHECK) == Verdict.COMPLIES);
  }

  private static Scenario oven(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current);
  }

  private static Scenario residual() {
    return oven(1000)
        .without("/device/energyClass")
        .with("/residualDevice/standard", "IEC 61008-1")
        .with("/residualDevice/ratedCurrentA", 40)
        .with("/residualDevice/residual/operatingCurrentA", 0.03)
        .with("/residualDevice/residual/delay", "general");
  }

  private static String flat(double energy) {
    return ("[{\"prospectiveCurrentA\": 20, \"energyA2s\": %s},"
            + " {\"prospectiveCurrentA\": 20000, \"energyA2s\": %s}]")
        .formatted(energy, energy);
  }
}
