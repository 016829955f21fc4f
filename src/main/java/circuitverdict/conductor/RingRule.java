package circuitverdict.conductor;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * When the rule for ring final circuits applies (433.1.204): a final circuit of accessories to BS
 * 1363, which are rated 13 A, on a ring of copper, 2.5 mm² (1.5 mm² mineral) or more, behind a 30 A
 * or 32 A device to a standard named by 433.1.201 or BS 3036. The clause lets a leg carry less than
 * In because such loads are small and spread along the ring. A load at one point can send more than
 * its share through one leg, so fixed equipment and charging points are not covered: for them In ≤
 * Iz of one leg; nor are items larger than such an accessory ({@link RingItem}). What is fixed in a
 * mixed load may hang on a fused connection unit, itself an accessory to BS 1363: it must be stated
 * as such. An edition without the rule covers nothing by it.
 */
final class RingRule {
  private RingRule() {}

  /** Whether the rule applies; null where {@link #wanted} is not stated. */
  static Boolean covers(Circuit circuit, Figure rated, Dossier d) {
    Load load = circuit.load();
    if (!built(circuit, rated, d)
        || circuit.kind() == Circuit.Kind.DISTRIBUTION
        || load.onlyFixed()
        || load.has(Load.Kind.VEHICLE_CHARGING)
        || servesChargingPlace(circuit)
        || larger(circuit, load, At.LOAD, d)) {
      return false;
    }
    return wanted(circuit, d).isEmpty() ? Boolean.TRUE : null;
  }

  /** Where vehicles charge an outlet feeds one long load, however many outlets there are. */
  private static boolean servesChargingPlace(Circuit circuit) {
    List<String> locations = circuit.premises().locations();
    return locations != null && locations.contains("vehicle-charging");
  }

  /**
   * What would say of the load, or of each part, that it is connected by such accessories, and that
   * no vehicle is charged there.
   */
  static List<Pointer> wanted(Circuit circuit, Dossier d) {
    List<Pointer> wanted = new ArrayList<>();
    if (circuit.premises().locations() == null) {
      wanted.add(At.LOCATIONS);
    }
    want(circuit, circuit.load(), At.LOAD, null, wanted, d);
    return wanted;
  }

  private static void want(
      Circuit circuit,
      Load load,
      String place,
      Load.Connection ofWhole,
      List<Pointer> wanted,
      Dossier d) {
    Load.Connection connection = load.connection() == null ? ofWhole : load.connection();
    List<Load> parts = load.parts();
    for (int i = 0; i < parts.size(); i++) {
      want(circuit, parts.get(i), place + "/parts/" + i, connection, wanted, d);
    }
    if (!parts.isEmpty()) {
      return;
    }
    if (load.kind() == null) {
      // An outlet serves a charging point or a large item too.
      wanted.add(new Pointer(place, "kind"));
      return;
    }
    if (load.kind() != Load.Kind.SOCKET_OUTLETS && connection != Load.Connection.SOCKET_OUTLET) {
      wanted.add(new Pointer(place, "connection"));
    }
    if (load.kind() == Load.Kind.MIXED) {
      wanted.add(new Pointer(place, "parts"));
    } else {
      new RingItem(circuit, load, place, d).want(wanted);
    }
  }

  /** Whether an item is stated that is larger than these accessories. */
  private static boolean larger(Circuit circuit, Load load, String place, Dossier d) {
    boolean larger = new RingItem(circuit, load, place, d).larger();
    List<Load> parts = load.parts();
    for (int i = 0; i < parts.size() && !larger; i++) {
      larger = larger(circuit, parts.get(i), place + "/parts/" + i, d);
    }
    return larger;
  }

  private static boolean built(Circuit circuit, Figure rated, Dossier d) {
    Cable ring = circuit.cable();
    if (!d.edition().has(Constant.RING_CIRCUIT_RATING_30)
        || !ring.ring()
        || ring.lineCsaMm2() == null
        || ring.conductor() == Cable.Metal.ALUMINIUM) {
      return false;
    }
    boolean thirty =
        rated.value() == d.edition().constant(Constant.RING_CIRCUIT_RATING_30).number();
    boolean thirtyTwo =
        rated.value() == d.edition().constant(Constant.RING_CIRCUIT_RATING_32).number();
    Constant size =
        ring.construction() == Cable.Construction.MINERAL
            ? Constant.RING_CIRCUIT_LEAST_CSA_MINERAL
            : Constant.RING_CIRCUIT_LEAST_CSA;
    return (thirty || thirtyTwo)
        && named(circuit, d)
        && wide(circuit, d.edition().constant(size).number());
  }

  /** Line and neutral of the ring and of its spurs have the least size that the clause names. */
  private static boolean wide(Circuit circuit, double least) {
    for (Cable cable : Wiring.cables(circuit)) {
      boolean line = cable.lineCsaMm2() != null && cable.lineCsaMm2() >= least;
      boolean neutral = cable.neutralCsaMm2() == null || cable.neutralCsaMm2() >= least;
      if (!line || !neutral) {
        return false;
      }
    }
    return true;
  }

  private static boolean named(Circuit circuit, Dossier d) {
    String standard = circuit.device().data().standard();
    if (standard == null) {
      return false;
    }
    Value deemed = d.edition().table(TableName.OVERLOAD_DEEMED).at("deemed", standard);
    return deemed != null || standard.equals("BS 3036");
  }
}
