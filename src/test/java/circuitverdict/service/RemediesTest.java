package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Remedies keep what they promise when a caller applies them and asks again. */
@QuarkusTest
class RemediesTest {

  static Stream<Call> circuits() {
    return Variations.circuits().stream();
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void everyFailureHasARemedyOrSaysThatThereIsNone(Call call) {
    JsonNode answer = Http.send(call).json();
    Set<String> mended = new HashSet<>();
    answer
        .path("remedies")
        .forEach(remedy -> remedy.path("mends").forEach(check -> mended.add(check.textValue())));
    for (JsonNode finding : answer.path("findings")) {
      boolean failed =
          finding.path("counted").booleanValue()
              && finding.path("verdict").textValue().equals("does-not-comply");
      boolean none =
          finding
              .path("remarks")
              .valueStream()
              .map(remark -> remark.path("code").asText())
              .anyMatch(code -> code.equals("no-remedy") || code.equals("reading-not-mended"));
      String check = finding.path("check").textValue();
      assertEquals(
          failed, mended.contains(check) != none && (none || mended.contains(check)), check);
    }
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void everyRemedyMendsWhatItNamesAndBreaksNothing(Call call) {
    JsonNode before = Http.send(call).json();
    for (JsonNode remedy : before.path("remedies")) {
      assertFalse(remedy.path("mends").isEmpty(), remedy::toString);
      assertFalse(remedy.path("summary").asText().isBlank(), remedy::toString);
      String changed =
          Variations.patched(Variations.tree(call.body()), remedy.path("change")).toString();
      Reply reply = Http.post(call.address(), changed);
      assertEquals(200, reply.status(), () -> remedy + ": " + reply.text());
      Map<String, String> after = verdicts(reply.json());
      for (JsonNode check : remedy.path("mends")) {
        assertEquals("complies", after.get(check.textValue()), () -> remedy.toString());
      }
      verdicts(before)
          .forEach(
              (check, verdict) ->
                  assertTrue(
                      !verdict.equals("complies") || after.get(check).equals("complies"),
                      () -> remedy + " breaks " + check));
    }
  }

  @Test
  void thereAreRemediesToTry() {
    long remedies =
        circuits().mapToLong(call -> Http.send(call).json().path("remedies").size()).sum();
    assertTrue(remedies > 20, remedies + " remedies");
  }

  /** 522.6.202: a cable hidden less than 50 mm deep owes 30 mA, which is what is offered. */
  @Test
  void additionalProtectionThatIsOwedIsOffered() {
    String patch = "{\"cable\": {\"installation\": {\"concealment\": \"within-50-mm\"}}}";
    Call oven = Calls.ofContract("checkCircuit", "complies");
    JsonNode hidden = Variations.patched(Variations.tree(oven.body()), Variations.tree(patch));
    JsonNode answer = Http.post(oven.address(), hidden.toString()).json();
    assertEquals("does-not-comply", answer.path("verdict").textValue());
    JsonNode offered = answer.at("/remedies/0/change/residualDevice");
    assertEquals(0.03, offered.at("/residual/operatingCurrentA").doubleValue(), answer::toString);
    assertEquals("A", offered.at("/residual/type").textValue());
    assertEquals(2, offered.path("poles").intValue());
  }

  /** What its marks would speak against is no remedy: sent again it would not mend. */
  @Test
  void noMemberIsChangedThatMarksTellOf() {
    Call oven = Calls.ofContract("checkCircuit", "complies");
    String far = "{\"supply\": {\"loopImpedanceOhm\": 0.9}, \"device\": %s}";
    String number = "{\"gtin\": \"6291041500213\", \"characteristic\": \"C\"}";
    String marked = "{\"markings\": [\"C32\"], \"characteristic\": \"C\"}";
    assertTrue(changesDevice(oven, far.formatted(number)));
    assertFalse(changesDevice(oven, far.formatted(marked)));
  }

  private static boolean changesDevice(Call oven, String patch) {
    JsonNode body = Variations.patched(Variations.tree(oven.body()), Variations.tree(patch));
    JsonNode answer = Http.post(oven.address(), body.toString()).json();
    assertEquals("does-not-comply", answer.path("verdict").textValue());
    boolean device = false;
    for (JsonNode remedy : answer.path("remedies")) {
      device |= remedy.path("change").has("device");
    }
    return device;
  }

  /** What a selection without a device says would have to change lets a device pass. */
  @Test
  void aRemedyOfASelectionLetsADevicePass() {
    Call call = Calls.ofContract("selectDevices", "does-not-comply");
    JsonNode before = Http.send(call).json();
    assertEquals(0, before.path("selectedCount").intValue());
    assertFalse(before.path("remedies").isEmpty(), before::toString);
    for (JsonNode remedy : before.path("remedies")) {
      String changed =
          Variations.patched(Variations.tree(call.body()), remedy.path("change")).toString();
      JsonNode after = Http.post(call.address(), changed).json();
      assertTrue(after.path("selectedCount").intValue() > 0, () -> remedy + ": " + after);
    }
  }

  /** RFC 7396, the cases of its appendix that a change of a circuit can meet. */
  @Test
  void theTestsOwnMergePatchKeepsItsStandard() {
    for (List<String> c :
        List.of(
            List.of("{\"a\":\"b\"}", "{\"a\":\"c\"}", "{\"a\":\"c\"}"),
            List.of("{\"a\":\"b\"}", "{\"b\":\"c\"}", "{\"a\":\"b\",\"b\":\"c\"}"),
            List.of("{\"a\":\"b\"}", "{\"a\":null}", "{}"),
            List.of("{\"a\":[\"b\"]}", "{\"a\":\"c\"}", "{\"a\":\"c\"}"),
            List.of(
                "{\"a\":{\"b\":\"c\"}}",
                "{\"a\":{\"b\":\"d\",\"c\":null}}",
                "{\"a\":{\"b\":\"d\"}}"),
            List.of("{}", "{\"a\":{\"bb\":{\"ccc\":null}}}", "{\"a\":{\"bb\":{}}}"))) {
      JsonNode patched = Variations.patched(Variations.tree(c.get(0)), Variations.tree(c.get(1)));
      assertEquals(c.get(2), patched.toString());
    }
  }

  private static Map<String, String> verdicts(JsonNode answer) {
    Map<String, String> verdicts = new HashMap<>();
    answer
        .path("findings")
        .forEach(
            finding ->
                verdicts.put(
                    finding.path("check").textValue(), finding.path("verdict").textValue()));
    return verdicts;
  }
}
