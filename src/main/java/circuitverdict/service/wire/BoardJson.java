package circuitverdict.service.wire;

import circuitverdict.check.BoardVerdict;
import circuitverdict.check.Finding;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.conductor.LineLoading;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.service.edge.ContractReader;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The answer to a board as the contract writes it. */
public final class BoardJson {
  private static final int MOST_NAMED = 4;

  private final Edition edition;
  private final String version;
  private final boolean full;

  /** Writes under an edition. */
  public BoardJson(Edition edition, String version, boolean full) {
    this.edition = edition;
    this.version = version;
    this.full = full;
  }

  /**
   * The bytes of the answer.
   *
   * @param findings what is found of the boards beside their circuits
   * @param items every circuit
   * @param points the boards as supplies
   * @param loadings what each board draws, by the place of what feeds it
   * @param unused what of the request itself is not used
   */
  public byte[] bytes(
      JsonNode body,
      Circuit.Stage stage,
      List<Finding> findings,
      List<BoardItem> items,
      List<PointSupply> points,
      Map<String, LineLoading> loadings,
      List<Note> unused) {
    BoardVerdict verdict = BoardItem.verdict(findings, items);
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, edition, full, Sourced.plain(body));
          answer.head(stage, verdict.verdict(), verdict.reason(), sentence(findings, items));
          answer.findings(findings, List.of());
          json.writeArrayFieldStart("circuits");
          for (int i = 0; i < items.size(); i++) {
            item(json, i + 1, items.get(i));
          }
          json.writeEndArray();
          totals(json, loadings);
          points(json, points);
          notes(json, findings, points);
          answer.foot(unused, version);
        });
  }

  private void item(JsonGenerator json, int line, BoardItem item) throws IOException {
    json.writeStartObject();
    json.writeNumberField("line", line);
    json.writeStringField("pointer", item.node().place());
    Json.text(json, "reference", item.node().reference());
    if (item.answer() == null) {
      json.writeFieldName("problem");
      ContractReader.problem(item.node().faults()).write(json);
    } else {
      json.writeStringField("etag", item.etag());
      json.writeFieldName("answer");
      json.writeRawValue(new RawJson(item.answer()));
    }
    if (!item.selectivity().isEmpty()) {
      json.writeArrayFieldStart("selectivity");
      for (BoardItem.Upstream upstream : item.selectivity()) {
        json.writeStartObject();
        json.writeStringField("pointer", upstream.place());
        json.writeFieldName("finding");
        FindingJson.write(json, upstream.finding(), List.of(), full);
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  /** What the boards draw, line by line. */
  private void totals(JsonGenerator json, Map<String, LineLoading> loadings) throws IOException {
    json.writeArrayFieldStart("totals");
    for (Map.Entry<String, LineLoading> board : loadings.entrySet()) {
      json.writeStartObject();
      json.writeStringField("pointer", board.getKey());
      json.writeArrayFieldStart("lines");
      for (LineLoading.Line line : board.getValue().lines()) {
        json.writeStartObject();
        json.writeNumberField("line", line.number());
        amperes(json, "connectedA", line.connected());
        amperes(json, "demandA", line.demand());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void amperes(JsonGenerator json, String name, Figure figure) throws IOException {
    if (figure.known()) {
      Json.number(json, name, figure.value());
    }
  }

  private void points(JsonGenerator json, List<PointSupply> points) throws IOException {
    if (points.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("points");
    for (PointSupply point : points) {
      point.write(json, full);
    }
    json.writeEndArray();
  }

  private void notes(JsonGenerator json, List<Finding> findings, List<PointSupply> points)
      throws IOException {
    Set<Note> assumptions = new LinkedHashSet<>();
    Set<Note> missing = new LinkedHashSet<>();
    for (Finding finding : findings) {
      assumptions.addAll(finding.assumptions());
      missing.addAll(finding.missing());
    }
    for (PointSupply point : points) {
      assumptions.addAll(point.assumptions());
      missing.addAll(point.missing());
    }
    Json.notes(json, "assumptions", NetworkJson.most(assumptions), full);
    Json.notes(json, "missing", NetworkJson.most(missing), full);
  }

  private static String sentence(List<Finding> findings, List<BoardItem> items) {
    List<String> failing = new ArrayList<>();
    int complying = 0;
    int refused = 0;
    for (BoardItem item : items) {
      Verdict verdict = item.result() == null ? null : item.result().verdict();
      complying += verdict == Verdict.COMPLIES ? 1 : 0;
      refused += verdict == null ? 1 : 0;
      if (verdict == Verdict.DOES_NOT_COMPLY) {
        String name = item.node().reference();
        failing.add(name == null ? "line " + (items.indexOf(item) + 1) : name);
      }
    }
    int open = items.size() - complying - refused - failing.size();
    StringBuilder text = new StringBuilder();
    text.append(complying).append(" of ").append(items.size()).append(" circuits comply");
    if (!failing.isEmpty()) {
      text.append("; ").append(failing.size()).append(" not: ").append(few(failing));
    }
    text.append(open == 0 ? "" : "; " + open + " not determined");
    text.append(refused == 0 ? "" : "; " + refused + " not valid");
    for (Finding finding : findings) {
      if (finding.counted() && finding.verdict() == Verdict.DOES_NOT_COMPLY) {
        text.append("; ").append(finding.check().title()).append(" does not comply");
        break;
      }
    }
    return text.append('.').toString();
  }

  private static String few(List<String> names) {
    String first = String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size())));
    return names.size() > MOST_NAMED ? first + " and others" : first;
  }
}
