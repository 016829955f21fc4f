package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.device.marking.DeviceMember;
import circuitverdict.service.edge.Contract;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.service.wire.Contradictions;
import circuitverdict.service.wire.MarkingJson;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Marks;
import circuitverdict.support.Scenario;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reading of faces as callers see it, and the marks of a request's devices. */
@QuarkusTest
class MarkingReadingsTest {
  private static final String PATH = "/v1/marking-readings";
  private static final String FACE =
      "['B32', '230/400V ~', 'IEC/EN 60898', '6000', '3', '1P', 'suitable for isolation']";
  private static final Edition EDITION = Scenario.editions().inForce();

  private static JsonNode post(String path, String body) {
    return Http.post(path, body.replace('\'', '"')).json();
  }

  @Test
  void theDeviceServesEveryOtherCallAsItIs() {
    JsonNode device = post(PATH, "{'markings': " + FACE + "}").path("device");
    String read = Scenario.oven().withJson("/device", device.toString()).json().toString();
    String stated = Scenario.oven().json().toString();
    assertEquals(
        post("/v1/circuit-checks", stated).path("findings"),
        post("/v1/circuit-checks", read).path("findings"));
  }

  /** A request whose device has only markings is judged as if the members had been sent. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/v1/circuit-checks",
        "/v1/breaking-capacity-verdicts",
        "/v1/let-through-verdicts"
      })
  void markingsAloneAreJudgedAsTheMembers(String path) {
    JsonNode members = post(PATH, "{'markings': " + FACE + "}").path("device");
    JsonNode expected =
        post(path, Scenario.oven().withJson("/device", members.toString()).json().toString());
    String marked = "{'markings': " + FACE.replace("'3'", "'3', 'HSB-32'") + "}";
    JsonNode answer =
        post(
            path, Scenario.oven().withJson("/device", marked.replace('\'', '"')).json().toString());
    for (String member : List.of("verdict", "findings", "limits", "remedies", "missing")) {
      assertEquals(expected.path(member), answer.path(member), member);
    }
    List<String> codes = answer.path("cautions").findValuesAsText("code");
    assertTrue(codes.contains("read-from-marking") && codes.contains("mark-not-read"));
  }

  @Test
  void theOtherDevicesOfACircuitAreReadToo() {
    Scenario oven =
        Scenario.oven()
            .withJson("/upstreamDevice", "{\"markings\": [\"BS 88-3\", \"80A\"]}")
            .withJson("/residualDevice", "{\"markings\": [\"IEC 61008-1\", \"30mA\"]}");
    Scenario stated =
        Scenario.oven()
            .withJson("/upstreamDevice", "{\"standard\": \"BS 88-3\", \"ratedCurrentA\": 80}")
            .withJson(
                "/residualDevice",
                "{\"standard\": \"IEC 61008-1\", \"residual\": {\"operatingCurrentA\": 0.03}}");
    for (String path : List.of("/v1/circuit-checks", "/v1/device-selections")) {
      JsonNode read = post(path, oven.json().toString());
      JsonNode expected = post(path, stated.json().toString());
      for (String member : List.of("verdict", "findings", "selected", "rejected")) {
        assertEquals(expected.path(member), read.path(member), path + " " + member);
      }
    }
  }

  @Test
  void limitsOfLoopImpedanceReadMarks() {
    String item = "{'items': [{'device': %s, 'disconnectionTimeS': 0.4}]}";
    JsonNode read =
        post("/v1/loop-impedance-limits", item.formatted("{'markings': ['B32 IEC 60898-1']}"));
    // IEC 60898-1 type B: 5 In; 411.4.4: 0.95·230/160.
    assertEquals(218.5 / 160, read.at("/items/0/loopImpedanceOhm").doubleValue(), 1e-12);
    assertEquals("B32 IEC 60898-1", read.at("/items/0/device/markings/0").textValue());
    assertTrue(read.at("/items/0/remarks").findValuesAsText("code").contains("read-from-marking"));
  }

  /** A device that the operation does not look at is told as a whole, its marks unread. */
  @Test
  void marksOfADeviceThatIsNotReadAreNotRead() {
    Scenario oven = Scenario.oven().withJson("/residualDevice", "{\"markings\": [\"bakery\"]}");
    JsonNode answer = post("/v1/breaking-capacity-verdicts", oven.json().toString());
    List<String> codes = answer.path("cautions").findValuesAsText("code");
    assertTrue(codes.contains("member-not-used"));
    assertFalse(codes.contains("mark-not-read"));
  }

  /** A class on the face that the marks contradict never lets a circuit pass. */
  @Test
  void aConflictIsToldAndJudgedOnTheSafeSide() {
    Scenario oven = Scenario.oven().withJson("/device/markings", "[\"1500\"]");
    JsonNode answer = post("/v1/breaking-capacity-verdicts", oven.json().toString());
    assertEquals("does-not-comply", answer.path("verdict").textValue());
    assertTrue(answer.path("cautions").findValuesAsText("code").contains("mark-against-member"));
  }

