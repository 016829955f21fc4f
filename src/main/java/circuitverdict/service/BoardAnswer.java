package circuitverdict.service;

import circuitverdict.check.BoardCheck;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Selectivity;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Feeder;
import circuitverdict.conductor.DropFromOrigin;
import circuitverdict.conductor.LineLoading;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Note;
import circuitverdict.explain.Working;
import circuitverdict.fault.EarthElectrode;
import circuitverdict.fault.FaultNetwork;
import circuitverdict.service.CircuitAnswer.Judged;
import circuitverdict.service.edge.BoardBody;
import circuitverdict.service.edge.Representation;
import circuitverdict.service.wire.BoardComposer;
import circuitverdict.service.wire.BoardItem;
import circuitverdict.service.wire.BoardItem.Upstream;
import circuitverdict.service.wire.BoardJson;
import circuitverdict.service.wire.BoardNode;
import circuitverdict.service.wire.BoardPlace;
import circuitverdict.service.wire.BoardPlace.Before;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.service.wire.PointSupply;
import circuitverdict.service.wire.Sourced;
import circuitverdict.service.wire.UnusedMembers;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A board and those that it feeds: what each draws is found from the far ends to the origin, then
 * supply and voltage drop are carried down and each circuit is judged as a request of its own.
 */
public final class BoardAnswer {
  private static final Selectivity SELECTIVITY = new Selectivity();

  private final JsonNode whole;
  private final BoardNode root;
  private final Edition edition;
  private final String version;
  private final boolean full;
  private final Circuit.Stage stage;
  private final CircuitAnswer single;
  private final BoardComposer composer;
  private final Map<String, BoardCheck> checks = new LinkedHashMap<>();
  private final Map<String, PointSupply> points = new LinkedHashMap<>();
  private final Map<String, LineLoading> loadings = new LinkedHashMap<>();
  private final List<BoardItem> items = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private boolean answers = true;

  /** Answers a board whose own statements are valid. */
  public BoardAnswer(BoardBody body, Edition edition, String version, boolean full) {
    this.whole = body.whole();
    this.root = BoardNode.of(body);
    this.edition = edition;
    this.version = version;
    this.full = full;
    this.stage = CircuitMapping.circuit(whole).stage();
    this.single = new CircuitAnswer(edition, version, CircuitCheck.all());
    this.composer = new BoardComposer(whole, edition);
  }

  /**
   * What is found of a board, without answers to its circuits.
   *
   * @param findings of the boards
   * @param items every circuit
   */
  public record Found(List<Finding> findings, List<BoardItem> items) {}

  /** What is found alone. */
  public Found found() {
    answers = false;
    judge();
    return new Found(findings, items);
  }

  /** The bytes of the answer. */
  public byte[] bytes() {
    judge();
    return new BoardJson(edition, version, full)
        .bytes(
            whole,
            stage,
            findings,
            items,
            new ArrayList<>(points.values()),
            loadings,
            UnusedMembers.ofBoard(whole));
  }

  private void judge() {
    BoardPlace place = BoardPlace.root(root, edition);
    load(place);
    network(place);
    if (whole.has("cable")) {
      Judged own = one(composer.first(place, source()), List.of());
      items.add(item(root, own, List.of()));
      judge(place, fed(place, own.circuit()));
    } else {
      judge(place, source());
    }
  }

  /** From the far ends: what a board draws is the load of the circuit that feeds it. */
  private void load(BoardPlace place) {
    for (BoardNode way : place.node().ways()) {
      if (way.feedsBoard()) {
        load(place.below(way));
      }
    }
    BoardCheck check = BoardCheck.of(composer.board(place), composer.loadings(), edition, full);
    checks.put(place.node().place(), check);
    composer.keep(check.board(), check.loading());
  }

