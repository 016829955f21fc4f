package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One device against overload and fault current (435.1): the live conductors are deemed protected,
 * and with any condition broken they are not. The circuit is the lighting circuit of every house:
 * B6, 6 kA, class 3, 1.5/1.0 mm² at 3 kA, where the class alone promises 35 000 A²s against 29 756.
 */
class CombinedDeviceTest {
  private static final CheckName CHECK = CheckName.LET_THROUGH_ENERGY;

  @Test
  void conductorsAreDeemedProtected() {
    Finding found = complies(lamps(3000).finding(CHECK));
    assertEquals(Strength.DEEMED, found.strength());
    assertTrue(clauses(found).contains("435.1"));
    assertTrue(remarks(found).contains(NoteCode.DEEMED));
    actual(3000, found);
    limit(6000, found);
    assertEquals(1, found.comparisons().size(), "what the class does not prove is not shown");
  }

  /** What is proved besides is shown beside it. */
  @Test
  void provedComparisonsAreShownBesideIt() {
    Finding found =
        lamps(3000)
            .with("/cable/construction", "multicore")
            .with("/cable/neutralCsaMm2", 2.5)
            .finding(CHECK);
    assertEquals(Strength.DEEMED, complies(found).strength());
    assertEquals(2, found.comparisons().size());
    assertEquals(82656.25, found.comparisons().get(0).limit().value());
  }

  /** Its own capacity is not exceeded; conditional ratings do not count. */
  @ParameterizedTest
  @CsvSource({"6000, true", "6001, false"})
  void ownCapacityIsNotExceeded(double current, boolean deemed) {
    assertDeemed(deemed, lamps(current));
    assertDeemed(
        deemed,
        lamps(current)
            .withJson(
                "/assembly",
                "{\"standard\": \"IEC 61439-3\", \"conditionalRatingA\": 16000,"
                    + " \"deviceDeclared\": true}"));
  }

  /** Each condition broken in turn. */
  @ParameterizedTest
  @CsvSource({
    "/load/designCurrentA, 6.1",
    "/cable/installation/ambientTemperatureC, 61",
    "/device/energyClass, 1",
    "/cable/parallelCables, 2"
  })
  void everyConditionIsKept(String pointer, String value) {
    assertDeemed(false, lamps(3000).withJson(pointer, value));
  }

  @ParameterizedTest
  @CsvSource({"/device/energyClass", "/load/designCurrentA", "/device/breakingCapacityA"})
  void unknownConditionIsNotKept(String pointer) {
    assertDeemed(false, lamps(3000).without(pointer));
  }

  /** Overload: 20 A on the 14.5 A of method A. */
  @Test
  void overloadProtectionMustHold() {
    Scenario twenty = lamps(3000).with("/device/ratedCurrentA", 20);
    assertDeemed(true, twenty);
    assertDeemed(false, twenty.with("/cable/installation/referenceMethod", "A"));
  }

  @Test
  void oneCableInParallelIsNoParallel() {
    assertDeemed(true, lamps(3000).with("/cable/parallelCables", 1));
  }

  /** Class 2 limits the current too. */
  @Test
  void classTwoServes() {
    assertDeemed(true, lamps(3000).with("/device/energyClass", 2));
  }

  /** A class claimed without a figure (type D, above 32 A) needs the maker's word. */
  @Test
  void classWithoutAFigureNeedsTheMakersWord() {
    Scenario motor = lamps(3000).with("/device/characteristic", "D");
    assertDeemed(false, motor);
    assertDeemed(true, motor.with("/device/currentLimiting", true));
    assertDeemed(false, motor.with("/device/currentLimiting", false));
    Scenario large =
        lamps(5000)
            .with("/device/ratedCurrentA", 40)
            .with("/cable/lineCsaMm2", 6)
            .with("/cable/protectiveCsaMm2", 2.5);
    assertDeemed(false, large);
    assertDeemed(true, large.with("/device/currentLimiting", true));
  }

  @Test
  void adjustableBreakerNeedsTheMakersWord() {
    Scenario breaker =
        lamps(3000).with("/device/standard", "IEC 60947-2").with("/device/settings/longTimeA", 6);
    assertDeemed(false, breaker);
    assertDeemed(true, breaker.with("/device/currentLimiting", true));
  }

