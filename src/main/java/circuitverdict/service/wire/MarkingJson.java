package circuitverdict.service.wire;

import circuitverdict.device.marking.Mark;
import circuitverdict.device.marking.MarkingReader;
import circuitverdict.device.marking.Reading;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The reading of a face as the contract writes it. */
public final class MarkingJson {
  private final Edition edition;
  private final String version;
  private final boolean full;

  /** Writes readings under an edition. */
  public MarkingJson(Edition edition, String version, boolean full) {
    this.edition = edition;
    this.version = version;
    this.full = full;
  }

  /** The bytes of the answer to a valid request. */
  public byte[] bytes(JsonNode request) {
    Reading reading =
        new MarkingReader(edition)
            .read(texts(request, "markings"), texts(request, "symbols"), null, "");
    return Json.object(
        json -> {
          json.writeFieldName("device");
          json.writeRawValue(FaceMarks.device(reading).toString());
          json.writeArrayFieldStart("marks");
          for (Mark mark : reading.marks()) {
            mark(json, mark);
          }
          json.writeEndArray();
          Json.notes(json, "missing", reading.missing(), full);
          Json.notes(json, "contradictions", reading.contradictions(), full);
          List<Note> cautions = new ArrayList<>();
          cautions.add(Note.of(NoteCode.DESIGNERS_AID));
          cautions.add(Note.of(NoteCode.WORK_DEAD));
          cautions.addAll(reading.remarks());
          new AnswerJson(json, edition, full, null).close(cautions, version);
        });
  }

  private static List<String> texts(JsonNode request, String member) {
    List<String> texts = new ArrayList<>();
    request.path(member).forEach(text -> texts.add(text.textValue()));
    return texts;
  }

  private void mark(JsonGenerator json, Mark mark) throws IOException {
    json.writeStartObject();
    json.writeStringField("text", mark.text());
    Json.pointer(json, mark.at());
    json.writeStringField("kind", mark.kind());
    if (full) {
      json.writeStringField("meaning", mark.meaning());
    }
    Json.citations(json, "clauses", mark.clauses());
    json.writeEndObject();
  }
}