  /** Fault levels at the boards; where the stated supply feeds all circuits it serves as it is. */
  private void network(BoardPlace place) {
    Set<String> boards = new TreeSet<>();
    boards(root, boards);
    List<Feeder> feeders = CircuitMapping.boards(whole, boards::contains);
    boolean source = whole.path("supply").has("transformer");
    if (feeders.isEmpty() && !source) {
      return;
    }
    List<FaultNetwork.Point> found =
        FaultNetwork.points(
            CircuitMapping.circuit(whole), feeders, edition, CircuitCheck.allowance(stage), full);
    for (PointSupply point : PointSupply.of(whole.path("supply"), found)) {
      points.put(point.at().text(), point);
    }
  }

  private static void boards(BoardNode node, Set<String> boards) {
    for (BoardNode way : node.ways()) {
      if (way.feedsBoard() && way.valid()) {
        boards.add(way.place());
        boards(way, boards);
      }
    }
  }

  private JsonNode source() {
    JsonNode stated = whole.path("supply");
    if (!stated.has("transformer")) {
      return stated;
    }
    double drop = stated.path("voltageDropPercent").asDouble(Double.NaN);
    double electrode = Sourced.electrode(CircuitMapping.circuit(whole), edition);
    return points.get("/supply").withDrop(drop).withElectrode(electrode).supply();
  }

  /** The supply at the far end of a circuit, with voltage drop and electrode up to there. */
  private JsonNode fed(BoardPlace place, Circuit feeder) {
    PointSupply point = points.get(place.node().place() + "/cable");
    if (point == null) {
      return composer.unknown(place);
    }
    Dossier d = new Dossier(edition, CircuitCheck.allowance(stage), Working.silent());
    return point
        .withDrop(DropFromOrigin.atFarEnd(feeder, d).value())
        .withElectrode(EarthElectrode.withConductors(feeder, d).value())
        .supply();
  }

  private void judge(BoardPlace board, JsonNode supply) {
    Circuit here = CircuitMapping.circuit(((ObjectNode) whole).objectNode().set("supply", supply));
    BoardCheck check = checks.get(board.node().place());
    if (board.node().valid()) {
      findings.addAll(check.findings(here.supply(), composer.boards()));
      loadings.put(board.node().place(), check.loading());
    }
    for (BoardNode way : board.node().ways()) {
      if (!way.valid()) {
        items.add(BoardItem.refused(way));
        if (way.feedsBoard()) {
          BoardPlace below = board.below(way);
          judge(below, composer.unknown(below));
        }
        continue;
      }
      ObjectNode request = composer.circuit(board, way, supply);
      Judged judged = one(request, UnusedMembers.ofCheck(request));
      items.add(item(way, judged, selectivity(board, way, judged.circuit())));
      if (way.feedsBoard()) {
        BoardPlace below = board.below(way);
        judge(below, fed(below, judged.circuit()));
      }
    }
  }

  private Judged one(ObjectNode request, List<Note> unused) {
    Sourced plain = Sourced.plain(request);
    return answers ? single.judge(plain, unused, full) : single.found(plain, full);
  }

  private static BoardItem item(BoardNode node, Judged judged, List<Upstream> selectivity) {
    String etag = judged.bytes() == null ? null : Representation.etag(judged.bytes());
    return new BoardItem(node, etag, judged.bytes(), judged.result(), selectivity);
  }

  /** Selectivity to the devices before the board that the circuit's own check has not upstream. */
  private List<Upstream> selectivity(BoardPlace board, BoardNode way, Circuit circuit) {
    Before nearest = way.own().has("upstreamDevice") ? null : board.nearest();
    Before serving = composer.serving(board, way);
    List<Upstream> found = new ArrayList<>();
    for (Before before : board.chain()) {
      if (before == nearest || !before.mayOpen()) {
        continue;
      }
      // What serves the circuit serves others too: for them it is upstream.
      Circuit alone = before == serving ? circuit.withResidual(null) : circuit;
      Circuit behind = alone.withUpstream(before.upstream());
      found.add(new Upstream(before.place(), CircuitCheck.one(SELECTIVITY, behind, edition, full)));
    }
    return found;
  }
}
