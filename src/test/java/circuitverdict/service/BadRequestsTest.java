package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bad input gets a problem that says what is wrong and where, and nothing of our insides. */
@QuarkusTest
class BadRequestsTest {
  /** Names of classes and packages, paths of files, hosts, lines of a stack. */
  static final Pattern INSIDES =
      Pattern.compile(
          "circuitverdict|java\\.|jakarta|jackson|fasterxml|quarkus|vertx|netty|resteasy|Exception"
              + "|localhost|127\\.0|/tmp|/home|/work|/root|\\.java|\\bat [a-z]+\\.[a-z]+\\.");

  static List<BadRequest> requests() {
    return BadRequests.all();
  }

  @ParameterizedTest
  @MethodSource("requests")
  void isRefusedWithTheRightProblem(BadRequest bad) {
    Reply reply = bad.send().get();
    assertEquals(bad.status(), reply.status(), reply::text);
    assertProblem(reply);
    JsonNode problem = reply.json();
    assertEquals("urn:circuit-verdicts:problem:" + bad.problem(), problem.path("type").textValue());
    if (bad.code() != null) {
      boolean told =
          problem
              .path("errors")
              .valueStream()
              .anyMatch(
                  error ->
                      error.path("code").textValue().equals(bad.code())
                          && (bad.place() == null || bad.place().equals(place(error))));
      assertTrue(told, () -> bad.code() + " at " + bad.place() + " not in " + problem);
    }
    if (bad.body() != null) {
      for (JsonNode error : problem.path("errors")) {
        assertFalse(
            Variations.tree(bad.body()).at(error.path("pointer").textValue()).isMissingNode(),
            () -> error + " does not resolve");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("requests")
  void carriesNoHeaderOfAnAnswer(BadRequest bad) {
    Reply reply = bad.send().get();
    assertEquals("en", reply.header("Content-Language"));
    if (bad.status() == 405) {
      assertNotNull(reply.header("Allow"));
    }
  }

  /** RFC 9457: the title does not change from occurrence to occurrence. */
  @Test
  void everyTypeHasOneTitle() {
    Map<String, String> titles = new HashMap<>();
    for (BadRequest bad : requests()) {
      JsonNode problem = bad.send().get().json();
      String title = problem.path("title").textValue();
      String known = titles.putIfAbsent(problem.path("type").textValue(), title);
      assertTrue(known == null || known.equals(title), title);
    }
    assertTrue(titles.size() >= 9, titles::toString);
  }

  @Test
  void allErrorsAreToldAtOnce() {
    String body =
        """
        {"stage": "soon", "supply": {"earthing": null, "loopImpedanceOhm": -1},
         "cable": {"lenghtM": 22}, "limit": "ten", "liveConductors": ["L4"]}""";
    Reply reply = Http.post("/v1/circuit-checks", body);
    assertEquals(422, reply.status());
    List<String> places =
        reply
            .json()
            .path("errors")
            .valueStream()
            .map(error -> error.path("code").textValue() + " " + place(error))
            .sorted()
            .toList();
    assertEquals(
        List.of(
            "below-minimum /supply/loopImpedanceOhm",
            "null-not-allowed /supply/earthing",
            "unknown-member /cable/lenghtM",
            "unknown-value /liveConductors/0",
            "unknown-value /stage",
            "wrong-type /limit"),
        places);
  }

  @Test
  void contradictionsAreToldAtOnceToo() {
    JsonNode oven = Variations.tree(Calls.ofContract("checkCircuit", "complies").body());
    String patch =
        "{\"supply\": {\"originLoopImpedanceOhm\": 1, \"loopReactanceOhm\": 1,"
            + " \"lineToEarthVoltageV\": 240}}";
    String body = Variations.patched(oven, Variations.tree(patch)).toString();
    Reply reply = Http.post("/v1/circuit-checks", body);
    assertEquals(3, reply.json().path("errors").size(), reply::text);
  }

  /** A problem by the contract: media type, schema, its own status, no insides. */
  static void assertProblem(Reply reply) {
    assertEquals("application/problem+json", reply.mediaType());
    assertEquals(List.of(), ResponseSchemas.faults("Problem", reply.text()), reply::text);
    assertEquals(reply.status(), reply.json().path("status").intValue());
    assertFalse(INSIDES.matcher(reply.text()).find(), reply::text);
  }

  private static String place(JsonNode error) {
    for (String name : List.of("pointer", "parameter", "header")) {
      if (error.has(name)) {
        return error.path(name).textValue();
      }
    }
    return null;
  }
}
