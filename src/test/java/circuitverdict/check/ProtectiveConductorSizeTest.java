package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
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
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes of protective conductors: Table 54.7, the least ones, and standing currents (543). */
class ProtectiveConductorSizeTest {
  private static final CheckName CHECK = CheckName.PROTECTIVE_CONDUCTOR;

  /** Table 54.7: S up to 16 mm², 16 up to 35, S/2 above; it needs no device. */
  @ParameterizedTest
  @CsvSource({
    "6, 6, 4",
    "16, 16, 10",
    "25, 16, 10",
    "35, 16, 10",
    "50, 25, 16",
    "70, 35, 25",
    "120, 70, 50"
  })
  void tableAsksForASizeByTheLine(double line, double enough, double small) {
    Scenario sized = bare().with("/cable/lineCsaMm2", line);
    Finding found = complies(sized.with("/cable/protectiveCsaMm2", enough).finding(CHECK));
    actual(enough, found);
    assertEquals(Strength.RULE, found.strength());
    assertTrue(clauses(found).contains("543.1.4"));
    assertTrue(remarks(found).contains(NoteCode.TABLE_54_7));
    Finding less = open(sized.with("/cable/protectiveCsaMm2", small).finding(CHECK), "/device");
    assertFalse(clauses(less).contains("543.1.4"));
  }

  /** Above 35 mm² half the line conductor: 120/2 = 60 mm². */
  @Test
  void tableShowsItsLeastSize() {
    Scenario large = bare().with("/cable/lineCsaMm2", 120).with("/cable/protectiveCsaMm2", 70);
    limit(60, large.finding(CHECK));
  }

  /**
   * 543.1.4, other materials: times k1/k2. Steel armour of a 70 °C cable 115/51 (Tables 43.1,
   * 54.4), of a 90 °C one 143/46; steel conduit 115/47 (Table 54.5).
   */
  @ParameterizedTest
  @CsvSource({
    "armoured-multicore, armour, thermoplastic-70, 4, 9.0196",
    "armoured-multicore, armour, thermosetting-90, 4, 12.4348",
    "armoured-multicore, armour, thermoplastic-70, 25, 36.0784",
    "singles, steel-conduit, thermoplastic-70, 6, 14.6809"
  })
  void otherMaterialsAreWeighedByTheirFactors(
      String construction, String means, String insulation, double line, double least) {
    Scenario steel =
        bare()
            .with("/cable/construction", construction)
            .with("/cable/protectiveMeans", means)
            .with("/cable/insulation", insulation)
            .with("/cable/lineCsaMm2", line);
    String size = means.equals("armour") ? "/cable/armourAreaMm2" : "/cable/protectiveCsaMm2";
    Finding found = complies(steel.with(size, least + 0.0001).finding(CHECK));
    assertEquals(least, found.governing().limit().value(), 0.0001);
    open(steel.with(size, least - 0.0001).finding(CHECK), "/device");
  }

  /** A conductor of the line's own metal needs no factor, even where it starts colder. */
  @Test
  void colderConductorOfTheSameMetalGetsNoBenefit() {
    Scenario apart = apart(6).with("/cable/lineCsaMm2", 10).without("/device");
    open(apart.finding(CHECK), "/device");
    complies(apart.with("/cable/protectiveCsaMm2", 10).finding(CHECK));
  }

  /** The rules allow the table instead of the calculation: 115²·6² = 476 100 A²s is exceeded. */
  @Test
  void tableHoldsWhatTheEnergyWouldNot() {
    Scenario hot = Scenario.oven().withJson("/device/letThrough", flat(476101));
    Finding found = complies(hot.with("/cable/protectiveCsaMm2", 6).finding(CHECK));
    assertTrue(remarks(found).contains(NoteCode.ENERGY_EXCEEDS));
    limit(6, found);
    fails(hot.with("/cable/protectiveCsaMm2", 4).finding(CHECK));
  }

  /** The table alone settles it where readings of no stated uncertainty leave the energy open. */
  @Test
  void tableSettlesItWithoutTheUncertaintyOfReadings() {
    Scenario vague = Scenario.oven().without("/supply/instrumentUncertaintyPercent");
    open(vague.finding(CHECK), "/supply/instrumentUncertaintyPercent");
    complies(vague.with("/cable/protectiveCsaMm2", 6).finding(CHECK));
  }

