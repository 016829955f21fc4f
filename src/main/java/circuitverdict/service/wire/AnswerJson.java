package circuitverdict.service.wire;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.check.Reason;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.select.Limit;
import circuitverdict.select.Remedy;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The members that every answer bearing a verdict has. */
public final class AnswerJson {
  private final JsonGenerator json;
  private final Edition edition;
  private final boolean full;
  private final Sourced request;

  /** Writes into an object already begun the answer to a request; null where it is a list. */
  public AnswerJson(JsonGenerator json, Edition edition, boolean full, Sourced request) {
    this.request = request;
    this.json = json;
    this.edition = edition;
    this.full = full;
  }

  /** Reference and stage echoed, verdict, reason and summary. */
  public void head(Circuit.Stage stage, Verdict verdict, Reason reason, String summary)
      throws IOException {
    JsonNode reference = request == null ? null : request.body().path("reference");
    Json.text(json, "reference", reference == null ? null : reference.textValue());
    if (stage != null) {
      json.writeStringField("stage", stage.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
    json.writeStringField("verdict", verdict.word());
    if (reason != null) {
      json.writeStringField("reason", reason.word());
    }
    if (full) {
      json.writeStringField("summary", summary);
    }
  }

  /** The findings; in full a failed check without a remedy says so. */
  public void findings(List<Finding> findings, List<Remedy> remedies) throws IOException {
    findings(findings, remedies, NoteCode.NO_REMEDY);
  }

  /** The same, with what is said of a failure without a remedy. */
  void findings(List<Finding> findings, List<Remedy> remedies, NoteCode without)
      throws IOException {
    json.writeArrayFieldStart("findings");
    for (Finding finding : findings) {
      boolean failed = finding.counted() && finding.verdict() == Verdict.DOES_NOT_COMPLY;
      boolean open = full && failed && !mends(remedies, finding.check());
      List<Note> besides = open ? List.of(Note.of(without)) : List.of();
      FindingJson.write(json, finding, besides, full);
    }
    json.writeEndArray();
  }

  private static boolean mends(List<Remedy> remedies, CheckName check) {
    for (Remedy remedy : remedies) {
      if (remedy.mends().contains(check)) {
        return true;
      }
    }
    return false;
  }

  /** Limits solved backwards. */
  public void limits(List<Limit> limits) throws IOException {
    if (!full || limits.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("limits");
    for (Limit limit : limits) {
      json.writeStartObject();
      json.writeStringField("pointer", limit.pointer().text());
      json.writeStringField("comparator", "<=");
      Json.number(json, "value", limit.value());
      json.writeStringField("unit", limit.unit().symbol());
      json.writeStringField("governedBy", limit.governedBy().word());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Remedies. */
  public void remedies(List<Remedy> remedies) throws IOException {
    if (!full || remedies.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("remedies");
    for (Remedy remedy : remedies.subList(0, Math.min(20, remedies.size()))) {
      json.writeStartObject();
      json.writeFieldName("change");
      ChangeJson.write(json, remedy.change());
      json.writeArrayFieldStart("mends");
      for (var check : remedy.mends()) {
        json.writeString(check.word());
      }
      json.writeEndArray();
      json.writeStringField("summary", remedy.change().words());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** What was assumed and what is missing over all findings, each once. */
  public void notes(List<Finding> findings) throws IOException {
    Set<Note> assumptions = new LinkedHashSet<>();
    Set<Note> missing = new LinkedHashSet<>();
    PointSupply source = request.source();
    if (source != null) {
      json.writeArrayFieldStart("points");
      source.write(json, full);
      json.writeEndArray();
      assumptions.addAll(source.assumptions());
      missing.addAll(source.missing());
    }
    for (Finding finding : findings) {
      assumptions.addAll(finding.assumptions());
      missing.addAll(finding.missing());
    }
    Json.notes(json, "assumptions", new ArrayList<>(assumptions), full);
    Json.notes(json, "missing", new ArrayList<>(missing), full);
  }

  /** Cautions, the edition used and the service's version. */
  public void foot(List<Note> unused, String version) throws IOException {
    List<Note> cautions = new ArrayList<>();
    cautions.add(Note.of(NoteCode.DESIGNERS_AID));
    cautions.add(Note.of(NoteCode.WORK_DEAD));
    cautions.add(Note.of(NoteCode.CHECKS_NOT_MADE));
    cautions.addAll(unused);
    if (request != null) {
      cautions.addAll(request.unused());
    }
    close(cautions, version);
  }

  /** The same with other cautions. */
  void close(List<Note> cautions, String version) throws IOException {
    Json.notes(json, "cautions", cautions, full);
    json.writeObjectFieldStart("edition");
    json.writeStringField("id", edition.id());
    json.writeStringField("tablesDigest", edition.digest());
    json.writeEndObject();
    json.writeObjectFieldStart("service");
    json.writeStringField("version", version);
    json.writeEndObject();
  }
}
