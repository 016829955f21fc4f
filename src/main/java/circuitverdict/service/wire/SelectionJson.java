package circuitverdict.service.wire;

import circuitverdict.check.Finding;
import circuitverdict.check.Sentences;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.select.Designation;
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
  private final Edition edition;
  private final String version;
  private final boolean full;
  private final Listed listed;

  private SelectionJson(Edition edition, String version, boolean full, Listed listed) {
    this.edition = edition;
    this.version = version;
    this.full = full;
    this.listed = listed;
  }

  /** Writes selections of the standard series under an edition. */
  public static SelectionJson ofSeries(Edition edition, String version, boolean full) {
    return new SelectionJson(edition, version, full, new ListedSeries());
  }

  /** Writes selections of a caller's products under an edition. */
  public static SelectionJson of(Products products, Edition edition, String version, boolean full) {
    return new SelectionJson(edition, version, full, products);
  }

  /** A word of the contract's ranking. */
  public static Order order(String word) {
    return Members.constant(Order.class, word);
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
          answer.remedies(selection.remedies());
          answer.notes(deciding(selection));
          answer.foot(unused, version);
        });
  }

  private String summary(Selection selection) {
    if (!selection.selected().isEmpty()) {
      int passing = selection.selected().size();
      return "Fit "
          + Designation.of(selection.selected().get(0))
          + "; "
          + passing
          + " of the "
          + selection.count()
          + " "
          + listed.name()
          + (passing == 1 ? " passes every check made." : " pass every check made.");
    }
    if (!selection.undetermined().isEmpty()) {
      return Sentences.of(selection.undetermined().get(0).decidedBy());
    }
    return "None of the " + selection.count() + " " + listed.name() + " passes every check made.";
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

  private void candidate(JsonGenerator json, Candidate candidate, int rank) throws IOException {
    json.writeStartObject();
    if (candidate.result().verdict() == Verdict.COMPLIES) {
      json.writeNumberField("rank", rank);
    }
    listed.write(json, candidate);
    json.writeStringField("verdict", candidate.result().verdict().word());
    json.writeFieldName("decidedBy");
    FindingJson.write(json, candidate.decidedBy(), List.of(), full);
    if (full) {
      json.writeStringField(
          "summary", Designation.of(candidate) + ": " + Sentences.of(candidate.decidedBy()));
    }
    if (candidate.result().verdict() == Verdict.NOT_DETERMINED) {
      Json.notes(json, "missing", Outcome.missing(candidate.result()), full);
    }
    Json.notes(json, "remarks", listed.remarks(candidate), full);
    json.writeEndObject();
  }
}
