package circuitverdict.select;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.Nameplate;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.Residual;
import java.util.ArrayList;
import java.util.List;

/** One change of a circuit: how it is made, and how it is written as a partial circuit. */
public sealed interface Change
    permits Change.Characteristic,
        Change.RatedCurrent,
        Change.Capacity,
        Change.EnergyClass,
        Change.Poles,
        Change.Sizes,
        Change.Length,
        Change.ResidualDevice,
        Change.OpenPen,
        Change.WithDevice,
        Change.WithProduct,
        ClippedDirect,
        CombinedChange,
        ResidualFit {

  /** A member of the request and its new value: a number or a word. */
  record Member(String pointer, Object value) {}

  /** The circuit with the change made. */
  Circuit applyTo(Circuit circuit);

  /** The members that change. */
  List<Member> members();

  /** What to do, for a sentence. */
  String words();

  /** Another characteristic of the breaker. */
  record Characteristic(String letter) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      Breaker old = (Breaker) circuit.device();
      return circuit.with(new Breaker(old.data(), letter, old.energyClass(), Multiples.NONE));
    }

    @Override
    public List<Member> members() {
      return List.of(new Member("/device/characteristic", letter));
    }

    @Override
    public String words() {
      return "Fit type " + letter + ".";
    }
  }

  /** Another rated current of the device. */
  record RatedCurrent(double ampere) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      ProtectiveDevice old = circuit.device();
      return circuit.with(Refitted.with(old, old.data().withRatedCurrent(ampere)));
    }

    @Override
    public List<Member> members() {
      return List.of(new Member("/device/ratedCurrentA", ampere));
    }

    @Override
    public String words() {
      return "Fit a rated current of " + plain(ampere) + " A.";
    }
  }

  /** Another breaking capacity of the device. */
  record Capacity(double ampere) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      ProtectiveDevice old = circuit.device();
      return circuit.with(Refitted.with(old, old.data().withBreakingCapacity(ampere)));
    }

    @Override
    public List<Member> members() {
      return List.of(new Member("/device/breakingCapacityA", ampere));
    }

    @Override
    public String words() {
      return "Fit a device with a breaking capacity of " + plain(ampere) + " A.";
    }
  }

  /** Another energy limiting class of the breaker. */
  record EnergyClass(int number) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      Breaker old = (Breaker) circuit.device();
      return circuit.with(new Breaker(old.data(), old.characteristic(), number, old.multiples()));
    }

    @Override
    public List<Member> members() {
      return List.of(new Member("/device/energyClass", number));
    }

    @Override
    public String words() {
      return "Fit a device of energy limiting class " + number + ".";
    }
  }

  /** More poles of the device, all of them protected where that is stated. */
  record Poles(int count, boolean stated) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      ProtectiveDevice old = circuit.device();
      Nameplate face = old.data().nameplate();
      Nameplate other = stated ? face.withProtectedPoles(count) : face;
      return circuit.with(Refitted.with(old, old.data().withPoles(count, other)));
    }

    @Override
    public List<Member> members() {
      Member poles = new Member("/device/poles", count);
      return stated ? List.of(poles, new Member("/device/protectedPoles", count)) : List.of(poles);
    }

    @Override
    public String words() {
      return "Fit a device of " + count + " poles.";
    }
  }

  /** Other cross-sections of the cable. */
  record Sizes(double lineMm2, Double neutralMm2, Double protectiveMm2) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      Cable cable = circuit.cable();
      Double protective = protectiveMm2 == null ? cable.protectiveCsaMm2() : protectiveMm2;
      return circuit.with(cable.withSizes(lineMm2, neutralMm2, protective));
    }

    @Override
    public List<Member> members() {
      List<Member> members = new ArrayList<>();
      members.add(new Member("/cable/lineCsaMm2", lineMm2));
      if (neutralMm2 != null) {
        members.add(new Member("/cable/neutralCsaMm2", neutralMm2));
      }
      if (protectiveMm2 != null) {
        members.add(new Member("/cable/protectiveCsaMm2", protectiveMm2));
      }
      return members;
    }

    @Override
    public String words() {
      String protective = protectiveMm2 == null ? "" : "/" + plain(protectiveMm2);
      return "Run " + plain(lineMm2) + protective + " mm² cable.";
    }
  }

  /** A shorter cable. */
  record Length(double metres) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      return circuit.with(circuit.cable().withLength(metres));
    }

    @Override
    public List<Member> members() {
      return List.of(new Member("/cable/lengthM", metres));
    }

    @Override
    public String words() {
      return "Keep the cable to " + plain(metres) + " m.";
    }
  }

  /**
   * A residual current device before the circuit; poles and conditional short-circuit current null
   * where they do not follow.
   */
  record ResidualDevice(
      Residual.Type type, double operatingA, double ratedA, Integer poles, Double conditionalA)
      implements Change {
    static final String STANDARD = "IEC 61008-1";

    @Override
    public Circuit applyTo(Circuit circuit) {
      Residual residual = new Residual(type, operatingA, Residual.Delay.GENERAL, null);
      DeviceData data =
          new DeviceData(
              "/residualDevice",
              null,
              STANDARD,
              ratedA,
              null,
              null,
              poles,
              null,
              residual,
              List.of());
      return circuit.withResidual(new Rccb(data, null, conditionalA));
    }

    @Override
    public List<Member> members() {
      List<Member> members = new ArrayList<>();
      members.add(new Member("/residualDevice/standard", STANDARD));
      members.add(new Member("/residualDevice/ratedCurrentA", ratedA));
      if (poles != null) {
        members.add(new Member("/residualDevice/poles", poles));
      }
      if (conditionalA != null) {
        members.add(new Member("/residualDevice/conditionalCapacityA", conditionalA));
      }
      members.add(new Member("/residualDevice/residual/operatingCurrentA", operatingA));
      members.add(new Member("/residualDevice/residual/type", type.name()));
      members.add(new Member("/residualDevice/residual/delay", "general"));
      return members;
    }

    @Override
    public String words() {
      return "Add a residual current device of "
          + plain(1000 * operatingA)
          + " mA, type "
          + type.name()
          + ".";
    }
  }

  /** A permitted measure against a broken PEN conductor. */
  record OpenPen() implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      return circuit.with(circuit.supply().withOpenPenProtection());
    }

    @Override
    public List<Member> members() {
      return List.of(new Member("/supply/openPenProtection", true));
    }

    @Override
    public String words() {
      return "Fit a permitted measure against a broken PEN conductor.";
    }
  }

  /** A device of the series together with another change: where no device alone will do. */
  record WithDevice(Breaker device, Change change) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      return change.applyTo(circuit.with(device));
    }

    @Override
    public List<Member> members() {
      List<Member> members = new ArrayList<>();
      members.add(new Member("/device/standard", device.data().standard()));
      members.add(new Member("/device/characteristic", device.characteristic()));
      members.add(new Member("/device/ratedCurrentA", device.data().ratedCurrentA()));
      members.add(new Member("/device/breakingCapacityA", device.data().breakingCapacityA()));
      members.add(new Member("/device/energyClass", device.energyClass()));
      face(members);
      for (Member member : change.members()) {
        members.removeIf(each -> each.pointer().equals(member.pointer()));
        members.add(member);
      }
      return members;
    }

    private void face(List<Member> members) {
      Nameplate face = device.data().nameplate();
      if (device.data().poles() != null) {
        members.add(new Member("/device/poles", device.data().poles()));
      }
      if (face.protectedPoles() != null) {
        members.add(new Member("/device/protectedPoles", face.protectedPoles()));
      }
      if (face.ratedVoltageV() != null) {
        members.add(new Member("/device/ratedVoltageV", face.ratedVoltageV()));
      }
      Residual residual = device.data().residual();
      if (residual != null) {
        members.add(new Member("/device/residual/operatingCurrentA", residual.operatingCurrentA()));
        members.add(new Member("/device/residual/type", residual.type().name()));
        members.add(new Member("/device/residual/delay", "general"));
      }
      if (device.data().arcFaultDetection() != null) {
        members.add(new Member("/device/arcFaultDetection", device.data().arcFaultDetection()));
      }
    }

    @Override
    public String words() {
      return "With "
          + device.characteristic()
          + plain(device.data().ratedCurrentA())
          + ": "
          + change.words();
    }
  }

  /** A change together with the caller's product that then passes, which the caller keeps. */
  record WithProduct(String name, Change change) implements Change {
    @Override
    public Circuit applyTo(Circuit circuit) {
      return change.applyTo(circuit);
    }

    @Override
    public List<Member> members() {
      return change.members();
    }

    @Override
    public String words() {
      return "With " + name + ": " + change.words();
    }
  }

  private static String plain(double value) {
    return circuitverdict.quantity.Shown.plain(value);
  }
}
