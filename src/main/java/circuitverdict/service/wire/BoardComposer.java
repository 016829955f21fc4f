package circuitverdict.service.wire;

import circuitverdict.circuit.Board;
import circuitverdict.circuit.Board.Group;
import circuitverdict.circuit.Board.Way;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.LineLoading;
import circuitverdict.service.wire.BoardPlace.Before;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Each circuit of a board as a request of its own: with the supply at its board, the device before
 * it, the main switch, assembly, premises and requirements that it does not state itself. A circuit
 * that feeds a board is a distribution circuit, and where it states no load what its board draws is
 * its load.
 */
public final class BoardComposer {
  private static final String INCOMER = "incomer";
  private static final String UPSTREAM = "upstreamDevice";
  private static final String RESIDUAL = "residualDevice";
  private static final String ASSEMBLY = "assembly";
  private static final String LOAD = "load";

  /** What holds of a supply at every point fed from it. */
  private static final Set<String> OF_EVERY_POINT =
      Set.of("earthing", "phases", "lineToEarthVoltageV", "frequencyHz", "ownership");

  private final JsonNode whole;
  private final Edition edition;
  private final Map<String, LineLoading> loadings = new LinkedHashMap<>();
  private final Map<String, Board> boards = new LinkedHashMap<>();

  /** Of the circuits of a request. */
  public BoardComposer(JsonNode whole, Edition edition) {
    this.whole = whole;
    this.edition = edition;
  }

  /** What the boards draw that are known so far, by the place of the circuit that feeds them. */
  public Map<String, LineLoading> loadings() {
    return loadings;
  }

  /** A circuit of a board as a request of its own. */
  public ObjectNode circuit(BoardPlace board, BoardNode way, JsonNode supply) {
    ObjectNode composed = own(way);
    composed.set("supply", supply);
    if (way.feedsBoard()) {
      composed.remove(List.of(INCOMER, ASSEMBLY));
    }
    merge(composed, "premises", board.premises());
    merge(composed, "requirements", board.requirements());
    merge(composed, ASSEMBLY, board.assembly());
    if (board.incomer() != null) {
      inherit(composed, INCOMER, readOf(INCOMER, board.incomer()));
    }
    Before residual = serving(board, way);
    if (residual != null) {
      inherit(composed, RESIDUAL, residual.node());
    }
    Before nearest = board.nearest();
    if (nearest != null) {
      inherit(composed, UPSTREAM, readOf(UPSTREAM, nearest.node()));
    }
    if (way.feedsBoard()) {
      feeder(way, composed);
    }
    return composed;
  }

  /** The residual current device before a circuit that serves it; null where it has its own. */
  public Before serving(BoardPlace board, BoardNode way) {
    JsonNode own = DescribedDevice.of(way.own().path("device"), "", edition).device();
    boolean itself = way.own().has(RESIDUAL) || new Before("", own).residual();
    return itself ? null : board.nearestResidual();
  }

  /** The request's own circuit, which feeds its board. */
  public ObjectNode first(BoardPlace board, JsonNode supply) {
    ObjectNode composed = own(board.node());
    composed.set("supply", supply);
    composed.remove(List.of(INCOMER, ASSEMBLY));
    feeder(board.node(), composed);
    return composed;
  }

  /**
   * A board for the checks of all of it together, on a supply of which only what holds everywhere
   * is known.
   */
  public Board board(BoardPlace place) {
    List<Way> ways = new ArrayList<>();
    Map<String, List<Way>> groups = new LinkedHashMap<>();
    Map<String, ProtectiveDevice> shared = new LinkedHashMap<>();
    JsonNode supply = unknown(place);
    for (BoardNode node : place.node().ways()) {
      Circuit circuit = null;
      if (node.valid()) {
        ObjectNode composed = circuit(place, node, supply);
        circuit = CircuitMapping.circuit(DescribedDevices.of(composed, List.of(), edition).body());
      }
      boolean feeds = node.feedsBoard() && node.valid();
      Way way = new Way(node.place(), place.linesOf(node), circuit, feeds);
      ways.add(way);
      String id = node.valid() ? node.own().path(RESIDUAL).path("id").textValue() : null;
      if (id != null) {
        groups.computeIfAbsent(id, each -> new ArrayList<>()).add(way);
        String at = node.place() + "/" + RESIDUAL;
        shared.computeIfAbsent(id, e -> DeviceMapping.device(node.own().get(RESIDUAL), at));
      }
    }
    List<Group> together = new ArrayList<>();
    for (Before common : place.sharedResiduals()) {
      together.add(new Group(common.device(), ways));
    }
    groups.forEach(
        (id, each) -> {
          // Of one circuit alone its own check tells.
          if (each.size() > 1 || loadings.containsKey(each.get(0).place())) {
            together.add(new Group(shared.get(id), each));
          }
        });
    JsonNode own = place.node().own();
    Circuit here = CircuitMapping.circuit(here(place, supply));
    return new Board(
        place.node().place(),
        here,
        place.incomer() == null
            ? null
            : DeviceMapping.device(place.incomer(), place.node().place() + "/" + INCOMER),
        place.main().stream().map(Before::device).toList(),
        place.carriers().stream().map(Before::device).toList(),
        here.assembly(),
        own.path("diversityFactor").isNumber() ? own.get("diversityFactor").doubleValue() : null,
        ways,
        together);
  }

