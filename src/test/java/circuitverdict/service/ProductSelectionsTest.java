package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which of the caller's own products may protect a circuit, asked over HTTP. */
@QuarkusTest
class ProductSelectionsTest {
  private static final String PATH = "/v1/device-selections";
  private static final String FACE =
      "'breakingCapacityA': 6000, 'energyClass': 3, 'poles': 1, 'standard': 'IEC 60898-1'";
  private static final String B32 = breaker("b32", "B", 32, "");
  private static final String C32 = breaker("c32", "C", 32, "");
  private static final String B40 = breaker("b40", "B", 40, "");
  private static final String B20 = breaker("b20", "B", 20, "");

  private static String breaker(String id, String letter, int ampere, String more) {
    return "{'id': '%s', 'characteristic': '%s', 'ratedCurrentA': %d, %s%s}"
        .formatted(id, letter, ampere, FACE, more);
  }

  private static String products(String... products) {
    return "'products': [" + String.join(", ", products) + "]";
  }

  private static JsonNode body(String... patches) {
    JsonNode body = Variations.tree(Calls.ofContract("selectDevices", "complies").body());
    for (String patch : patches) {
      String text = patch.startsWith("{") ? patch : "{" + patch + "}";
      body = Variations.patched(body, Variations.tree(text.replace('\'', '"')));
    }
    ((ObjectNode) body).remove("limit");
    return body;
  }

  private static JsonNode ask(String... patches) {
    return Http.post(PATH, body(patches).toString()).json();
  }

  private static List<String> ids(JsonNode answer, String list) {
    List<String> ids = new ArrayList<>();
    answer.path(list).forEach(each -> ids.add(each.at("/device/id").textValue()));
    return ids;
  }

  /** 26.1 A of an oven in 6 mm²: 20 A does not carry it. */
  @Test
  void productsAreSortedByWhatTheChecksSay() {
    JsonNode answer = ask(products(B40, B20, C32, B32));
    assertEquals(List.of("b32", "c32", "b40"), ids(answer, "selected"));
    assertEquals(List.of("b20"), ids(answer, "rejected"));
    assertEquals("/products/3", answer.at("/selected/0/pointer").textValue());
    assertEquals(1, answer.at("/selected/0/rank").intValue());
    assertEquals(3, answer.path("selectedCount").intValue());
    assertEquals("overload-protection", answer.at("/rejected/0/decidedBy/check").textValue());
    assertEquals("complies", answer.path("verdict").textValue());
    assertTrue(answer.path("summary").textValue().startsWith("Fit b32 (B32, 6000 A); 3 of the 4"));
  }

  /** Whatever is selected complies as the device of the circuit, and what is rejected does not. */
  @Test
  void theChecksSayTheSameOfEach() {
    JsonNode request = body(products(B40, B20, C32, B32, breaker("d", "D", 32, "")));
    JsonNode answer = Http.post(PATH, request.toString()).json();
    int seen = 0;
    for (String list : List.of("selected", "undetermined", "rejected")) {
      for (JsonNode candidate : answer.path(list)) {
        ObjectNode circuit = request.deepCopy();
        circuit.remove("products");
        circuit.set("device", candidate.path("device"));
        JsonNode checked = Http.post("/v1/circuit-checks", circuit.toString()).json();
        assertEquals(candidate.path("verdict"), checked.path("verdict"), candidate::toString);
        seen++;
      }
    }
    assertEquals(5, seen);
  }

  @Test
  void marksAndFeaturesAreRead() {
    String marked = "{'id': 'm', 'poles': 1, 'markings': ['B32', '6000', '3', 'BS EN 60898-1']}";
    String classified =
        "{'id': 'f', 'standard': 'IEC 60898-1', 'breakingCapacityA': 6000, 'energyClass': 3,"
            + " 'features': {'class': 'EC000042', 'values': [{'feature': 'EF000227', 'value': '32'},"
            + " {'feature': 'EF000889', 'value': 'B'}, {'feature': 'EF008618', 'value': '1'},"
            + " {'feature': 'EF001000', 'value': '7'}]}}";
    JsonNode answer = ask(products(marked, classified));
    assertEquals(List.of("m", "f"), ids(answer, "selected"));
    JsonNode first = answer.at("/selected/0/device");
    assertFalse(first.has("markings"));
    assertEquals(32, first.path("ratedCurrentA").intValue());
    List<String> remarks = new ArrayList<>();
    answer.at("/selected/1/remarks").forEach(each -> remarks.add(each.path("code").textValue()));
    assertEquals(
        List.of("read-from-feature", "read-from-feature", "read-from-feature", "feature-not-read"),
        remarks);
    assertEquals(
        "/products/1/features/values/3/feature",
        answer.at("/selected/1/remarks/3/pointer").textValue());
  }

