package circuitverdict.service.wire;

import circuitverdict.service.edge.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Points of a time–current curve that no device can have. */
final class CurveContradictions {
  private CurveContradictions() {}

  /** The earliest time is not the later one, and neither rises with the current. */
  static List<Fault> of(JsonNode device, String pointer) {
    List<Fault> faults = new ArrayList<>();
    JsonNode points = device.path("operatingTimes");
    for (int i = 0; i < points.size(); i++) {
      String place = pointer + "/operatingTimes/" + i;
      if (exceeds(points.get(i).path("earliestS"), points.get(i).path("latestS"))) {
        add(faults, place, "A device cannot operate earliest after it has operated for certain.");
      } else if (rises(points, i)) {
        add(faults, place, "At a greater current a device does not take longer.");
      }
    }
    return faults;
  }

  private static boolean rises(JsonNode points, int index) {
    JsonNode here = points.get(index);
    for (int i = 0; i < points.size(); i++) {
      JsonNode other = points.get(i);
      boolean below =
          i != index
              && other.path("currentA").isNumber()
              && here.path("currentA").isNumber()
              && other.path("currentA").doubleValue() <= here.path("currentA").doubleValue();
      // What stands twice at one current is told at the later of the two.
      boolean first = below && exceeds(here.path("currentA"), other.path("currentA"));
      boolean before = below && (first || i < index);
      if (before
          && (exceeds(here.path("earliestS"), other.path("earliestS"))
              || exceeds(here.path("latestS"), other.path("latestS"))
              || exceeds(here.path("earliestS"), other.path("latestS")))) {
        return true;
      }
    }
    return false;
  }

  private static boolean exceeds(JsonNode one, JsonNode other) {
    return one.isNumber() && other.isNumber() && one.doubleValue() > other.doubleValue();
  }

  private static void add(List<Fault> faults, String pointer, String detail) {
    faults.add(Fault.inBody(Contradictions.CONTRADICTION, detail, pointer));
  }
}
