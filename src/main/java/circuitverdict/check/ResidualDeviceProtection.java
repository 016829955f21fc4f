package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.circuit.ProtectiveDevice.Other;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.device.GeneralPurpose;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;

/**
 * Protection of an RCCB itself (536.4.3.2, from memory): it breaks nothing but residual currents.
 * From overload it is protected by a device in series whose rated current or setting does not
 * exceed its own. A short circuit it stands up to its own making and breaking capacity, and up to
 * its rated conditional short-circuit current with the protective device that its maker names, or
 * as part of an assembly up to the conditional rating of that. Judged for this circuit: what else
 * it feeds is not known.
 */
final class ResidualDeviceProtection {
  private static final String RATED = "ratedCurrentA";
  private static final String CONDITIONAL = "conditionalCapacityA";

  private ResidualDeviceProtection() {}

  static void hold(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    ProtectiveDevice before = circuit.residualDevice();
    if (before != null && before.data().standard() == null) {
      // It may be one that must be protected by others.
      d.missing(Suitability.at(before, "standard"));
      judgement.undetermined();
    }
    if (before instanceof Breaker || before instanceof AdjustableBreaker) {
      ResidualBreaker.hold(circuit, live, judgement, d);
    }
    if (!(before instanceof Rccb residual)) {
      return;
    }
    judgement.by(Clause.RESIDUAL_DEVICE_PROTECTION);
    d.remark(NoteCode.RESIDUAL_DEVICE_FEEDS_OTHERS);
    overload(circuit, residual, judgement, d);
    shortCircuit(circuit, live, residual, judgement, d);
  }

  private static void overload(Circuit circuit, Rccb residual, Judgement judgement, Dossier d) {
    String place = residual.data().place();
    Figure carries =
        d.need(
            "In,RCCB",
            residual.data().ratedCurrentA(),
            Unit.AMPERE,
            Suitability.at(residual, RATED));
    Figure own = protecting(circuit.device(), d);
    if (!carries.known()
        || !own.known()
        || Comparator.AT_MOST.holds(own.value(), carries.value())) {
      judgement.compare(place, own, Comparator.AT_MOST, carries);
      return;
    }
    ProtectiveDevice upstream = circuit.upstreamDevice();
    if (upstream == null || upstream instanceof Rccb || upstream instanceof Other) {
      d.missing(At.UPSTREAM);
      judgement.open(place, own, Comparator.AT_MOST, carries);
      return;
    }
    Figure above = protecting(upstream, d);
    if (!above.known() || Comparator.AT_MOST.holds(above.value(), carries.value())) {
      judgement.compare(place, above, Comparator.AT_MOST, carries);
      return;
    }
    Figure least = Figure.lesser(own, above);
    if (Boolean.FALSE.equals(circuit.load().canOverload())) {
      // Where nothing can overload it, its maker says what is wanted.
      d.missing(NoteCode.RESIDUAL_DEVICE_OVERLOAD, Suitability.at(residual, RATED), least);
      judgement.open(place, least, Comparator.AT_MOST, carries);
      return;
    }
    judgement.compare(place, least, Comparator.AT_MOST, carries);
  }

  /**
   * What a device is rated or set to carry, if it breaks overload at all: aM and gM links do not.
   */
  private static Figure protecting(ProtectiveDevice device, Dossier d) {
    if (device instanceof Fuse fuse && !Boolean.TRUE.equals(GeneralPurpose.noted(fuse, d))) {
      d.missing(Suitability.at(device, "utilizationCategory"));
      return Figure.unknown("In", Unit.AMPERE);
    }
    return RatedCurrent.of(device, d);
  }

  static void shortCircuit(
      Circuit circuit, LiveConductors live, Rccb residual, Judgement judgement, Dossier d) {
    String place = residual.data().place();
    Figure greatest = GreatestCurrent.ofWay(circuit, live, null, d);
    if (ContradictedCurrent.byLoops(circuit, live, greatest, d)) {
      judgement.undetermined();
      return;
    }
    Double stated = residual.conditionalA();
    if (stated == null) {
      own(circuit, live, residual, greatest, judgement, d);
    } else if (!AboveCapacity.exceeds(greatest, stated)) {
      d.remark(NoteCode.CONDITIONAL_WITH_NAMED_DEVICE);
      judgement.compare(place, greatest, Comparator.AT_MOST, conditional(residual, d));
    } else if (!BackUpRule.conditional(circuit, live, greatest, judgement, d)) {
      AboveCapacity.judge(circuit, place, greatest, conditional(residual, d), judgement, d);
    }
  }

  /** What the standard makes every one stand (IEC 61008-1, from memory). */
  private static void own(
      Circuit circuit,
      LiveConductors live,
      Rccb residual,
      Figure greatest,
      Judgement judgement,
      Dossier d) {
    String place = residual.data().place();
    Figure least = d.constant("Im", Constant.RESIDUAL_CAPACITY_LEAST_MAKING_BREAKING);
    if (!AboveCapacity.exceeds(greatest, least.value())) {
      judgement.compare(place, greatest, Comparator.AT_MOST, least);
    } else if (!BackUpRule.conditional(circuit, live, greatest, judgement, d)) {
      d.missing(Suitability.at(residual, CONDITIONAL));
      judgement.open(place, greatest, Comparator.AT_MOST, least);
    }
  }

  private static Figure conditional(Rccb residual, Dossier d) {
    Pointer at = Suitability.at(residual, CONDITIONAL);
    return d.given("Inc", residual.conditionalA(), Unit.AMPERE, at);
  }
}
