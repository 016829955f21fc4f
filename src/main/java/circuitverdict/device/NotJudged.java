package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;

/**
 * Says why a device is not judged: it or its standard is not stated, or it or the category of a
 * fuse is one that the check does not know.
 */
public final class NotJudged {
  private NotJudged() {}

  /** Notes what is missing. */
  public static void note(ProtectiveDevice device, Dossier d) {
    if (device == null) {
      d.missing(At.DEVICE_ITSELF);
      return;
    }
    Pointer at = new Pointer(device.data().place(), "standard");
    if (device.data().standard() == null) {
      d.missing(at);
    } else {
      boolean byCategory = device instanceof Fuse fuse && fuse.utilizationCategory() != null;
      d.missing(
          NoteCode.DEVICE_NOT_JUDGED,
          byCategory ? new Pointer(device.data().place(), "utilizationCategory") : at);
    }
  }
}