  /** Each of what every check needs of a breaker is named where it is missing, and never passes. */
  @Test
  void anIncompleteProductSaysWhatIsMissing() {
    for (String member : List.of("standard", "ratedCurrentA", "characteristic")) {
      ObjectNode request = (ObjectNode) body(products(B32));
      ((ObjectNode) request.at("/products/0")).remove(member);
      JsonNode answer = Http.post(PATH, request.toString()).json();
      assertEquals(0, answer.path("selectedCount").intValue(), member);
      assertEquals(1, answer.path("undeterminedCount").intValue(), member);
      assertEquals("not-determined", answer.path("verdict").textValue());
      List<String> missing = new ArrayList<>();
      answer
          .at("/undetermined/0/missing")
          .forEach(each -> missing.add(each.path("pointer").textValue()));
      assertTrue(missing.contains("/device/" + member), missing::toString);
    }
  }

  /** All that lacks at once, not only what the first check needs. */
  @Test
  void allThatLacksIsNamedTogether() {
    JsonNode answer =
        ask(
            products(
                "{'standard': 'IEC 60898-1', 'ratedCurrentA': 32, 'characteristic': 'B', 'poles': 1}"));
    List<String> missing = new ArrayList<>();
    answer.at("/undetermined/0/missing").forEach(each -> missing.add(each.toString()));
    assertTrue(missing.toString().contains("/device/breakingCapacityA"), missing::toString);
    assertTrue(missing.toString().contains("/device/letThrough"), missing::toString);
  }

  /** They break residual currents only: no product of the kind is the device of a circuit. */
  @Test
  void aResidualDeviceAloneIsNeverSelected() {
    String rccb =
        "{'standard': 'IEC 61008-1', 'ratedCurrentA': 40, 'poles': 2, 'conditionalCapacityA': 10000,"
            + " 'residual': {'operatingCurrentA': 0.03, 'type': 'A', 'delay': 'general'}}";
    for (String other : List.of(rccb, "{'standard': 'IEC 60947-3'}", "{'id': 'nothing'}")) {
      assertEquals(0, ask(products(other)).path("selectedCount").intValue(), other);
    }
  }

  /** What one source has struck out another does not bring back: the face says C, the class B. */
  @Test
  void noFeatureBringsBackWhatAMarkContradicts() {
    String told =
        "'features': {'class': 'EC000042', 'values': [{'feature': 'EF000889', 'value': 'B'},"
            + " {'feature': 'EF000227', 'value': '32'}]}";
    String impedance = "'supply': {'loopImpedanceOhm': 0.5}";
    assertEquals(List.of("b32"), ids(ask(products(B32), impedance), "selected"));
    for (String marks : List.of("'C32'", "'B32', 'C32'", "'B40'")) {
      String product = breaker("x", "B", 32, ", 'markings': [" + marks + "], " + told);
      assertEquals(List.of(), ids(ask(products(product), impedance), "selected"), marks);
    }
  }

  @Test
  void theCallersOrderDecidesWhatTheRulesLeaveEqual() {
    String dear = breaker("dear", "B", 32, "");
    String cheap = breaker("cheap", "B", 32, "");
    assertEquals(List.of("cheap", "dear"), ids(ask(products(cheap, dear)), "selected"));
    assertEquals(List.of("dear", "cheap"), ids(ask(products(dear, cheap)), "selected"));
    String given = "'preferences': {'order': ['given']}";
    assertEquals(
        List.of("b40", "c32", "b32"), ids(ask(products(B40, C32, B32), given), "selected"));
    String capacity = "'preferences': {'order': ['breaking-capacity', 'given']}";
    String strong = breaker("strong", "B", 32, "").replace("6000", "10000");
    assertEquals(
        List.of("b40", "b32", "strong"),
        ids(ask(products(strong, B40, B32), capacity), "selected"));
  }

