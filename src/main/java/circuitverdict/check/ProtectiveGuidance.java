package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Cable.ProtectiveMeans;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.conductor.HeatLimit;
import circuitverdict.conductor.ProtectiveConductors;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.LetThrough;
import circuitverdict.device.TripBand;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.fault.FaultLoop;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * Published guidance for protective conductors behind class 3 breakers (On-Site Guide): the class
 * row of the smallest capacity not below the current, or the least copper size in a 70 °C cable. It
 * speaks for the magnetic zone: below it the standard's own bounds must hold. For compliance only.
 */
final class ProtectiveGuidance {
  private ProtectiveGuidance() {}

  static boolean holds(Circuit circuit, LiveConductors live, Figure greatest, Dossier d) {
    if (!(circuit.device() instanceof Breaker breaker) || !greatest.known()) {
      return false;
    }
    Figure least = FaultLoop.earth(circuit, live, d).leastCurrent(circuit, d);
    return least.known()
        && (byClassRow(circuit, breaker, least, greatest, d)
            || bySize(circuit, breaker, least, greatest, d));
  }

  /** Adds the comparison that carries the guidance. */
  static void addTo(Circuit circuit, Figure greatest, Judgement judgement, Dossier d) {
    Breaker breaker = (Breaker) circuit.device();
    for (Cable cable : Wiring.cables(circuit)) {
      Value size = size(breaker, cable, greatest, d);
      if (size != null) {
        judgement.compare(
            cable.place(),
            ProtectiveConductors.csa(cable, d),
            Comparator.AT_LEAST,
            Figure.of("S,min", size));
      } else {
        LetThrough row = LetThrough.byGuidance(breaker, greatest.value(), d);
        LetThrough.Energy energy = row.over(greatest, greatest);
        judgement.compareInterval(
            cable.place(), energy.least(), energy.greatest(), HeatLimit.protective(cable, d));
      }
    }
  }

  private static boolean byClassRow(
      Circuit circuit, Breaker breaker, Figure least, Figure greatest, Dossier d) {
    LetThrough energy = LetThrough.byGuidance(breaker, greatest.value(), d);
    EnergyComparisons comparisons = new EnergyComparisons();
    for (Cable cable : Wiring.cables(circuit)) {
      comparisons.add(cable.place(), energy, least, greatest, HeatLimit.protective(cable, d), d);
    }
    return comparisons.complies();
  }

  private static boolean bySize(
      Circuit circuit, Breaker breaker, Figure least, Figure greatest, Dossier d) {
    Double capacity = breaker.data().breakingCapacityA();
    if (capacity == null || !Comparator.atMost(greatest.value(), capacity)) {
      return false;
    }
    for (Cable cable : Wiring.cables(circuit)) {
      Value size = size(breaker, cable, greatest, d);
      Figure actual = size == null ? null : ProtectiveConductors.csa(cable, d);
      if (size == null
          || !Comparator.AT_LEAST.holds(actual.value(), size.number())
          || !boundsHoldBelowMagnetic(breaker, cable, least, d)) {
        return false;
      }
    }
    return true;
  }

  /** The least size that the guidance names; null where it does not speak of this. */
  private static Value size(Breaker breaker, Cable cable, Figure greatest, Dossier d) {
    boolean core =
        cable.protectiveMeans() == ProtectiveMeans.CORE
            || cable.construction() == Cable.Construction.FLAT_TWIN_AND_EARTH;
    boolean copper = ProtectiveConductors.metal(cable, d) == Cable.Metal.COPPER;
    boolean classThree = breaker.energyClass() != null && breaker.energyClass() == 3;
    Double rated = breaker.data().ratedCurrentA();
    if (!core
        || !copper
        || !classThree
        || rated == null
        || breaker.characteristic() == null
        || !"thermoplastic-70".equals(cable.insulation())
        || !d.edition().table(TableName.ENERGY_GUIDANCE).has(breaker.characteristic())) {
      return null;
    }
    return d.edition()
        .table(TableName.ENERGY_GUIDANCE)
        .at(breaker.characteristic(), rated, greatest.value());
  }

  private static boolean boundsHoldBelowMagnetic(
      Breaker breaker, Cable cable, Figure least, Dossier d) {
    TripBand band = TripBand.of(breaker, d.edition());
    if (band == null) {
      return false;
    }
    double magnetic = band.steps().get(band.steps().size() - 1).fromA();
    if (Comparator.atMost(magnetic, least.value())) {
      return true;
    }
    Figure energy =
        LetThrough.of(breaker, d)
            .over(least, Figure.derived("I", magnetic, Unit.AMPERE))
            .greatest();
    return Comparator.AT_MOST.holds(energy.value(), HeatLimit.protective(cable, d).value());
  }
}
