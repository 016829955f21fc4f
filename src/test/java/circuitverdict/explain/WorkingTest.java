package circuitverdict.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A verdict never depends on whether it is explained; what is kept is what was computed. */
class WorkingTest {
  private static final Formula DROP = Formula.of("Z", Unit.OHM, "√((a + b)² + c²)/max(a; c)");

  private static Figure figure(String symbol, double value) {
    return new Figure(symbol, value, Unit.OHM, new Pointer("/cable", symbol));
  }

  @Test
  void theRecordingAndTheSilentTwinGiveIdenticalValues() {
    Random random = new Random(11);
    Working recording = Working.recording();
    Working silent = Working.silent();
    for (int i = 0; i < 1_000; i++) {
      Figure[] operands = {
        figure("a", random.nextGaussian()),
        figure("b", random.nextGaussian()),
        figure("c", random.nextGaussian())
      };
      // Bit for bit, not within a tolerance.
      assertEquals(recording.step(DROP, operands), silent.step(DROP, operands));
    }
    assertEquals(1_000, recording.steps().size());
    assertTrue(silent.steps().isEmpty());
    assertTrue(recording.records());
    assertFalse(silent.records());
  }

  @Test
  void aStepKeepsResultFormulaAndOperands() {
    Working working = Working.recording();
    Figure a = figure("a", 3);
    Figure b = figure("b", 4);
    Figure sum = working.step(Formula.of("s", Unit.OHM, "a + b"), a, b);
    Step step = working.steps().get(0);
    assertEquals(7, sum.value());
    assertEquals(Figure.Derived.STEP, sum.source());
    assertSame(sum, step.result());
    assertEquals(List.of(a, b), step.operands());
    assertEquals("a + b", step.formulaText());
    assertEquals("3 + 4", step.substitution());
    assertNull(step.comparator());
  }

  @Test
  void aFigureThatWasLookedUpIsAStepOfItsOwn() {
    Working working = Working.recording();
    Figure rated = figure("In", 32.5);
    assertSame(rated, working.look(rated));
    Step step = working.steps().get(0);
    assertEquals("In", step.formulaText());
    assertEquals("32.5", step.substitution());
    assertEquals(List.of(rated), step.operands());
  }

  @Test
  void whatIsNotKnownOrNotBoundedIsNotShown() {
    Working working = Working.recording();
    Formula sum = Formula.of("s", Unit.OHM, "a + b");
    Figure unknown = working.step(sum, figure("a", Double.NaN), figure("b", 1));
    working.step(sum, figure("a", Double.POSITIVE_INFINITY), figure("b", 1));
    working.look(figure("a", Double.NaN));
    working.look(figure("a", Double.NEGATIVE_INFINITY));
    assertFalse(unknown.known());
    assertTrue(working.steps().isEmpty());
  }

  @Test
  void theClosingStepHoldsTheActualAgainstItsLimitAsDemanded() {
    Step step = Step.comparing(figure("Zs", 0.7281), Comparator.AT_MOST, figure("Zmax", 0.728));
    assertEquals("Zs ≤ Zmax", step.formulaText());
    assertEquals("0.73 ≤ 0.72", step.substitution());
    Step other = Step.comparing(figure("Iz", 47), Comparator.AT_LEAST, figure("In", 32));
    assertEquals("Iz ≥ In", other.formulaText());
    assertEquals("47.00 ≥ 32.00", other.substitution());
  }

  @Test
  void ofTwoFiguresTheLesserAndTheGreaterAreTaken() {
    Figure small = figure("a", 1);
    Figure great = figure("b", 2);
    Figure unknown = Figure.unknown("c", Unit.OHM);
    assertSame(small, Figure.lesser(small, great));
    assertSame(small, Figure.lesser(great, small));
    assertSame(great, Figure.greater(small, great));
    assertSame(great, Figure.greater(great, small));
    assertSame(small, Figure.lesser(unknown, small));
    assertSame(small, Figure.lesser(small, unknown));
    assertSame(small, Figure.greater(unknown, small));
    assertSame(small, Figure.greater(small, unknown));
    assertFalse(Figure.lesser(unknown, unknown).known());
  }

  @Test
  void aPointerIsTheJsonPointerOfItsMember() {
    assertEquals("/device/ratedCurrentA", new Pointer("/device", "ratedCurrentA").text());
    assertEquals("/device", new Pointer("", "device").text());
    assertEquals("/device", new Pointer("/device", "").text());
  }
}