  /** Table 54.2, apart from the live conductors from 30 °C: 143²·4² = 327 184 A²s. */
  @Test
  void conductorApartStartsColder() {
    firstLimit(327184, complies(apart(4).finding(CHECK)));
    firstLimit(211600, complies(inConduit(4).finding(CHECK)));
  }

  /**
   * 543.1.1 (from memory): alone, 2.5 mm² if protected mechanically, else 4 mm²; which of the two
   * is not stated. Table 54.7 does not lift it: the line has 1.5 mm².
   */
  @ParameterizedTest
  @CsvSource({"1.5, DOES_NOT_COMPLY", "2.5, NOT_DETERMINED", "4, COMPLIES"})
  void conductorAloneKeepsToLeastSizes(double size, Verdict verdict) {
    Finding found = apart(size).with("/cable/lineCsaMm2", 1.5).finding(CHECK);
    assertEquals(verdict, found.verdict());
    assertTrue(clauses(found).contains("543.1.1"));
    if (verdict == Verdict.DOES_NOT_COMPLY) {
      limit(2.5, found);
      actual(1.5, found);
    } else if (verdict == Verdict.NOT_DETERMINED) {
      open(found, "/cable/protectiveCsaMm2");
    } else {
      limit(4, found);
    }
  }

  /**
   * 543.1.1 (from memory) speaks of copper: of steel 143/52 times as much, of aluminium 143/95
   * (Table 54.2, 70 °C): 6.875 and 11 mm², 3.763 and 6.021 mm².
   */
  @ParameterizedTest
  @CsvSource({
    "steel, 6.87, DOES_NOT_COMPLY",
    "steel, 10.9, NOT_DETERMINED",
    "steel, 11, COMPLIES",
    "aluminium, 3.76, DOES_NOT_COMPLY",
    "aluminium, 6.02, NOT_DETERMINED",
    "aluminium, 6.03, COMPLIES"
  })
  void conductorAloneOfAnotherMetalNeedsMore(String metal, double size, Verdict verdict) {
    Finding found =
        apart(size)
            .with("/cable/protectiveConductor", metal)
            .with("/cable/lineCsaMm2", 1.5)
            .finding(CHECK);
    assertEquals(verdict, found.verdict());
  }

  /** A failure at the least size rests on no stand-in that another input could better. */
  @Test
  void conductorAloneThatIsTooSmallFailsWhateverStandsIn() {
    Scenario small = apart(1.5).with("/cable/lineCsaMm2", 1.5);
    limit(2.5, fails(small.without("/supply/point").finding(CHECK)));
  }

  /** Without its metal, or without the insulation that its factor depends on, nothing is least. */
  @ParameterizedTest
  @CsvSource({"protectiveConductor, copper", "insulation, steel"})
  void conductorAloneOfUnknownFactorIsOpen(String member, String metal) {
    Scenario vague = apart(16).with("/cable/protectiveConductor", metal);
    open(vague.without("/cable/" + member).finding(CHECK), "/cable/" + member);
  }

  /** In one conduit with the lines it is not alone. */
  @Test
  void conductorInTheConduitOfItsLinesIsNotAlone() {
    Finding found = inConduit(1.5).with("/cable/lineCsaMm2", 1.5).finding(CHECK);
    assertFalse(clauses(complies(found)).contains("543.1.1"));
  }

  /**
   * 543.7 (from memory): up to 3.5 mA nothing, up to 10 mA how it is connected, above it 10 mm².
   */
  @ParameterizedTest
  @CsvSource({
    "0.0035, 2.5, false, COMPLIES",
    "0.0036, 2.5, true, COMPLIES",
    "0.010, 2.5, true, COMPLIES",
    "0.0101, 2.5, true, NOT_DETERMINED",
    "0.0101, 6, true, NOT_DETERMINED",
    "0.0101, 10, true, COMPLIES"
  })
  void standingCurrentAsksForHighIntegrity(
      double current, double size, boolean remarked, Verdict verdict) {
    Finding found =
        Scenario.oven()
            .with("/load/protectiveConductorCurrentA", current)
            .with("/cable/protectiveCsaMm2", size)
            .finding(CHECK);
    assertEquals(verdict, found.verdict());
    assertEquals(remarked, remarks(found).contains(NoteCode.STANDING_CURRENT));
    assertEquals(remarked, clauses(found).contains("543.7"));
    assertEquals(
        verdict == Verdict.NOT_DETERMINED, wanted(found).contains(NoteCode.HIGH_INTEGRITY_NEEDED));
  }

