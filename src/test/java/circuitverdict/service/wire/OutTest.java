package circuitverdict.service.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is put together by hand reads as the JSON library and the platform have it. */
class OutTest {
  private static final long SEED = 20_261_127;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @ParameterizedTest
  @ValueSource(strings = {"", "Zs", "It,req ≤ It", "√(3)·Ik2 − 1", "A√s/mm²", "∞", "°C Ω"})
  void writesTextsOfOursInUtf8(String text) {
    assertArrayEquals(text.getBytes(StandardCharsets.UTF_8), new Out().plain(text).finish(), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "plain", "a \"quoted\" one", "back\\slash", "line\nend", "\u0007", "😀"})
  void escapesAnyTextAsTheLibraryReadsIt(String text) throws Exception {
    assertEquals(text, MAPPER.readTree(new Out().quoted(text).finish()).textValue());
  }

  @Test
  void writesNumbersThatReadBackToTheLastBit() throws Exception {
    Random random = new Random(SEED);
    for (int i = 0; i < 10_000; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(24) - 8);
      double read = MAPPER.readTree(new Out().number(value).finish()).doubleValue();
      assertEquals(value, read, () -> "seed " + SEED + ": " + value);
    }
    assertEquals("32", text(new Out().number(32)));
    assertEquals("-3", text(new Out().number(-3)));
    assertEquals("0.28", text(new Out().number(0.28)));
    assertEquals("\"NaN\"", text(new Out().number(Double.NaN)));
  }

  @Test
  void growsAndWritesAgain() {
    String once = "0123456789".repeat(4_000);
    Out out = new Out().plain("x").plain(once);
    assertEquals("x" + once + once, text(out.again(1, out.size())));
  }

  @Test
  void answersWithinAnAnswerKeepTheirOwnBytes() throws Exception {
    byte[] outer =
        Json.object(
            json -> {
              json.writeStringField("before", "a");
              JsonNode inner = Json.tree(each -> each.writeStringField("inner", "b"));
              json.writeFieldName("tree");
              json.writeRawValue(inner.toString());
              json.writeFieldName("list");
              list(json);
              json.writeStringField("after", "c");
            });
    JsonNodeFactory nodes = JsonNodeFactory.instance;
    JsonNode wanted =
        nodes
            .objectNode()
            .put("before", "a")
            .<ObjectNode>set("tree", nodes.objectNode().put("inner", "b"))
            .<ObjectNode>set("list", nodes.arrayNode().add(1).add(2))
            .put("after", "c");
    assertEquals(wanted, MAPPER.readTree(outer));
  }

  /** Values put in beside the generator, each with the comma that is due. */
  private static void list(JsonGenerator json) throws IOException {
    json.writeStartArray();
    Json.value(json).number(1);
    Json.value(json).number(2);
    json.writeEndArray();
  }

  private static String text(Out out) {
    return new String(out.finish(), StandardCharsets.UTF_8);
  }
}
