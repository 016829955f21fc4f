package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The printed loop impedances against the expression of 411.4.4: Zs·Ia ≤ Cmin·Uo, Uo 230 V. */
class LoopImpedanceTablesTest {
  private static final Edition A2 = Scenario.edition("bs7671-2018-a2");
  private static final Edition OLD = Scenario.edition("bs7671-2008");

  /** Numerator of the expression: 218.5 V with Cmin 0.95, 230 V in 2008. */
  private static double volts(Edition edition) {
    return edition.constant("voltage", "cmin").number()
        * edition.constant("voltage", "nominal-line-to-earth").number();
  }

  private static double halfLastDigit(Value value) {
    return 0.5 * Math.pow(10, -new BigDecimal(value.printed()).scale());
  }

  private static String name(Row row) {
    return row.keys().get(0).text() + " " + row.keys().get(1).shown();
  }

  private static double exact(Edition edition, Row row) {
    double upper = edition.table("magnetic-bands").at("upper", row.keys().get(0).text()).number();
    return volts(edition) / (upper * row.keys().get(1).to());
  }

  @Test
  void theNumeratorsAreThoseOfTheEditions() {
    assertEquals(218.5, volts(A2), 1e-9);
    assertEquals(230, volts(OLD), 1e-9);
  }

  @Test
  void table413OfTheEighteenthEditionIsTheRoundedExpression() {
    for (Row row : A2.table("41.3").rows()) {
      BigDecimal rounded =
          BigDecimal.valueOf(exact(A2, row))
              .setScale(9, RoundingMode.HALF_EVEN)
              .setScale(2, RoundingMode.HALF_UP);
      assertEquals(rounded, new BigDecimal(row.values().get(0).printed()), name(row));
    }
  }

  @Test
  void table413Of2008IsTheRoundedExpressionExceptForC63() {
    // Figures that end in a 5 (2.875, 0.575, 0.115) are printed rounded down. C63: 230/630 = 0.3651
    // is printed 0.36 in the copy that was read (S18).
    Set<String> otherwise = new TreeSet<>();
    for (Row row : OLD.table("41.3").rows()) {
      BigDecimal rounded =
          BigDecimal.valueOf(exact(OLD, row))
              .setScale(9, RoundingMode.HALF_EVEN)
              .setScale(2, RoundingMode.HALF_DOWN);
      if (rounded.compareTo(new BigDecimal(row.values().get(0).printed())) != 0) {
        otherwise.add(name(row));
      }
    }
    assertEquals(Set.of("C 63"), otherwise);
  }

  @Test
  void theFiguresOf2018AreThoseOf2008TimesCmin() {
    for (Row row : A2.table("41.3").rows()) {
      Value old = OLD.table("41.3").at("printed", row.keys().get(0).text(), row.keys().get(1).to());
      Value now = row.values().get(0);
      double rounding = halfLastDigit(now) + 0.95 * halfLastDigit(old);
      // C63 was printed 0.36 for 0.3651: 0.005 more.
      double more = name(row).equals("C 63") ? 0.005 : 0;
      assertEquals(0.95 * old.number(), now.number(), rounding + more + 1e-9, name(row));
    }
    assertEquals(A2.table("41.3").rows().size(), OLD.table("41.3").rows().size());
  }

