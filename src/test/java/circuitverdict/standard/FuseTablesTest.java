package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The structure of the gG fuse tables: selectivity of the ratio 1:1.6 is built into them. */
class FuseTablesTest {
  private static final Edition A2 = Scenario.edition("bs7671-2018-a2");

  @ParameterizedTest
  @CsvSource({
    // table, least of a rating, greatest of the rating two steps lower, ratings that deviate
    "fuse-gates, least-0.1, greatest-0.1, ''",
    "fuse-selectivity-points, least-current, greatest-current, ''",
    "fuse-selectivity-points, least-energy, greatest-energy, ''",
    // 1000 and 1250 A deviate slightly, as the reference data say.
    "fuse-pre-arcing, least, greatest, '1000 1250'"
  })
  void theLeastOfARatingIsTheGreatestOfTheRatingTwoStepsLower(
      String id, String least, String greatest, String deviating) {
    Table table = A2.table(id);
    List<Row> rows = table.rows();
    Set<String> others = new TreeSet<>();
    for (int i = 2; i < rows.size(); i++) {
      double rated = rows.get(i).keys().get(0).to();
      double lower = rows.get(i - 2).keys().get(0).to();
      if (table.at(least, rated).number() != table.at(greatest, lower).number()) {
        others.add(rows.get(i).keys().get(0).shown());
        assertEquals(1, table.at(least, rated).number() / table.at(greatest, lower).number(), 0.05);
      }
    }
    assertEquals(deviating, String.join(" ", others));
    assertEquals(20, rows.size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"fuse-gates", "fuse-gates-small", "fuse-pre-arcing", "fuse-selectivity-points"})
  void everyColumnRisesWithTheRatedCurrent(String id) {
    Table table = A2.table(id);
    for (int column = 0; column < table.columns().size(); column++) {
      for (int i = 1; i < table.rows().size(); i++) {
        double before = table.rows().get(i - 1).values().get(column).number();
        double here = table.rows().get(i).values().get(column).number();
        assertTrue(here > before, id + " " + table.rows().get(i).keys());
      }
    }
  }

  @Test
  void aGateIsOpen() {
    for (Row row : A2.table("fuse-gates").rows()) {
      assertTrue(row.values().get(0).number() < row.values().get(1).number());
      assertTrue(row.values().get(2).number() < row.values().get(3).number());
      // What surely operates within 0.1 s is more than what surely operates within 5 s.
      assertTrue(row.values().get(1).number() < row.values().get(3).number());
    }
    for (Row row : A2.table("fuse-pre-arcing").rows()) {
      assertTrue(row.values().get(0).number() < row.values().get(1).number());
    }
    for (Row row : A2.table("fuse-selectivity-points").rows()) {
      assertTrue(row.values().get(0).number() < row.values().get(2).number());
      assertTrue(row.values().get(1).number() < row.values().get(3).number());
    }
  }

  @Test
  void aShorterTimeWantsMoreCurrentAndLessImpedance() {
    for (String id : new String[] {"bs7671-2018-a2", "bs7671-2008"}) {
      for (Row row : Scenario.edition(id).table("fuse-operating-currents").rows()) {
        List<Value> v = row.values();
        if (v.get(1) != null) {
          assertTrue(v.get(1).number() > v.get(3).number(), row.keys().toString());
        }
        if (v.get(0) != null) {
          assertTrue(v.get(0).number() < v.get(2).number(), row.keys().toString());
        }
      }
    }
  }

  @Test
  void operatingCurrentsOfAFuseRiseWithItsRating() {
    for (String id : new String[] {"bs7671-2018-a2", "bs7671-2008"}) {
      List<Row> rows = Scenario.edition(id).table("fuse-operating-currents").rows();
      for (int i = 1; i < rows.size(); i++) {
        Row before = rows.get(i - 1);
        Row here = rows.get(i);
        if (before.keys().get(0).equals(here.keys().get(0))) {
          assertTrue(here.keys().get(1).to() > before.keys().get(1).to());
          for (int column = 1; column < 4; column += 2) {
            Value now = here.values().get(column);
            if (now != null) {
              assertTrue(
                  now.number() > before.values().get(column).number(), here.keys().toString());
            }
          }
        }
      }
    }
  }

  @Test
  void theGatesAdmitTheFusesOfTheWiringRules() {
    // BS 88-2 fuses operate at lower currents than the generic gate of their rating (tables 6.2).
    for (Row row : A2.table("fuse-gates").rows()) {
      double rated = row.keys().get(0).to();
      Value rules = A2.table("fuse-operating-currents").at("current-5", "BS 88-2", rated);
      if (rules != null) {
        assertTrue(rules.number() <= row.values().get(1).number(), row.keys().toString());
      }
    }
  }
}