  /** 543.7: of armour that serves its own section counts, not that of a core that does not. */
  @ParameterizedTest
  @CsvSource({
    "armour, 9, 10, NOT_DETERMINED",
    "armour, 10, , COMPLIES",
    "armour, 10, 1, COMPLIES",
    "armour-and-core, 30, 6, NOT_DETERMINED",
    "armour-and-core, 30, 10, COMPLIES",
    "core, 30, 6, NOT_DETERMINED"
  })
  void standingCurrentIsHeldAgainstWhatServes(
      String means, double armour, Double core, Verdict verdict) {
    Scenario cable =
        Scenario.oven()
            .with("/load/protectiveConductorCurrentA", 0.0101)
            .with("/cable/construction", "armoured-multicore")
            .with("/cable/insulation", "thermosetting-90")
            .with("/cable/protectiveMeans", means)
            .with("/cable/armourAreaMm2", armour)
            .with("/cable/armourResistanceOhmPerKm", 14)
            .without("/cable/protectiveCsaMm2");
    Finding found =
        (core == null ? cable : cable.with("/cable/protectiveCsaMm2", core)).finding(CHECK);
    assertEquals(verdict, found.verdict());
    if (verdict == Verdict.NOT_DETERMINED) {
      open(found, means.equals("armour") ? "/cable/armourAreaMm2" : "/cable/protectiveCsaMm2");
      assertEquals(List.of(NoteCode.HIGH_INTEGRITY_NEEDED), wanted(found));
    }
  }

  /** The two ends of a ring are two conductors. */
  @Test
  void ringIsOfHighIntegrity() {
    Scenario standing = Scenario.oven().with("/load/protectiveConductorCurrentA", 0.02);
    open(standing.finding(CHECK));
    complies(standing.with("/cable/arrangement", "ring").finding(CHECK));
  }

  /** What fails by its energy fails, whatever else the standing current leaves open. */
  @Test
  void standingCurrentDoesNotHideAFailure() {
    fails(
        Scenario.oven()
            .with("/load/protectiveConductorCurrentA", 0.02)
            .withJson("/device/letThrough", flat(82657))
            .finding(CHECK));
  }

  /**
   * Where the area of the armour is not stated its core stands for both: a worst case, which may
   * carry no failure. 115²·2.5² = 82 656 A²s, a steel armour of 30 mm² stands 51²·30².
   */
  @Test
  void coreThatStandsForTheArmourCarriesNoFailure() {
    Scenario both =
        Scenario.oven()
            .with("/cable/construction", "armoured-multicore")
            .with("/cable/protectiveMeans", "armour-and-core")
            .with("/cable/armourResistanceOhmPerKm", 4.6)
            .withJson("/device/letThrough", flat(90000));
    openBecause(Reason.STAND_IN_FAILS, both.finding(CHECK));
    limit(51.0 * 51 * 30 * 30, complies(both.with("/cable/armourAreaMm2", 30).finding(CHECK)));
    fails(both.with("/cable/armourAreaMm2", 1).finding(CHECK));
  }

  /** A cable of the sizes to be tried; no device, so that the table alone can settle it. */
  private static Scenario bare() {
    return Scenario.oven()
        .with("/cable/construction", "multicore")
        .with("/cable/protectiveMeans", "core")
        .without("/cable/protectiveCsaMm2")
        .without("/device");
  }

  private static Scenario apart(double size) {
    return Scenario.oven()
        .with("/cable/construction", "multicore")
        .with("/cable/protectiveMeans", "separate")
        .with("/cable/protectiveConductor", "copper")
        .with("/cable/protectiveCsaMm2", size);
  }

  private static Scenario inConduit(double size) {
    return apart(size)
        .with("/cable/construction", "singles")
        .with("/cable/installation/referenceMethod", "B");
  }

  private static void firstLimit(double expected, Finding found) {
    assertEquals(expected, found.comparisons().get(0).limit().value(), 1e-6);
  }

  private static String flat(double energy) {
    return ("[{\"prospectiveCurrentA\": 20, \"energyA2s\": %s},"
            + " {\"prospectiveCurrentA\": 20000, \"energyA2s\": %s}]")
        .formatted(energy, energy);
  }
}
