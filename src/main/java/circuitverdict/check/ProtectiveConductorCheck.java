package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.conductor.HeatLimit;
import circuitverdict.conductor.ProtectiveTable;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.LetThrough;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.FaultLoop;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import circuitverdict.standard.Clause;

/**
 * The protective conductor (543.1): it stands the energy of an earth fault (543.1.3), or is as
 * large as Table 54.7 demands (543.1.4), which the rules allow instead; it keeps the least sizes of
 * 543.1.1; and standing currents keep to 543.7. Bonding conductors are not judged.
 */
public final class ProtectiveConductorCheck implements Check {
  @Override
  public CheckName name() {
    return CheckName.PROTECTIVE_CONDUCTOR;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement =
        new Judgement(name(), circuit, d, "/cable").by(Clause.PROTECTIVE_CONDUCTOR);
    d.remark(NoteCode.BONDING_NOT_COVERED);
    LiveConductors live = Wiring.live(circuit, d);
    EnergyComparisons proof = new EnergyComparisons();
    if (circuit.device() == null) {
      d.missing(At.DEVICE_ITSELF);
      for (Cable cable : Wiring.cables(circuit)) {
        // What it stands will be compared too: what is missing for it is named with the device.
        HeatLimit.protective(cable, d);
      }
    }
    Figure greatest = credible(circuit, d);
    Figure least = FaultLoop.earth(circuit, live, d).leastCurrent(circuit, d);
    judgement.tell(least, greatest);
    if (circuit.device() != null) {
      LetThrough energy =
          EnergyEvidence.withBackUp(circuit, LetThrough.of(circuit.device(), d), greatest, d);
      proof =
          compare(
              circuit, EnergyEvidence.withResidual(circuit, energy, least, d), least, greatest, d);
    }
    bySize(circuit, live, greatest, proof, judgement, d);
    ProtectiveLeast.judge(circuit, judgement, d);
    return judgement.conclude();
  }

  /** The greatest earth fault current; unknown where the stated loop lets more flow. */
  private static Figure credible(Circuit circuit, Dossier d) {
    Figure greatest = GreatestCurrent.toEarth(circuit, d);
    return ContradictedCurrent.byEarthLoop(circuit, greatest, d)
        ? Figure.unknown(greatest.symbol(), greatest.unit())
        : greatest;
  }

  private static void bySize(
      Circuit circuit,
      LiveConductors live,
      Figure greatest,
      EnergyComparisons proof,
      Judgement judgement,
      Dossier d) {
    if (proof.complies() && !d.standsAtBest()) {
      proof.addTo(judgement);
      return;
    }
    // The table presumes one line behind a device that suits it: of several in parallel one
    // protective conductor may have to stand what its energy shows that it does not.
    boolean parallel = Wiring.cables(circuit).stream().anyMatch(cable -> cable.parallel() > 1);
    boolean energyOpen = proof.fails() || !told(circuit.device(), d.trial());
    if (!(parallel && energyOpen) && byTable(circuit, judgement, d)) {
      judgement.by(Clause.PROTECTIVE_TABLE);
      judgement.settled();
      d.remark(proof.fails() ? NoteCode.ENERGY_EXCEEDS : NoteCode.TABLE_54_7);
      return;
    }
    if (proof.fails()) {
      proof.addTo(judgement);
      return;
    }
    if (circuit.device() != null && ProtectiveGuidance.holds(circuit, live, greatest, d)) {
      d.restsOn(Dossier.Strength.GUIDANCE);
      ProtectiveGuidance.addTo(circuit, greatest, judgement, d);
      return;
    }
    proof.addTo(judgement);
    if (circuit.device() != null) {
      if (parallel) {
        told(circuit.device(), d);
      }
      EnergyEvidence.ask(circuit.device(), greatest, d);
    }
    judgement.undetermined();
  }

  /** Whether a device states all that tells what it lets through: else nobody looked. */
  private static boolean told(ProtectiveDevice device, Dossier notes) {
    if (device == null) {
      return false;
    }
    Pointer letter = new Pointer(device.data().place(), "characteristic");
    boolean lettered =
        !(device instanceof Breaker breaker)
            || notes.need(breaker.characteristic(), letter) != null;
    boolean rated = RatedCurrent.of(device, notes).known();
    return lettered && rated && BreakingCapacity.stated(device, notes).known();
  }

  private static EnergyComparisons compare(
      Circuit circuit, LetThrough energy, Figure least, Figure greatest, Dossier d) {
    EnergyComparisons comparisons = new EnergyComparisons();
    for (Cable cable : Wiring.cables(circuit)) {
      comparisons.add(cable.place(), energy, least, greatest, HeatLimit.protective(cable, d), d);
    }
    return comparisons;
  }

  private static boolean byTable(Circuit circuit, Judgement judgement, Dossier d) {
    boolean all = true;
    for (Cable cable : Wiring.cables(circuit)) {
      ProtectiveTable table = ProtectiveTable.of(cable, d);
      all &= Comparator.AT_LEAST.holds(table.actual().value(), table.least().value());
    }
    if (all) {
      for (Cable cable : Wiring.cables(circuit)) {
        ProtectiveTable table = ProtectiveTable.of(cable, d);
        judgement.compare(cable.place(), table.actual(), Comparator.AT_LEAST, table.least());
      }
    }
    return all;
  }
}
