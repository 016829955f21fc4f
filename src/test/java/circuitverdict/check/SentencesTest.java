package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is said of a finding and of a whole result: from its own figures, rounded to the safe side.
 */
class SentencesTest {
  private static final Comparison WITHIN = at(1.001, Comparator.AT_MOST, 1.365625);
  private static final Comparison OVER = at(1.3661, Comparator.AT_MOST, 1.365625);

  /** Actual rounded up, limit down, with unit and relation. */
  @Test
  void complianceIsToldWithItsFigures() {
    assertEquals(
        "Earth fault disconnection complies: Zs 1.01 Ω is within Zs,max 1.36 Ω.",
        Sentences.of(finding(Verdict.COMPLIES, Strength.RULE, WITHIN)));
  }

  @ParameterizedTest
  @CsvSource({"RULE, ''", "DEEMED, ', deemed by clause'", "GUIDANCE, ', by guidance'"})
  void strengthOfTheProofIsTold(Strength strength, String words) {
    assertEquals(
        "Earth fault disconnection complies" + words + ": Zs 1.01 Ω is within Zs,max 1.36 Ω.",
        Sentences.of(finding(Verdict.COMPLIES, strength, WITHIN)));
  }

  @Test
  void failureIsToldWithItsFigures() {
    assertEquals(
        "Earth fault disconnection does not comply: Zs 1.37 Ω exceeds Zs,max 1.36 Ω.",
        Sentences.of(finding(Verdict.DOES_NOT_COMPLY, Strength.RULE, OVER)));
  }

  /** What must be reached reaches or falls short: rounded the other way. */
  @Test
  void leastFiguresReachOrFallShort() {
    Comparison reached = at(2.504, Comparator.AT_LEAST, 2.5);
    Comparison missed = at(2.496, Comparator.AT_LEAST, 2.5);
    assertEquals(
        "Earth fault disconnection complies: Zs 2.50 Ω reaches Zs,max 2.50 Ω.",
        Sentences.of(finding(Verdict.COMPLIES, Strength.RULE, reached)));
    assertEquals(
        "Earth fault disconnection does not comply: Zs 2.49 Ω falls short of Zs,max 2.50 Ω.",
        Sentences.of(finding(Verdict.DOES_NOT_COMPLY, Strength.RULE, missed)));
  }

  /** A pure number carries no unit; without figures, or with unbounded ones, none are told. */
  @Test
  void figuresAreLeftOutWhereThereAreNone() {
    assertEquals(
        "Earth fault disconnection complies.",
        Sentences.of(finding(Verdict.COMPLIES, Strength.RULE, null)));
    assertEquals(
        "Earth fault disconnection complies.",
        Sentences.of(
            finding(
                Verdict.COMPLIES,
                Strength.RULE,
                at(Double.POSITIVE_INFINITY, Comparator.AT_MOST, 1))));
    Comparison pure =
        Comparison.of(
            "/device",
            Figure.derived("mΔ", 2, Unit.ONE),
            Comparator.AT_LEAST,
            Figure.derived("1", 1, Unit.ONE),
            null);
    assertEquals(
        "Earth fault disconnection complies: mΔ 2 reaches 1 1.",
        Sentences.of(finding(Verdict.COMPLIES, Strength.RULE, pure)));
  }

  @Test
  void ruleThatDoesNotApplyIsSaidNotTo() {
    assertEquals(
        "Earth fault disconnection does not apply here.",
        Sentences.of(finding(Verdict.NOT_APPLICABLE, Strength.RULE, null)));
  }

  /**
   * At most four wishes, each once, in an electrician's words; without a pointer the note's text.
   */
  @Test
  void whatIsWantedIsTold() {
    assertEquals(
        "Earth fault disconnection is not determined: wanted the length of the cable.",
        Sentences.of(
            open(new Pointer("/cable", "lengthM"), new Pointer("/furtherCables/0", "lengthM"))));
    assertEquals(
        "Earth fault disconnection is not determined: wanted the system of earthing, the number of"
            + " phases, the cable, the protective device.",
        Sentences.of(
            open(
                new Pointer("/supply", "earthing"),
                new Pointer("/supply", "phases"),
                new Pointer("", "cable"),
                new Pointer("", "device"),
                new Pointer("/cable", "lengthM"))));
    assertEquals(
        "Earth fault disconnection is not determined.",
        Sentences.of(finding(Verdict.NOT_DETERMINED, Strength.RULE, null)));
    assertTrue(Sentences.of(open((Pointer) null)).endsWith(NoteCode.MISSING_INPUT.text() + "."));
  }