  /** The boards that are known so far, likewise. */
  public Map<String, Board> boards() {
    return boards;
  }

  /** Keeps a board and what it draws. */
  public void keep(Board board, LineLoading loading) {
    boards.put(board.place(), board);
    loadings.put(board.place(), loading);
  }

  private ObjectNode own(BoardNode node) {
    ObjectNode composed = ((ObjectNode) whole).objectNode();
    for (Map.Entry<String, JsonNode> member : node.own().properties()) {
      composed.set(member.getKey(), member.getValue());
    }
    for (String name : new String[] {"edition", "stage"}) {
      inherit(composed, name, whole.get(name));
    }
    if (node.feedsBoard()) {
      composed.remove(List.of("circuits", "diversityFactor"));
    }
    return composed;
  }

  /** A circuit that feeds a board: no less is drawn by it than its board draws. */
  private void feeder(BoardNode way, ObjectNode composed) {
    if (!composed.has("circuitKind")) {
      composed.put("circuitKind", "distribution");
    }
    LineLoading loading = loadings.get(way.place());
    if (loading == null || !loading.greatest().known()) {
      return;
    }
    new FeederLoad(way, boards, loadings, edition).into(composed);
  }

  private ObjectNode here(BoardPlace place, JsonNode supply) {
    ObjectNode here = ((ObjectNode) whole).objectNode();
    here.set("supply", supply);
    inherit(here, "stage", whole.get("stage"));
    inherit(here, "requirements", place.requirements());
    inherit(here, ASSEMBLY, place.assembly());
    boolean circuit = !place.node().place().isEmpty() || whole.has("cable");
    if (circuit && place.node().valid()) {
      inherit(here, LOAD, place.node().own().get(LOAD));
    }
    for (int line : place.lines()) {
      here.withArray("liveConductors").add("L" + line);
    }
    if (!place.lines().isEmpty()) {
      here.withArray("liveConductors").add("N");
    }
    return here;
  }

  /** A supply of which only what holds everywhere is known. */
  public JsonNode unknown(BoardPlace place) {
    ObjectNode supply = ((ObjectNode) whole).objectNode();
    for (Map.Entry<String, JsonNode> member : whole.path("supply").properties()) {
      if (OF_EVERY_POINT.contains(member.getKey())) {
        supply.set(member.getKey(), member.getValue());
      }
    }
    if (place.lines().size() == 1) {
      supply.put("phases", 1);
    }
    // Of no board are the typical values of an origin taken.
    return supply.put("point", "board");
  }

  /** What a circuit states stands before what its board does, member by member. */
  private static void merge(ObjectNode composed, String name, JsonNode ofBoard) {
    JsonNode merged = BoardPlace.merged(ofBoard, composed.get(name));
    if (merged != null) {
      composed.set(name, merged);
    }
  }

  private static void inherit(ObjectNode composed, String name, JsonNode value) {
    if (value != null && !composed.has(name)) {
      composed.set(name, value);
    }
  }

  private static JsonNode readOf(String name, JsonNode device) {
    ObjectNode read = ((ObjectNode) device).objectNode();
    for (Map.Entry<String, JsonNode> member : device.properties()) {
      if (ReadOfDevices.of(name).contains(member.getKey())) {
        read.set(member.getKey(), member.getValue());
      }
    }
    return read;
  }
}