  /** gG, BS 88-3 and BS 1361 fuses limit the current; gM and BS 3036 are not taken to. */
  @ParameterizedTest
  @CsvSource({
    "BS 88-3, , sign-off, true",
    "BS 1361, , sign-off, true",
    "BS 88-2, gG, sign-off, true",
    "BS 88-2, gM, design, false",
    "BS 88-2, , sign-off, false",
    "BS 88-2, , design, true",
    "BS 3036, , design, false",
    "BS 1362, , design, false"
  })
  void fusesThatLimitTheCurrent(String standard, String category, String stage, boolean deemed) {
    double rated = standard.equals("BS 1361") || standard.equals("BS 3036") ? 5 : 16;
    Scenario fuse =
        lamps(900)
            .with("/stage", stage)
            .with("/device/standard", standard)
            .with("/device/ratedCurrentA", standard.equals("BS 1362") ? 13 : rated)
            .without("/device/characteristic")
            .without("/device/energyClass")
            // So long that the least current stays below every known point of the fuse.
            .with("/cable/lengthM", 1500);
    assertDeemed(
        deemed, category == null ? fuse : fuse.with("/device/utilizationCategory", category));
  }

  /** 435.1 asks for protection against overload: a motor fuse has none, limit what it may. */
  @ParameterizedTest
  @CsvSource({"gG, true", "aM, false", "gM, false", ", false"})
  void motorFuseThatLimitsTheCurrentDeemsNothing(String category, boolean deemed) {
    Scenario fuse =
        lamps(900)
            .with("/device/standard", "BS 88-2")
            .with("/device/ratedCurrentA", 16)
            .with("/device/currentLimiting", true)
            .without("/device/characteristic")
            .without("/device/energyClass")
            .with("/cable/lengthM", 1500);
    assertDeemed(
        deemed, category == null ? fuse : fuse.with("/device/utilizationCategory", category));
  }

  /** A spur of a ring is protected by guidance, so nothing is deemed. */
  @Test
  void ringIsCoveredAndItsSpurIsNot() {
    Scenario ring =
        lamps(5000)
            .with("/cable/arrangement", "ring")
            .with("/load/ratedCurrentA", 13)
            .with("/cable/lineCsaMm2", 2.5)
            .with("/cable/protectiveCsaMm2", 1.5)
            .with("/device/ratedCurrentA", 32)
            .with("/device/breakingCapacityA", 10000)
            .with("/load/designCurrentA", 20)
            .with("/load/kind", "socket-outlets");
    assertDeemed(true, ring);
    assertDeemed(false, ring.with("/load/kind", "led").with("/load/connection", "fixed"));
    assertDeemed(false, ring.without("/load/kind").without("/load/connection"));
    assertDeemed(
        false,
        ring.withJson(
            "/furtherCables",
            """
            [{"construction": "flat-twin-and-earth", "conductor": "copper",
              "insulation": "thermoplastic-70", "lineCsaMm2": 2.5, "protectiveCsaMm2": 1.5,
              "lengthM": 5, "installation": {"referenceMethod": "C", "ambientTemperatureC": 30,
              "groupedCircuits": 1}}]
            """));
  }

  /** The maker's data may prove the contrary: at 3 kA more than 29 756 A²s. */
  @ParameterizedTest
  @CsvSource({"29756, false", "29757, true"})
  void makersDataMayProveTheContrary(double energy, boolean contrary) {
    Finding found =
        lamps(3000)
            .withJson(
                "/device/letThrough",
                "[{\"prospectiveCurrentA\": 50, \"energyA2s\": 100},"
                    + " {\"prospectiveCurrentA\": 3000, \"energyA2s\": %s}]".formatted(energy))
            .finding(CHECK);
    if (contrary) {
      actual(29757, fails(found));
    } else {
      assertEquals(Strength.RULE, complies(found).strength());
    }
    assertFalse(clauses(found).contains("435.1"));
  }

  /** Never for the protective conductor: there the class leaves it open as proof. */
  @Test
  void protectiveConductorIsNotDeemed() {
    Finding found = open(lamps(3000).finding(CheckName.PROTECTIVE_CONDUCTOR));
    assertFalse(clauses(found).contains("435.1"));
  }

  private static void assertDeemed(boolean deemed, Scenario scenario) {
    Finding found = scenario.finding(CHECK);
    assertEquals(deemed, clauses(found).contains("435.1"), () -> scenario + " " + found);
    if (deemed) {
      complies(found);
    }
  }

  private static Scenario lamps(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current)
        .with("/device/ratedCurrentA", 6)
        .with("/load/kind", "led")
        .with("/load/use", "lighting")
        .with("/load/designCurrentA", 4)
        .with("/cable/lineCsaMm2", 1.5)
        .with("/cable/protectiveCsaMm2", 1);
  }
}
