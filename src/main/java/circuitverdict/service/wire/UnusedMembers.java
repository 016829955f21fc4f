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
      Map.of("parts", Set.of("canOverload", "thirdHarmonicPercent", "protectiveConductorCurrentA"));

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

  /** What a source that is computed does not rest on. */
  private static final Set<String> OF_READINGS = Set.of("basis", "instrumentUncertaintyPercent");

  /** What each kind of reading is read by, besides what every kind has. */
  private static final Map<String, Set<String>> BY_KIND =
      Map.of(
          "loop-impedance", Set.of("resistanceOhm", "conductorTemperatureC"),
          "r1-plus-r2", Set.of("resistanceOhm", "conductorTemperatureC"),
          "r2", Set.of("resistanceOhm", "conductorTemperatureC"),
          "ring-r1", Set.of("resistanceOhm"),
          "ring-rn", Set.of("resistanceOhm"),
          "ring-r2", Set.of("resistanceOhm"),
          "insulation", Set.of("resistanceOhm"),
          "fault-current", Set.of("currentA"),
          "residual-trip-time", Set.of("timeS", "testMultiple"),
          "earth-electrode", Set.of("resistanceOhm"));

  private static final Set<String> OF_EVERY_KIND =
      Set.of("kind", "between", "place", "satisfactory", "instrumentUncertaintyPercent");

  private static final Set<String> OF_A_FEEDER = Set.of("cable", "furtherCables");

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

  private static final String ITEM = "items";
  private static final String UPSTREAM = "upstreamDevice";

  /** Of other devices than the circuit's own little is read; all else of them is told. */
  private static final Map<String, Set<String>> ALL_THAT_IS_READ =
      Map.of(
          "residualDevice",
          Set.of(
              "standard",
              "ratedCurrentA",
              "breakingCapacityA",
              "conditionalCapacityA",
              "residual",
              "residualMakingBreakingA",
              "arcFaultDetection",
              "poles",
              "isolation",
              "unidirectional",
              "markings",
              "features",
              "gtin"),
          "incomer",
          Set.of("standard", "poles", "isolation"),
          "upstreamDevice",
          Set.of(
              "id",
              "standard",
              "characteristic",
              "ratedCurrentA",
              "magneticMultiples",
              "breakingCapacityA",
              "serviceBreakingCapacityA",
              "utilizationCategory",
              "residual",
              "settings",
              "markings",
              "features",
              "gtin"),
          ITEM,
          Set.of(
              "id",
              "standard",
              "characteristic",
              "ratedCurrentA",
              "magneticMultiples",
              "markings",
              "features",
              "gtin",
              "utilizationCategory",
              "residual",
              "settings"),
          ITEM + "/residual",
          Set.of("operatingCurrentA", "delay", "delayS"),
          UPSTREAM + "/residual",
          Set.of("operatingCurrentA", "delay", "delayS"));

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
    return new UnusedMembers(null, true).top(body, Set.of("preferences", PRODUCTS));
  }

  /** What verdicts on readings do not use. */
  public static List<Note> ofReadings(JsonNode body) {
    UnusedMembers unused = new UnusedMembers(null, true);
    unused.besides = Set.of("readings");
    JsonNode readings = body.path("readings");
    for (int i = 0; i < readings.size(); i++) {
      JsonNode reading = readings.get(i);
      Set<String> read = BY_KIND.getOrDefault(reading.path("kind").asText(), Set.of());
      for (Map.Entry<String, JsonNode> member : reading.properties()) {
        if (!read.contains(member.getKey()) && !OF_EVERY_KIND.contains(member.getKey())) {
          unused.add(new Trail(null, "/readings/" + i), member.getKey());
        }
      }
    }
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
    return new UnusedMembers(null, true).top(body, Set.of("device"));
  }

  /** What an operation that reads only these members does not use. */
  public static List<Note> ofReading(JsonNode body, Set<String> read) {
    return new UnusedMembers(read, false).top(body, SELECTION_ONLY);
  }

  /** What the question of selectivity does not use. */
  public static List<Note> ofSelectivity(JsonNode body, Set<String> read) {
    return new UnusedMembers(read, true).top(body, SELECTION_ONLY);
  }

  /** What fault currents along a tree of circuits do not use. */
  public static List<Note> ofNetwork(JsonNode body) {
    UnusedMembers unused = new UnusedMembers(null, false);
    unused.network(body, "", Set.of("reference", "edition", "stage", "supply"));
    return unused.notes;
  }

  private void network(JsonNode circuit, String place, Set<String> besides) {
    Trail here = new Trail(null, place);
    for (Map.Entry<String, JsonNode> field : circuit.properties()) {
      String name = field.getKey();
      if (name.equals("circuits")) {
        for (int i = 0; i < field.getValue().size(); i++) {
          network(field.getValue().get(i), place + "/circuits/" + i, Set.of("reference"));
        }
      } else if (OF_A_FEEDER.contains(name)) {
        cables(new Trail(here, "/" + name), field.getValue());
      } else if (name.equals("supply")) {
        for (Map.Entry<String, JsonNode> member : field.getValue().properties()) {
          supply(field.getValue(), member.getKey(), new Trail(here, "/supply"));
        }
      } else if (!besides.contains(name) && !name.equals("liveConductors")) {
        add(here, name);
      }
    }
  }

  private void supply(JsonNode supply, String name, Trail at) {
    boolean read = supply.has("transformer") && OF_READINGS.contains(name);
    if (name.equals("voltageDropPercent") || read) {
      add(at, name);
    }
    if (name.equals("faultCurrents")) {
      for (Map.Entry<String, JsonNode> kind : supply.get(name).properties()) {
        for (String figure : new String[] {"minimumA", "peakA"}) {
          if (kind.getValue().has(figure)) {
            add(new Trail(new Trail(at, "/" + name), "/" + kind.getKey()), figure);
          }
        }
      }
    }
  }

  private void cables(Trail at, JsonNode cable) {
    if (cable.isArray()) {
      for (int i = 0; i < cable.size(); i++) {
        cables(new Trail(at, "/" + i), cable.get(i));
      }
      return;
    }
    for (String name : new String[] {"terminalTemperatureC", "installation"}) {
      if (cable.has(name)) {
        add(at, name);
      }
    }
  }

  /** What the limit of the loop impedance of a device does not use of it. */
  public static List<Note> ofItem(JsonNode device, String place) {
    UnusedMembers unused = new UnusedMembers(null, true);
    unused.below(new Trail(null, place), ITEM, device);
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
      boolean ofCircuit =
          body.has("cable") && !NEVER.contains(name) && !SELECTION_ONLY.contains(name);
      if (!OF_A_BOARD.contains(name) && !ofCircuit) {
        unused.add(null, name);
      }
    }
    return unused.notes;
  }

  /** What is read of the device under this name, where that is not all. */
  static Set<String> readOf(String device) {
    return ALL_THAT_IS_READ.get(device);
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
        boolean apart = parent.equals(ITEM) || parent.equals(UPSTREAM);
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
    Set<String> all = ALL_THAT_IS_READ.get(parent);
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
