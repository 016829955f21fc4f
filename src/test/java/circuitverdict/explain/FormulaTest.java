package circuitverdict.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.quantity.Unit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A formula evaluates exactly what it shows, and shows exactly what it evaluated. */
class FormulaTest {

  private static Figure figure(String symbol, double value) {
    return Figure.derived(symbol, value, Unit.ONE);
  }

  private static double value(String text, Figure... operands) {
    return Formula.of("y", Unit.ONE, text).evaluate(operands);
  }

  @Test
  void theSignsMeanWhatArithmeticMeans() {
    Figure a = figure("a", 7);
    Figure b = figure("b", 2);
    Figure c = figure("c", 5);
    assertEquals(9, value("a + b", a, b));
    assertEquals(5, value("a − b", a, b));
    assertEquals(14, value("a·b", a, b));
    assertEquals(3.5, value("a/b", a, b));
    assertEquals(49, value("a²", a));
    assertEquals(Math.sqrt(7), value("√a", a));
    assertEquals(3, value("√(a + b)", a, b));
    assertEquals(2, value("min(a; b)", a, b));
    assertEquals(7, value("max(a; b)", a, b));
    assertEquals(1.75, value("a/4", a));
    assertEquals(10.5, value("a·1.5", a));
    assertEquals(7 - 2 - 5, value("a − b − c", a, b, c));
    assertEquals(7.0 / 2 / 5, value("a/b/c", a, b, c));
    assertEquals(7.0 / 2 * 5, value("a/b·c", a, b, c));
    assertEquals(7 + 2 * 5, value("a + b·c", a, b, c));
    assertEquals((7 + 2) * 5, value("(a + b)·c", a, b, c));
    assertEquals(7 * 25, value("a·c²", a, c));
    assertEquals(81, value("(a + b)²", a, b));
    assertEquals(3 + 25, value("min(a; c − b) + max(c²; b)", a, c, b));
  }

  @Test
  void aChainOfAnyLengthIsReadFromLeftToRight() {
    Figure a = figure("a", 0.7);
    Figure b = figure("b", 0.3);
    Figure c = figure("c", 11);
    assertEquals(0.7 + 0.3 - 11 + 0.7, value("a + b − c + a", a, b, c));
    assertEquals(0.7 - 0.3 + 11 - 0.7 - 0.3, value("a − b + c − a − b", a, b, c));
    assertEquals(0.7 / 0.3 * 11 / 0.7, value("a/b·c/a", a, b, c));
    assertEquals(0.7 * 0.3 / 11 * 0.7 / 0.3, value("a·b/c·a/b", a, b, c));
    assertEquals(0.7 * 0.3 * 11 * 0.7 * 0.3 / 11, value("a·b·c·a·b/c", a, b, c));
  }

  @Test
  void theFormulasOfTheTradeAgreeWithIndependentArithmetic() {
    Random random = new Random(41);
    for (int i = 0; i < 1_000; i++) {
      double zdb = random.nextDouble();
      double length = 200 * random.nextDouble();
      double r1 = 20 * random.nextDouble();
      double r2 = 20 * random.nextDouble();
      double factor = 1 + random.nextDouble();
      assertEquals(
          zdb + length * factor * (r1 + r2) / 1000,
          value(
              "Zdb + L·(r1 + r2)·Cθ/1000",
              figure("Zdb", zdb),
              figure("L", length),
              figure("r1", r1),
              figure("r2", r2),
              figure("Cθ", factor)),
          1e-12);
      double r = random.nextDouble();
      double x = random.nextDouble();
      assertEquals(Math.hypot(r, x), value("√(R² + X²)", figure("R", r), figure("X", x)), 1e-14);
    }
  }

  @Test
  void operandsStandInTheOrderOfFirstAppearanceEachOnce() {
    Formula formula = Formula.of("Ics", Unit.AMPERE, "max(ks·Icn; Ics,min) + Icn − ks");
    assertEquals(List.of("ks", "Icn", "Ics,min"), formula.operands());
    assertEquals("Ics", formula.symbol());
    assertEquals(Unit.AMPERE, formula.unit());
  }

  @Test
  void theSubstitutionPutsEachFigureInItsPlace() {
    Formula formula = Formula.of("Zs", Unit.OHM, "Zdb + L·(r1 + r2)·Cθ/1000");
    List<Figure> figures =
        List.of(
            figure("Zdb", 0.35),
            figure("L", 22),
            figure("r1", 3.08),
            figure("r2", 7.41),
            figure("Cθ", 1.2));
    assertEquals("0.35 + 22·(3.08 + 7.41)·1.2/1000", formula.substituted(figures));
  }

  @Test
  void theSubstitutionLeavesWordsAndNumbersOfTheFormulaAlone() {
    Formula formula = Formula.of("Ics", Unit.AMPERE, "max(ks·Icn; Ics,min)/1.5 + m²");
    List<Figure> figures =
        List.of(figure("ks", 0.75), figure("Icn", 10000), figure("Ics,min", 6000), figure("m", 3));
    assertEquals("max(0.75·10000; 6000)/1.5 + 3²", formula.substituted(figures));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "a +",
        "a b",
        "a·",
        "(a",
        "a)",
        "√",
        "min(a)",
        "min(a b)",
        "max(a; b",
        "2a",
        "a − ",
        "a*b",
        "a-b",
        "²",
        "a; b"
      })
  void textThatCannotBeReadIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> Formula.of("y", Unit.ONE, text));
  }

  @Test
  void tooFewAndTooManyOperandsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> value("a + b", figure("a", 1)));
    assertThrows(IllegalArgumentException.class, () -> value("a²", figure("a", 1), figure("b", 1)));
  }

  @Test
  void anOperandUnderAnotherSymbolIsCaughtInTests() {
    assertThrows(AssertionError.class, () -> value("a − b", figure("b", 1), figure("a", 2)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a + b", "a − b", "a·b", "a/b", "min(a; b)", "max(a; b)", "√(a + b)", "a² + b"})
  void whatIsNotKnownMakesTheResultUnknown(String text) {
    assertTrue(Double.isNaN(value(text, figure("a", Double.NaN), figure("b", 1))));
    assertTrue(Double.isNaN(value(text, figure("a", 1), figure("b", Double.NaN))));
  }

  /** What is written into answers as it stands must have nothing that JSON would escape. */
  @ParameterizedTest
  @ValueSource(strings = {"a\"b", "a + \"", "a\\b", "a\nb"})
  void signsThatJsonWouldEscapeAreNoFormula(String text) {
    assertThrows(IllegalArgumentException.class, () -> Formula.of("x", Unit.ONE, text), () -> text);
  }
}
