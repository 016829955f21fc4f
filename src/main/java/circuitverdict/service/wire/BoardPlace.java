package circuitverdict.service.wire;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A board in its installation: what its circuits take over from it and from what is before it.
 *
 * @param node the board, or the circuit that feeds it
 * @param premises what is stated of the premises here and before; null where nothing is
 * @param requirements likewise what the caller demands
 * @param chain the devices before its circuits, nearest first
 * @param lines numbers of its lines, empty where they are not known
 * @param edition by which marks on devices are read
 */
public record BoardPlace(
    BoardNode node,
    JsonNode premises,
    JsonNode requirements,
    List<Before> chain,
    List<Integer> lines,
    Edition edition) {

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

  /** Devices that have a residual function whatever else is stated. */
  private static final Set<String> RESIDUAL = Set.of("IEC 61008-1", "IEC 61009-1");

  /** These open on no fault. */
  private static final Set<String> NO_PROTECTION = Set.of("IEC 60947-3", "IEC 62606");

  /** A device before a board, and where the request states it. */
  public record Before(String place, JsonNode node) {
    /** Whether it breaks overcurrents, or may: of what kind it is, is not stated. */
    public boolean overcurrent() {
      String standard = node.path("standard").textValue();
      return standard == null || OVERCURRENT.contains(standard);
    }

    /** Whether it may open on a fault beyond it. */
    public boolean mayOpen() {
      return !NO_PROTECTION.contains(node.path("standard").asText(""));
    }

    /** Whether it has a residual function. */
    public boolean residual() {
      return node.has("residual") || RESIDUAL.contains(node.path("standard").asText(""));
    }

    /** As the engine has it, where the request states it. */
    public ProtectiveDevice device() {
      return DeviceMapping.device(node, place);
    }

    /** As the device upstream of a circuit. */
    public ProtectiveDevice upstream() {
      return DeviceMapping.device(node, "/upstreamDevice");
    }

    /**
     * Its residual operating current, A; above all others where it has a delay or is not stated.
     */
    double operating() {
      JsonNode residual = node.path("residual");
      boolean general = "general".equals(residual.path("delay").asText("general"));
      JsonNode stated = residual.path("operatingCurrentA");
      return general && stated.isNumber() ? stated.doubleValue() : Double.MAX_VALUE;
    }

    private boolean atBusbars() {
      return place.endsWith("/device") || place.endsWith("/residualDevice");
    }

    private boolean isOf(BoardNode board) {
      return place.lastIndexOf('/') == board.place().length() && place.startsWith(board.place());
    }
  }

  /** The board that the request is. */
  public static BoardPlace root(BoardNode node, Edition edition) {
    JsonNode own = node.own();
    List<Before> chain = new ArrayList<>();
    for (String name : new String[] {"incomer", "residualDevice", "device", "upstreamDevice"}) {
      add(chain, node, name, edition);
    }
    int phases = own.path("supply").path("phases").asInt(0);
    List<Integer> lines = phases == 1 ? List.of(1) : own.has("cable") ? named(own) : List.of();
    return new BoardPlace(
        node,
        own.get("premises"),
        own.get("requirements"),
        chain,
        lines.isEmpty() && phases == 3 ? List.of(1, 2, 3) : lines,
        edition);
  }

  /** The board that one of its circuits feeds. */
  public BoardPlace below(BoardNode way) {
    List<Before> longer = new ArrayList<>();
    JsonNode own = way.own();
    if (way.valid()) {
      for (String name : new String[] {"incomer", "residualDevice", "device", "upstreamDevice"}) {
        add(longer, way, name, edition);
      }
    }
    longer.addAll(chain);
    return new BoardPlace(
        way,
        merged(premises, way.valid() ? own.get("premises") : null),
        merged(requirements, way.valid() ? own.get("requirements") : null),
        longer,
        linesOf(way),
        edition);
  }

  /** Its main switch or device; null where none is stated. */
  public JsonNode incomer() {
    Before first = chain.isEmpty() ? null : chain.get(0);
    boolean own = first != null && first.place().equals(node.place() + "/incomer");
    return own ? first.node() : null;
  }

  /** What is stated of one thing here, and before where it is not. */
  static JsonNode merged(JsonNode before, JsonNode here) {
    if (before == null || here == null) {
      return here == null ? before : here;
    }
    ObjectNode merged = ((ObjectNode) before).deepCopy();
    merged.setAll((ObjectNode) here);
    return merged;
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
    if (!way.valid()) {
      return List.of();
    }
    return lines.size() > 1 ? named(way.own()) : lines;
  }

  /** The nearest device before its circuits that breaks overcurrents; null where none is stated. */
  public Before nearest() {
    return chain.stream().filter(Before::overcurrent).findFirst().orElse(null);
  }

  /**
   * The device with a residual function before its circuits that opens first: of the least residual
   * operating current without delay, else the nearest; null where none is.
   */
  public Before nearestResidual() {
    Before found = null;
    for (Before each : chain) {
      if (each.residual() && (found == null || each.operating() < found.operating())) {
        found = each;
      }
    }
    return found;
  }

  /** The main devices at its busbars: others stand where the circuit that feeds it begins. */
  public List<Before> main() {
    boolean fed = !node.place().isEmpty() || node.own().has("cable");
    return chain.stream()
        .filter(each -> each.isOf(node))
        .filter(each -> each.place().endsWith("/incomer") || !fed && each.atBusbars())
        .toList();
  }

  /** The devices with a residual function that all of its circuits share, nearest first. */
  public List<Before> sharedResiduals() {
    return chain.stream().filter(each -> each.isOf(node) && each.residual()).toList();
  }

  /**
   * The devices that carry all of the board before its incomer: those stated with it, or else the
   * nearest of those before.
   */
  public List<Before> carriers() {
    String incomer = node.place() + "/incomer";
    List<Before> before =
        chain.stream().filter(each -> each.overcurrent() && !each.place().equals(incomer)).toList();
    List<Before> own = before.stream().filter(each -> each.isOf(node)).toList();
    return own.isEmpty() && !before.isEmpty() ? before.subList(0, 1) : own;
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

  /** With what its marks and features tell of it. */
  private static void add(List<Before> chain, BoardNode node, String name, Edition edition) {
    JsonNode stated = node.own().path(name);
    if (stated.isObject()) {
      String at = node.place() + "/" + name;
      chain.add(new Before(at, DescribedDevice.of(stated, at, edition).device()));
    }
  }
}
