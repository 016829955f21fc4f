package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import circuitverdict.standard.Clause;

/**
 * A residual device before the circuit that has overcurrent release of its own, an RCBO or such a
 * breaker: the load's current flows in it too and does not exceed its rating (433.1.1), and it
 * breaks the greatest fault current where it sits (434.5.1). Beyond its own capacity a declared
 * combination or an assembly may cover it, which is told of the device alone: not determined.
 */
final class ResidualBreaker {
  private ResidualBreaker() {}

  static void hold(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    ProtectiveDevice before = circuit.residualDevice();
    String place = before.data().place();
    judgement.by(Clause.BREAKING_CAPACITY);
    if (DesignCurrent.isRating(circuit)) {
      // What stands for the load may be more than it draws.
      d.curable(At.DESIGN_CURRENT);
    }
    judgement.compare(
        place, DesignCurrent.of(circuit, live, d), Comparator.AT_MOST, RatedCurrent.of(before, d));
    Pointer at = Suitability.at(before, "breakingCapacityA");
    Figure capacity = BreakingCapacity.stated(before, d);
    Figure greatest = GreatestCurrent.ofWay(circuit, live, null, d);
    if (!capacity.known()) {
      d.missing(at);
      judgement.undetermined();
    } else if (ContradictedCurrent.byLoops(circuit, live, greatest, d)) {
      judgement.undetermined();
    } else if (!AboveCapacity.exceeds(greatest, capacity.value())) {
      judgement.compare(place, greatest, Comparator.AT_MOST, capacity);
    } else if (circuit.backUp().evidence() != null || circuit.assembly().described()) {
      d.missing(at);
      judgement.open(place, greatest, Comparator.AT_MOST, capacity);
    } else {
      AboveCapacity.judge(circuit, place, greatest, capacity, judgement, d);
    }
  }
}
