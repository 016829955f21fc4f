package circuitverdict.select;

import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.Residual;
import circuitverdict.quantity.Shown;
import circuitverdict.select.DeviceSelection.Candidate;

/** A device of a selection as a person would name it. */
public final class Designation {
  private Designation() {}

  /** The caller's own name of a product; else what is read off the face. */
  public static String of(Candidate candidate) {
    String id = candidate.device().data().id();
    String face = face(candidate.device());
    if (id != null) {
      return face.isEmpty() ? id : id + " (" + face + ")";
    }
    return face.isEmpty() ? "Product " + (candidate.place() + 1) : face;
  }

  /** Letter with rated current, breaking capacity and residual function, as far as stated. */
  private static String face(ProtectiveDevice device) {
    DeviceData data = device.data();
    StringBuilder face = new StringBuilder();
    if (data.ratedCurrentA() != null) {
      String letter = letter(device);
      String ampere = Shown.plain(data.ratedCurrentA());
      face.append(letter == null ? ampere + " A" : letter + ampere);
    }
    if (data.breakingCapacityA() != null) {
      face.append(face.length() == 0 ? "" : ", ");
      face.append(Shown.plain(data.breakingCapacityA())).append(" A");
    }
    Residual residual = data.residual();
    if (residual != null && residual.operatingCurrentA() != null) {
      face.append(face.length() == 0 ? "" : ", ");
      face.append(Shown.plain(1000 * residual.operatingCurrentA())).append(" mA");
      face.append(residual.type() == null ? "" : " type " + residual.type());
    }
    if (Boolean.TRUE.equals(data.arcFaultDetection())) {
      face.append(face.length() == 0 ? "" : ", ").append("arc fault detection");
    }
    return face.toString();
  }

  private static String letter(ProtectiveDevice device) {
    if (device instanceof Breaker breaker) {
      return breaker.characteristic();
    }
    return device instanceof AdjustableBreaker breaker ? breaker.characteristic() : null;
  }
}
