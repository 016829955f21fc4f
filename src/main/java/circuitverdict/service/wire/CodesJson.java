package circuitverdict.service.wire;

import circuitverdict.check.CheckName;
import circuitverdict.check.Reason;
import circuitverdict.check.Verdict;
import circuitverdict.explain.NoteCode;
import circuitverdict.service.edge.FaultCode;
import circuitverdict.service.edge.ProblemCatalogue;
import circuitverdict.standard.Marks;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The catalogue of every code and listed value, with its meaning. */
public final class CodesJson {
  private CodesJson() {}

  /** The bytes of the catalogue; {@code lists} holds the contract's closed lists by member. */
  public static byte[] bytes(Map<String, List<String>> lists, Marks marks) {
    return Json.object(
        json -> {
          json.writeArrayFieldStart("checks");
          for (CheckName check : CheckName.values()) {
            code(json, check.word(), check.question());
          }
          json.writeEndArray();
          json.writeArrayFieldStart("verdicts");
          for (Verdict verdict : Verdict.values()) {
            code(json, verdict.word(), verdict.meaning());
          }
          json.writeEndArray();
          json.writeArrayFieldStart("reasons");
          for (Reason reason : Reason.values()) {
            code(json, reason.word(), reason.meaning());
          }
          json.writeEndArray();
          json.writeArrayFieldStart("notes");
          for (NoteCode note : NoteCode.values()) {
            code(json, note.code(), note.text());
          }
          json.writeEndArray();
          errors(json);
          json.writeArrayFieldStart("marks");
          for (Map.Entry<String, Marks.Kind> kind : marks.kinds().entrySet()) {
            code(json, kind.getKey(), kind.getValue().meaning());
          }
          json.writeEndArray();
          json.writeArrayFieldStart("symbols");
          for (Map.Entry<String, Marks.Word> symbol : marks.symbols().entrySet()) {
            code(json, symbol.getKey(), symbol.getValue().meaning());
          }
          json.writeEndArray();
          values(json, lists);
        });
  }

  private static void errors(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("errors");
    for (FaultCode fault : FaultCode.values()) {
      code(json, fault.code(), fault.meaning());
    }
    code(json, Contradictions.CONTRADICTION, "Two facts of the request cannot both be true.");
    code(json, Contradictions.EDITION_REQUIRED, "At sign-off the edition must be named.");
    json.writeEndArray();
    json.writeArrayFieldStart("problems");
    for (ProblemCatalogue problem : ProblemCatalogue.values()) {
      code(json, problem.slug(), problem.meaning());
    }
    json.writeEndArray();
  }

  private static void values(JsonGenerator json, Map<String, List<String>> lists)
      throws IOException {
    json.writeArrayFieldStart("values");
    for (Map.Entry<String, List<String>> list : new TreeMap<>(lists).entrySet()) {
      json.writeStartObject();
      json.writeStringField("member", list.getKey());
      json.writeArrayFieldStart("values");
      for (String value : list.getValue()) {
        json.writeString(value);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void code(JsonGenerator json, String code, String meaning) throws IOException {
    json.writeStartObject();
    json.writeStringField("code", code);
    json.writeStringField("meaning", meaning);
    json.writeEndObject();
  }
}
