package circuitverdict.service.wire;

import circuitverdict.check.Comparison;
import circuitverdict.check.Finding;
import circuitverdict.check.Sentences;
import circuitverdict.check.Verdict;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.quantity.Shown;
import circuitverdict.quantity.Unit;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** A finding as the contract writes it, in full or without prose and working. */
final class FindingJson {
  private FindingJson() {}

  static void write(JsonGenerator json, Finding finding, List<Note> besides, boolean full)
      throws IOException {
    json.writeStartObject();
    Json.word(json, Names.CHECK, finding.check().word());
    Json.word(json, Names.VERDICT, finding.verdict().word());
    json.writeBooleanField("counted", finding.counted());
    if (finding.reason() != null) {
      Json.word(json, Names.REASON, finding.reason().word());
    }
    if (full) {
      Json.text(json, Names.SUMMARY, Sentences.of(finding));
    }
    Json.citations(json, "clauses", finding.clauses());
    Json.word(json, Names.SUBJECT, finding.subject());
    if (finding.governing() != null) {
      comparison(json, finding.governing(), full);
    }
    if (full && !finding.comparisons().isEmpty()) {
      json.writeArrayFieldStart("comparisons");
      for (Comparison comparison : finding.comparisons()) {
        json.writeStartObject();
        Json.word(json, Names.SUBJECT, comparison.subject());
        comparison(json, comparison, true);
        Json.word(json, Names.VERDICT, comparison.verdict().word());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    if (full && !finding.working().isEmpty()) {
      Json.steps(json, finding.working());
    }
    Json.notes(json, "missing", finding.missing(), full);
    Json.notes(json, "remarks", join(finding.remarks(), besides), full);
    json.writeEndObject();
  }

  private static List<Note> join(List<Note> remarks, List<Note> besides) {
    if (besides.isEmpty()) {
      return remarks;
    }
    List<Note> all = new java.util.ArrayList<>(remarks);
    all.addAll(besides);
    return all;
  }

  private static void comparison(JsonGenerator json, Comparison c, boolean full)
      throws IOException {
    boolean bounded = !Double.isInfinite(c.actual().value());
    Shown shown =
        full && bounded
            ? Shown.of(c.actual().value(), c.comparator(), c.limit().value(), c.limit().unit())
            : null;
    json.writeFieldName(Names.ACTUAL);
    actual(json, c, shown);
    Json.word(json, Names.COMPARATOR, c.comparator().symbol());
    json.writeFieldName(Names.LIMIT);
    limit(json, c, shown, full);
    if (bounded) {
      Json.number(json, Names.MARGIN, margin(c.marginPercent()));
    }
  }

  private static void actual(JsonGenerator json, Comparison c, Shown shown) throws IOException {
    json.writeStartObject();
    Json.word(json, Names.SYMBOL, c.actual().symbol());
    boolean interval = c.least() != null;
    boolean decided = c.verdict() != Verdict.NOT_DETERMINED;
    if (decided || !interval) {
      value(json, "value", c.actual());
    }
    if (interval) {
      value(json, "least", c.least());
      value(json, "greatest", c.greatest());
    }
    Json.word(json, Names.UNIT, c.actual().unit().symbol());
    if (shown != null) {
      Json.text(json, Names.SHOWN, shown.actual());
    }
    json.writeEndObject();
  }

  private static void limit(JsonGenerator json, Comparison c, Shown shown, boolean full)
      throws IOException {
    json.writeStartObject();
    Json.word(json, Names.SYMBOL, c.limit().symbol());
    value(json, "value", c.limit());
    Json.word(json, Names.UNIT, c.limit().unit().symbol());
    if (full) {
      Unit unit = c.limit().unit();
      Json.text(
          json, Names.SHOWN, shown == null ? Shown.down(c.limit().value(), unit) : shown.limit());
    }
    if (c.printed() != null) {
      json.writeStringField("printed", c.printed().printed());
    }
    json.writeEndObject();
  }

  private static void value(JsonGenerator json, String name, Figure figure) throws IOException {
    if (figure.known() && !Double.isInfinite(figure.value())) {
      Json.number(json, name, figure.value());
    }
  }

  /** Rounded down to a tenth, and held inside the contract's bounds. */
  private static double margin(double percent) {
    double rounded = Math.floor(percent * 10) / 10;
    return Math.max(-1e6, Math.min(1e6, rounded));
  }
}
