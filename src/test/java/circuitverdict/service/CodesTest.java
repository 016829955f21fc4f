package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The catalogue at /v1/codes holds every code that any answer of these tests uses. */
@QuarkusTest
class CodesTest {
  /** Members of answers and the part of the catalogue that their values stand in. */
  private static final Map<String, String> KINDS =
      Map.of(
          "check", "checks",
          "governedBy", "checks",
          "mends", "checks",
          "verdict", "verdicts",
          "reason", "reasons",
          "code", "notes",
          "kind", "marks");

  @Test
  void everyCodeOfEveryAnswerIsInTheCatalogue() {
    Map<String, Set<String>> used = new TreeMap<>();
    List<Call> calls = new ArrayList<>(Calls.all());
    calls.addAll(Variations.ofOven());
    for (Call call : calls) {
      if (!call.operation().equals("listCodes")) {
        collect(Http.send(call).json(), "notes", used);
      }
    }
    for (BadRequest bad : BadRequests.all()) {
      JsonNode problem = bad.send().get().json();
      collect(problem, "errors", used);
      String type = problem.path("type").textValue();
      used.computeIfAbsent("problems", kind -> new TreeSet<>())
          .add(type.substring(type.lastIndexOf(':') + 1));
    }
    assertEquals(
        Set.of("checks", "verdicts", "reasons", "notes", "errors", "problems", "marks"),
        used.keySet());
    used.forEach(
        (kind, codes) -> {
          Set<String> unknown = new TreeSet<>(codes);
          unknown.removeAll(codes(kind));
          assertEquals(Set.of(), unknown, kind);
        });
  }

  @Test
  void everyCodeStandsOncePerKindAndHasAMeaning() {
    JsonNode catalogue = catalogue();
    for (String kind :
        List.of(
            "checks", "verdicts", "reasons", "notes", "errors", "problems", "marks", "symbols")) {
      Set<String> seen = new HashSet<>();
      for (JsonNode code : catalogue.path(kind)) {
        assertTrue(seen.add(code.path("code").textValue()), () -> kind + ": " + code);
        assertFalse(code.path("meaning").asText().isBlank(), () -> kind + ": " + code);
      }
      assertFalse(seen.isEmpty(), kind);
    }
  }

  @Test
  void theListedValuesAreThoseOfTheContract() {
    Map<String, List<String>> published = new TreeMap<>();
    for (JsonNode list : catalogue().path("values")) {
      published.put(list.path("member").textValue(), texts(list.path("values")));
    }
    assertEquals(ofContract(), published);
  }

  @Test
  void theVerdictsAreTheFourOfTheContract() {
    JsonNode verdict =
        ContractDocument.contract().root().at("/components/schemas/Answer/properties/verdict/enum");
    assertEquals(new TreeSet<>(texts(verdict)), codes("verdicts"));
  }

  @Test
  void theCatalogueKeepsTheContract() {
    Reply reply = Http.get("/v1/codes");
    assertEquals(List.of(), ResponseSchemas.faults("CodeCatalogue", reply.text()));
  }

  private static Map<String, List<String>> ofContract() {
    Map<String, List<String>> lists = new TreeMap<>();
    JsonNode schemas = ContractDocument.contract().root().at("/components/schemas");
    for (Map.Entry<String, JsonNode> schema : schemas.properties()) {
      for (Map.Entry<String, JsonNode> member : schema.getValue().path("properties").properties()) {
        JsonNode value = member.getValue();
        JsonNode item = value.has("items") ? value.path("items") : value;
        JsonNode list = item.has("enum") ? item.path("enum") : item.path("x-extensible-enum");
        if (!list.isMissingNode()) {
          lists.put(schema.getKey() + "." + member.getKey(), texts(list));
        }
      }
    }
    return lists;
  }

  /** {@code codes} names the kind of a bare "code": of notes in answers, of errors in problems. */
  private static void collect(JsonNode node, String codes, Map<String, Set<String>> used) {
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      String kind = member.getKey().equals("code") ? codes : KINDS.get(member.getKey());
      if (kind != null) {
        JsonNode value = member.getValue();
        List<String> found = value.isArray() ? texts(value) : List.of(value.textValue());
        used.computeIfAbsent(kind, key -> new TreeSet<>()).addAll(found);
      }
    }
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      collect(member.getValue(), member.getKey().equals("problem") ? "errors" : codes, used);
    }
    if (node.isArray()) {
      node.forEach(child -> collect(child, codes, used));
    }
  }

  private static Set<String> codes(String kind) {
    Set<String> codes = new TreeSet<>();
    catalogue().path(kind).forEach(code -> codes.add(code.path("code").textValue()));
    return codes;
  }

  private static JsonNode catalogue() {
    return Http.get("/v1/codes").json();
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(item -> texts.add(item.textValue()));
    return texts;
  }
}
