package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the contract says of {@code stage} and {@code edition}: what is left out and what stated.
 */
@QuarkusTest
class StatedStageTest {

  static List<Call> circuits() {
    return Calls.ofContract().stream()
        .filter(call -> call.isPost() && call.body().contains("\"stage\""))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void aStageLeftOutIsAsStrictAsSignOffUnderTheEditionInForce(Call call) {
    // Two editions to compare name what decides, and a third is told as not used.
    assumeTrue(Variations.tree(call.body()).path("editions").size() < 2);
    Reply leftOut = send(call, null, null);
    assertEquals(200, leftOut.status(), leftOut::text);
    assertEquals("sign-off", leftOut.json().path("stage").textValue());
    Reply stated = send(call, "sign-off", leftOut.json().at("/edition/id").textValue());
    assertArrayEquals(stated.bytes(), leftOut.bytes());
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void onlyAStatedSignOffDemandsTheEdition(Call call) {
    // Two editions to compare name what decides.
    assumeTrue(Variations.tree(call.body()).path("editions").size() < 2);
    Reply signOff = send(call, "sign-off", null);
    assertEquals(422, signOff.status(), signOff::text);
    assertEquals("edition-required", signOff.json().at("/errors/0/code").textValue());
    for (String stage : new String[] {null, "design", "quotation"}) {
      assertEquals(200, send(call, stage, null).status(), stage);
    }
  }

  private static Reply send(Call call, String stage, String edition) {
    ObjectNode body = (ObjectNode) Variations.tree(call.body());
    body.remove(List.of("stage", "edition"));
    if (stage != null) {
      body.put("stage", stage);
    }
    if (edition != null) {
      body.put("edition", edition);
    }
    return Http.post(call.address(), body.toString());
  }
}
