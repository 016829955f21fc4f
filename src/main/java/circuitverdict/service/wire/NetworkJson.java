package circuitverdict.service.wire;

import circuitverdict.check.Reason;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.fault.FaultNetwork.Point;
import circuitverdict.quantity.Shown;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Fault currents at points as the contract writes them: each point a supply for the next call. */
public final class NetworkJson {
  private final Edition edition;
  private final String version;
  private final boolean full;

  /** Writes points under an edition. */
  public NetworkJson(Edition edition, String version, boolean full) {
    this.edition = edition;
    this.version = version;
    this.full = full;
  }

  /** The bytes of the answer. */
  public byte[] bytes(JsonNode body, Circuit.Stage stage, List<Point> points, List<Note> unused) {
    List<PointSupply> supplies = PointSupply.of(body.path("supply"), points);
    long open = supplies.stream().filter(each -> !each.missing().isEmpty()).count();
    return Json.object(
        json -> {
          AnswerJson answer = new AnswerJson(json, edition, full, Sourced.plain(body));
          answer.head(
              stage,
              open == 0 ? Verdict.COMPLIES : Verdict.NOT_DETERMINED,
              open == 0 ? null : Reason.MISSING_INPUT,
              open == 0 ? known(points) : unknown(open, points.size()));
          json.writeArrayFieldStart("points");
          for (PointSupply supply : supplies) {
            supply.write(json, full);
          }
          json.writeEndArray();
          notes(json, points, supplies);
          answer.foot(unused, version);
        });
  }

  private static String known(List<Point> points) {
    Point last = points.get(points.size() - 1);
    Figure greatest = points.get(0).currents().any();
    Figure least = last.currents().earth().least();
    String end = last.reference() == null ? "the last point" : "the end of " + last.reference();
    return "At the supply no fault current exceeds "
        + Shown.up(greatest.value(), Unit.AMPERE)
        + " A"
        + (least.known()
            ? ", and at "
                + end
                + " an earth fault draws at least "
                + Shown.down(least.value(), Unit.AMPERE)
                + " A."
            : ".");
  }

  private static String unknown(long open, int all) {
    return "At " + open + " of " + all + " points something is missing that the figures need.";
  }

  private void notes(JsonGenerator json, List<Point> points, List<PointSupply> supplies)
      throws IOException {
    Set<Note> assumptions = new LinkedHashSet<>();
    Set<Note> missing = new LinkedHashSet<>();
    for (Point point : points) {
      assumptions.addAll(point.dossier().assumptions());
    }
    supplies.forEach(each -> missing.addAll(each.missing()));
    Json.notes(json, "assumptions", most(assumptions), full);
    Json.notes(json, "missing", most(missing), full);
  }

  static List<Note> most(Set<Note> notes) {
    return notes.stream().limit(100).toList();
  }
}
