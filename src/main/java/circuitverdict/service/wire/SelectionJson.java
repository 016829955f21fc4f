package circuitverdict.service.wire;

import circuitverdict.check.Finding;
import circuitverdict.check.Reason;
import circuitverdict.check.Sentences;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.Residual;
import circuitverdict.explain.Note;
import circuitverdict.quantity.Shown;
import circuitverdict.select.DeviceSelection.Candidate;
import circuitverdict.select.DeviceSelection.Order;
import circuitverdict.select.DeviceSelection.Selection;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A selection as the contract writes it. */
public final class SelectionJson {
  private static final int USUAL_LIMIT = 10;

  private final Edition edition;
  private final String version;
  private final boolean full;

  /** Writes selections under an edition. */
  public SelectionJson(Edition edition, String version, boolean full) {
    this.edition = edition;
    this.version = version;
    this.full = full;
  }

  /** A word of the contract's ranking. */
  public static Order order(String word) {
    return Members.constant(Order.class, word);
  }

  /** The bytes of the answer. */
  public byte[] bytes(JsonNode request, Circuit circuit, Selection selection, List<Note> unused) {
    int limit = request.path("limit").asInt(USUAL_LIMIT);
    int offset = request.path("offset").asInt(0);
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, edition, full);
          Verdict verdict = verdict(selection);
          answer.head(request, circuit.stage(), verdict, reason(verdict), summary(selection));
          candidates(json, "selected", selection.selected(), limit, offset);
          candidates(json, "undetermined", selection.undetermined(), limit, offset);
          candidates(json, "rejected", selection.rejected(), limit, offset);
          answer.remedies(selection.remedies());
          answer.notes(deciding(selection));
          answer.foot(unused, version);
        });
  }

  private static Verdict verdict(Selection selection) {
    if (!selection.selected().isEmpty()) {
      return Verdict.COMPLIES;
    }
    return selection.undetermined().isEmpty() ? Verdict.DOES_NOT_COMPLY : Verdict.NOT_DETERMINED;
  }

  private static Reason reason(Verdict verdict) {
    return switch (verdict) {
      case COMPLIES -> null;
      case DOES_NOT_COMPLY -> Reason.NONE_SELECTED;
      default -> Reason.CHECK_NOT_DETERMINED;
    };
  }

  private static String summary(Selection selection) {
    if (!selection.selected().isEmpty()) {
      return "Fit "
          + name(selection.selected().get(0).device())
          + "; "
          + selection.selected().size()
          + " devices of the series pass every check made.";
    }
    if (!selection.undetermined().isEmpty()) {
      return Sentences.of(selection.undetermined().get(0).decidedBy());
    }
    return "No device of the standard series passes every check made.";
  }

  /** Type and rating, capacity and class, as they are read off the face. */
  private static String name(Breaker device) {
    Residual residual = device.data().residual();
    return device.characteristic()
        + Shown.plain(device.data().ratedCurrentA())
        + ", "
        + Shown.plain(device.data().breakingCapacityA())
        + " A"
        + (residual == null
            ? ""
            : ", "
                + Shown.plain(1000 * residual.operatingCurrentA())
                + " mA type "
                + residual.type());
  }

  /** The findings whose notes the answer gathers: those that decided. */
  private static List<Finding> deciding(Selection selection) {
    List<Finding> findings = new ArrayList<>();
    List<Candidate> first =
        !selection.selected().isEmpty() ? selection.selected() : selection.undetermined();
    if (!first.isEmpty()) {
      findings.addAll(first.get(0).result().findings());
    }
    return findings;
  }

  private void candidates(
      JsonGenerator json, String name, List<Candidate> candidates, int limit, int offset)
      throws IOException {
    json.writeArrayFieldStart(name);
    int to = Math.min(candidates.size(), offset + limit);
    for (int i = offset; i < to; i++) {
      candidate(json, candidates.get(i), i + 1);
    }
    json.writeEndArray();
    json.writeNumberField(name + "Count", candidates.size());
  }

  private void candidate(JsonGenerator json, Candidate candidate, int rank) throws IOException {
    json.writeStartObject();
    if (candidate.result().verdict() == Verdict.COMPLIES) {
      json.writeNumberField("rank", rank);
    }
    json.writeFieldName("device");
    device(json, candidate.device());
    json.writeStringField("verdict", candidate.result().verdict().word());
    json.writeFieldName("decidedBy");
    FindingJson.write(json, candidate.decidedBy(), List.of(), full);
    if (full) {
      json.writeStringField(
          "summary", name(candidate.device()) + ": " + Sentences.of(candidate.decidedBy()));
    }
    json.writeEndObject();
  }

  private static void device(JsonGenerator json, Breaker device) throws IOException {
    json.writeStartObject();
    json.writeStringField("standard", device.data().standard());
    json.writeStringField("characteristic", device.characteristic());
    Json.number(json, "ratedCurrentA", device.data().ratedCurrentA());
    Json.number(json, "breakingCapacityA", device.data().breakingCapacityA());
    json.writeNumberField("energyClass", device.energyClass());
    if (device.data().poles() != null) {
      json.writeNumberField("poles", device.data().poles());
    }
    if (device.data().nameplate().protectedPoles() != null) {
      json.writeNumberField("protectedPoles", device.data().nameplate().protectedPoles());
    }
    if (device.data().nameplate().ratedVoltageV() != null) {
      Json.number(json, "ratedVoltageV", device.data().nameplate().ratedVoltageV());
    }
    Residual residual = device.data().residual();
    if (residual != null) {
      json.writeObjectFieldStart("residual");
      Json.number(json, "operatingCurrentA", residual.operatingCurrentA());
      json.writeStringField("type", residual.type().name());
      json.writeStringField("delay", "general");
      json.writeEndObject();
    }
    json.writeEndObject();
  }
}