  @Test
  void nothingSeenTellsNothing() {
    JsonNode answer = post(PATH, "{}");
    assertTrue(answer.path("device").isEmpty());
    assertTrue(answer.path("marks").isEmpty());
    assertTrue(answer.path("missing").findValuesAsText("pointer").contains("/device/standard"));
  }

  @Test
  void meaningsAndTextsAreLeftOutOfMinimalAnswers() {
    String body = "{\"markings\": [\"C16\"]}";
    assertTrue(Http.post(PATH, body).json().at("/marks/0/meaning").isTextual());
  }

  /** Whatever is read is valid by the contract and contradicts nothing: other calls take it. */
  @Test
  void everyDeviceThatIsReadIsTakenByTheContract() {
    ContractReader reader = new ContractReader(Contract.fromClassPath());
    MarkingJson readings = new MarkingJson(EDITION, "0", false);
    String[] marks = {
      "C16",
      "In 32A",
      "Icn 6000",
      "6kA",
      "Ics 7.5kA",
      "Icu 10kA",
      "Ics=50%Icu",
      "IΔn 30mA",
      "300mA",
      "type S",
      "type A",
      "IEC 60898-1",
      "IEC 61009-1",
      "IEC 61008-1",
      "IEC 60947-2",
      "BS 88-2",
      "gG 63",
      "63M80",
      "Ir 128A",
      "Ir=0.8In",
      "In 160A",
      "Isd=6Ir",
      "Ii=10In",
      "8-12In",
      "3-5In",
      "1P",
      "4P",
      "3P+N",
      "230/400V",
      "230V",
      "400V",
      "3",
      "class 3",
      "Type 2",
      "M6",
      "BS 3871",
      "tsd 100ms",
      "40°C",
      "LINE",
      "AFDD",
      "Inc 10kA",
      "IΔm 500A",
      "D10",
      "K 20",
      "1000V",
      "0.1A",
      "6300A",
      "IΔn 30 A"
    };
    Random random = new Random(61_008);
    for (int i = 0; i < 5_000; i++) {
      ObjectNode request = JsonNodeFactory.instance.objectNode();
      ArrayNode face = request.putArray("markings");
      for (int k = random.nextInt(9); k >= 0; k--) {
        face.add(marks[random.nextInt(marks.length)]);
      }
      String answer = new String(readings.bytes(request), StandardCharsets.UTF_8);
      JsonNode device = Variations.tree(answer).path("device");
      byte[] bytes = device.toString().getBytes(StandardCharsets.UTF_8);
      JsonNode read = reader.read(bytes, "Device", body -> Contradictions.ofDevice(body, ""));
      assertEquals(device, read, face::toString);
    }
  }

  @Test
  void symbolsAndRangesAreThoseOfTheContract() {
    Marks marks = EDITION.marks();
    JsonNode schemas = ContractDocument.contract().root().at("/components/schemas");
    List<String> symbols = new ArrayList<>();
    schemas
        .at("/MarkingQuery/properties/symbols/items/x-extensible-enum")
        .forEach(word -> symbols.add(word.textValue()));
    assertEquals(List.copyOf(marks.symbols().keySet()), symbols);
    for (DeviceMember member : DeviceMember.values()) {
      JsonNode schema = schemas.path("Device");
      for (String name : member.path().split("/")) {
        schema = ContractDocument.contract().resolve(schema.path("properties").path(name));
      }
      assertFalse(schema.isMissingNode(), member.path());
      if (schema.has("minimum")) {
        double least = schema.path("minimum").doubleValue();
        double most = schema.path("maximum").doubleValue();
        assertTrue(marks.canBe(member.path(), least), member.path());
        assertTrue(marks.canBe(member.path(), most), member.path());
        assertFalse(marks.canBe(member.path(), Math.nextDown(least)), member.path());
        assertFalse(marks.canBe(member.path(), Math.nextUp(most)), member.path());
      }
    }
  }

  @Test
  void membersOfTheDataAreMembersOfADevice() {
    Marks marks = EDITION.marks();
    List<String> members = new ArrayList<>();
    marks.symbols().values().forEach(word -> members.add(word.member()));
    marks.vocabulary().words().values().forEach(word -> members.add(word.member()));
    marks.vocabulary().labels().values().forEach(label -> members.add(label.member()));
    List<String> standards = new ArrayList<>();
    ContractDocument.contract()
        .root()
        .at("/components/schemas/Device/properties/standard/x-extensible-enum")
        .forEach(word -> standards.add(word.textValue()));
    for (String standard : standards) {
      for (String need : marks.needs(standard)) {
        members.addAll(List.of(need.split("\\|")));
      }
    }
    for (String member : members) {
      assertTrue(member == null || DeviceMember.ofPath(member) != null, member);
    }
    marks.vocabulary().standards().forEach(each -> assertTrue(standards.contains(each.standard())));
    marks.kinds().values().forEach(kind -> assertTrue(standards.containsAll(kind.notOn())));
    assertTrue(marks.kinds().values().stream().noneMatch(kind -> kind.clauses().isEmpty()));
  }
}
