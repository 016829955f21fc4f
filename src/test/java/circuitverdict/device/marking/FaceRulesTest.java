package circuitverdict.device.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks that cannot stand on one face, and what is said of those that can. */
class FaceRulesTest {

  private static Set<String> contradictions(Reading reading) {
    return Faces.codes(reading.contradictions());
  }

  @Test
  void aHouseholdBreakerHasNoUltimateCapacity() {
    // IEC 60898-1 knows Icn; Icu is of IEC 60947-2. It does not stand in for Icn.
    Reading reading = Faces.read("IEC 60898-1", "C16", "Icu 10kA");
    assertEquals(
        List.of("/markings/2"), Faces.places(reading.contradictions(), "mark-not-of-standard"));
    assertFalse(reading.device().containsKey(DeviceMember.BREAKING_CAPACITY));
    assertTrue(
        Faces.places(reading.missing(), "missing-input").contains("/device/breakingCapacityA"));
  }

  @Test
  void ofTwoStandardsThatForOrdinaryPersonsCountsWithItsOwnCapacity() {
    // Common practice: Icn beside Icu. The lesser promise counts, and none is invented.
    Reading both = Faces.read("IEC 60898-1 6000", "IEC 60947-2 Icu 10kA");
    assertEquals("6000", Faces.told(both).get("breakingCapacityA"));
    assertEquals(Set.of(), contradictions(both));
    Reading onlyUltimate = Faces.read("IEC 60898-1", "IEC 60947-2", "Icu 10kA");
    assertEquals("IEC 60898-1", Faces.told(onlyUltimate).get("standard"));
    assertFalse(onlyUltimate.device().containsKey(DeviceMember.BREAKING_CAPACITY));
    assertEquals(Set.of("dual-standard"), Faces.codes(onlyUltimate.remarks()));
    Reading unlabelled = Faces.read("IEC 60898-1", "IEC 60947-2", "10kA", "6kA");
    assertEquals("6000", Faces.told(unlabelled).get("breakingCapacityA"));
  }

  @Test
  void whatTheCallerStatesOfTwoStandardsGoesBefore() {
    Reading reading =
        Faces.stated("IEC 60947-2", "IEC 60898-1", "IEC 60947-2", "Icn 6000", "Icu 10kA");
    assertEquals("IEC 60947-2", Faces.told(reading).get("standard"));
    assertEquals("10000", Faces.told(reading).get("breakingCapacityA"));
  }

  @Test
  void standardsThatNoDeviceHasTogetherAreNotTaken() {
    Reading reading = Faces.read("IEC 60898-1", "BS 88-3", "16A");
    assertEquals(Set.of("marks-disagree"), contradictions(reading));
    assertFalse(reading.device().containsKey(DeviceMember.STANDARD));
  }

  @Test
  void theLetterStandsWithItsRating() {
    // Clause 6.
    assertEquals(Set.of("letter-without-rating"), contradictions(Faces.read("type C")));
    assertEquals(Set.of(), contradictions(Faces.read("type C", "In 16A")));
  }

