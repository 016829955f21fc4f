package circuitverdict.check;

import static circuitverdict.check.ResidualDisconnectionTest.tt;
import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RA·IΔn within 50 V: the electrode, its reading and what stands for it (411.5.3, Table 41.5). */
class ResidualElectrodeTest {
  private static final CheckName CHECK = CheckName.EARTH_FAULT_DISCONNECTION;

  /** R2 of the oven's cable at 70 °C: 22·7.41·1.20/1000. */
  private static final double R2 = 0.195624;

  /** RA with the protective conductors hot: 50 V/0.3 A = 166.67 Ω, Table 41.5 prints 167. */
  @ParameterizedTest
  @CsvSource({
    "166.47, true, false",
    "166.4710426667, true, false",
    "166.48, false, true",
    "166.9, false, false"
  })
  void electrodeAndHotProtectiveConductorsKeepToFiftyVolts(
      double electrode, boolean holds, boolean remarked) {
    Finding found = tt(0.3).with("/supply/earthElectrodeResistanceOhm", electrode).finding(CHECK);
    judged(holds, found);
    assertEquals(electrode + R2, step("RA", found), 1e-9);
    assertEquals(50 / 0.3, found.comparisons().get(0).limit().value(), 1e-9);
    assertEquals(167, found.comparisons().get(0).printed().number());
    assertEquals("RA", found.comparisons().get(0).actual().symbol());
    assertEquals("RA,max", found.comparisons().get(0).limit().symbol());
    assertEquals(remarked, remarks(found).contains(NoteCode.PRINTED_VALUE_ADMITS));
    assertTrue(clauses(found).contains("411.5.3"));
    assertFalse(remarks(found).contains(NoteCode.RESIDUAL_GOVERNS));
  }

  /** Table 41.5 and worked example A08: 1 667, 500, 167 and 100 Ω. */
  @ParameterizedTest
  @CsvSource({"0.03, 1666.666667, 1667", "0.1, 500, 500", "0.3, 166.666667, 167", "0.5, 100, 100"})
  void greatestResistanceFollowsTheRating(double operating, double ohm, double printed) {
    Finding found = tt(operating).finding(CHECK);
    assertEquals(ohm, complies(found).comparisons().get(0).limit().value(), 1e-6);
    assertEquals(printed, found.comparisons().get(0).printed().number());
  }

  @Test
  void oddRatingHasNoPrintedValue() {
    Finding found = tt(0.2).finding(CHECK);
    assertEquals(250, found.comparisons().get(0).limit().value(), 1e-9);
    assertEquals(null, found.comparisons().get(0).printed());
    Finding over = tt(0.2).with("/supply/earthElectrodeResistanceOhm", 251).finding(CHECK);
    assertFalse(remarks(fails(over)).contains(NoteCode.PRINTED_VALUE_ADMITS));
  }

  /**
   * A reading is widened by its uncertainty to its worse side: 430 Ω·1.15 = 494.5 Ω keeps to 50
   * V/0.1 A, 435 Ω·1.15 = 500.25 Ω does not. What is no reading is taken as it is.
   */
  @ParameterizedTest
  @CsvSource({
    "measured-cold, 430, 494.5, true",
    "measured-cold, 435, 500.25, false",
    "declared, 460, 460, true",
    "calculated-hot, 460, 460, true"
  })
  void readingOfTheElectrodeIsWidened(String basis, double electrode, double ohm, boolean holds) {
    Finding found = read(basis, electrode).finding(CHECK);
    judged(holds, found);
    actual(ohm + R2, found);
  }

  /** A basis that is not stated counts as measured; only what fails as read fails for certain. */
  @ParameterizedTest
  @CsvSource({"430, complies", "460, open", "501, fails"})
  void electrodeWithoutBasisCountsAsRead(double electrode, String verdict) {
    Scenario scenario = read("declared", electrode).without("/supply/basis");
    Finding found = scenario.finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> {
        fails(found);
        fails(scenario.without("/supply/loopImpedanceOhm").finding(CHECK));
      }
      default -> open(found, "/supply/basis");
    }
  }

  /** At sign-off no reading counts as exact; what fails as read still fails. */
  @Test
  void uncertaintyOfTheElectrodeIsAskedFor() {
    Scenario scenario = read("measured-cold", 430).without("/supply/instrumentUncertaintyPercent");
    open(scenario.finding(CHECK), "/supply/instrumentUncertaintyPercent");
    fails(scenario.with("/supply/earthElectrodeResistanceOhm", 501).finding(CHECK));
    Finding design = complies(scenario.with("/stage", "design").finding(CHECK));
    assertTrue(assumptions(design).contains(NoteCode.ASSUMED_EXACT_READING));
  }

  private static Scenario read(String basis, double electrode) {
    return tt(0.1)
        .with("/supply/basis", basis)
        .with("/supply/instrumentUncertaintyPercent", 15)
        .with("/supply/loopImpedanceOhm", 520)
        .with("/supply/earthElectrodeResistanceOhm", electrode);
  }

  /** Where the electrode is not known the whole loop stands for RA. */
  @Test
  void unknownElectrodeIsReplacedByTheLoop() {
    Finding found =
        tt(0.3)
            .without("/supply/earthElectrodeResistanceOhm")
            .with("/supply/loopImpedanceOhm", 21)
            .finding(CHECK);
    assertEquals("Zs", complies(found).comparisons().get(0).actual().symbol());
    assertEquals(21.276936, found.comparisons().get(0).actual().value(), 1e-9);
  }
}
