package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;

/**
 * Whether a device protects against overload, so that its In limits what a conductor carries for
 * long (433.1.1): breakers and fuses of the full range do. Motor fuses (aM, gM) do not, 433.1.201
 * speaks of gG; nor do residual current devices, nor any whose standard is not judged.
 */
public final class AgainstOverload {
  private AgainstOverload() {}

  /** Whether it does; null where the category of a fuse decides and is not stated. */
  public static Boolean of(ProtectiveDevice device, Dossier d) {
    if (device instanceof Fuse fuse) {
      return GeneralPurpose.of(fuse, d);
    }
    return device instanceof Breaker || device instanceof AdjustableBreaker;
  }

  /** The same where it decides: notes what is missing or assumed, or that it does not. */
  public static Boolean noted(ProtectiveDevice device, Dossier d) {
    Boolean protects = of(device, d);
    if (Boolean.FALSE.equals(protects)) {
      NotJudged.note(device, d);
    } else if (device instanceof Fuse fuse) {
      GeneralPurpose.noted(fuse, d);
    }
    return protects;
  }
}
