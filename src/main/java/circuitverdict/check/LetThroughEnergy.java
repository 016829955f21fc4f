package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.HeatLimit;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.LetThrough;
import circuitverdict.device.NotJudged;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.fault.FaultLoop;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import java.util.function.Supplier;

/**
 * Let-through energy against what line and neutral stand, k²S² (434.5.2), over the whole range of
 * fault currents; deemed by 435.1 where the device protects against overload, has the breaking
 * capacity and limits the current, unless the maker's data prove the contrary.
 */
public final class LetThroughEnergy implements Check {
  @Override
  public CheckName name() {
    return CheckName.LET_THROUGH_ENERGY;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement = new Judgement(name(), circuit, d, "/cable").by(Clause.LET_THROUGH);
    ProtectiveDevice device = circuit.device();
    if (device == null || device.data().standard() == null) {
      NotJudged.note(device, d);
      askAtOnce(circuit, d);
      return judgement.undetermined().conclude();
    }
    if (device instanceof ProtectiveDevice.Other || device instanceof ProtectiveDevice.Rccb) {
      NotJudged.note(device, d);
      return judgement.undetermined().conclude();
    }
    LiveConductors live = Wiring.live(circuit, d);
    if (BreakingCapacity.beyondVoltage(circuit, d)) {
      return judgement.undetermined().conclude();
    }
    Figure greatest = credible(circuit, live, d);
    if (live != null) {
      judgement.tell(leastBetweenLive(circuit, live, d), greatest);
    }
    EnergyComparisons proof = energies(circuit, live, device, greatest, d);
    if (proof.fails() && !failsByStated(circuit, live, device, d)) {
      GreatestCurrent.heldByAnyKind(circuit, live).forEach(d::missing);
      return judgement.undetermined().conclude();
    }
    if (proof.complies() || proof.fails()) {
      proof.addTo(judgement);
      return judgement.conclude();
    }
    if (!proof.contrary() && CombinedDevice.covers(circuit, live, greatest, d)) {
      judgement.by(Clause.COMBINED_DEVICE);
      d.restsOn(Dossier.Strength.DEEMED);
      proof.addShownTo(judgement);
      judgement.compare(
          "/device", greatest, Comparator.AT_MOST, BreakingCapacity.stated(device, d));
      return judgement.conclude();
    }
    EnergyComparisons guided = guided(circuit, live, device, greatest, d);
    if (guided.complies()) {
      d.restsOn(Dossier.Strength.GUIDANCE);
      guided.addTo(judgement);
      return judgement.conclude();
    }
    proof.addTo(judgement);
    EnergyEvidence.ask(device, greatest, d);
    return judgement.undetermined().conclude();
  }

  /** The greatest current; unknown where a stated loop lets more flow. */
  private static Figure credible(Circuit circuit, LiveConductors live, Dossier d) {
    Figure greatest = GreatestCurrent.ofWay(circuit, live, null, d);
    return ContradictedCurrent.byLoops(circuit, live, greatest, d)
        ? Figure.unknown(greatest.symbol(), greatest.unit())
        : greatest;
  }

  /** Whether a failure needs none of the kinds of fault for which that of any kind stands in. */
  private static boolean failsByStated(
      Circuit circuit, LiveConductors live, ProtectiveDevice device, Dossier d) {
    if (GreatestCurrent.heldByAnyKind(circuit, live).isEmpty()) {
      return true;
    }
    Dossier trial = d.trial();
    Figure stated = GreatestCurrent.stated(circuit, live, trial);
    return energies(circuit, live, device, stated, trial).fails();
  }

  /** Without the device nothing is compared; what will be needed besides is named with it. */
  private static void askAtOnce(Circuit circuit, Dossier d) {
    LiveConductors live = Wiring.live(circuit, d);
    GreatestCurrent.ofWay(circuit, live, null, d);
    for (Cable cable : Wiring.cables(circuit)) {
      HeatLimit.line(cable, d);
      if (live != null && live.neutral()) {
        HeatLimit.neutral(cable, d);
      }
    }
  }

  private static EnergyComparisons energies(
      Circuit circuit, LiveConductors live, ProtectiveDevice device, Figure greatest, Dossier d) {
    return over(
        circuit,
        live,
        () -> EnergyEvidence.withBackUp(circuit, LetThrough.of(device, d), greatest, d),
        greatest,
        d);
  }

  private static EnergyComparisons guided(
      Circuit circuit, LiveConductors live, ProtectiveDevice device, Figure greatest, Dossier d) {
    return over(
        circuit, live, () -> LetThrough.byGuidance(device, greatest.value(), d), greatest, d);
  }

  private static EnergyComparisons over(
      Circuit circuit,
      LiveConductors live,
      Supplier<LetThrough> energy,
      Figure greatest,
      Dossier d) {
    EnergyComparisons comparisons = new EnergyComparisons();
    if (live == null) {
      // Which conductors there are is not known: the line alone can fail, none can pass.
      comparisons.unknown();
    }
    Figure between =
        live == null ? Figure.unknown("Iln,min", Unit.AMPERE) : leastBetweenLive(circuit, live, d);
    boolean tn = circuit.supply().earthing() == null || circuit.supply().earthing().tn();
    LetThrough own = energy.get();
    for (Cable cable : Wiring.cables(circuit)) {
      Figure line = HeatLimit.line(cable, d);
      comparisons.add(cable.place(), own, between, greatest, line, d);
      if (tn && live != null) {
        toEarth(circuit, live, cable, energy.get(), greatest, line, comparisons, d);
      }
      if (live != null && live.neutral()) {
        Figure neutral = HeatLimit.neutral(cable, d);
        comparisons.add(cable.place(), own, between, greatest, neutral, d);
      }
    }
    return comparisons;
  }

  /** The line carries an earth fault too: in TN by metal, cleared by whatever breaks first. */
  private static void toEarth(
      Circuit circuit,
      LiveConductors live,
      Cable cable,
      LetThrough energy,
      Figure greatest,
      Figure limit,
      EnergyComparisons comparisons,
      Dossier d) {
    Figure least = FaultLoop.earth(circuit, live, d).leastCurrent(circuit, d);
    LetThrough both = EnergyEvidence.withResidual(circuit, energy, least, d);
    comparisons.addOther(cable.place(), both, least, greatest, limit, d);
  }

  private static Figure leastBetweenLive(Circuit circuit, LiveConductors live, Dossier d) {
    if (live.neutral()) {
      return FaultLoop.neutral(circuit, d).leastCurrent(circuit, d);
    }
    return FaultLoop.leastBetweenLines(circuit, d);
  }
}
