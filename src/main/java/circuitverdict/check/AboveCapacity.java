package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import java.util.List;

/**
 * A greatest current above what a device breaks or stands, with nothing that covers it. The
 * greatest of any kind may stand in for kinds that are not stated: only stated ones fail for
 * certain.
 */
final class AboveCapacity {
  private AboveCapacity() {}

  static boolean exceeds(Figure current, double limit) {
    return current.known() && !Comparator.AT_MOST.holds(current.value(), limit);
  }

  static void judge(
      Circuit circuit,
      String about,
      Figure greatest,
      Figure limit,
      Judgement judgement,
      Dossier d) {
    LiveConductors live = LiveConductors.of(circuit);
    List<Pointer> open = GreatestCurrent.heldByAnyKind(circuit, live);
    Figure certain = open.isEmpty() ? greatest : GreatestCurrent.stated(circuit, live, d);
    if (exceeds(certain, limit.value())) {
      judgement.compare(about, certain, Comparator.AT_MOST, limit);
      return;
    }
    open.forEach(d::missing);
    judgement.open(about, greatest, Comparator.AT_MOST, limit);
  }
}
