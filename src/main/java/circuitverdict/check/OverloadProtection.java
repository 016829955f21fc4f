package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.conductor.Coordination;
import circuitverdict.conductor.CurrentRating;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.AgainstOverload;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.standard.Clause;

/**
 * Overload protection (433.1.1): Ib ≤ In ≤ Iz and I2 ≤ 1.45·Iz; the ring rule (433.1.204); omission
 * for a load that cannot overload, or whose own relay protects (433.3.1, 552.1.2), which leaves Ib
 * ≤ Iz, behind motor fuses too. For the devices named by 433.1.201 the second settles the third.
 */
public final class OverloadProtection implements Check {
  @Override
  public CheckName name() {
    return CheckName.OVERLOAD_PROTECTION;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement = new Judgement(name(), circuit, d, "/cable").by(Clause.OVERLOAD);
    ProtectiveDevice device = circuit.device();
    if (device == null || device.data().standard() == null) {
      askAtOnce(circuit, d);
      return judgement.undetermined().conclude();
    }
    Boolean protects = AgainstOverload.of(device, d);
    boolean omitted = device instanceof Fuse && Coordination.byLoadAlone(circuit, protects);
    if (!omitted) {
      AgainstOverload.noted(device, d);
    }
    if (Boolean.FALSE.equals(protects) && !omitted) {
      return judgement.undetermined().conclude();
    }
    LiveConductors live = Wiring.live(circuit, d);
    Figure design = DesignCurrent.noted(circuit, live, d);
    Figure rated = RatedCurrent.of(device, d);
    if (protects == null && !omitted) {
      ofAnyCategory(circuit, live, design, rated, judgement, d);
      return judgement.undetermined().conclude();
    }
    judgement.compare("/device", design, Comparator.AT_MOST, rated);
    if (!design.known()) {
      judgement.atBest("/device", DesignCurrent.least(circuit, live, d), Comparator.AT_MOST, rated);
    }
    for (Cable cable : Wiring.cables(circuit)) {
      compare(
          circuit, cable, Coordination.of(circuit, cable, live, design, rated, d), judgement, d);
    }
    return judgement.conclude();
  }

  /**
   * What a fuse asks whose category is not stated: In ≤ Iz only if it is gG, but whatever protects,
   * a cable carries Ib. A leg of a ring carries a part of it.
   */
  private static void ofAnyCategory(
      Circuit circuit,
      LiveConductors live,
      Figure design,
      Figure rated,
      Judgement judgement,
      Dossier d) {
    judgement.open("/device", design, Comparator.AT_MOST, rated);
    for (Cable cable : Wiring.cables(circuit)) {
      Figure installed = CurrentRating.of(circuit, cable, live, d).installed();
      if (!circuit.cable().ring()) {
        judgement.atBest(cable.place(), design, Comparator.AT_MOST, installed);
      }
    }
  }

  /** Without the device nothing is compared; what will be needed besides is named with it. */
  private static void askAtOnce(Circuit circuit, Dossier d) {
    if (circuit.device() == null) {
      d.missing(At.DEVICE_ITSELF);
    } else {
      RatedCurrent.of(circuit.device(), d);
    }
    LiveConductors live = Wiring.live(circuit, d);
    DesignCurrent.of(circuit, live, d);
    for (Cable cable : Wiring.cables(circuit)) {
      CurrentRating.of(circuit, cable, live, d);
    }
  }

  private static void compare(
      Circuit circuit, Cable cable, Coordination coordination, Judgement judgement, Dossier d) {
    judgement.compare(
        cable.place(), coordination.demanded(), Comparator.AT_MOST, coordination.installed());
    switch (coordination.rule()) {
      case RING -> {
        judgement.by(Clause.RING);
        d.remark(NoteCode.RING_RULE);
      }
      case SPUR -> {
        d.restsOn(Dossier.Strength.GUIDANCE);
        d.remark(NoteCode.SPUR_GUIDANCE);
      }
      case OMITTED -> {
        judgement.by(Clause.OVERLOAD_OMISSION).by(Clause.MOTOR);
        d.remark(NoteCode.OVERLOAD_OMITTED);
      }
      case RATING -> byConventionalCurrent(circuit, cable, coordination, judgement);
    }
  }

  private static void byConventionalCurrent(
      Circuit circuit, Cable cable, Coordination coordination, Judgement judgement) {
    boolean rewireable = "BS 3036".equals(circuit.device().data().standard());
    judgement.by(rewireable ? Clause.OVERLOAD_REWIREABLE : Clause.OVERLOAD_DEEMED);
    if (cable.installation().buried()) {
      judgement.by(Clause.OVERLOAD_BURIED);
    }
    if (coordination.conventional().known() || coordination.open()) {
      judgement.compare(
          cable.place(), coordination.conventional(), Comparator.AT_MOST, coordination.allowed());
    }
  }
}
