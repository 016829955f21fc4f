package circuitverdict.service.wire;

import circuitverdict.check.Finding;
import circuitverdict.check.Reason;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.explain.Note;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What every selection answers by its lists, whatever it selects. */
final class Outcome {
  private static final int USUAL_LIMIT = 10;

  private Outcome() {}

  /** It complies with one selected; where something is open it is not determined. */
  static Verdict of(List<?> selected, List<?> undetermined) {
    if (!selected.isEmpty()) {
      return Verdict.COMPLIES;
    }
    return undetermined.isEmpty() ? Verdict.DOES_NOT_COMPLY : Verdict.NOT_DETERMINED;
  }

  static Reason reason(Verdict verdict) {
    return switch (verdict) {
      case COMPLIES -> null;
      case DOES_NOT_COMPLY -> Reason.NONE_SELECTED;
      default -> Reason.CHECK_NOT_DETERMINED;
    };
  }

  /** Writes one candidate with its place in its list, from 1. */
  interface Writer<T> {
    void write(T candidate, int rank) throws IOException;
  }

  /** One list cut by the request's limit and offset, and how many there are. */
  static <T> void list(
      JsonGenerator json, String name, List<T> candidates, JsonNode request, Writer<T> writer)
      throws IOException {
    int offset = request.path("offset").asInt(0);
    int to = Math.min(candidates.size(), offset + request.path("limit").asInt(USUAL_LIMIT));
    json.writeArrayFieldStart(name);
    for (int i = offset; i < to; i++) {
      writer.write(candidates.get(i), i + 1);
    }
    json.writeEndArray();
    json.writeNumberField(name + "Count", candidates.size());
  }

  /** What lacks of a candidate, over all checks that count. */
  static List<Note> missing(Result result) {
    Set<Note> missing = new LinkedHashSet<>();
    for (Finding finding : result.findings()) {
      if (finding.counted()) {
        missing.addAll(finding.missing());
      }
    }
    return List.copyOf(missing);
  }
}
