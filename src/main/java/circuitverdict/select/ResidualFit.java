package circuitverdict.select;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.Residual;
import circuitverdict.quantity.Shown;
import java.util.ArrayList;
import java.util.List;

/**
 * A fitted residual function exchanged for one of other data; what stays as it is is null.
 *
 * @param place JSON pointer of the device that has it
 * @param type by the waveform that it detects
 * @param operatingA rated residual operating current IΔn, A
 * @param delay kind of delay
 * @param ratedA rated current of an RCCB, A
 * @param conditionalA rated conditional short-circuit current Inc of an RCCB, A
 */
record ResidualFit(
    String place,
    Residual.Type type,
    Double operatingA,
    Residual.Delay delay,
    Double ratedA,
    Double conditionalA)
    implements Change {
  private static final String BEFORE = "/residualDevice";

  /** Another function of the device there. */
  static ResidualFit function(
      String place, Residual.Type type, Double operatingA, Residual.Delay delay) {
    return new ResidualFit(place, type, operatingA, delay, null, null);
  }

  /** An RCCB before the circuit that carries or stands more. */
  static ResidualFit stronger(Double ratedA, Double conditionalA) {
    return new ResidualFit(BEFORE, null, null, null, ratedA, conditionalA);
  }

  @Override
  public Circuit applyTo(Circuit circuit) {
    boolean before = place.equals(BEFORE);
    ProtectiveDevice old = before ? circuit.residualDevice() : circuit.device();
    ProtectiveDevice other = refitted(old);
    return before ? circuit.withResidual(other) : circuit.with(other);
  }

  private ProtectiveDevice refitted(ProtectiveDevice old) {
    Residual was = old.data().residual();
    DeviceData data = old.data();
    if (changesFunction()) {
      data =
          data.withResidual(
              new Residual(
                  type == null ? was.type() : type,
                  operatingA == null ? was.operatingCurrentA() : operatingA,
                  delay == null ? was.delay() : delay,
                  was.delayS()));
    }
    data = ratedA == null ? data : data.withRatedCurrent(ratedA);
    if (old instanceof Rccb rccb) {
      Double conditional = conditionalA == null ? rccb.conditionalA() : conditionalA;
      return new Rccb(data, rccb.makingBreakingA(), conditional);
    }
    return Refitted.with(old, data);
  }

  private boolean changesFunction() {
    return type != null || operatingA != null || delay != null;
  }

  @Override
  public List<Member> members() {
    List<Member> members = new ArrayList<>();
    add(members, "ratedCurrentA", ratedA);
    add(members, "conditionalCapacityA", conditionalA);
    add(members, "residual/operatingCurrentA", operatingA);
    add(members, "residual/type", type == null ? null : type.name());
    add(members, "residual/delay", delay == null ? null : "general");
    return members;
  }

  private void add(List<Member> members, String name, Object value) {
    if (value != null) {
      members.add(new Member(place + "/" + name, value));
    }
  }

  @Override
  public String words() {
    StringBuilder words = new StringBuilder("Fit a residual current device");
    String joint = " of ";
    if (type != null) {
      words.append(joint).append("type ").append(type.name());
      joint = ", ";
    }
    if (operatingA != null) {
      words.append(joint).append(Shown.plain(1000 * operatingA)).append(" mA");
      joint = ", ";
    }
    if (ratedA != null) {
      words.append(joint).append("rated ").append(Shown.plain(ratedA)).append(" A");
      joint = ", ";
    }
    if (conditionalA != null) {
      words.append(joint).append("Inc ").append(Shown.plain(conditionalA)).append(" A");
      joint = ", ";
    }
    if (delay != null) {
      words.append(joint).append("without delay");
    }
    return words.append('.').toString();
  }
}
