package circuitverdict.service.wire;

import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Members of a request that an operation does not use: told, so that nobody relies on them. */
public final class UnusedMembers {
  private static final int MOST = 90;

  /** Top-level members that no operation reads yet, or that only others read. */
  private static final Set<String> NEVER =
      Set.of("circuits", "diversityFactor", "readings", "editions", "acceptedOpenPoints");

  private static final String PRODUCTS = "products";

  private static final Set<String> OF_EVERY_READING = Set.of("reference", "edition", "stage");

  private static final Set<String> SELECTION_ONLY =
      Set.of("limit", "offset", "preferences", PRODUCTS);

  /** Members below the top that no operation reads yet, wherever they stand. */
  private static final Set<String> BELOW =
      Set.of(
          "grid",
          "voltageTolerancePercent",
          "minimumA",
          "peakA",
          "id",
          "characteristicCurrentA",
          "longTimeDelayS",
          "conditionalCapacityA");

  /** Members that no operation reads yet in one parent. */
  private static final Map<String, Set<String>> BELOW_ONE =
      Map.of(
          "parts",
          Set.of(
              "canOverload",
              "thirdHarmonicPercent",
              "protectiveConductorCurrentA",
              "voltageDropCurrentA"));

  private static final Set<String> ARMOUR_SIZES =
      Set.of("armourAreaMm2", "armourResistanceOhmPerKm");

  /**
   * Sizes of what does not serve: members that the protective means named of a cable leaves idle.
   */
  private static final Map<String, Set<String>> IDLE_SIZES =
      Map.of(
          "armour", Set.of("protectiveCsaMm2"),
          "core", ARMOUR_SIZES,
          "separate", ARMOUR_SIZES,
          "steel-conduit", ARMOUR_SIZES,
          "steel-trunking", ARMOUR_SIZES,
          "sheath", ARMOUR_SIZES);

  private static final Set<String> OF_A_BOARD =
      Set.of(
          "reference",
          "edition",
          "stage",
          "supply",
          "incomer",
          "device",
          "residualDevice",
          "upstreamDevice",
          "assembly",
          "premises",
          "requirements",
          "diversityFactor",
          "circuits");

  /** Of these only the check of selectivity reads anything. */
  private static final Map<String, Set<String>> SELECTIVITY_ONLY =
      Map.of(
          "device",
          Set.of("selectivity"),
          "requirements",
          Set.of("selectivity"),
          "upstreamDevice",
          Set.of(
              "id",
              "characteristic",
              "magneticMultiples",
              "utilizationCategory",
              "residual",
              "settings"));

  private final Set<String> read;
  private final boolean selectivity;
  private final List<Note> notes = new ArrayList<>();
  private Set<String> besides = Set.of();

  private UnusedMembers(Set<String> read, boolean selectivity) {
    this.read = read;
    this.selectivity = selectivity;
  }

  /** What a whole check does not use. */
  public static List<Note> ofCheck(JsonNode body) {
    return new UnusedMembers(null, true).top(body, SELECTION_ONLY);
  }

  /** What a selection of conductors does not use. */
  public static List<Note> ofConductors(JsonNode body) {
    UnusedMembers unused = new UnusedMembers(null, true);
    unused.preference(body, "order");
    return unused.top(body, Set.of(PRODUCTS));
  }

  /** What verdicts on readings do not use besides the readings themselves. */
  static List<Note> besidesReadings(JsonNode body) {
    UnusedMembers unused = new UnusedMembers(null, true);
    unused.besides = Set.of("readings");
    return unused.top(body, SELECTION_ONLY);
  }

  /** What a comparison of editions does not use. */
  public static List<Note> ofComparison(JsonNode body) {
    UnusedMembers unused = new UnusedMembers(null, true);
    unused.besides = Set.of("editions");
    if (body.has("edition") && body.path("editions").size() > 1) {
      unused.add(null, "edition");
    }
    return unused.top(body, SELECTION_ONLY);
  }

  /** What a selection does not use: among others a device, since it looks for one. */
  public static List<Note> ofSelection(JsonNode body) {
    UnusedMembers unused = new UnusedMembers(null, true);
    unused.preference(body, "weights");
    return unused.top(body, Set.of("device"));
  }

  /** What an operation that reads only these members does not use. */
  public static List<Note> ofReading(JsonNode body, Set<String> read) {
    return new UnusedMembers(read, false).top(body, SELECTION_ONLY);
  }

  /** What the question of selectivity does not use. */
  public static List<Note> ofSelectivity(JsonNode body, Set<String> read) {
    return new UnusedMembers(read, true).top(body, SELECTION_ONLY);
  }

