package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every table of every edition: complete, cited, with units, unambiguous and without gaps. */
class TableSweepTest {

  static Stream<Arguments> tables() {
    return Scenario.editions().all().stream()
        .flatMap(e -> e.tables().stream().map(t -> Arguments.of(e.id(), t.id())));
  }

  private static Table table(String edition, String id) {
    return Scenario.edition(edition).table(id);
  }

  @Test
  void theSweepSeesTheEditionsOfTheService() {
    List<String> ids = Scenario.editions().all().stream().map(Edition::id).toList();
    assertTrue(
        ids.containsAll(List.of("bs7671-2018-a4", "bs7671-2018-a2", "bs7671-2008", "iec60364")),
        ids.toString());
    // The data files of Amendment 2; a table that vanishes must be noticed here.
    assertTrue(Scenario.edition("bs7671-2018-a2").tables().size() >= 68);
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyValueIsANumberWithUnitCitationAndConfidence(String edition, String id) {
    Table table = table(edition, id);
    assertFalse(table.title().isBlank());
    assertFalse(table.rows().isEmpty());
    for (Row row : table.rows()) {
      assertEquals(table.columns().size(), row.values().size());
      assertEquals(table.keys().size(), row.keys().size());
      for (int i = 0; i < row.values().size(); i++) {
        Value value = row.values().get(i);
        String place = edition + " " + id + " " + row.keys() + " " + table.columns().get(i).name();
        if (value == null) {
          assertTrue(table.columns().get(i).sparse(), place);
          continue;
        }
        assertTrue(Double.isFinite(value.number()) && value.number() >= 0, place);
        assertEquals(value.number(), Double.parseDouble(value.printed()), place);
        assertNotNull(value.unit(), place);
        Citation citation = value.citation();
        assertFalse(citation.standard().isBlank(), place);
        assertFalse(citation.reference().isBlank(), place);
        assertNotNull(citation.confidence(), place);
        assertEquals(
            citation.confidence() == Confidence.PRINTED, !citation.seen().isEmpty(), place);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyColumnHoldsSomethingAndEveryRowToo(String edition, String id) {
    Table table = table(edition, id);
    for (int i = 0; i < table.columns().size(); i++) {
      int column = i;
      assertTrue(
          table.rows().stream().anyMatch(row -> row.values().get(column) != null),
          table.columns().get(i).name());
    }
    table.rows().forEach(row -> assertTrue(row.values().stream().anyMatch(v -> v != null)));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void columnNamesAreDistinct(String edition, String id) {
    Set<String> names = new HashSet<>();
    table(edition, id).columns().forEach(column -> assertTrue(names.add(column.name())));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void bandsFollowOneAnotherWithoutGapOrOverlap(String edition, String id) {
    Table table = table(edition, id);
    for (int i = 0; i < table.keys().size(); i++) {
      if (table.keys().get(i).match() != KeyColumn.Match.BAND) {
        continue;
      }
      Map<List<Row.Key>, List<Row.Key>> groups = new HashMap<>();
      for (Row row : table.rows()) {
        List<Row.Key> others = new ArrayList<>(row.keys());
        Row.Key band = others.remove(i);
        groups.computeIfAbsent(others, k -> new ArrayList<>()).add(band);
      }
      for (List<Row.Key> bands : groups.values()) {
        bands.sort(Comparator.comparingDouble(Row.Key::to));
        for (int j = 0; j < bands.size(); j++) {
          assertTrue(bands.get(j).above() < bands.get(j).to());
          if (j > 0) {
            assertEquals(bands.get(j - 1).to(), bands.get(j).above(), edition + " " + id);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("tables")
  void exactlyOneRowAnswersEachKeyOfTheTable(String edition, String id) {
    Table table = table(edition, id);
    for (Row asked : table.rows()) {
      long answers = table.rows().stream().filter(row -> covers(row, asked)).count();
      assertEquals(1, answers, edition + " " + id + " " + asked.keys());
    }
  }

  private static boolean covers(Row row, Row asked) {
    for (int i = 0; i < row.keys().size(); i++) {
      Row.Key key = asked.keys().get(i);
      boolean one =
          key.text() != null
              ? key.text().equals(row.keys().get(i).text())
              : row.keys().get(i).covers(key.to());
      if (!one) {
        return false;
      }
    }
    return true;
  }

  @Test
  void amendmentFourMarksEveryValueAsCarriedOverFromAmendmentTwo() {
    Edition a2 = Scenario.edition("bs7671-2018-a2");
    Edition a4 = Scenario.edition("bs7671-2018-a4");
    assertEquals(
        a2.tables().stream().map(Table::id).toList(), a4.tables().stream().map(Table::id).toList());
    for (Table table : a4.tables()) {
      for (int i = 0; i < table.rows().size(); i++) {
        assertCarriedOver(a2.table(table.id()).rows().get(i), table.rows().get(i), table.id());
      }
    }
  }

  private static void assertCarriedOver(Row from, Row to, String id) {
    assertEquals(from.keys(), to.keys());
    for (int i = 0; i < to.values().size(); i++) {
      Value original = from.values().get(i);
      Value value = to.values().get(i);
      if (original == null) {
        assertNull(value);
        continue;
      }
      assertNull(original.citation().carriedOverFrom(), id);
      assertEquals("bs7671-2018-a2", value.citation().carriedOverFrom(), id);
      assertEquals(original.number(), value.number());
      assertEquals(original.printed(), value.printed());
      assertEquals(original.unit(), value.unit());
      assertEquals(original.citation().standard(), value.citation().standard());
      assertEquals(original.citation().seen(), value.citation().seen());
    }
  }

  @Test
  void theEditionOf2008MarksWhatItCarriesOverAndNothingOfItsOwn() {
    Set<String> own =
        Set.of(
            "41.3",
            "additional-protection",
            "disconnection-scope",
            "fuse-operating-currents",
            "voltage",
            "voltage-factors");
    Edition a2 = Scenario.edition("bs7671-2018-a2");
    Edition old = Scenario.edition("bs7671-2008");
    for (Table table : old.tables()) {
      for (int i = 0; i < table.rows().size(); i++) {
        if (own.contains(table.id())) {
          table.rows().get(i).values().stream()
              .filter(value -> value != null)
              .forEach(value -> assertNull(value.citation().carriedOverFrom(), table.id()));
        } else {
          assertCarriedOver(a2.table(table.id()).rows().get(i), table.rows().get(i), table.id());
        }
      }
    }
  }

  @Test
  void theEditionOf2008HasEveryTableThatItsRulesNeed() {
    // The edition in force and that of 2008 run through the same checks.
    Set<String> missing = new HashSet<>();
    for (Table table : Scenario.edition("bs7671-2018-a2").tables()) {
      if (!Scenario.edition("bs7671-2008").has(table.id())) {
        missing.add(table.id());
      }
    }
    assertEquals(Set.of(), missing);
  }
}
