package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rating factors and energy limits go the way that physics and the standards go. */
class FactorTablesTest {
  private static final Edition A2 = Scenario.edition("bs7671-2018-a2");

  @ParameterizedTest
  @ValueSource(strings = {"4B1", "4B2", "4B3", "4C2", "4C3", "52.2"})
  void factorsFallWithTemperatureResistivityNumberAndLength(String id) {
    Table table = A2.table(id);
    for (int column = 0; column < table.columns().size(); column++) {
      int index = column;
      List<Value> values =
          table.rows().stream().map(r -> r.values().get(index)).filter(Objects::nonNull).toList();
      assertTrue(values.size() > 1);
      for (int i = 1; i < values.size(); i++) {
        double fall = values.get(i - 1).number() - values.get(i).number();
        // Numbers of circuits may share a factor, temperatures never do.
        assertTrue(
            id.startsWith("4C") ? fall >= 0 : fall > 0, id + " " + table.columns().get(index));
      }
    }
  }

  @Test
  void groupingFactorsFallWithTheNumberOfCircuits() {
    List<Row> rows = A2.table("4C1").rows();
    for (int i = 1; i < rows.size(); i++) {
      Row before = rows.get(i - 1);
      Row here = rows.get(i);
      if (before.keys().get(0).equals(here.keys().get(0))) {
        assertTrue(here.keys().get(1).to() > before.keys().get(1).to());
        assertTrue(here.values().get(0).number() <= before.values().get(0).number());
      } else {
        assertEquals(1, here.values().get(0).number(), "a circuit alone");
      }
    }
  }

  @Test
  void bunchedIsTheLeastFavourableArrangement() {
    for (Row row : A2.table("4C1").rows()) {
      double number = row.keys().get(1).to();
      assertTrue(
          A2.table("4C1").at("factor", "bunched", number).number() <= row.values().get(0).number());
    }
  }

  @Test
  void theReferenceConditionsAreThoseWithTheFactorOne() {
    for (Value value : row("4B1", A2.constant("temperature", "reference-ambient-air").number())) {
      assertEquals(1, value.number());
    }
    for (Value value :
        row("4B2", A2.constant("temperature", "reference-ambient-ground").number())) {
      assertEquals(1, value.number());
    }
    for (Value value :
        row("4B3", A2.constant("temperature", "reference-soil-resistivity").number())) {
      assertEquals(1, value.number());
    }
  }

  private static List<Value> row(String id, double key) {
    return A2.table(id).rows().stream()
        .filter(row -> row.keys().get(0).to() == key)
        .findFirst()
        .orElseThrow()
        .values();
  }

  @Test
  void ambientFactorsFollowTheRootOfTheTemperatureRise() {
    // Ca = √((tp − ta)/(tp − 30)), as all tables of Appendix 4 are computed: within their rounding.
    for (Row row : A2.table("4B1").rows()) {
      double ambient = row.keys().get(0).to();
      for (int i = 0; i < 2; i++) {
        double operating = i == 0 ? 70 : 90;
        Value value = row.values().get(i);
        if (value != null && ambient >= 30) {
          double physics = Math.sqrt((operating - ambient) / (operating - 30));
          assertEquals(physics, value.number(), 0.006, row.keys().toString());
        }
      }
    }
  }

  @Test
  void energyLimitsRiseWithCapacityAndRatingAndFallWithTheClass() {
    Table limits = A2.table("energy-limits");
    double[] capacities = {3000, 4500, 6000, 10000};
    for (String type : new String[] {"B", "C"}) {
      for (double rated : new double[] {16, 32}) {
        for (int i = 0; i < capacities.length; i++) {
          double two = limits.at(type, rated, capacities[i], 2).number();
          double three = limits.at(type, rated, capacities[i], 3).number();
          assertTrue(three < two, type + rated + " " + capacities[i]);
          for (int energyClass = 2; energyClass <= 3; energyClass++) {
            double here = limits.at(type, rated, capacities[i], energyClass).number();
            if (i > 0) {
              assertTrue(here > limits.at(type, rated, capacities[i - 1], energyClass).number());
            }
            assertTrue(
                limits.at(type, 16, capacities[i], energyClass).number()
                    < limits.at(type, 32, capacities[i], energyClass).number());
            assertTrue(
                limits.at("B", rated, capacities[i], energyClass).number()
                    < limits.at("C", rated, capacities[i], energyClass).number());
          }
        }
      }
    }
    // Annex ZA as read ends at 32 A: no number is made up for 40 A.
    assertNull(limits.at("B", 40, 6000, 3));
    assertEquals(16, limits.rows().size());
  }

  @Test
  void theGuidanceAsksNoLessForMoreCurrentAndForTypeC() {
    Table guidance = A2.table("energy-guidance");
    for (double rated : new double[] {16, 32, 40}) {
      for (String type : new String[] {"B", "C"}) {
        assertTrue(
            guidance.at(type, rated, 6000).number() >= guidance.at(type, rated, 3000).number());
      }
      assertTrue(guidance.at("C", rated, 3000).number() >= guidance.at("B", rated, 3000).number());
    }
    assertNull(guidance.at("B", 50, 3000));
    assertNull(guidance.at("B", 32, 6001));
  }

  @Test
  void disconnectionTimesFallWithVoltageAndAreShorterInTt() {
    Table times = A2.table("41.1");
    double[] volts = {120, 230, 400, 500};
    for (int i = 0; i < volts.length; i++) {
      assertTrue(times.at("ac", "TT", volts[i]).number() < times.at("ac", "TN", volts[i]).number());
      if (i > 0) {
        for (String system : new String[] {"TN", "TT"}) {
          assertTrue(
              times.at("ac", system, volts[i]).number()
                  < times.at("ac", system, volts[i - 1]).number());
        }
      }
    }
    // 230 V: 0.4 s and 0.2 s, Table 41.1.
    assertEquals(0.4, times.at("ac", "TN", 230).number());
    assertEquals(0.2, times.at("ac", "TT", 230).number());
  }
}
