package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A fitted residual current device that does not do is exchanged for the next that does. */
@QuarkusTest
class ResidualRemediesTest {
  private static final String FITTED =
      """
      {"standard": "IEC 61008-1", "ratedCurrentA": 63, "poles": 2, "conditionalCapacityA": 6000,
       "residual": {"operatingCurrentA": 0.03, "type": "A", "delay": "general"}}
      """;
  private static final String HIDDEN =
      "{\"cable\": {\"installation\": {\"concealment\": \"within-50-mm\"}}}";

  /** What is fitted, and what the first remedy changes of it (536.4.3.2, 415.1, 531.3.3). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'ratedCurrentA': 25} | device-suitability | {'ratedCurrentA': 32}",
        "{'conditionalCapacityA': 1000} | device-suitability | {'conditionalCapacityA': 6000}",
        "{'ratedCurrentA': 25, 'conditionalCapacityA': 1000} | device-suitability"
            + " | {'ratedCurrentA': 32, 'conditionalCapacityA': 6000}",
        "{'residual': {'operatingCurrentA': 0.3}} | additional-protection"
            + " | {'residual': {'operatingCurrentA': 0.03}}",
        "{'residual': {'operatingCurrentA': 0.1, 'delay': 'S'}} | additional-protection"
            + " | {'residual': {'operatingCurrentA': 0.03, 'delay': 'general'}}",
      })
  void theNextThatDoesIsOffered(String fitted, String check, String change) {
    Call oven = Calls.ofContract("checkCircuit", "complies");
    JsonNode body = Variations.patched(Variations.tree(oven.body()), Variations.tree(HIDDEN));
    String patch = "{\"residualDevice\": %s}";
    body = Variations.patched(body, Variations.tree(patch.formatted(FITTED)));
    body = Variations.patched(body, Variations.tree(patch.formatted(fitted.replace('\'', '"'))));
    JsonNode answer = Http.post(oven.address(), body.toString()).json();
    assertEquals("does-not-comply", answer.path("verdict").textValue(), answer::toString);
    List<JsonNode> offered = new ArrayList<>();
    for (JsonNode remedy : answer.path("remedies")) {
      boolean mends =
          remedy.path("mends").valueStream().anyMatch(each -> each.asText().equals(check));
      if (mends && remedy.path("change").has("residualDevice")) {
        offered.add(remedy.at("/change/residualDevice"));
      }
    }
    assertTrue(!offered.isEmpty(), answer::toString);
    assertEquals(Variations.tree(change.replace('\'', '"')), offered.get(0), answer::toString);
  }
}