  @Test
  void fuseImpedancesAreTheExpressionWithinTheRoundingOfTheirPrint() {
    // The currents of Appendix 3 are published in whole amperes. Where that rounding alone is wider
    // than the print of the impedance, the row is listed here, and held to the rounding of both.
    Set<String> byCurrent =
        Set.of(
            "BS 88-2 2/5",
            "BS 88-2 10/5",
            "BS 88-2 16/5",
            "BS 88-2 25/5",
            "BS 88-2 32/5",
            "BS 88-3 20/5",
            "BS 88-3 32/5",
            "BS 1362 3/5");
    Set<String> found = new TreeSet<>();
    int compared = 0;
    for (Row row : A2.table("fuse-operating-currents").rows()) {
      for (int i = 0; i < 4; i += 2) {
        Value impedance = row.values().get(i);
        Value current = row.values().get(i + 1);
        if (impedance == null) {
          continue;
        }
        compared++;
        double expression = volts(A2) / current.number();
        String place = name(row) + "/" + (i == 0 ? "0.4" : "5");
        if (Math.abs(impedance.number() - expression) > halfLastDigit(impedance) + 1e-9) {
          found.add(place);
        }
        double least = volts(A2) / (current.number() + halfLastDigit(current));
        double most = volts(A2) / (current.number() - halfLastDigit(current));
        assertTrue(impedance.number() >= least - halfLastDigit(impedance) - 1e-9, place);
        assertTrue(impedance.number() <= most + halfLastDigit(impedance) + 1e-9, place);
      }
    }
    assertEquals(new TreeSet<>(byCurrent), found);
    assertTrue(compared > 50, "rows compared: " + compared);
  }

  @Test
  void fuseCurrentsOf2008AreTheImpedancesRoundedUp() {
    for (Row row : OLD.table("fuse-operating-currents").rows()) {
      for (int i = 0; i < 4; i += 2) {
        BigDecimal exact = BigDecimal.valueOf(volts(OLD) / row.values().get(i).number());
        Value current = row.values().get(i + 1);
        int scale = new BigDecimal(current.printed()).scale();
        BigDecimal up =
            exact.setScale(9, RoundingMode.HALF_EVEN).setScale(scale, RoundingMode.CEILING);
        assertEquals(up, new BigDecimal(current.printed()), name(row));
      }
    }
  }

  @Test
  void fuseImpedancesOf2018AreThoseOf2008TimesCminForFusesThatDidNotChange() {
    // The 2008 rows "BS 88-2" are BS 88-2.2 and BS 88-6; Amendment 1 of 2011 brought systems E and
    // G
    // with other figures, equal only at 0.4 s for 20 and 32 A (1.77 and 1.04 Ω in both).
    Set<String> changed =
        Set.of(
            "BS 88-2 6/0.4",
            "BS 88-2 6/5",
            "BS 88-2 10/0.4",
            "BS 88-2 10/5",
            "BS 88-2 16/0.4",
            "BS 88-2 16/5",
            "BS 88-2 20/5",
            "BS 88-2 25/0.4",
            "BS 88-2 25/5",
            "BS 88-2 32/5");
    Set<String> found = new TreeSet<>();
    for (Row row : OLD.table("fuse-operating-currents").rows()) {
      for (String time : new String[] {"0.4", "5"}) {
        Table now = A2.table("fuse-operating-currents");
        double rated = row.keys().get(1).to();
        Value new18 = now.at("printed-" + time, row.keys().get(0).text(), rated);
        Value old = row.values().get(time.equals("5") ? 2 : 0);
        if (new18 == null) {
          assertTrue(name(row).startsWith("BS 1361"), name(row));
          continue;
        }
        double rounding = halfLastDigit(new18) + 0.95 * halfLastDigit(old);
        if (Math.abs(0.95 * old.number() - new18.number()) > rounding + 1e-9) {
          found.add(name(row) + "/" + time);
        }
      }
    }
    assertEquals(new TreeSet<>(changed), found);
  }

  @Test
  void fusesToBs1361KeepTheirCurrentUnderLaterEditions() {
    // Engineering basis, section 2: under later editions its Zs is 0.95 times the 2008 value, so
    // its
    // current is the same.
    for (double rated : new double[] {5, 15, 20, 30}) {
      for (String column : new String[] {"current-0.4", "current-5"}) {
        assertEquals(
            OLD.table("fuse-operating-currents").at(column, "BS 1361", rated).number(),
            A2.table("fuse-operating-currents").at(column, "BS 1361", rated).number());
      }
    }
  }

  @Test
  void table415IsFiftyVoltsOverTheResidualCurrent() {
    for (Row row : A2.table("41.5").rows()) {
      double exact = A2.constant("voltage", "touch-voltage").number() / row.keys().get(0).to();
      assertEquals(Math.round(exact), row.values().get(0).number());
    }
    assertFalse(A2.table("41.5").rows().isEmpty());
  }
}
