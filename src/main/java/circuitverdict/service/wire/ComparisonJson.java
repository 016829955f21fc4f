package circuitverdict.service.wire;

import circuitverdict.check.BoardVerdict;
import circuitverdict.check.Finding;
import circuitverdict.check.Reason;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.select.EditionComparison;
import circuitverdict.select.EditionComparison.Cause;
import circuitverdict.select.EditionComparison.Move;
import circuitverdict.standard.Citation;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A circuit under two editions as the contract writes it: what moves, and why. */
public final class ComparisonJson {
  private final String version;
  private final boolean full;

  /** Writes a comparison. */
  public ComparisonJson(String version, boolean full) {
    this.version = version;
    this.full = full;
  }

  /** The bytes of the answer; its verdict is that under the second edition. */
  public byte[] bytes(
      Sourced request,
      Circuit.Stage stage,
      Edition first,
      Edition second,
      EditionComparison comparison,
      List<Note> unused) {
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, second, full, request);
          Result to = comparison.to();
          answer.head(stage, to.verdict(), to.reason(), summary(first, second, comparison));
          json.writeArrayFieldStart("compared");
          compared(json, first, comparison.from().verdict(), comparison.from().reason());
          compared(json, second, to.verdict(), to.reason());
          json.writeEndArray();
          json.writeArrayFieldStart("moved");
          for (Move move : comparison.moved()) {
            move(json, null, move);
          }
          json.writeEndArray();
          List<Finding> both = new ArrayList<>(comparison.from().findings());
          both.addAll(to.findings());
          answer.notes(both);
          answer.foot(unused, version);
        });
  }

  /**
   * A board under two editions.
   *
   * @param first verdict under the first
   * @param second verdict under the second
   * @param moved what moves: of the boards first, then circuit by circuit
   */
  public record Boards(BoardVerdict first, BoardVerdict second, List<Placed> moved) {}

  /**
   * What moves of one circuit.
   *
   * @param circuit JSON pointer of the circuit; null of the boards themselves
   * @param moves the findings that differ
   */
  public record Placed(String circuit, List<Move> moves) {}

  /** The bytes of the answer to a board; its verdict is that under the second edition. */
  public byte[] boards(
      Sourced request,
      Circuit.Stage stage,
      Edition first,
      Edition second,
      Boards boards,
      List<Note> unused) {
    long count = boards.moved().stream().mapToLong(each -> each.moves().size()).sum();
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, second, full, request);
          BoardVerdict to = boards.second();
          answer.head(
              stage,
              to.verdict(),
              to.reason(),
              (count == 0 ? "Nothing moves" : count + " findings move") + between(first, second));
          json.writeArrayFieldStart("compared");
          compared(json, first, boards.first().verdict(), boards.first().reason());
          compared(json, second, to.verdict(), to.reason());
          json.writeEndArray();
          json.writeArrayFieldStart("moved");
          for (Placed placed : boards.moved()) {
            for (Move move : placed.moves()) {
              move(json, placed.circuit(), move);
            }
          }
          json.writeEndArray();
          answer.foot(unused, version);
        });
  }

  /** The answer where the two editions are not stated. */
  public byte[] incomplete(Sourced request, Circuit.Stage stage, Edition used, List<Note> unused) {
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, used, full, request);
          answer.head(
              stage,
              Verdict.NOT_DETERMINED,
              Reason.MISSING_INPUT,
              "Two editions are needed to compare.");
          Pointer at = new Pointer("", "editions");
          Json.notes(
              json, "missing", List.of(new Note(NoteCode.MISSING_INPUT, at, List.of())), full);
          answer.foot(unused, version);
        });
  }

  private static String summary(Edition first, Edition second, EditionComparison comparison) {
    String between = between(first, second);
    List<Move> moved = comparison.moved();
    if (moved.isEmpty()) {
      return "Nothing moves" + between;
    }
    List<String> names = new ArrayList<>();
    for (Move move : moved) {
      String title = move.to().check().title().toLowerCase(Locale.ROOT);
      boolean turns = move.from().verdict() != move.to().verdict();
      names.add(turns ? title + " (now " + words(move.to().verdict()) + ")" : title);
    }
    return "What moves: " + String.join(", ", names) + "," + between;
  }

  private static String between(Edition first, Edition second) {
    return " from " + first.head().standard() + " to " + second.head().standard() + ".";
  }

  private static String words(Verdict verdict) {
    return verdict.word().replace('-', ' ');
  }

  private static void compared(JsonGenerator json, Edition edition, Verdict verdict, Reason reason)
      throws IOException {
    json.writeStartObject();
    json.writeObjectFieldStart("edition");
    json.writeStringField("id", edition.id());
    json.writeStringField("tablesDigest", edition.digest());
    json.writeEndObject();
    json.writeStringField("verdict", verdict.word());
    if (reason != null) {
      json.writeStringField("reason", reason.word());
    }
    json.writeEndObject();
  }

  private void move(JsonGenerator json, String circuit, Move move) throws IOException {
    json.writeStartObject();
    Json.text(json, "circuit", circuit);
    json.writeStringField("check", move.to().check().word());
    json.writeFieldName("from");
    FindingJson.write(json, move.from(), List.of(), full);
    json.writeFieldName("to");
    FindingJson.write(json, move.to(), List.of(), full);
    json.writeArrayFieldStart("because");
    for (Cause cause : move.because()) {
      cause(json, cause);
    }
    if (move.because().isEmpty()) {
      rule(json, move);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void cause(JsonGenerator json, Cause cause) throws IOException {
    json.writeStartObject();
    json.writeStringField("symbol", cause.symbol());
    json.writeStringField("unit", cause.unit().symbol());
    side(json, "from", cause.from());
    side(json, "to", cause.to());
    json.writeEndObject();
  }

  private static void side(JsonGenerator json, String name, Figure figure) throws IOException {
    if (figure != null) {
      json.writeObjectFieldStart(name);
      Json.number(json, "value", figure.value());
      source(json, (Citation) figure.source());
      json.writeEndObject();
    }
  }

  private static void source(JsonGenerator json, Citation citation) throws IOException {
    json.writeFieldName("source");
    Json.citation(json, citation);
  }

  /** Where no value differs the rule does: each edition's clause. */
  private static void rule(JsonGenerator json, Move move) throws IOException {
    json.writeStartObject();
    clause(json, "from", move.from());
    clause(json, "to", move.to());
    json.writeEndObject();
  }

  private static void clause(JsonGenerator json, String name, Finding finding) throws IOException {
    if (!finding.clauses().isEmpty()) {
      json.writeObjectFieldStart(name);
      source(json, finding.clauses().get(finding.clauses().size() - 1));
      json.writeEndObject();
    }
  }
}
