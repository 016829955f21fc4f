package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A minimal answer is the full one without prose, shown, working, comparisons, remedies and limits,
 * and without anything else missing or different (contract.md, "Style").
 */
@QuarkusTest
class MinimalAnswerTest {
  private static final Set<String> REMEDY_NOTES = Set.of("no-remedy", "reading-not-mended");

  /** At the answer itself "limits" is the list of limits; "limit" of a finding is a figure. */
  private static final Set<String> LEFT_OUT =
      Set.of(
          "summary",
          "meaning",
          "text",
          "shown",
          "shownLoopImpedanceOhm",
          "shownMeasuredLoopImpedanceOhm",
          "working",
          "comparisons",
          "remedies",
          "limits");

  static Stream<Call> calls() {
    Set<String> circuits = Set.of("getLoopImpedanceLimit");
    return Stream.concat(
        Calls.all().stream().filter(call -> call.isPost() || circuits.contains(call.operation())),
        Variations.ofOven().stream());
  }

  @ParameterizedTest
  @MethodSource("calls")
  void saysTheSameWithoutTheExplanation(Call call) {
    JsonNode full = Http.send(call).json();
    JsonNode minimal = Http.send(call, "Prefer", "return=minimal").json();
    strip(full, new HashSet<>());
    tags(full);
    tags(minimal);
    assertEquals(full.toPrettyString(), minimal.toPrettyString());
  }

  /** Else leaving out would prove nothing. */
  @Test
  void fullAnswersHoldAllThatMinimalOnesLeaveOut() {
    Set<String> found = new HashSet<>();
    calls().forEach(call -> strip(Http.send(call).json(), found));
    assertEquals(LEFT_OUT, found);
  }

  @Test
  void aMinimalAnswerIsAFractionOfTheFullOne() {
    Call call = Calls.ofContract("checkCircuit", "complies");
    int full = Http.send(call).bytes().length;
    int minimal = Http.send(call, "Prefer", "return=minimal").bytes().length;
    assertTrue(minimal * 3 < full, minimal + " of " + full + " bytes");
  }

  /** The tag of a circuit's answer is that of its bytes, which differ. */
  private static void tags(JsonNode answer) {
    answer.path("circuits").forEach(item -> ((ObjectNode) item).remove("etag"));
  }

  private static void strip(JsonNode node, Set<String> found) {
    if (node instanceof ObjectNode object) {
      for (String name : LEFT_OUT) {
        // The text of a mark is no prose: it is what the caller stated.
        boolean ofMark = name.equals("text") && object.has("kind");
        if (!ofMark && object.remove(name) != null) {
          found.add(name);
        }
      }
      for (String notes : List.of("remarks")) {
        removeNoRemedy(object, notes);
      }
    }
    node.forEach(child -> strip(child, found));
  }

  /** Where no remedies are looked for there is nothing to say of them. */
  private static void removeNoRemedy(ObjectNode object, String name) {
    if (object.get(name) instanceof ArrayNode notes) {
      for (Iterator<JsonNode> each = notes.iterator(); each.hasNext(); ) {
        if (REMEDY_NOTES.contains(each.next().path("code").asText())) {
          each.remove();
        }
      }
      if (notes.isEmpty()) {
        object.remove(name);
      }
    }
  }
}
