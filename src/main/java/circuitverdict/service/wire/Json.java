package circuitverdict.service.wire;

import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Step;
import circuitverdict.quantity.Shown;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Citation;
import circuitverdict.standard.Source;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The parts that all answers share, written one after the other: notes, steps, citations, figures.
 */
public final class Json {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();
  private static final JsonMapper TREES = new JsonMapper();
  private static final int USUAL_SIZE = 32_768;
  private static final Recurring<String> WORDS = new Recurring<>(word -> word);
  private static final Recurring<String> STEPS = new Recurring<>(symbol -> "step " + symbol);
  private static final Recurring<Pointer> POINTERS = new Recurring<>(Pointer::text);
  private static final Recurring<Citation> CITATIONS = new Recurring<>(Json::written);

  /** Writes one answer. */
  public interface Body {
    void write(JsonGenerator json) throws IOException;
  }

  private Json() {}

  /** The bytes of one JSON object whose members {@code body} writes. */
  public static byte[] object(Body body) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(USUAL_SIZE);
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.writeStartObject();
      body.write(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
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

  /** A text of ours, found in other answers too: a symbol, a unit, a word, a fixed sentence. */
  static void word(JsonGenerator json, SerializedString name, String word) throws IOException {
    json.writeFieldName(name);
    json.writeString(WORDS.of(word));
  }

  static void pointer(JsonGenerator json, Pointer pointer) throws IOException {
    json.writeFieldName(Names.POINTER);
    json.writeString(POINTERS.of(pointer));
  }

  /** A text that differs from answer to answer. */
  static void text(JsonGenerator json, SerializedString name, String text) throws IOException {
    json.writeFieldName(name);
    json.writeString(text);
  }

  /** A number as JSON writes it: whole numbers without a fraction. */
  static void number(JsonGenerator json, SerializedString name, double value) throws IOException {
    json.writeFieldName(name);
    number(json, value);
  }

  static void number(JsonGenerator json, String name, double value) throws IOException {
    json.writeFieldName(name);
    number(json, value);
  }

  static void number(JsonGenerator json, double value) throws IOException {
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      json.writeNumber((long) value);
    } else {
      json.writeNumber(value);
    }
  }

  static void notes(JsonGenerator json, String name, List<Note> notes, boolean full)
      throws IOException {
    if (notes.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart(name);
    for (Note note : notes) {
      note(json, note, full);
    }
    json.writeEndArray();
  }

  private static void note(JsonGenerator json, Note note, boolean full) throws IOException {
    json.writeStartObject();
    word(json, Names.CODE, note.code().code());
    if (full) {
      word(json, Names.TEXT, NoteText.of(note));
    }
    if (note.pointer() != null) {
      pointer(json, note.pointer());
    }
    if (!note.figures().isEmpty()) {
      json.writeArrayFieldStart("values");
      for (Figure figure : note.figures()) {
        figure(json, figure, full);
      }
      json.writeEndArray();
      sources(json, note.figures());
    }
    json.writeEndObject();
  }

  private static void figure(JsonGenerator json, Figure figure, boolean full) throws IOException {
    json.writeStartObject();
    word(json, Names.SYMBOL, figure.symbol());
    if (!Double.isInfinite(figure.value()) && figure.known()) {
      number(json, Names.VALUE, figure.value());
      if (full) {
        text(json, Names.SHOWN, Shown.plain(figure.value()));
      }
    }
    word(json, Names.UNIT, figure.unit().symbol());
    json.writeEndObject();
  }

  static void steps(JsonGenerator json, List<Step> steps) throws IOException {
    json.writeArrayFieldStart("working");
    for (Step step : steps) {
      json.writeStartObject();
      word(json, Names.SYMBOL, step.result().symbol());
      word(json, Names.FORMULA, step.formulaText());
      text(json, Names.SUBSTITUTION, step.substitution());
      number(json, Names.VALUE, step.result().value());
      word(json, Names.UNIT, step.result().unit().symbol());
      if (!sources(json, step.operands())) {
        nothingApplies(json);
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** A factor that stands for what is not there says so. */
  private static void nothingApplies(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("sources");
    json.writeStartObject();
    json.writeStringField("reference", "nothing applies here");
    json.writeEndObject();
    json.writeEndArray();
  }

  /** Each source once, in the order of the figures; earlier steps are named by their symbol. */
  private static boolean sources(JsonGenerator json, List<Figure> figures) throws IOException {
    boolean open = false;
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      if (neutral(figure) || toldBefore(figures, i)) {
        continue;
      }
      if (!open) {
        json.writeFieldName(Names.SOURCES);
        json.writeStartArray();
        open = true;
      }
      source(json, figure.source(), figure.symbol());
    }
    if (open) {
      json.writeEndArray();
    }
    return open;
  }

  /** A factor of one, also as 100 %, or nothing, that stands for what is not there. */
  private static boolean neutral(Figure figure) {
    boolean percent = figure.unit() == Unit.PERCENT;
    boolean unit = figure.value() == 0 || figure.value() == (percent ? 100 : 1);
    return figure.source() instanceof Figure.Derived && unit;
  }

  private static boolean toldBefore(List<Figure> figures, int index) {
    Figure figure = figures.get(index);
    for (int i = 0; i < index; i++) {
      Figure other = figures.get(i);
      boolean derived = figure.source() instanceof Figure.Derived;
      if (derived
          ? other.symbol().equals(figure.symbol())
          : other.source().equals(figure.source())) {
        return true;
      }
    }
    return false;
  }

  private static void source(JsonGenerator json, Source source, String symbol) throws IOException {
    if (source instanceof Citation citation) {
      citation(json, citation);
      return;
    }
    json.writeStartObject();
    if (source instanceof Pointer pointer) {
      pointer(json, pointer);
    } else {
      json.writeFieldName(Names.REFERENCE);
      json.writeString(STEPS.of(symbol));
    }
    json.writeEndObject();
  }

  static void citation(JsonGenerator json, Citation citation) throws IOException {
    json.writeRawValue(CITATIONS.of(citation));
  }

  private static String written(Citation citation) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      write(json, citation);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static void write(JsonGenerator json, Citation citation) throws IOException {
    json.writeStartObject();
    json.writeStringField("standard", citation.standard());
    json.writeStringField("reference", citation.reference());
    if (citation.confidence() != null) {
      json.writeStringField("confidence", citation.confidence().word());
      if (!citation.seen().isEmpty()) {
        json.writeStringField("seen", String.join(" ", citation.seen()));
      }
    }
    text(json, "carriedOverFrom", citation.carriedOverFrom());
    json.writeEndObject();
  }

  static void citations(JsonGenerator json, String name, List<Citation> citations)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (int i = 0; i < citations.size(); i++) {
      if (citations.indexOf(citations.get(i)) == i) {
        citation(json, citations.get(i));
      }
    }
    json.writeEndArray();
  }
}
