package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The editions and their tables, as served. */
@QuarkusTest
class EditionsTest {
  private static final String EDITIONS = "/v1/editions";

  @Test
  void theContractListsTheEditionsThatAreHeld() {
    JsonNode listed =
        ContractDocument.contract()
            .root()
            .at("/components/schemas/Circuit/properties/edition/x-extensible-enum");
    List<String> ids = new ArrayList<>();
    listed.forEach(id -> ids.add(id.textValue()));
    assertEquals(ids, held());
  }

  @Test
  void exactlyOneEditionIsInForceAndItStandsInWhereNoneIsNamed() {
    List<String> inForce = new ArrayList<>();
    for (JsonNode edition : get(EDITIONS).path("editions")) {
      if (edition.path("inForce").booleanValue()) {
        inForce.add(edition.path("id").textValue());
      }
    }
    // engineering.md: default edition BS 7671:2018+A4:2026
    assertEquals(List.of("bs7671-2018-a4"), inForce);
    JsonNode answer = Http.post("/v1/circuit-checks", "{\"stage\": \"design\"}").json();
    assertEquals("bs7671-2018-a4", answer.at("/edition/id").textValue());
  }

  @Test
  void answersNameTheEditionAskedForWithTheDigestOfItsTables() {
    Set<String> digests = new HashSet<>();
    for (JsonNode edition : get(EDITIONS).path("editions")) {
      String body = "{\"edition\": \"" + edition.path("id").textValue() + "\"}";
      JsonNode answer = Http.post("/v1/circuit-checks", body).json();
      assertEquals(edition.path("id"), answer.at("/edition/id"));
      assertEquals(edition.path("tablesDigest"), answer.at("/edition/tablesDigest"));
      digests.add(edition.path("tablesDigest").textValue());
    }
    assertEquals(held().size(), digests.size(), "digests tell editions apart");
  }

  @Test
  void everyEditionAndEveryTableKeepsTheContract() {
    for (String id : held()) {
      JsonNode edition = valid("EditionDetail", EDITIONS + "/" + id);
      assertEquals(id, edition.path("id").textValue());
      assertFalse(edition.path("tables").isEmpty(), id);
      for (JsonNode summary : edition.path("tables")) {
        table(id, summary);
      }
    }
  }

  private static void table(String edition, JsonNode summary) {
    String name = summary.path("id").textValue();
    JsonNode table = valid("Table", EDITIONS + "/" + edition + "/tables/" + name);
    assertEquals(edition, table.path("edition").textValue());
    assertEquals(name, table.path("id").textValue());
    assertEquals(summary.path("rowCount").intValue(), table.path("rows").size(), name);
    assertEquals(summary.path("columns"), table.path("columns"), name);
    Set<String> sources = new HashSet<>();
    table.path("sources").forEach(source -> sources.add(source.path("id").textValue()));
    Set<String> cited = new HashSet<>();
    for (JsonNode row : table.path("rows")) {
      assertEquals(table.path("keys").size(), row.path("at").size(), name);
      for (JsonNode cell : row.path("cells")) {
        boolean printed = cell.path("confidence").textValue().equals("printed");
        assertEquals(printed, cell.has("seen"), () -> edition + " " + name + " " + cell);
        cell.path("seen").forEach(code -> cited.add(code.textValue()));
        assertTrue(cell.has("reference") || table.has("reference"), name);
      }
    }
    assertEquals(sources, cited, () -> name + ": the sources are those that its cells name");
  }

  @Test
  void anUnknownEditionIsNotFoundAndThoseThereAreAreListed() {
    for (String address : List.of("/bs7671-1991", "/bs7671-1991/tables/41.3")) {
      Reply reply = Http.get(EDITIONS + address);
      assertEquals(404, reply.status());
      JsonNode error = reply.json().at("/errors/0");
      assertEquals("edition", error.path("parameter").textValue());
      assertEquals(held(), texts(error.path("allowed")));
    }
  }

  @Test
  void anUnknownEditionInABodyNeverFallsBackToAnother() {
    Reply reply = Http.post("/v1/circuit-checks", "{\"edition\": \"bs7671-1991\"}");
    assertEquals(422, reply.status());
    assertEquals(
        "urn:circuit-verdicts:problem:unknown-edition", reply.json().path("type").textValue());
    assertEquals("/edition", reply.json().at("/errors/0/pointer").textValue());
    assertEquals(held(), texts(reply.json().at("/errors/0/allowed")));
  }

  @Test
  void anUnknownTableIsNotFound() {
    Reply reply = Http.get(EDITIONS + "/bs7671-2018-a4/tables/99.9");
    assertEquals(404, reply.status());
    assertEquals(List.of(), ResponseSchemas.faults("Problem", reply.text()));
  }

  /** Table 41.3 of A2 and later holds Cmin (1.37 Ω at B32), that of 2008 does not (1.44 Ω). */
  @Test
  void editionsDifferWhereTheStandardsDo() {
    assertNotEquals(
        get(EDITIONS + "/bs7671-2008/tables/41.3").path("rows"),
        get(EDITIONS + "/bs7671-2018-a2/tables/41.3").path("rows"));
  }

  private static List<String> held() {
    List<String> ids = new ArrayList<>();
    valid("EditionList", EDITIONS)
        .path("editions")
        .forEach(edition -> ids.add(edition.path("id").textValue()));
    return ids;
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(item -> texts.add(item.textValue()));
    return texts;
  }

  private static JsonNode get(String address) {
    Reply reply = Http.get(address);
    assertEquals(200, reply.status(), reply::text);
    return reply.json();
  }

  private static JsonNode valid(String schema, String address) {
    Reply reply = Http.get(address);
    assertEquals(200, reply.status(), () -> address + ": " + reply.text());
    assertEquals(List.of(), ResponseSchemas.faults(schema, reply.text()), address);
    return reply.json();
  }
}
