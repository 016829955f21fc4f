package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Premises;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import java.util.EnumSet;
import java.util.Set;

/**
 * Arc fault detection (421.1.7, since Amendment 2 of 2022): owed in single-phase final circuits of
 * socket-outlets up to 32 A in higher-risk residential buildings, houses in multiple occupation,
 * student accommodation and care homes.
 */
final class ArcFaultDuty {
  private static final Set<Premises.Use> NO_RESIDENCE =
      EnumSet.of(Premises.Use.INDUSTRIAL, Premises.Use.AGRICULTURAL);

  private ArcFaultDuty() {}

  /** Whether it is owed; null where what is not stated decides. */
  static Boolean owed(Circuit circuit, LiveConductors live, Dossier d) {
    boolean known = d.edition().constant(Constant.ADDITIONAL_PROTECTION_ARC_FAULT).number() > 0;
    boolean several = live != null && live.lines() > 1;
    Boolean outlets = SocketOutletDuty.small(circuit, d.edition());
    Boolean residence = residence(circuit, d);
    if (!known || several || Boolean.FALSE.equals(outlets) || Boolean.FALSE.equals(residence)) {
      return false;
    }
    return outlets == null || residence == null || live == null ? null : Boolean.TRUE;
  }

  /** Whether the duty is met: true where it is not owed; null where it is not known, noted. */
  static Boolean met(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    Boolean owed = owed(circuit, live, d);
    if (Boolean.FALSE.equals(owed)) {
      return true;
    }
    judgement.by(Clause.ARC_FAULT);
    if (detects(circuit.device()) || detects(circuit.residualDevice())) {
      return true;
    }
    boolean none =
        circuit.device() != null
            && Boolean.FALSE.equals(circuit.device().data().arcFaultDetection());
    if (none && Boolean.TRUE.equals(owed)) {
      d.remark(NoteCode.ARC_FAULT_OWED);
      return false;
    }
    if (!none) {
      d.missing(At.ARC_FAULT);
    }
    if (owed == null && circuit.premises().higherRiskResidential() == null) {
      d.missing(At.HIGHER_RISK);
    } else if (owed == null) {
      d.missing(circuit.load().hasSocketOutlet() ? At.OUTLET_RATING : At.CONNECTION);
    }
    return null;
  }

  private static boolean detects(ProtectiveDevice device) {
    return device != null
        && (Boolean.TRUE.equals(device.data().arcFaultDetection())
            || "IEC 62606".equals(device.data().standard()));
  }

  private static Boolean residence(Circuit circuit, Dossier d) {
    Boolean stated = circuit.premises().higherRiskResidential();
    if (stated != null) {
      return stated;
    }
    Premises.Use use = circuit.premises().use();
    if (use != null && NO_RESIDENCE.contains(use)) {
      return false;
    }
    if (d.allows(Allowance.TYPICAL_VALUES)) {
      d.assumeCurable(NoteCode.ASSUMED_NOT_HIGHER_RISK, At.HIGHER_RISK);
      return false;
    }
    return null;
  }
}
