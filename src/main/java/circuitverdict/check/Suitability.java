package circuitverdict.check;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/** What the standard of a device says that such devices are made for. */
final class Suitability {
  private Suitability() {}

  /** The value of a column for the device's standard; null where the standard says nothing. */
  static Value of(ProtectiveDevice device, String column, Dossier d) {
    String standard = device.data().standard();
    return standard == null
        ? null
        : d.edition().table(TableName.DEVICE_SUITABILITY).at(column, standard);
  }

  /** Whether the standard says yes; no where it says nothing. */
  static boolean says(ProtectiveDevice device, String column, Dossier d) {
    Value value = of(device, column, d);
    return value != null && value.number() > 0;
  }

  /** A member of the device. */
  static Pointer at(ProtectiveDevice device, String member) {
    return new Pointer(device.data().place(), member);
  }
}
