package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The loader reads the whole data folder, strictly, and nothing beside it. */
class EditionLoaderTest {
  private static final Path DATA = Path.of("src/main/resources/editions");
  private static final String A2 = "bs7671-2018-a2/";

  private static void refused(String path, String part, String instead, String because) {
    String whole = BrokenData.file(path);
    assertTrue(whole.contains(part), part);
    String refusal = BrokenData.refusal(path, whole.replace(part, instead));
    assertNotNull(refusal, "the broken data were accepted");
    assertTrue(refusal.contains(because), refusal);
  }

  @Test
  void theDataAsTheyAreAreAccepted() {
    assertNull(BrokenData.refusal(A2 + "41.5.yaml", BrokenData.file(A2 + "41.5.yaml")));
  }

  @Test
  void anUnknownMemberIsRefused() {
    refused(A2 + "41.5.yaml", "title:", "colour: red\ntitle:", "colour");
    refused(A2 + "41.5.yaml", "values: [167]", "values: [167], page: 4", "page");
    refused(A2 + "edition.yaml", "inForce:", "hidden: true\ninForce:", "hidden");
  }

  @Test
  void aDuplicatedMemberIsRefused() {
    refused(A2 + "41.5.yaml", "title:", "table: \"41.5\"\ntitle:", "table");
    refused("sources.yaml", "S2:", "S1: again\nS2:", "S1");
  }

  @Test
  void aSourceThatIsNotListedIsRefused() {
    refused("sources.yaml", "S49:", "S99:", "unknown source");
  }

  @Test
  void aTableUnderAnotherNameIsRefused() {
    refused(A2 + "41.5.yaml", "table: \"41.5\"", "table: \"41.6\"", "table 41.5");
  }

  @Test
  void aTableThatIsListedButNotThereIsRefused() {
    refused("index.yaml", "- \"41.5\"", "- \"41.9\"", "no data file " + A2 + "41.9.yaml");
  }

  @Test
  void exactlyOneEditionIsInForce() {
    refused(A2 + "edition.yaml", "inForce: false", "inForce: true", "exactly one edition");
    refused(
        "bs7671-2018-a4/edition.yaml", "inForce: true", "inForce: false", "exactly one edition");
    assertEquals("bs7671-2018-a4", Scenario.editions().inForce().id());
  }

  @Test
  void theIndexListsExactlyTheFilesOnDisk() throws IOException {
    JsonNode index =
        new ObjectMapper(new YAMLFactory()).readTree(DATA.resolve("index.yaml").toFile());
    Set<String> listed = new TreeSet<>();
    for (JsonNode edition : index.get("editions")) {
      String id = edition.get("edition").textValue();
      listed.add(id + "/edition.yaml");
      edition.get("tables").forEach(table -> listed.add(id + "/" + table.asText() + ".yaml"));
    }
    listed.add("index.yaml");
    listed.add("sources.yaml");
    try (Stream<Path> files = Files.walk(DATA)) {
      Set<String> there = new TreeSet<>();
      files
          .filter(Files::isRegularFile)
          .forEach(file -> there.add(DATA.relativize(file).toString().replace('\\', '/')));
      assertEquals(there, listed);
    }
  }

  @Test
  void everyPlaceWhereAValueWasSeenIsListed() {
    Set<String> used = new HashSet<>();
    for (Edition edition : Scenario.editions().all()) {
      for (Table table : edition.tables()) {
        for (Row row : table.rows()) {
          row.values().stream()
              .filter(v -> v != null)
              .forEach(v -> used.addAll(v.citation().seen()));
        }
      }
    }
    assertFalse(used.isEmpty());
    assertTrue(Scenario.editions().sources().keySet().containsAll(used));
  }

  @Test
  void theDigestIsStableAndTellsEditionsApart() {
    Set<String> digests = new HashSet<>();
    for (Edition edition : Scenario.editions().all()) {
      assertTrue(edition.digest().startsWith("sha-256:"), edition.digest());
      digests.add(edition.digest());
    }
    assertEquals(Scenario.editions().all().size(), digests.size());
    Edition edition = Scenario.editions().inForce();
    assertEquals(edition.digest(), EditionLoader.load().inForce().digest());
  }

  @Test
  void whatAnEditionDoesNotHaveIsRefusedNotGuessed() {
    Edition edition = Scenario.editions().inForce();
    assertThrows(IllegalArgumentException.class, () -> edition.table("41.9"));
    assertThrows(IllegalArgumentException.class, () -> edition.constant("voltage", "cmid"));
    assertFalse(edition.has("41.9"));
    assertTrue(edition.has("41.3"));
    assertTrue(Scenario.editions().find("bs7671-1992").isEmpty());
  }

  @Test
  void everyEditionNamesAClauseForEveryRule() {
    Set<String> rules = Scenario.editions().inForce().head().clauses().keySet();
    for (Edition edition : Scenario.editions().all()) {
      assertEquals(rules, edition.head().clauses().keySet(), edition.id());
      for (Clause clause : Clause.values()) {
        assertEquals(edition.head().standard(), edition.clause(clause).standard());
        assertNull(edition.clause(clause).confidence());
      }
    }
  }
}
