package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.ContractDocument.Operation;
import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The headers of contract.md, "Style": entity tags, preconditions, caching, preferences. */
@QuarkusTest
class HeadersTest {

  /** One call of each operation is enough: the headers do not hang on the circuit. */
  static List<Call> oneOfEach() {
    return ContractDocument.contract().operations().stream()
        .map(
            operation ->
                Calls.ofContract().stream()
                    .filter(call -> call.operation().equals(operation.id()))
                    .findFirst()
                    .orElseThrow())
        .toList();
  }

  static List<Call> gets() {
    return Calls.all().stream().filter(call -> !call.isPost()).toList();
  }

  static List<Call> posts() {
    return oneOfEach().stream().filter(Call::isPost).toList();
  }

  static List<Call> withDepth() {
    return oneOfEach().stream().filter(call -> declares(call, "Preference-Applied")).toList();
  }

  @ParameterizedTest
  @MethodSource("oneOfEach")
  void everyDeclaredHeaderIsSentInItsForm(Call call) {
    Operation operation = ContractDocument.contract().operation(call.operation());
    Reply reply = Http.send(call, "Prefer", "return=minimal", "X-Correlation-ID", "quote-2417");
    JsonNode declared = ContractDocument.contract().response(operation, 200).path("headers");
    for (Map.Entry<String, JsonNode> entry : declared.properties()) {
      String sent = reply.header(entry.getKey());
      JsonNode schema = ContractDocument.contract().resolve(entry.getValue()).path("schema");
      assertTrue(sent != null, () -> call + " sends no " + entry.getKey());
      assertTrue(sent.length() <= schema.path("maxLength").asInt(), sent);
      if (schema.has("pattern")) {
        assertTrue(sent.matches(schema.path("pattern").asText()), sent);
      }
    }
    assertEquals("Prefer, Accept, Accept-Language", reply.header("Vary"));
    assertEquals("en", reply.header("Content-Language"));
    assertEquals(call.isPost(), reply.header("Cache-Control") == null, call::toString);
  }

  @ParameterizedTest
  @MethodSource("oneOfEach")
  void anotherMethodIsToldWhichThereAre(Call call) {
    Operation operation = ContractDocument.contract().operation(call.operation());
    Reply reply = Http.send("DELETE", call.address(), BodyPublishers.noBody());
    JsonNode headers = ContractDocument.contract().response(operation, 405).path("headers");
    JsonNode allow = ContractDocument.contract().resolve(headers.path("Allow"));
    assertTrue(reply.header("Allow").matches(allow.at("/schema/pattern").asText()));
    assertTrue(reply.header("Allow").contains(operation.method()), reply.header("Allow"));
  }

  @ParameterizedTest
  @MethodSource("oneOfEach")
  void theEntityTagIsStrongAndFollowsTheContentAlone(Call call) {
    Reply first = Http.send(call);
    Reply again =
        Http.send(call, "X-Correlation-ID", "job-7", "Accept-Language", "de", "Accept", "*/*");
    assertTrue(first.header("ETag").matches("\"[0-9a-f]{32}\""), first.header("ETag"));
    assertEquals(first.header("ETag"), again.header("ETag"));
    assertArrayEquals(first.bytes(), again.bytes());
  }

  @ParameterizedTest
  @MethodSource("withDepth")
  void anotherDepthIsAnotherEntityTag(Call call) {
    Reply full = Http.send(call);
    Reply minimal = Http.send(call, "Prefer", "return=minimal");
    Reply representation = Http.send(call, "Prefer", "return=representation");
    assertNotEquals(full.header("ETag"), minimal.header("ETag"));
    assertEquals(full.header("ETag"), representation.header("ETag"));
    assertNull(full.header("Preference-Applied"));
    assertEquals("return=minimal", minimal.header("Preference-Applied"));
    assertEquals("return=representation", representation.header("Preference-Applied"));
    assertTrue(minimal.bytes().length < full.bytes().length);
  }

  @Test
  void equalAnswersHaveEqualEntityTagsHoweverTheyWereAsked() {
    Call call = Calls.ofContract("checkCircuit", "complies");
    String spaced = call.body().replace(",", " ,\n ").replace("\":", "\" : ");
    Call same = new Call(call.operation(), "spaced", "POST", call.address(), spaced);
    assertEquals(Http.send(call).header("ETag"), Http.send(same).header("ETag"));
    String longer = call.body().replace("\"lengthM\":22", "\"lengthM\":23");
    assertNotEquals(call.body(), longer);
    Call other = new Call(call.operation(), "longer", "POST", call.address(), longer);
    assertNotEquals(Http.send(call).header("ETag"), Http.send(other).header("ETag"));
  }

  @ParameterizedTest
  @MethodSource("gets")
  void whatTheCallerHoldsIsNotSentAgain(Call call) {
    Reply first = Http.send(call);
    String tag = first.header("ETag");
    for (String held : new String[] {tag, "W/" + tag, "\"other\", " + tag, "*"}) {
      Reply reply = Http.send(call, "If-None-Match", held, "X-Correlation-ID", "job-7");
      assertEquals(304, reply.status(), held);
      assertEquals(0, reply.bytes().length);
      assertEquals(tag, reply.header("ETag"));
      assertEquals(first.header("Vary"), reply.header("Vary"));
      assertEquals(first.header("Cache-Control"), reply.header("Cache-Control"));
      assertEquals("job-7", reply.header("X-Correlation-ID"));
    }
    assertEquals(200, Http.send(call, "If-None-Match", "\"other\"").status());
    assertTrue(first.header("Cache-Control").matches("public, max-age=\\d+"));
  }

  @ParameterizedTest
  @MethodSource("posts")
  void preconditionsAreIgnoredOnPost(Call call) {
    Reply first = Http.send(call);
    String tag = first.header("ETag");
    for (String[] condition :
        new String[][] {
          {"If-None-Match", tag},
          {"If-None-Match", "*"},
          {"If-Match", "\"other\""},
          {"If-Unmodified-Since", "Wed, 01 Jan 2020 00:00:00 GMT"}
        }) {
      Reply reply = Http.send(call, condition);
      assertEquals(200, reply.status(), () -> String.join(": ", condition));
      assertArrayEquals(first.bytes(), reply.bytes());
    }
  }

  @ParameterizedTest
  @MethodSource("oneOfEach")
  void theCorrelationIdComesBackAsAHeaderAndNowhereElse(Call call) {
    String id = "correlation-zz.81:4_x";
    Reply reply = Http.send(call, "X-Correlation-ID", id);
    assertEquals(id, reply.header("X-Correlation-ID"));
    assertFalse(reply.text().contains(id));
    assertNull(Http.send(call).header("X-Correlation-ID"));
  }

  private static boolean declares(Call call, String header) {
    Operation operation = ContractDocument.contract().operation(call.operation());
    return ContractDocument.contract().response(operation, 200).path("headers").has(header);
  }
}