  @Test
  void aRatingOutsideTheSeriesIsToldAndKept() {
    // Preferred values: 6 to 125 A; sold beside them: 0.5 to 8 A.
    Reading reading = Faces.read("C15");
    assertEquals(Set.of("rating-not-preferred"), contradictions(reading));
    assertEquals("15", Faces.told(reading).get("ratedCurrentA"));
    for (String usual : List.of("C0.5", "B1", "C2", "C3", "C4", "B6", "C8", "B13", "B125")) {
      assertEquals(Set.of(), contradictions(Faces.read(usual)), usual);
    }
    assertEquals(Set.of(), contradictions(Faces.read("IEC 60947-2", "C15")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"class 0", "class 4", "[9]", "7 in a square", "class 2.5"})
  void thereAreTheClassesOneToThree(String mark) {
    // EN 60898-1 annex ZA.
    Reading reading = Faces.read(mark);
    assertEquals(Set.of("class-not-known"), contradictions(reading));
    assertTrue(reading.device().isEmpty());
  }

  @Test
  void theVoltageFitsThePoles() {
    // One pole breaks nothing between lines; three need the voltage between lines.
    assertEquals(Set.of("voltage-not-of-poles"), contradictions(Faces.read("1P", "400V")));
    assertEquals(Set.of("voltage-not-of-poles"), contradictions(Faces.read("3P", "230V")));
    assertEquals(Set.of("voltage-not-of-poles"), contradictions(Faces.read("4P", "230V")));
    for (String[] fitting :
        new String[][] {
          {"1P", "230V"},
          {"1P", "230/400V"},
          {"2P", "230V"},
          {"2P", "400V"},
          {"3P", "400V"},
          {"4P", "230/400V"}
        }) {
      assertEquals(Set.of(), contradictions(Faces.read(fitting)), fitting[0] + fitting[1]);
    }
    assertTrue(Faces.read("1P", "400V").device().isEmpty());
  }

  @Test
  void theResidualCurrentIsOneOfTheStandardsValues() {
    // IEC 61008-1 (from memory): 0.006 to 0.5 A; IEC 60947-2 annex B up to 30 A.
    for (String usual : List.of("6mA", "10mA", "30mA", "100mA", "300mA", "500mA")) {
      assertEquals(Set.of(), contradictions(Faces.read("IEC 61008-1", usual)), usual);
    }
    Reading odd = Faces.read("IEC 61008-1", "40mA");
    assertEquals(Set.of("residual-not-preferred"), contradictions(odd));
    assertFalse(odd.device().containsKey(DeviceMember.RESIDUAL_CURRENT));
    assertEquals(
        Set.of("residual-not-preferred"), contradictions(Faces.read("IEC 61008-1", "IΔn 1 A")));
    assertEquals(Set.of(), contradictions(Faces.read("IEC 60947-2", "IΔn 1 A")));
  }

  @Test
  void aClassBeyondTheAnnexIsClaimedWithoutAFigureAndNoContradiction() {
    // Annex ZA: types B and C, up to 32 A, Icn 3, 4.5, 6 and 10 kA.
    for (String face : List.of("D16 6000 3", "C40 6000 3", "B16 15000 3", "B50 6000 2")) {
      Reading reading = Faces.read("IEC 60898-1 " + face);
      assertEquals(Set.of("class-without-figure"), Faces.codes(reading.remarks()), face);
      assertEquals(Set.of(), contradictions(reading), face);
      assertTrue(reading.device().containsKey(DeviceMember.ENERGY_CLASS), face);
    }
    for (String face :
        List.of("C32 6000 3", "B16 10000 2", "B6 4500 3", "C16 3000 3", "D16 6000 1")) {
      assertEquals(Set.of(), Faces.codes(Faces.read("IEC 60898-1 " + face).remarks()), face);
    }
  }

  @Test
  void twoMarksThatDisagreeAreBothNotTaken() {
    Reading reading = Faces.read("C16", "In 20A");
    assertEquals(List.of("/markings/1"), Faces.places(reading.contradictions(), "marks-disagree"));
    assertFalse(reading.device().containsKey(DeviceMember.RATED_CURRENT));
    assertEquals(Set.of(16.0, 20.0), reading.disputed().get(DeviceMember.RATED_CURRENT));
    // A third mark does not outvote the other two.
    assertFalse(
        Faces.read("C16", "In 20A", "16A").device().containsKey(DeviceMember.RATED_CURRENT));
    assertEquals("16", Faces.told(Faces.read("C16", "16A")).get("ratedCurrentA"));
  }

  /** A word before a figure may say that it is another device's, or another quantity. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "max fuse 63A",
        "back-up fuse 80 A",
        "fuse 63 A",
        "SCPD 63A",
        "Im 500 A",
        "Imin 10 A",
        "torque 2 A",
        "63A max fuse",
        "prospective 10 kA"
      })
  void whatAWordQualifiesIsNotTaken(String text) {
    assertEquals(Map.of("standard", "IEC 61008-1"), Faces.told(Faces.read("IEC 61008-1", text)));
  }

  @Test
  void aSwitchForResidualCurrentsHasNoReleases() {
    // IEC 61008-1: it breaks nothing but residual currents; its capacity is a conditional one.
    Reading reading =
        Faces.read(
            List.of("IEC 61008-1", "C40", "10000"),
            List.of("full-fault-cross", "thermal-curve", "magnetic-rectangle"));
    assertEquals(
        List.of("/markings/1", "/symbols/0", "/symbols/1", "/symbols/2"),
        Faces.places(reading.contradictions(), "mark-not-of-standard"));
    assertEquals(
        Map.of("standard", "IEC 61008-1", "conditionalCapacityA", "10000"), Faces.told(reading));
  }

  @Test
  void marksOfOneKindOfDeviceOnAnother() {
    for (String[] face :
        new String[][] {
          {"IEC 60898-1", "30mA"},
          {"IEC 60898-1", "gG 32"},
          {"IEC 60898-1", "M6"},
          {"IEC 60898-1", "Type 2"},
          {"IEC 60947-2", "class 3"},
          {"IEC 60947-2", "Icn 6000"},
          {"BS 88-3", "30mA"},
          {"BS 88-3", "C16"},
          {"BS 3871", "class 3"},
          {"IEC 61009-1", "Ir 16 A"}
        }) {
      Reading reading = Faces.read(face);
      assertEquals(
          List.of("/markings/1"),
          Faces.places(reading.contradictions(), "mark-not-of-standard"),
          face[1]);
      assertEquals(Set.of("standard"), Faces.told(reading).keySet(), face[1]);
    }
  }

  @Test
  void theServiceCapacityDoesNotExceedTheOther() {
    Reading reading = Faces.read("IEC 60947-2", "Icu 10kA", "Ics 15kA");
    assertEquals(Set.of("service-above-breaking"), contradictions(reading));
    assertEquals(Map.of("standard", "IEC 60947-2"), Faces.told(reading));
  }

  @Test
  void settingsThatContradictAreNotTaken() {
    Reading above = Faces.read("IEC 60947-2", "In 100A", "Ir 125A");
    assertEquals(Set.of("settings-contradict"), contradictions(above));
    assertFalse(above.device().containsKey(DeviceMember.LONG_TIME));
    Reading twice = Faces.read("IEC 60947-2", "In 100A", "Ii 1000A", "8-12In");
    assertEquals(Set.of("settings-contradict"), contradictions(twice));
    assertFalse(twice.device().containsKey(DeviceMember.UPPER_MULTIPLE));
  }

  @Test
  void aMarkDoesNotNarrowTheBandOfALetter() {
    // IEC 60898-1 Table 7; type D may reach further, and then it is marked (from memory).
    Reading narrow = Faces.read("IEC 60898-1", "C16", "3-5In");
    assertEquals(Set.of("settings-contradict"), contradictions(narrow));
    assertFalse(narrow.device().containsKey(DeviceMember.UPPER_MULTIPLE));
    Reading wide = Faces.read("IEC 60898-1", "D16", "10-50In");
    assertEquals("50", Faces.told(wide).get("magneticMultiples/upper"));
  }

  @Test
  void aBareDigitIsAClassOnlyWhereDevicesHaveOne() {
    for (String standard : List.of("IEC 61008-1", "IEC 60947-2", "BS 88-3", "BS 3871")) {
      Reading reading = Faces.read(standard, "2");
      assertTrue(Faces.codes(reading.remarks()).contains("mark-ambiguous"), standard);
      assertEquals(Set.of(), contradictions(reading), standard);
      assertFalse(reading.device().containsKey(DeviceMember.ENERGY_CLASS), standard);
    }
    // Two of them are terminals, not classes.
    assertEquals(Set.of("marks-disagree"), contradictions(Faces.read("1", "2")));
  }

  @Test
  void typeBIsThatOfTheReleaseOrOfTheResidualFunction() {
    assertEquals(
        "B", Faces.told(Faces.read("IEC 60898-1", "Type B", "In 32")).get("characteristic"));
    assertEquals("B", Faces.told(Faces.read("IEC 61008-1", "Type B")).get("residual/type"));
    Reading rcbo = Faces.read("IEC 61009-1", "Type B");
    assertEquals(Set.of("mark-ambiguous"), Faces.codes(rcbo.remarks()));
    assertEquals(Set.of("standard"), Faces.told(rcbo).keySet());
  }

  @Test
  void anArcFaultDeviceIsMarkedToBothItsStandards() {
    Reading reading = Faces.read("IEC 62606", "IEC 61009-1", "C16", "30mA");
    assertEquals("IEC 61009-1", Faces.told(reading).get("standard"));
    assertEquals("true", Faces.told(reading).get("arcFaultDetection"));
  }

  @Test
  void whatTheMarksDoNotSayIsMissingByTheStandard() {
    assertEquals(
        List.of(
            "/device/standard",
            "/device/ratedCurrentA",
            "/device/breakingCapacityA",
            "/device/ratedVoltageV",
            "/device/poles"),
        Faces.places(Faces.read(List.of(), List.of()).missing(), "missing-input"));
    assertEquals(
        List.of(),
        Faces.places(
            Faces.read("IEC 60898-1", "B32", "6000", "3", "230/400V", "1P").missing(),
            "missing-input"));
    assertEquals(
        List.of("/device/residual/type"),
        Faces.places(
            Faces.read("IEC 61009-1", "B32", "6000", "3", "230V", "2P", "30mA").missing(),
            "missing-input"));
    assertEquals(
        List.of("/device/settings/longTimeA", "/device/settings/instantaneousA"),
        Faces.places(
            Faces.read("IEC 60947-2", "In 100A", "Icu 36kA", "400V", "3P").missing(),
            "missing-input"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"2 Nm", "3 phase", "series 3", "model 6000", "6000 cycles", "HSB-04 2", "No. 3"})
  void aFigureBesideTextThatIsNotReadCanBeAnything(String mark) {
    Reading reading = Faces.read(mark);
    assertEquals(Map.of(), Faces.told(reading));
    assertTrue(Faces.codes(reading.remarks()).contains("mark-ambiguous"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"B 16 kA", "gG 80 kA", "C 50 Hz", "gG 500 V", "D 30 mA", "C 2P"})
  void aFigureWithAnotherUnitIsNoRating(String mark) {
    assertFalse(Faces.read(mark).device().containsKey(DeviceMember.RATED_CURRENT));
  }

  @Test
  void ambiguityIsToldWithItsPlace() {
    Reading reading = Faces.read("C16", "IΔn 30");
    assertEquals(List.of("/markings/1"), Faces.places(reading.remarks(), "mark-ambiguous"));
  }
}
