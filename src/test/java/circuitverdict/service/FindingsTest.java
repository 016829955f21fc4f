package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every finding of a full answer must carry (contract-points.md 4 to 8). */
@QuarkusTest
class FindingsTest {
  private static final Map<String, List<String>> CHECKS =
      Map.of(
          "checkCircuit",
          CheckName.ofCircuits().stream().map(CheckName::word).toList(),
          "judgeBreakingCapacity",
          List.of("breaking-capacity"),
          "judgeLetThrough",
          List.of("let-through-energy", "protective-conductor"),
          "judgeSelectivity",
          List.of("selectivity"));

  static Stream<Call> circuits() {
    return Variations.circuits().stream();
  }

  static Stream<Call> selections() {
    return Calls.posts().stream().filter(call -> call.operation().equals("selectDevices"));
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void allChecksOfTheOperationStandInTheSameOrder(Call call) {
    List<String> checks = new ArrayList<>();
    findings(call).forEach(finding -> checks.add(finding.path("check").textValue()));
    List<String> expected =
        call.operation().equals("judgeMeasurements")
            ? Collections.nCopies(checks.size(), "commissioning")
            : CHECKS.get(call.operation());
    assertEquals(expected, checks);
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void everyVerdictButCompliesHasAReason(Call call) {
    JsonNode answer = Http.send(call).json();
    assertReason(answer);
    answer.path("findings").forEach(FindingsTest::assertReason);
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void theOverallVerdictIsTheWorstThatCounts(Call call) {
    JsonNode answer = Http.send(call).json();
    Set<String> counted = new HashSet<>();
    for (JsonNode finding : answer.path("findings")) {
      if (finding.path("counted").booleanValue()) {
        counted.add(finding.path("verdict").textValue());
      }
    }
    String expected =
        counted.contains("does-not-comply")
            ? "does-not-comply"
            : counted.equals(Set.of("complies")) ? "complies" : "not-determined";
    assertFalse(counted.contains("not-applicable"), "what does not apply does not count");
    assertEquals(expected, answer.path("verdict").textValue());
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void everyFindingCitesClausesAndItsSubject(Call call) {
    for (JsonNode finding : findings(call)) {
      assertFalse(finding.path("clauses").isEmpty(), finding::toString);
      finding
          .path("clauses")
          .forEach(
              clause ->
                  assertTrue(clause.has("standard") && clause.has("reference"), clause::toString));
      assertTrue(finding.path("subject").textValue().startsWith("/"), finding::toString);
    }
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void everyNumericFindingIsWorkedOut(Call call) {
    for (JsonNode finding : findings(call)) {
      if (finding.has("actual")) {
        assertWorked(finding);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void whatIsNotDeterminedSaysWhatIsMissing(Call call) {
    for (JsonNode finding : findings(call)) {
      if (finding.path("verdict").textValue().equals("not-determined")) {
        assertFalse(finding.path("missing").isEmpty(), finding::toString);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("selections")
  void everyCandidateIsDecidedByAFindingThatFitsItsVerdict(Call call) {
    JsonNode answer = Http.send(call).json();
    for (String list : List.of("selected", "undetermined", "rejected")) {
      for (JsonNode candidate : answer.path(list)) {
        JsonNode decided = candidate.path("decidedBy");
        assertEquals(candidate.path("verdict"), decided.path("verdict"), candidate::toString);
        assertReason(decided);
        if (decided.has("actual")) {
          assertWorked(decided);
        }
      }
    }
  }

  /** Else the parameterized tests could pass on answers without failures. */
  @Test
  void theCircuitsFailEveryCheckThatCanFail() {
    Set<String> failed = new HashSet<>();
    for (Call call : Variations.circuits()) {
      for (JsonNode finding : findings(call)) {
        boolean counted = finding.path("counted").booleanValue();
        if (counted && finding.path("verdict").textValue().equals("does-not-comply")) {
          failed.add(finding.path("check").textValue());
        }
      }
    }
    // Of a circuit commissioning is informative; of a reading it can fail.
    assertEquals(new HashSet<>(CHECKS.get("checkCircuit")), failed);
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void everyStepNamesItsSources(Call call) {
    for (JsonNode finding : findings(call)) {
      for (JsonNode step : finding.path("working")) {
        assertFalse(step.path("sources").isEmpty(), () -> finding.path("check") + ": " + step);
      }
    }
  }

  private static JsonNode findings(Call call) {
    return Http.send(call).json().path("findings");
  }

  private static void assertReason(JsonNode judged) {
    boolean complies = judged.path("verdict").textValue().equals("complies");
    assertTrue(complies || judged.path("reason").isTextual(), judged::toString);
  }

  private static void assertWorked(JsonNode finding) {
    JsonNode actual = finding.path("actual");
    assertTrue(finding.has("comparator"), finding::toString);
    assertTrue(finding.path("limit").has("value"), finding::toString);
    // An interval whose upper end nothing promises has no margin either.
    boolean bounded = actual.has("value") || actual.has("greatest");
    assertEquals(bounded, finding.has("marginPercent"), finding::toString);
    JsonNode working = finding.path("working");
    assertFalse(working.isEmpty(), finding::toString);
    JsonNode last = working.get(working.size() - 1);
    Set<Double> compared = new HashSet<>();
    for (String name : List.of("value", "least", "greatest")) {
      if (actual.has(name)) {
        compared.add(actual.path(name).doubleValue());
      }
    }
    assertTrue(compared.contains(last.path("value").doubleValue()), () -> last + " of " + actual);
    assertEquals(actual.path("unit"), last.path("unit"));
    for (JsonNode step : working) {
      for (String name : List.of("symbol", "formula", "substitution", "unit")) {
        assertFalse(step.path(name).asText().isBlank(), step::toString);
      }
    }
  }
}