  /** What its maker declares lets one of two open alone: preferred, or asked for. */
  @Test
  void selectivityIsPreferredOrRequired() {
    String upstream =
        "'upstreamDevice': {'id': 'main', 'standard': 'IEC 60898-1', 'characteristic': 'C',"
            + " 'ratedCurrentA': 63, 'breakingCapacityA': 10000}";
    String alone =
        breaker(
            "alone", "C", 32, ", 'selectivity': [{'upstreamId': 'main', 'limitCurrentA': 5000}]");
    JsonNode preferred = ask(products(B32, C32, alone), upstream);
    assertEquals(List.of("b32", "alone", "c32"), ids(preferred, "selected"));
    String first = "'preferences': {'order': ['selectivity']}";
    JsonNode ordered = ask(products(B32, C32, alone), upstream, first);
    assertEquals("alone", ids(ordered, "selected").get(0));
    String required = "'requirements': {'selectivity': 'required'}";
    JsonNode asked = ask(products(B32, C32, alone), upstream, required);
    assertEquals(List.of("alone"), ids(asked, "selected"));
    assertEquals("selectivity", asked.at("/undetermined/0/decidedBy/check").textValue());
  }

  /** A change of the circuit around a product that fails lets it pass; none asks for another. */
  @Test
  void remediesLetAProductPass() {
    String small = "'cable': {'lineCsaMm2': 2.5, 'protectiveCsaMm2': 1.5, 'lengthM': 70}";
    JsonNode failing = body(products(B32), small);
    JsonNode answer = Http.post(PATH, failing.toString()).json();
    assertEquals("does-not-comply", answer.path("verdict").textValue());
    assertFalse(answer.path("remedies").isEmpty());
    for (JsonNode remedy : answer.path("remedies")) {
      assertFalse(remedy.path("change").has("device"), remedy::toString);
      JsonNode changed = Variations.patched(failing, remedy.path("change"));
      JsonNode after = Http.post(PATH, changed.toString()).json();
      assertEquals("complies", after.path("verdict").textValue(), remedy::toString);
      assertTrue(remedy.path("summary").textValue().startsWith("With b32 (B32, 6000 A): "));
    }
  }

  @Test
  void fiveHundredProductsAreJudgedAndNoMore() {
    ObjectNode request = (ObjectNode) body("'limit': 500");
    request.put("limit", 500);
    ArrayNode products = request.putArray("products");
    for (int i = 0; i < 500; i++) {
      products.add(Variations.tree(breaker("p" + i, "B", 32, "").replace('\'', '"')));
    }
    JsonNode answer = Http.post(PATH, request.toString()).json();
    assertEquals(500, answer.path("selectedCount").intValue());
    assertEquals("p499", answer.at("/selected/499/device/id").textValue());
    products.add(products.get(0));
    assertEquals(422, Http.post(PATH, request.toString()).status());
    products.removeAll();
    assertEquals(422, Http.post(PATH, request.toString()).status());
  }

  /** A product that cannot be is refused where it stands. */
  @Test
  void aContradictoryProductIsRefusedAtItsPlace() {
    String wrong = breaker("w", "B", 32, ", 'serviceBreakingCapacityA': 7000");
    JsonNode problem = Http.post(PATH, body(products(B32, wrong)).toString()).json();
    assertEquals(422, problem.path("status").intValue());
    assertEquals(
        "/products/1/serviceBreakingCapacityA", problem.at("/errors/0/pointer").textValue());
  }

  /** What is not used of a product stands with it. */
  @Test
  void unusedMembersAreToldWithTheProduct() {
    String more = ", 'settings': {'longTimeA': 20}, 'gtin': '6291041500214'";
    JsonNode answer = ask(products(breaker("x", "B", 32, more)));
    List<String> told = new ArrayList<>();
    for (JsonNode remark : answer.at("/selected/0/remarks")) {
      told.add(remark.path("code").textValue() + " " + remark.path("pointer").textValue());
    }
    assertEquals(
        List.of("gtin-check-digit /products/0/gtin", "member-not-used /products/0/settings"), told);
  }
}
