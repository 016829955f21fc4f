package circuitverdict.check;

import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Users, voltage, range and assembly of a device (133.1, 512.1.1, 536.4.203). */
class DeviceSuitabilityTest {
  private static final CheckName CHECK = CheckName.DEVICE_SUITABILITY;

  /** The oven's B32: a household breaker on one line of a TN-C-S supply. */
  @Test
  void householdBreakerOnOneLineComplies() {
    Finding found = complies(Scenario.oven().finding(CHECK));
    assertTrue(found.counted());
    // Classes have no margin that would say how close it is.
    assertNull(found.governing());
    assertEquals(1, found.comparisons().size());
    assertEquals(List.of(NoteCode.ASSUMED_RATED_VOLTAGE), assumptions(found));
    assertEquals(
        List.of(NoteCode.ASSEMBLY_AMBIENT_NOT_STATED, NoteCode.DECLARATION_NOT_STATED),
        remarks(found));
    assertEquals(List.of("133.1", "512.1.1", "431.1.1", "462.2", "Table 537.4"), clauses(found));
    assertEquals("Device suitability complies.", Sentences.of(found));
  }

  /** No answer says that the circuit's closest figure is a class that is met exactly. */
  @Test
  void whatComesInClassesIsNeverTheClosest() {
    assertFalse(Sentences.of(Scenario.oven().result()).contains("suitability"));
  }

