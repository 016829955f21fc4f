package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;

/**
 * Standing protective-conductor current behind a residual current device (531.3.2): no more than 30
 * % of IΔn, lest it trips without a fault. Of a shared device the other circuits' currents are not
 * known.
 */
final class StandingResidual {
  private static final Formula SHARE = Formula.of("Ipe,max", Unit.AMPERE, "s·IΔn");

  private StandingResidual() {}

  /** Whether it is settled; what is missing for it is noted. */
  static boolean judge(
      Circuit circuit, ProtectiveDevice device, Figure operating, Judgement judgement, Dossier d) {
    Double standing = circuit.load().protectiveConductorCurrentA();
    if (standing == null) {
      d.remark(NoteCode.STANDING_NOT_STATED);
      return true;
    }
    if (!operating.known()) {
      d.missing(new Pointer(device.data().place() + "/residual", "operatingCurrentA"));
      return false;
    }
    judgement.by(Clause.STANDING_RESIDUAL);
    if (device == circuit.residualDevice()) {
      d.remark(NoteCode.STANDING_OF_OTHERS);
    }
    Figure share = d.constant("s", Constant.ADDITIONAL_PROTECTION_STANDING_SHARE);
    judgement.compare(
        device.data().place(),
        d.given("Ipe", standing, Unit.AMPERE, At.STANDING_CURRENT),
        Comparator.AT_MOST,
        d.working().step(SHARE, share, operating));
    return true;
  }
}
