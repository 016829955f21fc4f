package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.NotJudged;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import circuitverdict.standard.Clause;
import java.util.List;

/**
 * Breaking capacity (434.5.1, 536.4.201): the greatest current where the device sits against Icn or
 * Icu. Above it, only the declared rating of a combination with a named upstream device, or the
 * conditional rating of the assembly, can hold it: the mere presence of an upstream fuse cannot.
 */
public final class BreakingCapacityCheck implements Check {
  @Override
  public CheckName name() {
    return CheckName.BREAKING_CAPACITY;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement = new Judgement(name(), circuit, d, "/device").by(Clause.BREAKING_CAPACITY);
    ProtectiveDevice device = circuit.device();
    LiveConductors live = LiveConductors.of(circuit);
    if (device == null || device.data().standard() == null) {
      NotJudged.note(device, d);
      // Nothing is compared; the current will be needed besides and is named with the device.
      GreatestCurrent.ofWay(circuit, live, null, d);
      return judgement.undetermined().conclude();
    }
    if (device instanceof ProtectiveDevice.Rccb || device instanceof ProtectiveDevice.Other) {
      NotJudged.note(device, d);
      return judgement.undetermined().conclude();
    }
    Figure capacity = BreakingCapacity.of(device, d);
    Figure service = BreakingCapacity.service(device, capacity, d);
    Figure current = GreatestCurrent.ofWay(circuit, live, device.data().poles(), d);
    if (BreakingCapacity.beyondVoltage(circuit, d)
        || ContradictedCurrent.byLoops(circuit, live, current, d)) {
      return judgement.undetermined().conclude();
    }
    if (!capacity.known() || Comparator.AT_MOST.holds(current.value(), capacity.value())) {
      if (service.known() && !Comparator.atMost(current.value(), service.value())) {
        d.remark(NoteCode.ABOVE_SERVICE_CAPACITY, service);
      }
      judgement.compare("/device", current, Comparator.AT_MOST, capacity);
      return judgement.conclude();
    }
    if (!BackUpRule.decides(circuit, live, current, capacity, judgement, d)) {
      above(circuit, live, current, capacity, judgement, d);
    }
    return judgement.conclude();
  }

  /**
   * Above the capacity with nothing behind it. Where the greatest of any kind stands in for kinds
   * that are not stated, or nothing is known of these, only a stated one fails for certain.
   */
  private static void above(
      Circuit circuit,
      LiveConductors live,
      Figure current,
      Figure capacity,
      Judgement judgement,
      Dossier d) {
    List<Pointer> open = GreatestCurrent.heldByAnyKind(circuit, live);
    boolean own = BreakingCapacity.own(circuit.device(), capacity);
    if (!own) {
      // The fuse at hand may break more than what its standard promises of every one.
      Pointer at = new Pointer(circuit.device().data().place(), "breakingCapacityA");
      d.assumeCurable(NoteCode.ASSUMED_BREAKING_CAPACITY, at, capacity);
    }
    boolean whole = current.known() && open.isEmpty();
    if (whole && d.typical().isEmpty()) {
      judgement.compare("/device", current, Comparator.AT_MOST, capacity);
      return;
    }
    Figure stated = GreatestCurrent.stated(circuit, live, d);
    if (fails(circuit, live, stated, capacity, d)) {
      judgement.compare("/device", stated, Comparator.AT_MOST, capacity);
      if (own) {
        judgement.certain();
      }
      return;
    }
    if (whole) {
      judgement.compare("/device", current, Comparator.AT_MOST, capacity);
      return;
    }
    open.forEach(d::missing);
    judgement.open("/device", current, Comparator.AT_MOST, capacity);
  }

  private static boolean fails(
      Circuit circuit, LiveConductors live, Figure stated, Figure capacity, Dossier d) {
    if (!stated.known() || Comparator.atMost(stated.value(), capacity.value())) {
      return false;
    }
    Dossier trial = d.trial();
    Judgement tried = new Judgement(CheckName.BREAKING_CAPACITY, circuit, trial, "/device");
    return !BackUpRule.decides(circuit, live, stated, capacity, tried, trial);
  }
}
