package circuitverdict.device;

import circuitverdict.explain.Figure;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Up to which current the promised times alone show that only the downstream device opens: from
 * each current at which it promises to open within a time until the next, the upstream one holds as
 * long. Below the first it may never open, and the upstream one must hold for good.
 *
 * @param current the current, A; unknown where nothing is shown
 * @param toTheEnd whether the last promise of the downstream device carries it, so that above it
 *     the energy may carry on
 */
public record PromisedReach(Figure current, boolean toTheEnd) {
  private static final PromisedReach NONE =
      new PromisedReach(Figure.unknown("Is", Unit.AMPERE), false);

  /** The reach of a pair. */
  public static PromisedReach of(Promises downstream, Promises upstream) {
    List<Promise> opens = rising(downstream.opens());
    if (opens.isEmpty()
        || !upstream.carried().known()
        || !Comparator.atMost(
            opens.get(0).current().value(),
            Math.min(upstream.carried().value(), upstream.heldFor(opens.get(0).timeS()).value()))) {
      return NONE;
    }
    for (int i = 0; i + 1 < opens.size(); i++) {
      Figure held = upstream.heldFor(opens.get(i).timeS());
      if (!Comparator.atMost(opens.get(i + 1).current().value(), held.value())) {
        return new PromisedReach(held, false);
      }
    }
    Figure held = upstream.heldFor(opens.get(opens.size() - 1).timeS());
    return new PromisedReach(held, true);
  }

  /**
   * Rising in current and falling in time; what promises no more than one before it is left out.
   */
  private static List<Promise> rising(List<Promise> promises) {
    List<Promise> sorted = new ArrayList<>(promises);
    sorted.sort((a, b) -> Double.compare(a.current().value(), b.current().value()));
    List<Promise> rising = new ArrayList<>(sorted.size());
    for (Promise each : sorted) {
      if (rising.isEmpty() || each.timeS() < rising.get(rising.size() - 1).timeS()) {
        rising.add(each);
      }
    }
    return rising;
  }
}
