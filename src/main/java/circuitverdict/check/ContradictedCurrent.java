package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.fault.SupplyLoop;
import circuitverdict.quantity.Comparator;
import java.util.function.Function;

/**
 * Greatest fault currents that cannot be true: less than the least that a stated loop lets flow at
 * the same point (434.1). Nothing may rest on them.
 */
final class ContradictedCurrent {
  private ContradictedCurrent() {}

  /**
   * Whether the stated loops that a way has let more flow than its greatest current.
   *
   * @param live live conductors, or null where they are not known and the current is that of any
   *     kind
   */
  static boolean byLoops(Circuit circuit, LiveConductors live, Figure greatest, Dossier d) {
    boolean neutral =
        (live == null || live.neutral())
            && circuit.supply().lineToNeutralLoopImpedanceOhm() != null;
    return byEarthLoop(circuit, greatest, d)
        || neutral && below(greatest, with -> SupplyLoop.leastNeutralCurrent(circuit, with), d);
  }

  /** Whether a stated earth loop lets more flow than the greatest current. */
  static boolean byEarthLoop(Circuit circuit, Figure greatest, Dossier d) {
    boolean earth = circuit.supply().loopImpedanceOhm() != null;
    return earth && below(greatest, with -> SupplyLoop.leastCurrent(circuit, with), d);
  }

  private static boolean below(Figure greatest, Function<Dossier, Figure> loop, Dossier d) {
    if (!greatest.known()) {
      return false;
    }
    Figure tried = loop.apply(d.trial());
    if (!tried.known() || Comparator.atMost(tried.value(), greatest.value())) {
      return false;
    }
    d.remark(NoteCode.CURRENTS_CONTRADICT, loop.apply(d), greatest);
    d.missing(At.MAXIMUM_CURRENT);
    return true;
  }
}