  /** Engineering basis, section 5; scope of IEC 60898-1: uninstructed persons. */
  @ParameterizedTest
  @CsvSource({
    "IEC 60898-1, ordinary-persons, complies",
    "IEC 60898-1, , complies",
    "IEC 61009-1, ordinary-persons, complies",
    "BS 88-3, ordinary-persons, complies",
    "BS 1361, ordinary-persons, complies",
    "BS 1362, ordinary-persons, complies",
    "BS 3036, ordinary-persons, complies",
    "BS 3036, , complies",
    "IEC 60947-2, ordinary-persons, fails",
    "IEC 60947-2, instructed-persons, complies",
    "IEC 60947-2, skilled-persons, complies",
    "IEC 60947-2, , open",
    "BS 88-2, ordinary-persons, fails",
    "BS 88-2, skilled-persons, complies",
    "BS 88-2, , open"
  })
  void ordinaryPersonsNeedHouseholdDevices(String standard, String users, String verdict) {
    Scenario device =
        Scenario.oven()
            .with("/device/standard", standard)
            .with("/device/ratedVoltageV", 400)
            .with("/device/isolation", true);
    Finding found =
        (users == null
                ? device.without("/premises/operatedBy")
                : device.with("/premises/operatedBy", users))
            .finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> {
        assertEquals(NoteCode.NOT_FOR_ORDINARY_PERSONS, remarks(fails(found)).get(0));
        assertEquals(
            "Device suitability does not comply. " + NoteCode.NOT_FOR_ORDINARY_PERSONS.text(),
            Sentences.of(found));
      }
      default -> assertEquals(List.of("/premises/operatedBy"), missing(open(found)));
    }
  }

  /** Nothing that is open keeps a device for others from failing with ordinary persons. */
  @Test
  void wrongUsersFailWhateverElseIsOpen() {
    Scenario device = Scenario.oven().with("/device/standard", "IEC 60947-2");
    fails(device.without("/supply/earthing").without("/liveConductors").finding(CHECK));
    // But no verdict rests on tables of another frequency.
    open(device.with("/supply/frequencyHz", 60).finding(CHECK), "/supply/frequencyHz");
  }

  /** 512.1.1: 230 V between line and earth of a public supply, 240 V of a private one. */
  @ParameterizedTest
  @CsvSource({
    "230, 229, , fails",
    "230, 230, , complies",
    "230, 400, , complies",
    "230, 400, 230, complies",
    "230, 400, 229, fails",
    "230, 240, 120, fails",
    "240, 230, , fails",
    "240, 240, , complies"
  })
  void oneLineIsOpenedAtItsVoltageToEarth(
      double nominal, double rated, Double toEarth, String verdict) {
    Scenario device = ofPrivate(nominal).with("/device/ratedVoltageV", rated);
    Scenario both =
        toEarth == null ? device : device.with("/device/ratedLineToEarthVoltageV", toEarth);
    held(verdict, both.finding(CHECK));
  }

  /** 400 V between lines; the 230 of 230/400 stands to earth. */
  @ParameterizedTest
  @CsvSource({
    "399, , fails",
    "400, , complies",
    "230, , fails",
    "400, 230, complies",
    "400, 229, fails"
  })
  void severalLinesAreOpenedAtTheVoltageBetweenThem(double rated, Double toEarth, String verdict) {
    Scenario device = threePhase(3).with("/device/ratedVoltageV", rated);
    Scenario both =
        toEarth == null ? device : device.with("/device/ratedLineToEarthVoltageV", toEarth);
    held(verdict, both.finding(CHECK));
  }

  /**
   * What is not stated is the least that the standard knows: 230 V of one line, 400 V of three
   * poles (printed, for IEC 60898-1); 240 V of BS 1361 and BS 3036 (from memory). It carries no
   * failure.
   */
  @ParameterizedTest
  @CsvSource({
    "IEC 60898-1, 230, true",
    "IEC 60898-1, 240, false",
    "BS 3036, 240, true",
    "BS 3036, 241, false",
    "BS 1361, 240, true",
    "BS 88-3, 230, true",
    "BS 88-3, 240, false",
    "IEC 60947-2, 230, false"
  })
  void leastOfTheStandardStandsIn(String standard, double nominal, boolean holds) {
    Scenario device =
        ofPrivate(nominal)
            .with("/premises/operatedBy", "skilled-persons")
            .with("/device/isolation", true)
            .with("/device/standard", standard);
    Finding found = device.finding(CHECK);
    if (holds) {
      assertEquals(List.of(NoteCode.ASSUMED_RATED_VOLTAGE), assumptions(complies(found)));
    } else {
      assertEquals(List.of("/device/ratedVoltageV"), missing(open(found)));
      assertTrue(assumptions(found).isEmpty());
    }
  }

  @Test
  void threePolesAreMadeForThreeLines() {
    complies(threePhase(3).finding(CHECK));
    complies(threePhase(4).finding(CHECK));
    // A fuse of one line may be made for less.
    Scenario fuse = threePhase(3).with("/device/standard", "BS 88-3");
    open(fuse.finding(CHECK), "/device/ratedVoltageV");
    complies(fuse.with("/device/ratedVoltageV", 400).finding(CHECK));
  }

  /** IEC 60898-1 clause 1: 440 V between phases is the most it knows. */
  @Test
  void noMoreIsCountedThanTheStandardKnows() {
    Scenario high = ofPrivate(260).with("/device/ratedVoltageV", 690);
    complies(high.finding(CHECK));
    Scenario three =
        threePhase(3)
            .with("/supply/ownership", "private")
            .with("/supply/lineToEarthVoltageV", 260)
            .with("/device/ratedVoltageV", 690);
    // √3·260 = 450 V
    fails(three.finding(CHECK));
    complies(
        three
            .with("/device/standard", "IEC 60947-2")
            .with("/device/isolation", true)
            .with("/device/protectedPoles", 3)
            .with("/premises/operatedBy", "skilled-persons")
            .finding(CHECK));
  }

  /** IEC 60898-1 clause 1: it ends at 125 A; what is stated above is not believed. */
  @ParameterizedTest
  @CsvSource({"125, true", "126, false"})
  void ratedCurrentLiesInTheRangeOfTheStandard(double ampere, boolean holds) {
    Finding found = Scenario.oven().with("/device/ratedCurrentA", ampere).finding(CHECK);
    if (holds) {
      complies(found);
    } else {
      assertEquals(List.of(NoteCode.NOT_IN_TABLES), wanted(open(found, "/device/ratedCurrentA")));
    }
  }

  /** What it cannot do without is named at once. */
  @ParameterizedTest
  @CsvSource({
    "/device, /device",
    "/device/standard, /device/standard",
    "/device/ratedCurrentA, /device/ratedCurrentA",
    "/liveConductors, /liveConductors"
  })
  void whatItNeedsIsNamed(String left, String named) {
    assertTrue(missing(open(Scenario.oven().without(left).finding(CHECK))).contains(named));
  }

  @ParameterizedTest
  @ValueSource(strings = {"IEC 61008-1", "IEC 60947-3", "IEC 62606", "BS 3871-1"})
  void othersAreNotJudged(String standard) {
    openBecause(
        Reason.DEVICE_NOT_JUDGED,
        Scenario.oven().with("/device/standard", standard).finding(CHECK));
  }

  /**
   * 536.4.203: what the assembly's maker declares. At sign-off it is asked of an assembly that is
   * described; before, and where none is, nothing rests on it.
   */
  @ParameterizedTest
  @CsvSource({
    "sign-off, '{\"deviceDeclared\": true}', complies",
    "sign-off, '{\"deviceDeclared\": false}', fails",
    "design, '{\"deviceDeclared\": false}', fails",
    "sign-off, '{\"standard\": \"IEC 61439-3\"}', open",
    "sign-off, '{}', open",
    "design, '{\"standard\": \"IEC 61439-3\"}', remark",
    "quotation, '{\"standard\": \"IEC 61439-3\"}', remark",
    "sign-off, , remark",
    "design, , remark"
  })
  void deviceIsDeclaredForItsAssembly(String stage, String assembly, String verdict) {
    Scenario at = Scenario.oven().with("/stage", stage);
    Finding found = (assembly == null ? at : at.withJson("/assembly", assembly)).finding(CHECK);
    boolean judged = !verdict.equals("remark");
    assertEquals(judged, clauses(found).contains("536.4.203"));
    assertEquals(!judged, remarks(found).contains(NoteCode.DECLARATION_NOT_STATED));
    switch (verdict) {
      case "open" -> assertEquals(List.of("/assembly/deviceDeclared"), missing(open(found)));
      case "fails" ->
          assertEquals(NoteCode.NOT_DECLARED_FOR_ASSEMBLY, remarks(fails(found)).get(0));
      default -> complies(found);
    }
  }

  /** Editions that lack a clause say so, and hold what stands behind it. */
  @ParameterizedTest
  @ValueSource(strings = {"bs7671-2018-a4", "bs7671-2018-a2", "bs7671-2008"})
  void everyEditionJudges(String edition) {
    Scenario oven = Scenario.oven().with("/edition", edition);
    complies(oven.finding(CHECK));
    fails(oven.with("/device/standard", "IEC 60947-2").finding(CHECK));
  }

  private static void held(String verdict, Finding found) {
    if (verdict.equals("complies")) {
      complies(found);
    } else {
      assertTrue(fails(found).governing().marginPercent() < 0);
    }
  }

  private static Scenario ofPrivate(double nominal) {
    return Scenario.oven()
        .with("/supply/ownership", "private")
        .with("/supply/lineToEarthVoltageV", nominal);
  }

  private static Scenario threePhase(int poles) {
    return Scenario.oven()
        .with("/liveConductors", List.of("L1", "L2", "L3", "N"))
        .with("/device/poles", poles);
  }
}
