package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.service.ContractDocument.Operation;
import circuitverdict.service.Http.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Good requests with a few members changed, dropped or put at their bounds: whatever comes of it,
 * the answer is one of the contract's and never a fault of our own. Another run of it: {@code
 * -Dseed=...}.
 */
@QuarkusTest
class MutatedRequestsTest {
  private static final long SEED = Long.getLong("seed", 20_260_415L);
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void areAnsweredOrRefusedByTheContract(int part) {
    Random random = new Random(SEED + part);
    List<Call> calls = new ArrayList<>(Calls.posts());
    calls.addAll(Variations.ofOven());
    for (int i = 0; i < 120; i++) {
      Call call = calls.get(random.nextInt(calls.size()));
      JsonNode body = Variations.tree(call.body());
      for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
        change(random, schema(call), body);
      }
      judge(new Call(call.operation(), call.name(), "POST", call.address(), body.toString()));
    }
  }

  /** Every member of the deck oven, one after the other, left out. */
  @Test
  void withoutAMember() {
    for (Call call :
        List.of(
            Calls.ofContract("checkCircuit", "complies"),
            Calls.ofContract("checkCircuit", "does-not-comply"))) {
      JsonNode body = Variations.tree(call.body());
      List<Place> places = new ArrayList<>();
      collect(body, schema(call), places);
      for (int i = 0; i < places.size(); i++) {
        JsonNode copy = body.deepCopy();
        List<Place> inCopy = new ArrayList<>();
        collect(copy, schema(call), inCopy);
        if (inCopy.get(i).holder() instanceof ObjectNode object) {
          object.remove(inCopy.get(i).name());
          judge(new Call(call.operation(), "", "POST", call.address(), copy.toString()));
        }
      }
    }
  }

  private static void judge(Call call) {
    Reply reply = Http.send(call);
    String said = "seed " + SEED + ", " + call.address() + " " + call.body() + "\n" + reply.text();
    if (reply.status() == 200) {
      Operation operation = ContractDocument.contract().operation(call.operation());
      String schema = ContractDocument.contract().schemaName(operation, 200, "application/json");
      assertEquals(List.of(), ResponseSchemas.faults(schema, reply.text()), said);
    } else {
      assertTrue(reply.status() == 422, said);
      BadRequestsTest.assertProblem(reply);
    }
  }

  /** A member of a body, with its schema. */
  private record Place(JsonNode holder, String name, int index, JsonNode schema) {
    void set(JsonNode value) {
      if (holder instanceof ObjectNode object) {
        object.set(name, value);
      } else {
        ((ArrayNode) holder).set(index, value);
      }
    }
  }

  private static void change(Random random, JsonNode schema, JsonNode body) {
    List<Place> places = new ArrayList<>();
    collect(body, schema, places);
    if (places.isEmpty()) {
      return;
    }
    Place place = places.get(random.nextInt(places.size()));
    if (random.nextInt(3) == 0 && place.holder() instanceof ObjectNode object) {
      object.remove(place.name());
    } else {
      place.set(value(random, place.schema()));
    }
  }

  /** Mostly what the schema takes, at its bounds and between; now and then what it refuses. */
  private static JsonNode value(Random random, JsonNode schema) {
    if (random.nextInt(12) == 0) {
      return List.of(
              JSON.nullNode(), JSON.textNode("ü\u0000"), JSON.numberNode(-1e300), JSON.arrayNode())
          .get(random.nextInt(4));
    }
    JsonNode listed = schema.has("enum") ? schema.path("enum") : schema.path("x-extensible-enum");
    if (!listed.isMissingNode()) {
      return listed.get(random.nextInt(listed.size()));
    }
    double least = schema.path("minimum").doubleValue();
    double most = schema.path("maximum").doubleValue();
    return switch (schema.path("type").asText()) {
      case "integer" -> JSON.numberNode((int) bound(random, least, most));
      case "number" -> JSON.numberNode(bound(random, least, most));
      case "boolean" -> JSON.booleanNode(random.nextBoolean());
      case "array" -> JSON.arrayNode();
      case "object" -> JSON.objectNode();
      default -> JSON.textNode("x");
    };
  }

  private static double bound(Random random, double least, double most) {
    return switch (random.nextInt(4)) {
      case 0 -> least;
      case 1 -> most;
      default -> least + (most - least) * Math.pow(random.nextDouble(), 4);
    };
  }

  private static void collect(JsonNode node, JsonNode written, List<Place> places) {
    JsonNode schema = ContractDocument.contract().resolve(written);
    if (node.isObject()) {
      node.fieldNames()
          .forEachRemaining(
              name -> {
                JsonNode member =
                    ContractDocument.contract().resolve(schema.path("properties").path(name));
                places.add(new Place(node, name, -1, member));
                collect(node.get(name), member, places);
              });
    } else if (node.isArray()) {
      JsonNode items = ContractDocument.contract().resolve(schema.path("items"));
      for (int i = 0; i < node.size(); i++) {
        places.add(new Place(node, null, i, items));
        collect(node.get(i), items, places);
      }
    }
  }

  private static JsonNode schema(Call call) {
    return ContractDocument.contract()
        .operation(call.operation())
        .node()
        .at("/requestBody/content/application~1json/schema");
  }
}
