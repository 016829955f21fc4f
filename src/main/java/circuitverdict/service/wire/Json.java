package circuitverdict.service.wire;

import circuitverdict.explain.Note;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Citation;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * How an answer is written, and the parts that all answers share: texts, numbers, notes, clauses.
 */
public final class Json {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final JsonMapper TREES = new JsonMapper();

  /** Writes one answer. */
  public interface Body {
    void write(JsonGenerator json) throws IOException;
  }

  private Json() {}

  /** The bytes of one JSON object whose members {@code body} writes. */
  public static byte[] object(Body body) {
    Out out = new Out();
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.writeStartObject();
      body.write(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.finish();
  }

  /** Where the next value is written as it stands; after it the generator goes on. */
  static Out value(JsonGenerator json) throws IOException {
    // Sets the comma where one is due.
    json.writeRawValue("");
    json.flush();
    return (Out) json.getOutputTarget();
  }

  /** The same object, to be read again. */
  static JsonNode tree(Body body) {
    try {
      return TREES.readTree(object(body));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void text(JsonGenerator json, String name, String value) throws IOException {
    if (value != null) {
      json.writeStringField(name, value);
    }
  }

  static void pointer(JsonGenerator json, Pointer pointer) throws IOException {
    json.writeStringField("pointer", pointer.text());
  }

  /** A number as JSON writes it: whole numbers without a fraction. */
  static void number(JsonGenerator json, String name, double value) throws IOException {
    json.writeFieldName(name);
    number(json, value);
  }

  static void number(JsonGenerator json, double value) throws IOException {
    value(json).number(value);
  }

  static void notes(JsonGenerator json, String name, List<Note> notes, boolean full)
      throws IOException {
    if (!notes.isEmpty()) {
      json.writeFieldName(name);
      NoteJson.array(value(json), notes, full);
    }
  }

  static void citation(JsonGenerator json, Citation citation) throws IOException {
    value(json).put(Stretches.citation(citation));
  }

  static void citations(JsonGenerator json, String name, List<Citation> citations)
      throws IOException {
    json.writeFieldName(name);
    citations(value(json), citations);
  }

  /** Citations as an array, each once. */
  static void citations(Out out, List<Citation> citations) {
    out.put('[');
    for (int i = 0; i < citations.size(); i++) {
      Citation citation = citations.get(i);
      if (i > 0 && citations.indexOf(citation) < i) {
        continue;
      }
      if (i > 0) {
        out.put(',');
      }
      out.put(Stretches.citation(citation));
    }
    out.put(']');
  }
}
