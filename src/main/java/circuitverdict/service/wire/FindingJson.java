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
import java.util.ArrayList;
import java.util.List;

/**
 * A finding as the contract writes it, in full or without prose and working. What recurs is written
 * in {@link Stretches}.
 */
final class FindingJson {
  private final Out out;
  private final Finding finding;
  private final boolean full;

  /** Where the figures of the governing comparison stand, which the list tells again. */
  private int from;

  private int to;

  private FindingJson(Out out, Finding finding, boolean full) {
    this.out = out;
    this.finding = finding;
    this.full = full;
  }

  static void write(JsonGenerator json, Finding finding, List<Note> besides, boolean full)
      throws IOException {
    new FindingJson(Json.value(json), finding, full).write(besides);
  }

  private void write(List<Note> besides) {
    out.put(Stretches.finding(finding.check(), finding.verdict(), finding.counted()));
    if (finding.reason() != null) {
      out.put(Stretches.reason(finding.reason()));
    }
    Comparison governing = finding.governing();
    Shown shown = full && governing != null ? governing.shown() : null;
    if (full) {
      out.put(Stretches.SUMMARY).quoted(Sentences.of(finding, shown));
    }
    out.put(Stretches.CLAUSES);
    Json.citations(out, finding.clauses());
    out.put(',').put(Stretches.subject(finding.subject()));
    if (governing != null) {
      from = out.size();
      comparison(governing, shown);
      to = out.size();
    }
    if (full && !finding.comparisons().isEmpty()) {
      comparisons();
    }
    if (full && !finding.working().isEmpty()) {
      out.put(Stretches.WORKING);
      StepJson.array(out, finding.working());
    }
    notes(Stretches.MISSING, finding.missing());
    notes(Stretches.REMARKS, join(finding.remarks(), besides));
    out.put('}');
  }

  private void notes(byte[] before, List<Note> notes) {
    if (!notes.isEmpty()) {
      out.put(before);
      NoteJson.array(out, notes, full);
    }
  }

  private static List<Note> join(List<Note> remarks, List<Note> besides) {
    if (besides.isEmpty()) {
      return remarks;
    }
    List<Note> all = new ArrayList<>(remarks);
    all.addAll(besides);
    return all;
  }

  private void comparisons() {
    out.put(Stretches.COMPARISONS);
    List<Comparison> comparisons = finding.comparisons();
    for (int i = 0; i < comparisons.size(); i++) {
      Comparison each = comparisons.get(i);
      if (i > 0) {
        out.put(',');
      }
      out.put('{').put(Stretches.subject(each.subject()));
      if (each == finding.governing()) {
        out.again(from, to);
      } else {
        comparison(each, each.shown());
      }
      out.put(Stretches.verdict(each.verdict())).put('}');
    }
    out.put(']');
  }

  /** Goes on in an object with what is compared. */
  private void comparison(Comparison c, Shown shown) {
    out.put(Stretches.ACTUAL);
    actual(c, shown);
    out.put(Stretches.comparator(c.comparator())).put(Stretches.LIMIT);
    limit(c, shown);
    if (bounded(c)) {
      out.put(Stretches.MARGIN).number(margin(c.marginPercent()));
    }
  }

  private void actual(Comparison c, Shown shown) {
    out.put(Stretches.figure(c.actual().symbol()));
    boolean interval = c.least() != null;
    boolean decided = c.verdict() != Verdict.NOT_DETERMINED;
    if (decided || !interval) {
      value(Stretches.VALUE, c.actual());
    }
    if (interval) {
      value(Stretches.LEAST, c.least());
      value(Stretches.GREATEST, c.greatest());
    }
    out.put(Stretches.unit(c.actual().unit()));
    if (shown != null) {
      shown(shown.actual());
    }
    out.put('}');
  }

  private void limit(Comparison c, Shown shown) {
    Unit unit = c.limit().unit();
    out.put(Stretches.figure(c.limit().symbol()));
    value(Stretches.VALUE, c.limit());
    out.put(Stretches.unit(unit));
    if (full) {
      shown(shown == null ? Shown.down(c.limit().value(), unit) : shown.limit());
    }
    if (c.printed() != null) {
      out.put(Stretches.PRINTED).quoted(c.printed().printed());
    }
    out.put('}');
  }

  private void value(byte[] before, Figure figure) {
    if (figure.known() && !Double.isInfinite(figure.value())) {
      out.put(before).number(figure.value());
    }
  }

  private void shown(String text) {
    out.put(Stretches.SHOWN).plain(text).put('"');
  }

  private static boolean bounded(Comparison c) {
    return !Double.isInfinite(c.actual().value());
  }

  /** Rounded down to a tenth, and held inside the contract's bounds. */
  private static double margin(double percent) {
    double rounded = Math.floor(percent * 10) / 10;
    return Math.max(-1e6, Math.min(1e6, rounded));
  }
}
