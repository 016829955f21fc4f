package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.standard.Clause;
import java.util.List;

/**
 * Caravans and boats (708.411.4, 709.411.4, from memory): protective multiple earthing must not
 * earth them, with whatever measure. They are supplied by socket-outlets (708.55.1, 709.55.1), so
 * what is fixed at such a place, its lighting for instance, is not concerned; a boat on a fixed
 * connection is not recognized.
 */
final class CaravanEarthing {
  private static final String CARAVAN_PARK = "caravan-park";
  private static final String MARINA = "marina";

  private CaravanEarthing() {}

  /** Whether the circuit supplies caravans or boats; null where what is not stated decides. */
  static Boolean serves(Circuit circuit) {
    Load load = circuit.load();
    List<String> locations = circuit.premises().locations();
    if (load.onlyFixed()) {
      return false;
    }
    if (locations == null) {
      return null;
    }
    if (!locations.contains(CARAVAN_PARK) && !locations.contains(MARINA)) {
      return false;
    }
    // From the end of a distribution circuit an electrode of the place may earth what it feeds.
    boolean known = load.hasSocketOutlet() && circuit.kind() != Circuit.Kind.DISTRIBUTION;
    return known ? Boolean.TRUE : null;
  }

  /** Names the clauses of the places stated. */
  static void cite(Circuit circuit, Judgement judgement) {
    List<String> locations = circuit.premises().locations();
    if (locations.contains(CARAVAN_PARK)) {
      judgement.by(Clause.CARAVAN_EARTHING);
    }
    if (locations.contains(MARINA)) {
      judgement.by(Clause.BOAT_EARTHING);
    }
  }
}
