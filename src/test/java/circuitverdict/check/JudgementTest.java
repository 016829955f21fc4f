package circuitverdict.check;

import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Working;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How comparisons and what a check gathered become its finding. */
class JudgementTest {
  private static final Pointer AT = new Pointer("/supply", "loopImpedanceOhm");

  private final Dossier d =
      new Dossier(Scenario.oven().edition(), Allowance.NOTHING, Working.recording());
  private final Judgement judgement = judgement(Scenario.oven());

  /** Equality complies; one failure outweighs any number of compliances and of open questions. */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 1, COMPLIES, ",
    "1, 2, 1, DOES_NOT_COMPLY, LIMIT_EXCEEDED",
    "1, NaN, 1, NOT_DETERMINED, MISSING_INPUT",
    "NaN, 2, 1, DOES_NOT_COMPLY, LIMIT_EXCEEDED",
    "NaN, NaN, NaN, NOT_DETERMINED, MISSING_INPUT"
  })
  void worstComparisonDecides(double a, double b, double c, Verdict verdict, Reason reason) {
    for (double value : new double[] {a, b, c}) {
      judgement.compare("/cable", ampere(value), Comparator.AT_MOST, ampere(1));
    }
    decided(verdict, reason, judgement.conclude());
  }

  @Test
  void nothingComparedIsNotDetermined() {
    decided(Verdict.NOT_DETERMINED, Reason.MISSING_INPUT, judgement.conclude());
  }

  /** What complies asks for nothing, even where a note was taken on the way. */
  @Test
  void whatCompliesAsksForNothing() {
    d.missing(AT);
    compare(1);
    Finding found = judgement.conclude();
    decided(Verdict.COMPLIES, null, found);
    assertTrue(found.missing().isEmpty());
  }

  /** Unknown never passes: what an open question leaves, no known comparison settles. */
  @Test
  void openQuestionsKeepItFromComplying() {
    compare(1);
    judgement.undetermined();
    decided(Verdict.NOT_DETERMINED, Reason.MISSING_INPUT, judgement.conclude());
  }

  /** A stand-in, typical or worst, carries a compliance but no failure, and is asked for. */
  @ParameterizedTest
  @CsvSource({"1, COMPLIES, ", "2, NOT_DETERMINED, STAND_IN_FAILS"})
  void standInCarriesNoFailure(double value, Verdict verdict, Reason reason) {
    d.assumeCurable(NoteCode.ASSUMED_MEASURED_COLD, AT);
    compare(value);
    Finding found = judgement.conclude();
    decided(verdict, reason, found);
    boolean fails = value > 1;
    assertEquals(fails, wanted(found).contains(NoteCode.STAND_IN_FAILS));
    assertEquals(fails, missing(found).contains(AT.text()));
    assertEquals(value, found.governing().actual().value());
  }

  /** A listed default that the real value cannot better carries both. */
  @ParameterizedTest
  @CsvSource({"1, COMPLIES, ", "2, DOES_NOT_COMPLY, LIMIT_EXCEEDED"})
  void plainAssumptionCarriesBoth(double value, Verdict verdict, Reason reason) {
    d.assume(NoteCode.ASSUMED_AMBIENT, AT);
    compare(value);
    decided(verdict, reason, judgement.conclude());
  }

  /** An input at its best: what fails then fails for certain, and nothing complies by it. */
  @ParameterizedTest
  @CsvSource({"1, NOT_DETERMINED, MISSING_INPUT", "2, DOES_NOT_COMPLY, LIMIT_EXCEEDED"})
  void atItsBestNothingComplies(double value, Verdict verdict, Reason reason) {
    d.atBest(AT);
    compare(value);
    Finding found = judgement.conclude();
    decided(verdict, reason, found);
    assertEquals(value <= 1, missing(found).contains(AT.text()));
  }

  /** Of the best that a missing input could make of it only a failure is kept. */
  @ParameterizedTest
  @CsvSource({"1, NOT_DETERMINED, MISSING_INPUT", "2, DOES_NOT_COMPLY, LIMIT_EXCEEDED"})
  void bestComparisonOnlyFails(double value, Verdict verdict, Reason reason) {
    judgement.atBest("/cable", ampere(value), Comparator.AT_MOST, ampere(1));
    decided(verdict, reason, judgement.conclude());
  }

  /** What a clause settles by itself needs nothing that stands at its best. */
  @Test
  void whatIsSettledCompliesBesideAnInputAtItsBest() {
    d.atBest(AT);
    compare(1);
    judgement.settled();
    decided(Verdict.COMPLIES, null, judgement.conclude());
  }

  /** But an open question and a failure stay what they are. */
  @Test
  void whatIsSettledHidesNeitherFailureNorQuestion() {
    compare(1);
    judgement.settled();
    judgement.undetermined();
    decided(Verdict.NOT_DETERMINED, Reason.MISSING_INPUT, judgement.conclude());
    compare(2);
    decided(Verdict.DOES_NOT_COMPLY, Reason.LIMIT_EXCEEDED, judgement.conclude());
  }

  /** Where the tables do not speak of a circuit no verdict is given at all. */
  @ParameterizedTest
  @CsvSource({"1", "2"})
  void blockedGivesNoVerdict(double value) {
    d.block(new Pointer("/supply", "frequencyHz"));
    compare(value);
    Finding found = judgement.conclude();
    decided(Verdict.NOT_DETERMINED, Reason.MISSING_INPUT, found);
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
    decided(Verdict.NOT_DETERMINED, Reason.MISSING_INPUT, judgement.concludeMet());
  }

  /** Engineering basis, principle 8: proof is the default at sign-off alone. */
  @ParameterizedTest
  @CsvSource({
    "sign-off, , false",
    "sign-off, proved, false",
    "sign-off, guidance, true",
    "design, , true",
    "design, proved, false",
    "quotation, , true",
    "quotation, proved, false"
  })
  void guidanceIsRefusedWhereProofIsWanted(String stage, String evidence, boolean carried) {
    Scenario staged = Scenario.oven().with("/stage", stage);
    Judgement asked =
        judgement(evidence == null ? staged : staged.with("/requirements/evidence", evidence));
    d.restsOn(Strength.GUIDANCE);
    asked.compare("/cable", ampere(1), Comparator.AT_MOST, ampere(1));
    Finding found = asked.conclude();
    decided(
        carried ? Verdict.COMPLIES : Verdict.NOT_DETERMINED,
        carried ? null : Reason.PROOF_WANTED,
        found);
    assertEquals(carried, remarks(found).contains(NoteCode.BY_GUIDANCE));
    assertEquals(!carried, missing(found).contains("/requirements/evidence"));
  }

  /** Proof wanted does not turn a failure into a question, nor refuse what a clause deems. */
  @Test
  void proofWantedConcernsComplianceByGuidanceAlone() {
    d.restsOn(Strength.DEEMED);
    compare(1);
    Finding deemed = judgement.conclude();
    decided(Verdict.COMPLIES, null, deemed);
    assertTrue(remarks(deemed).contains(NoteCode.DEEMED));
    d.restsOn(Strength.GUIDANCE);
    compare(2);
    Finding failing = judgement.conclude();
    decided(Verdict.DOES_NOT_COMPLY, Reason.LIMIT_EXCEEDED, failing);
    assertFalse(remarks(failing).contains(NoteCode.BY_GUIDANCE));
  }

  /** An interval that the limit divides is settled by the maker's data: between bounds. */
  @ParameterizedTest
  @CsvSource({
    "0, 1, COMPLIES, ",
    "0, 2, NOT_DETERMINED, BETWEEN_BOUNDS",
    "2, 3, DOES_NOT_COMPLY, LIMIT_EXCEEDED",
    "0, Infinity, NOT_DETERMINED, BETWEEN_BOUNDS"
  })
  void intervalIsJudgedByBothEnds(double least, double most, Verdict verdict, Reason reason) {
    judgement.compareInterval("/cable", ampere(least), ampere(most), ampere(1));
    decided(verdict, reason, judgement.conclude());
  }

  @Test
  void deviceNotJudgedAndMissingInputsGoBeforeBounds() {
    judgement.compareInterval("/cable", ampere(0), ampere(2), ampere(1));
    d.missing(AT);
    decided(Verdict.NOT_DETERMINED, Reason.MISSING_INPUT, judgement.conclude());
  }

  private void compare(double value) {
    judgement.compare("/cable", ampere(value), Comparator.AT_MOST, ampere(1));
  }

  private Judgement judgement(Scenario circuit) {
    return new Judgement(CheckName.VOLTAGE_DROP, circuit.circuit(), d, "/cable");
  }

  private static Figure ampere(double value) {
    return Figure.derived("I", value, Unit.AMPERE);
  }

  private static void decided(Verdict verdict, Reason reason, Finding found) {
    assertEquals(verdict, found.verdict());
    assertEquals(reason, found.reason());
  }
}
