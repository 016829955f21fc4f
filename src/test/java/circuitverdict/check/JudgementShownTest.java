package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Working;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;

/** Which comparisons a finding shows, which of them governs, and whether it counts. */
class JudgementShownTest {
  private static final Figure UNKNOWN = Figure.unknown("I", Unit.AMPERE);

  private final Dossier d =
      new Dossier(Scenario.oven().edition(), Allowance.NOTHING, Working.recording());
  private final Judgement judgement = judgement(Scenario.oven());

  /** The failing comparison with the greatest excess governs, else the one of least margin. */
  @Test
  void governingIsTheWorstFailureElseTheLeastMargin() {
    compare(0.5);
    compare(0.9);
    compare(0.7);
    assertEquals(0.9, judgement.conclude().governing().actual().value());
    compare(1.5);
    compare(3);
    compare(2);
    assertEquals(3, judgement.conclude().governing().actual().value());
  }

  /** A comparison kept beside another never governs, and one that is unknown is not shown. */
  @Test
  void besideNeverGovernsAndUnknownIsNotShown() {
    compare(0.5);
    judgement.beside("/cable", ampere(0.99), Comparator.AT_MOST, ampere(1));
    judgement.beside("/cable", UNKNOWN, Comparator.AT_MOST, ampere(1));
    judgement.show(Comparison.of("/cable", ampere(2), Comparator.AT_MOST, ampere(1), null));
    Finding found = judgement.conclude();
    decided(Verdict.COMPLIES, null, found);
    assertEquals(0.5, found.governing().actual().value());
    assertEquals(2, found.comparisons().size());
  }

  /** Figures left open are shown, undecided. */
  @Test
  void openFiguresAreShownUndecided() {
    judgement.open("/cable", ampere(0.5), Comparator.AT_MOST, ampere(1));
    Finding found = judgement.conclude();
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
    assertEquals(Verdict.NOT_DETERMINED, found.governing().verdict());
  }

  /** What does not apply, or only informs, is not counted. */
  @Test
  void notApplicableAndInformativeAreNotCounted() {
    Finding none = judgement.notApplicable();
    decided(Verdict.NOT_APPLICABLE, Reason.NO_SUCH_DUTY, none);
    assertFalse(none.counted());
    assertNull(none.governing());
    compare(1);
    assertTrue(judgement.conclude().counted());
    assertFalse(judgement.informative().conclude().counted());
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
