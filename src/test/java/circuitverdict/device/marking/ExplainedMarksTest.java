package circuitverdict.device.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.standard.Citation;
import circuitverdict.support.Scenario;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What each mark means for the job. Sources stand beside; clause 6 is of IEC 60898-1. */
class ExplainedMarksTest {

  private static Mark symbol(String word) {
    return Faces.only(Faces.read(List.of(), List.of(word)));
  }

  private static void says(Mark mark, String kind, String... words) {
    assertEquals(kind, mark.kind());
    for (String word : words) {
      assertTrue(mark.meaning().contains(word), mark::meaning);
    }
    assertFalse(mark.clauses().isEmpty(), mark::text);
  }

  @Test
  void letterAndFigureAreTypeAndRatedCurrentWithoutUnit() {
    // IEC 60898-1 clause 6 and Table 7: bands 3 to 5, 5 to 10, 10 to 20 In.
    says(
        Faces.only(Faces.read("B50")),
        "type-and-rating",
        "without unit",
        "not what trips it",
        "Type B",
        "5 times");
    says(Faces.only(Faces.read("C16")), "type-and-rating", "Type C", "10 times");
    says(Faces.only(Faces.read("D10")), "type-and-rating", "Type D", "20 times");
  }

  @Test
  void lettersOutsideTheStandardNeedTheMakersLimits() {
    // K and Z are none of IEC 60898-1 (common practice): limits stated, never assumed.
    Reading reading = Faces.read("IEC 60898-1", "K 20", "6000", "3");
    says(reading.marks().get(1), "type-and-rating", "magnetic limits are the maker's");
    assertTrue(
        Faces.places(reading.missing(), "missing-input")
            .contains("/device/magneticMultiples/upper"));
  }

  @Test
  void figureInARectangleIsTheShortCircuitCapacityInAmperes() {
    // Clause 6: amperes in a rectangle without the symbol A.
    Mark mark = Faces.read("IEC 60898-1", "6000").marks().get(1);
    says(mark, "short-circuit-capacity", "in amperes in a rectangle");
  }

  @Test
  void figureInASquareIsTheEnergyClassAndNeitherPolesNorKiloamperes() {
    // EN 60898-1 annex ZA.
    says(
        Faces.only(Faces.read("3")),
        "energy-class",
        "energy limiting class",
        "neither the number of poles nor Ics",
        "Class 3");
    says(Faces.only(Faces.read("1")), "energy-class", "no limit is stated");
  }

  @Test
  void waveIsAlternatingCurrentOnly() {
    says(Faces.only(Faces.read("~")), "alternating-current", "Alternating current only");
    says(symbol("alternating-current-sign"), "alternating-current", "Alternating current only");
  }

  @Test
  void twoVoltagesServeOnePhaseOrThree() {
    says(Faces.only(Faces.read("230/400V")), "rated-voltage", "one phase or three");
    says(Faces.only(Faces.read("230V")), "rated-voltage", "One voltage only");
  }

  @Test
  void contactDrawing() {
    // IEC 60617 symbols (from memory).
    says(symbol("full-fault-cross"), "fault-breaking-contact", "full fault current");
    says(symbol("isolating-bar"), "isolating-contact", "off position", "isolates");
    says(symbol("thermal-curve"), "thermal-release", "thermal", "overload");
    says(symbol("magnetic-rectangle"), "magnetic-release", "magnetic", "short circuit");
    assertEquals(
        Map.of("isolation", "true"), Faces.told(Faces.read(List.of(), List.of("isolating-bar"))));
  }

  @Test
  void positionWindow() {
    // Clause 6: I and O; the colours by common practice.
    says(symbol("position-window-red"), "position-window", "Red: on");
    says(symbol("position-window-green"), "position-window", "Green: off");
    says(symbol("on-mark"), "position", "I: on");
    says(Faces.only(Faces.read("O")), "position", "O: off");
  }

  @Test
  void terminalAndTestButton() {
    says(symbol("neutral-terminal"), "neutral-terminal", "neutral conductor");
    says(symbol("test-button"), "test-button", "Test button");
  }

  @Test
  void conformityIsClaimedNeverVerified() {
    for (Reading reading :
        List.of(Faces.read("CE"), Faces.read(List.of(), List.of("conformity-mark")))) {
      says(Faces.only(reading), "conformity-mark", "claimed", "not verified");
      assertEquals(List.of("conformity-claimed"), List.copyOf(Faces.codes(reading.remarks())));
      assertTrue(reading.device().isEmpty());
    }
  }

  @Test
  void referenceCodeIsOpaque() {
    // Nothing is read out of it, though it holds what looks like marks.
    Reading reading = Faces.read("HSB-C16-6000/3 30mA");
    says(reading.marks().get(0), "reference", "nothing is read");
    assertEquals("HSB-C16-6000/3", reading.marks().get(0).text());
    assertEquals(Map.of("residual/operatingCurrentA", "0.03"), Faces.told(reading));
  }

  @Test
  void whatIsNoMarkIsToldAsNotRead() {
    Reading reading = Faces.read("C16 Harbour Street Bakery, 6000");
    assertEquals(
        List.of("C16", "Harbour Street Bakery", "6000"),
        reading.marks().stream().map(Mark::text).toList());
    assertEquals(List.of("/markings/0"), Faces.places(reading.remarks(), "mark-not-read"));
  }

  @Test
  void oldMarksAreReadAndMarkedWithdrawn() {
    // BS 3871-1 types and categories of duty (from memory): a type is no class.
    Reading reading = Faces.read("BS 3871", "Type 2", "15A", "M6");
    says(reading.marks().get(1), "withdrawn-type", "withdrawn", "not an energy limiting class");
    says(reading.marks().get(3), "withdrawn-capacity", "withdrawn");
    assertEquals(
        List.of("/markings/0", "/markings/1", "/markings/3"),
        Faces.places(reading.remarks(), "mark-withdrawn"));
  }

  @Test
  void motorFuseHasTwoFigures() {
    // IEC 60269-1 clause 6 (from memory).
    says(Faces.only(Faces.read("63M80")), "motor-fuse-rating", "gM", "characteristic current");
  }

  @Test
  void clausesAreThoseOfTheDevicesOwnStandardAndOfTheEdition() {
    List<Citation> own = Faces.read("BS EN 61009-1", "C16").marks().get(1).clauses();
    assertEquals("IEC 61009-1", own.get(0).standard());
    String rules = Scenario.editions().inForce().head().standard();
    assertTrue(own.stream().anyMatch(each -> each.standard().equals(rules)));
    List<Citation> adjustable = Faces.read("IEC 60947-2", "Icu 36kA").marks().get(1).clauses();
    assertEquals("IEC 60947-2", adjustable.get(0).standard());
  }

  @Test
  void everySymbolOfTheVocabularyIsExplained() {
    Scenario.editions()
        .inForce()
        .marks()
        .symbols()
        .keySet()
        .forEach(
            word -> {
              Mark mark = symbol(word);
              assertFalse(mark.meaning().isBlank(), word);
              assertFalse(mark.clauses().isEmpty(), word);
              assertEquals("/symbols/0", mark.at().text());
            });
  }
}
