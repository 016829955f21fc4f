package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.fault.SupplyLoop;
import circuitverdict.quantity.Comparator;
import java.util.function.BiFunction;

/**
 * Greatest fault currents that cannot be true: less than the least that a stated loop lets flow at
 * the same point (434.1). Nothing may rest on them.
 */
final class ContradictedCurrent {
  private static final BiFunction<Circuit, Dossier, Figure> LEAST_TO_EARTH =
      SupplyLoop::leastCurrent;
  private static final BiFunction<Circuit, Dossier, Figure> LEAST_TO_NEUTRAL =
      SupplyLoop::leastNeutralCurrent;

  private ContradictedCurrent() {}

  /**
   * Whether the stated loops that a way has let more flow than its greatest current.
   *
   * @param live live conductors, or null where they are not known and the current is that of any
   *     kind
   */
  static boolean byLoops(Circuit circuit, LiveConductors live, Figure greatest, Dossier d) {
    if (byEarthLoop(circuit, greatest, d)) {
      return true;
    }
    if (circuit.supply().lineToNeutralLoopImpedanceOhm() == null) {
      return false;
    }
    // Without a neutral in the way such a fault is none of its own, but that of any kind bounds it.
    boolean own = live == null || live.neutral();
    Figure bound = own ? greatest : GreatestCurrent.statedOfAnyKind(circuit.supply(), d);
    return below(circuit, bound, Topic.SUPPLY_NEUTRAL_CURRENT, LEAST_TO_NEUTRAL, d);
  }

  /** Whether a stated earth loop lets more flow than the greatest current. */
  static boolean byEarthLoop(Circuit circuit, Figure greatest, Dossier d) {
    boolean earth = circuit.supply().loopImpedanceOhm() != null;
    return earth && below(circuit, greatest, Topic.SUPPLY_EARTH_CURRENT, LEAST_TO_EARTH, d);
  }

  private static boolean below(
      Circuit circuit,
      Figure greatest,
      Topic topic,
      BiFunction<Circuit, Dossier, Figure> loop,
      Dossier d) {
    if (!greatest.known()) {
      return false;
    }
    Figure least = d.tried(topic, circuit, inner -> loop.apply(circuit, inner));
    if (!least.known() || Comparator.atMost(least.value(), greatest.value())) {
      return false;
    }
    d.remark(
        NoteCode.CURRENTS_CONTRADICT,
        d.once(topic, circuit, inner -> loop.apply(circuit, inner)),
        greatest);
    d.missing(At.MAXIMUM_CURRENT);
    return true;
  }
}
