package circuitverdict.service.wire;

import circuitverdict.circuit.ProtectiveDevice;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A board in its installation: what its circuits take over from it and from what is before it.
 *
 * @param node the board, or the circuit that feeds it
 * @param premises what is stated of the premises here, or before; null where nothing is
 * @param requirements likewise what the caller demands
 * @param chain the devices before its circuits, nearest first
 * @param lines numbers of its lines, empty where they are not known
 */
public record BoardPlace(
    BoardNode node,
    JsonNode premises,
    JsonNode requirements,
    List<Before> chain,
    List<Integer> lines) {

  /** Devices that break overcurrents, by their standards. */
  private static final Set<String> OVERCURRENT =
      Set.of(
          "IEC 60898-1",
          "IEC 61009-1",
          "IEC 60947-2",
          "BS 88-2",
          "BS 88-3",
          "BS 3036",
          "BS 1361",
          "BS 1362",
          "BS 3871-1");

  /** These open on no fault. */
  private static final Set<String> NO_PROTECTION = Set.of("IEC 60947-3", "IEC 62606");

  /** A device before a board, and where the request states it. */
  public record Before(String place, JsonNode node) {
    /** Whether it breaks overcurrents. */
    public boolean overcurrent() {
      return OVERCURRENT.contains(node.path("standard").asText(""));
    }

    /** Whether it may open on a fault beyond it. */
    public boolean mayOpen() {
      return !NO_PROTECTION.contains(node.path("standard").asText(""));
    }

    /** Whether it has a residual function. */
    public boolean residual() {
      return node.has("residual") || "IEC 61008-1".equals(node.path("standard").textValue());
    }

    /** As the engine has it, where the request states it. */
    public ProtectiveDevice device() {
      return DeviceMapping.device(node, place);
    }

    /** As the device upstream of a circuit. */
    public ProtectiveDevice upstream() {
      return DeviceMapping.device(node, "/upstreamDevice");
    }
  }

  /** The board that the request is. */
  public static BoardPlace root(BoardNode node) {
    JsonNode own = node.own();
    List<Before> chain = new ArrayList<>();
    for (String name : new String[] {"incomer", "residualDevice", "device", "upstreamDevice"}) {
      add(chain, node, name);
    }
    int phases = own.path("supply").path("phases").asInt(0);
    List<Integer> lines = phases == 1 ? List.of(1) : own.has("cable") ? named(own) : List.of();
    return new BoardPlace(
        node,
        own.get("premises"),
        own.get("requirements"),
        chain,
        lines.isEmpty() && phases == 3 ? List.of(1, 2, 3) : lines);
  }

  /** The board that one of its circuits feeds. */
  public BoardPlace below(BoardNode way) {
    List<Before> longer = new ArrayList<>();
    JsonNode own = way.own();
    if (way.valid()) {
      for (String name : new String[] {"incomer", "residualDevice", "device", "upstreamDevice"}) {
        add(longer, way, name);
      }
    }
    longer.addAll(chain);
    return new BoardPlace(
        way,
        way.valid() && own.has("premises") ? own.get("premises") : premises,
        way.valid() && own.has("requirements") ? own.get("requirements") : requirements,
        longer,
        way.valid() ? linesOf(way) : List.of());
  }

  /** Its main switch or device as stated; null where none is. */
  public JsonNode incomer() {
    return node.valid() ? node.own().get("incomer") : null;
  }

  /** The assembly that houses it as stated; null where none is. */
  public JsonNode assembly() {
    return node.valid() ? node.own().get("assembly") : null;
  }

  /**
   * The lines that a circuit of the board loads: of a board of one line that, whatever its name; of
   * one whose lines are not known none.
   */
  public List<Integer> linesOf(BoardNode way) {
    return lines.size() > 1 ? named(way.own()) : lines;
  }

  /** The nearest device before its circuits that breaks overcurrents; null where none is stated. */
  public Before nearest() {
    return chain.stream().filter(Before::overcurrent).findFirst().orElse(null);
  }

  /** The devices with a residual function that all of its circuits share, nearest first. */
  public List<Before> sharedResiduals() {
    List<Before> shared = new ArrayList<>();
    for (Before each : chain) {
      boolean own = each.place().lastIndexOf('/') == node.place().length();
      if (own && each.place().startsWith(node.place()) && each.residual()) {
        shared.add(each);
      }
    }
    return shared;
  }

  /** The nearest such device before its incomer. */
  public Before upstream() {
    String own = node.place() + "/incomer";
    return chain.stream()
        .filter(each -> each.overcurrent() && !each.place().equals(own))
        .findFirst()
        .orElse(null);
  }

  private static List<Integer> named(JsonNode circuit) {
    List<Integer> numbers = new ArrayList<>();
    for (JsonNode name : circuit.path("liveConductors")) {
      String text = name.asText("");
      if (text.startsWith("L")) {
        numbers.add(text.charAt(1) - '0');
      }
    }
    numbers.sort(null);
    return numbers;
  }

  private static void add(List<Before> chain, BoardNode node, String name) {
    if (node.own().path(name).isObject()) {
      chain.add(new Before(node.place() + "/" + name, node.own().get(name)));
    }
  }
}
