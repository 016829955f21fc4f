package circuitverdict.service.edge;

import java.util.ArrayList;
import java.util.List;

/** Collects the faults of one request, in the order of the body, up to {@value #LIMIT}. */
final class Faults {

  static final int LIMIT = 100;

  // Most requests are valid: nothing is allocated for them.
  private List<Fault> faults;

  void add(FaultCode code, Place place, String detail) {
    add(code, place, detail, null);
  }

  void add(FaultCode code, Place place, String detail, List<String> allowed) {
    if (faults == null) {
      faults = new ArrayList<>();
    }
    if (faults.size() < LIMIT) {
      faults.add(place.fault(code, detail, allowed));
    }
  }

  /** Adds faults found elsewhere, as far as there is room. */
  void addAll(List<Fault> others) {
    for (Fault fault : others) {
      faults = faults == null ? new ArrayList<>() : faults;
      if (faults.size() < LIMIT) {
        faults.add(fault);
      }
    }
  }

  boolean isEmpty() {
    return faults == null;
  }

  /** True when nothing further would be listed. */
  boolean isFull() {
    return faults != null && faults.size() >= LIMIT;
  }

  List<Fault> list() {
    return faults == null ? List.of() : List.copyOf(faults);
  }
}
