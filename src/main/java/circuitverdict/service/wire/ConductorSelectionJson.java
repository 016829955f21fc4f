package circuitverdict.service.wire;

import circuitverdict.check.Finding;
import circuitverdict.check.Sentences;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Note;
import circuitverdict.quantity.Shown;
import circuitverdict.select.ConductorSelection.Candidate;
import circuitverdict.select.ConductorSelection.Selection;
import circuitverdict.select.CostWeights;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;

/** A selection of conductors as the contract writes it. */
public final class ConductorSelectionJson {
  private final Edition edition;
  private final String version;
  private final boolean full;

  /** Writes selections under an edition. */
  public ConductorSelectionJson(Edition edition, String version, boolean full) {
    this.edition = edition;
    this.version = version;
    this.full = full;
  }

  /** What the caller says of cost; null where that is nothing. */
  public static CostWeights weights(JsonNode request) {
    JsonNode weights = request.at("/preferences/weights");
    if (weights.isEmpty()) {
      return null;
    }
    return new CostWeights(
        weight(weights, "live-conductor"),
        weight(weights, "protective-conductor"),
        weight(weights, "device"));
  }

  private static double weight(JsonNode weights, String of) {
    for (JsonNode each : weights) {
      if (each.path("of").asText("").equals(of)) {
        return each.path("value").doubleValue();
      }
    }
    return 0;
  }

  /** The bytes of the answer. */
  public byte[] bytes(Sourced sourced, Circuit circuit, Selection selection, List<Note> unused) {
    JsonNode request = sourced.body();
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, edition, full, sourced);
          Verdict verdict = Outcome.of(selection.selected(), selection.undetermined());
          answer.head(circuit.stage(), verdict, Outcome.reason(verdict), summary(selection));
          Outcome.Writer<Candidate> writer = (each, rank) -> candidate(json, each, rank);
          Outcome.list(json, "selected", selection.selected(), request, writer);
          Outcome.list(json, "undetermined", selection.undetermined(), request, writer);
          Outcome.list(json, "rejected", selection.rejected(), request, writer);
          answer.notes(first(selection));
          answer.foot(unused, version);
        });
  }

  private static String summary(Selection selection) {
    if (!selection.selected().isEmpty()) {
      Candidate best = selection.selected().get(0);
      int passing = selection.selected().size();
      return "Run "
          + name(best)
          + "; "
          + passing
          + " of the "
          + selection.count()
          + " sizes"
          + (passing == 1 ? " passes every check made." : " pass every check made.");
    }
    return selection.undetermined().isEmpty()
        ? "None of the " + selection.count() + " sizes passes every check made."
        : Sentences.of(selection.undetermined().get(0).decidedBy());
  }

  private static List<Finding> first(Selection selection) {
    List<Candidate> list =
        selection.selected().isEmpty() ? selection.undetermined() : selection.selected();
    return list.isEmpty() ? List.of() : list.get(0).result().findings();
  }

  private void candidate(JsonGenerator json, Candidate candidate, int rank) throws IOException {
    Verdict verdict = candidate.result().verdict();
    json.writeStartObject();
    if (verdict == Verdict.COMPLIES) {
      json.writeNumberField("rank", rank);
    }
    cable(json, candidate);
    if (candidate.device() != null) {
      ListedSeries.device(json, (Breaker) candidate.device());
    }
    if (candidate.cost() != null) {
      json.writeObjectFieldStart("cost");
      json.writeStringField("symbol", "K");
      Json.number(json, "value", candidate.cost());
      json.writeStringField("unit", "1");
      json.writeEndObject();
    }
    json.writeStringField("verdict", verdict.word());
    json.writeFieldName("decidedBy");
    FindingJson.write(json, candidate.decidedBy(), List.of(), full);
    if (full) {
      json.writeStringField(
          "summary", name(candidate) + ": " + Sentences.of(candidate.decidedBy()));
    }
    if (verdict == Verdict.NOT_DETERMINED) {
      Json.notes(json, "missing", Outcome.missing(candidate.result()), full);
    }
    json.writeEndObject();
  }

  private static void cable(JsonGenerator json, Candidate candidate) throws IOException {
    Cable cable = candidate.cable();
    json.writeObjectFieldStart("cable");
    Json.number(json, "lineCsaMm2", cable.lineCsaMm2());
    number(json, "neutralCsaMm2", cable.neutralCsaMm2());
    number(json, "protectiveCsaMm2", cable.protectiveCsaMm2());
    if (candidate.lengthSolved() && candidate.result().verdict() == Verdict.COMPLIES) {
      Json.number(json, "lengthM", cable.lengthM());
    }
    json.writeEndObject();
  }

  private static void number(JsonGenerator json, String name, Double value) throws IOException {
    if (value != null) {
      Json.number(json, name, value);
    }
  }

  /** Line and protective conductor as the trade writes them, and the length that was solved. */
  private static String name(Candidate candidate) {
    Cable cable = candidate.cable();
    Double protective = cable.protectiveCsaMm2();
    boolean solved = candidate.lengthSolved() && candidate.result().verdict() == Verdict.COMPLIES;
    return Shown.plain(cable.lineCsaMm2())
        + (protective == null ? "" : "/" + Shown.plain(protective))
        + " mm²"
        + (solved ? " up to " + Shown.plain(cable.lengthM()) + " m" : "");
  }
}
