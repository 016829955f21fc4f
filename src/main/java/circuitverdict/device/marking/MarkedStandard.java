package circuitverdict.device.marking;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The product standard by which a face is read, of one or several that are marked on it. */
final class MarkedStandard {
  static final String BREAKER = "IEC 60898-1";
  static final String RCBO = "IEC 61009-1";
  static final String RCCB = "IEC 61008-1";
  static final String INDUSTRIAL = "IEC 60947-2";
  static final String SWITCH = "IEC 60947-3";
  static final String ARC_FAULT = "IEC 62606";
  static final Set<String> HOUSEHOLD = Set.of(BREAKER, RCBO);
  static final Set<String> RESIDUAL = Set.of(RCBO, RCCB, INDUSTRIAL);

  /** Devices are made to these together: the first is the one by which they are taken. */
  private static final List<List<String>> TOGETHER =
      List.of(
          List.of(BREAKER, INDUSTRIAL),
          List.of(RCBO, BREAKER),
          List.of(RCBO, INDUSTRIAL),
          List.of(RCBO, ARC_FAULT),
          List.of(BREAKER, ARC_FAULT),
          List.of(RCCB, ARC_FAULT),
          List.of(RCBO, BREAKER, INDUSTRIAL),
          List.of(RCBO, BREAKER, ARC_FAULT));

  private final Set<String> marked = new LinkedHashSet<>();
  private final String stated;

  MarkedStandard(List<MarkParser.Part> parts, String stated) {
    this.stated = stated;
    for (MarkParser.Part part : parts) {
      for (Claim claim : part.found().claims()) {
        if (claim.member() == DeviceMember.STANDARD) {
          marked.add((String) claim.value());
        }
      }
    }
  }

  /** What the face says; null where it says nothing or contradicts itself. */
  String ofFace() {
    if (marked.size() == 1) {
      return marked.iterator().next();
    }
    for (List<String> together : TOGETHER) {
      if (marked.equals(Set.copyOf(together))) {
        return together.get(0);
      }
    }
    return null;
  }

  /** What is taken from the face: what the caller states where that is among the marks. */
  String taken() {
    return stated != null && marked.contains(stated) ? stated : ofFace();
  }

  /** By which the marks are read: what the caller states, else what the face says. */
  String reading() {
    return stated == null ? ofFace() : stated;
  }

  boolean disagree() {
    return marked.size() > 1 && ofFace() == null;
  }

  boolean several() {
    return marked.size() > 1 && ofFace() != null;
  }

  boolean marks(String standard) {
    return marked.contains(standard);
  }

  /** Whether a mark that cannot be on devices to these standards cannot be on this one. */
  boolean excluded(List<String> notOn) {
    Set<String> known = marked.isEmpty() && stated != null ? Set.of(stated) : marked;
    return !known.isEmpty() && notOn.containsAll(known);
  }
}