  /** Every member has a name of its own, or stands for itself. */
  @Test
  void memberWithoutANameStandsForItself() {
    assertEquals("/cable/oddMember", Labels.of(new Pointer("/cable", "oddMember")));
    assertEquals("the system of earthing", Labels.of(new Pointer("/supply", "earthing")));
  }

  /** The oven: the closest check that counts, its margin rounded down. */
  @Test
  void complyingResultTellsItsClosestCheck() {
    // 32 A against 26.1 A by 433.1.1: 18.4 %, the least of the oven's margins.
    assertEquals(
        "Complies with every check made; the closest is overload protection, with a margin of"
            + " 18 %.",
        Sentences.of(Scenario.oven().result()));
  }

  @Test
  void failingResultTellsWhatFailsAndWhatIsOpen() {
    Result result =
        Result.of(
            List.of(
                finding(Verdict.DOES_NOT_COMPLY, Strength.RULE, OVER),
                other(CheckName.VOLTAGE_DROP, Verdict.NOT_DETERMINED, true),
                other(CheckName.COMMISSIONING, Verdict.DOES_NOT_COMPLY, false)));
    assertEquals(
        "Does not comply: earth fault disconnection; not determined: voltage drop.",
        Sentences.of(result));
    assertEquals(
        "Does not comply: earth fault disconnection.",
        Sentences.of(Result.of(List.of(finding(Verdict.DOES_NOT_COMPLY, Strength.RULE, OVER)))));
  }

  @Test
  void openResultTellsWhatIsOpen() {
    assertEquals(
        "Not determined: voltage drop.",
        Sentences.of(
            Result.of(List.of(other(CheckName.VOLTAGE_DROP, Verdict.NOT_DETERMINED, true)))));
    assertEquals(
        "Not determined: no check that counts applies.",
        Sentences.of(Result.of(List.of(other(CheckName.COMMISSIONING, Verdict.COMPLIES, false)))));
  }

  /** Without a figure there is nothing that is closest. */
  @Test
  void complianceWithoutFiguresHasNoClosestCheck() {
    assertEquals(
        "Complies with every check made.",
        Sentences.of(
            Result.of(List.of(other(CheckName.EARTHING_ARRANGEMENT, Verdict.COMPLIES, true)))));
    assertFalse(Sentences.of(Scenario.oven().without("/device").result()).contains("closest"));
  }

  private static Finding open(Pointer... pointers) {
    List<Note> notes = new java.util.ArrayList<>();
    for (Pointer pointer : pointers == null ? new Pointer[] {null} : pointers) {
      notes.add(new Note(NoteCode.MISSING_INPUT, pointer, List.of()));
    }
    return new Finding(
        CheckName.EARTH_FAULT_DISCONNECTION,
        Verdict.NOT_DETERMINED,
        true,
        Reason.MISSING_INPUT,
        Strength.RULE,
        List.of(),
        "/cable",
        null,
        List.of(),
        List.of(),
        notes,
        List.of(),
        List.of());
  }

  private static Finding other(CheckName check, Verdict verdict, boolean counted) {
    return new Finding(
        check,
        verdict,
        counted,
        null,
        Strength.RULE,
        List.of(),
        "/cable",
        null,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static Finding finding(Verdict verdict, Strength strength, Comparison governing) {
    return new Finding(
        CheckName.EARTH_FAULT_DISCONNECTION,
        verdict,
        true,
        null,
        strength,
        List.of(),
        "/cable",
        governing,
        governing == null ? List.of() : List.of(governing),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static Comparison at(double actual, Comparator comparator, double limit) {
    return Comparison.of(
        "/cable",
        Figure.derived("Zs", actual, Unit.OHM),
        comparator,
        Figure.derived("Zs,max", limit, Unit.OHM),
        null);
  }
}
