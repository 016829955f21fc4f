package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What the face of a device cannot say beside its standard. */
final class FaceContradictions {
  private static final Set<String> HOUSEHOLD_BREAKERS = Set.of("IEC 60898-1", "IEC 61009-1");
  private static final Set<String> FUSES =
      Set.of("BS 88-2", "BS 88-3", "BS 1361", "BS 1362", "BS 3036");

  private final JsonNode device;
  private final String pointer;
  private final String standard;
  private final List<Fault> faults = new ArrayList<>();

  private FaceContradictions(JsonNode device, String pointer) {
    this.device = device;
    this.pointer = pointer;
    this.standard = device.path("standard").asText("");
  }

  /** Those of one device. */
  static List<Fault> of(JsonNode device, String pointer) {
    FaceContradictions found = new FaceContradictions(device, pointer);
    found.within("protectedPoles", "poles", "A device has no more protected poles than poles.");
    found.within(
        "ratedLineToEarthVoltageV",
        "ratedVoltageV",
        "The voltage to earth cannot exceed that between lines.");
    found.poles();
    found.isolation();
    found.direction();
    found.derating();
    return found.faults;
  }

  /** IEC 60898-1 and IEC 61009-1, clause 4: of three poles or more at least three are protected. */
  private void poles() {
    JsonNode protectedPoles = device.path("protectedPoles");
    if (!protectedPoles.isNumber()) {
      return;
    }
    boolean breaks =
        HOUSEHOLD_BREAKERS.contains(standard)
            || FUSES.contains(standard)
            || standard.equals("IEC 60947-2");
    if (breaks && protectedPoles.intValue() == 0) {
      add("protectedPoles", "A device of this standard protects at least one pole.");
    } else if (HOUSEHOLD_BREAKERS.contains(standard)
        && device.path("poles").intValue() > 2
        && protectedPoles.intValue() <= 2) {
      add("protectedPoles", "Of three poles or more this standard knows three protected at least.");
    }
  }

  /**
   * IEC 60898-1, IEC 61008-1 and IEC 61009-1, clause 1: they are suitable for isolation; a link
   * that is drawn isolates (Table 537.4).
   */
  private void isolation() {
    JsonNode isolation = device.path("isolation");
    boolean isolating =
        HOUSEHOLD_BREAKERS.contains(standard)
            || FUSES.contains(standard)
            || standard.equals("IEC 61008-1");
    if (isolating && isolation.isBoolean() && !isolation.booleanValue()) {
      add("isolation", "Devices of this standard are suitable for isolation.");
    }
  }

  private void within(String smaller, String greater, String detail) {
    JsonNode less = device.path(smaller);
    JsonNode more = device.path(greater);
    if (less.isNumber() && more.isNumber() && less.doubleValue() > more.doubleValue()) {
      add(smaller, detail);
    }
  }

  private void direction() {
    if (FUSES.contains(standard) && device.path("unidirectional").asBoolean(false)) {
      add("unidirectional", "A fuse has no direction.");
    }
  }

  private void derating() {
    Set<Double> temperatures = new HashSet<>();
    JsonNode points = device.path("derating");
    for (int i = 0; i < points.size(); i++) {
      JsonNode at = points.get(i).path("ambientTemperatureC");
      if (at.isNumber() && !temperatures.add(at.doubleValue())) {
        add("derating/" + i, "Two points stand at the same temperature.");
      }
    }
  }

  private void add(String member, String detail) {
    faults.add(Fault.inBody(Contradictions.CONTRADICTION, detail, pointer + "/" + member));
  }
}