  /** What the limit of the loop impedance of a device does not use of it. */
  public static List<Note> ofItem(JsonNode device, String place) {
    UnusedMembers unused = new UnusedMembers(null, true);
    unused.below(new Trail(null, place), ReadOfDevices.ITEM, device);
    return unused.notes;
  }

  /** What is not used of one of the caller's products. */
  static List<Note> ofProduct(JsonNode device, String place) {
    UnusedMembers unused = new UnusedMembers(null, true);
    unused.below(new Trail(null, place), PRODUCTS, device);
    return unused.notes;
  }

  /** What a board does not use of the request itself; of each circuit its own answer tells. */
  public static List<Note> ofBoard(JsonNode body) {
    UnusedMembers unused = new UnusedMembers(null, true);
    for (Map.Entry<String, JsonNode> member : body.properties()) {
      String name = member.getKey();
      if (name.equals("editions") && member.getValue().size() > 1) {
        continue;
      }
      boolean ofCircuit =
          body.has("cable") && !NEVER.contains(name) && !SELECTION_ONLY.contains(name);
      if (!OF_A_BOARD.contains(name) && !ofCircuit) {
        unused.add(null, name);
      }
    }
    return unused.notes;
  }

  private void preference(JsonNode body, String member) {
    if (body.path("preferences").has(member)) {
      add(new Trail(null, "/preferences"), member);
    }
  }

  private List<Note> top(JsonNode body, Set<String> ofOthers) {
    Iterator<Map.Entry<String, JsonNode>> fields = body.fields();
    while (fields.hasNext()) {
      Map.Entry<String, JsonNode> field = fields.next();
      String name = field.getKey();
      boolean own = OF_EVERY_READING.contains(name);
      if (besides.contains(name)) {
        continue;
      }
      if (NEVER.contains(name)
          || ofOthers.contains(name)
          || read != null && !own && !read.contains(name)) {
        add(null, name);
      } else if (field.getValue().isContainerNode() && !name.equals(PRODUCTS)) {
        below(new Trail(null, "/" + name), name, field.getValue());
      }
    }
    return notes;
  }

  private void below(Trail trail, String parent, JsonNode node) {
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        if (node.get(i).isContainerNode()) {
          below(new Trail(trail, "/" + i), parent, node.get(i));
        }
      }
      return;
    }
    JsonNode means = node.get("protectiveMeans");
    Set<String> idle = means == null ? Set.of() : IDLE_SIZES.getOrDefault(means.asText(), Set.of());
    Iterator<Map.Entry<String, JsonNode>> fields = node.fields();
    while (fields.hasNext()) {
      Map.Entry<String, JsonNode> field = fields.next();
      String name = field.getKey();
      if (idle.contains(name) || ofOtherStandard(node, name) || unread(parent, name)) {
        add(trail, name);
      } else if (field.getValue().isContainerNode()) {
        boolean apart = parent.equals(ReadOfDevices.ITEM) || parent.equals(ReadOfDevices.UPSTREAM);
        String child = apart ? parent + "/" + name : name;
        below(new Trail(trail, "/" + name), child, field.getValue());
      }
    }
  }

  /** Settings of what has none, and a category of what is no fuse. */
  private static boolean ofOtherStandard(JsonNode device, String name) {
    String standard = device.path("standard").textValue();
    if (standard == null) {
      return false;
    }
    return name.equals("settings") && !standard.equals("IEC 60947-2")
        || name.equals("utilizationCategory") && !standard.startsWith("BS 88");
  }

  private boolean unread(String parent, String name) {
    if (!selectivity && SELECTIVITY_ONLY.getOrDefault(parent, Set.of()).contains(name)) {
      return true;
    }
    if (parent.equals(PRODUCTS) && name.equals("id")) {
      return false;
    }
    Set<String> all = ReadOfDevices.of(parent);
    return all != null
        ? !all.contains(name)
        : BELOW.contains(name) || BELOW_ONE.getOrDefault(parent, Set.of()).contains(name);
  }

  private void add(Trail trail, String member) {
    if (notes.size() < MOST) {
      Pointer at = new Pointer(trail == null ? "" : trail.text(), member);
      notes.add(new Note(NoteCode.MEMBER_NOT_USED, at, List.of()));
    }
  }

  /** Where a member stands, spelled out only if it must be told. */
  private record Trail(Trail above, String step) {
    String text() {
      return above == null ? step : above.text() + step;
    }
  }
}
