package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;

/**
 * Whether a fuse breaks over the full range of currents (gG), as the rules and tables suppose
 * (433.1.201, IEC 60269-1). Only BS 88-2 has other categories: only there it must be stated, and
 * for a design it may be assumed, listed.
 */
public final class GeneralPurpose {
  private GeneralPurpose() {}

  /** Whether it is; null where nothing says so. */
  public static Boolean of(Fuse fuse, Dossier d) {
    if (fuse.utilizationCategory() != null) {
      return "gG".equals(fuse.utilizationCategory());
    }
    boolean only = !"BS 88-2".equals(fuse.data().standard());
    return only || d.allows(Allowance.TABLE_DEFAULTS) ? Boolean.TRUE : null;
  }

  /** The same where it decides: notes that it is missing or assumed. */
  public static Boolean noted(Fuse fuse, Dossier d) {
    Boolean general = of(fuse, d);
    Pointer at = new Pointer(fuse.data().place(), "utilizationCategory");
    if (general == null) {
      d.missing(at);
    } else if (general
        && fuse.utilizationCategory() == null
        && "BS 88-2".equals(fuse.data().standard())) {
      d.assume(NoteCode.ASSUMED_GENERAL_PURPOSE, at);
    }
    return general;
  }
}
