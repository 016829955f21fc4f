package circuitverdict.select;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.select.DeviceSelection.Candidate;
import circuitverdict.select.DeviceSelection.Order;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which of the devices that pass comes first: least rated current, least characteristic that rides
 * the start of the load, least breaking capacity, then the one that opens alone, then the order
 * given; unless the caller orders otherwise. What is not stated comes last.
 */
final class Ranking {
  private Ranking() {}

  /** A ranking by the caller's words first, then by the others in their usual order. */
  static Comparator<Candidate> of(List<Order> first) {
    List<Order> all = new ArrayList<>(first);
    for (Order each : Order.values()) {
      if (!all.contains(each)) {
        all.add(each);
      }
    }
    Comparator<Candidate> ranking = Comparator.comparingInt(candidate -> 0);
    for (Order each : all) {
      ranking = ranking.thenComparing(by(each));
    }
    return ranking;
  }

  private static Comparator<Candidate> by(Order order) {
    return switch (order) {
      case RATED_CURRENT -> Comparator.comparingDouble(each -> carried(each.device()));
      case CHARACTERISTIC ->
          Comparator.<Candidate>comparingInt(each -> shortOf(each, CheckName.INRUSH))
              .thenComparing(each -> letter(each.device()));
      case BREAKING_CAPACITY ->
          Comparator.comparingDouble(each -> known(each.device().data().breakingCapacityA()));
      case SELECTIVITY -> Comparator.comparingInt(each -> shortOf(each, CheckName.SELECTIVITY));
      case GIVEN -> Comparator.comparingInt(Candidate::place);
    };
  }

  /** How far a candidate falls short of a check that may only be reported. */
  private static int shortOf(Candidate candidate, CheckName check) {
    for (Finding finding : candidate.result().findings()) {
      if (finding.check() == check) {
        return switch (finding.verdict()) {
          case COMPLIES, NOT_APPLICABLE -> 0;
          case NOT_DETERMINED -> 1;
          case DOES_NOT_COMPLY -> 2;
        };
      }
    }
    return 0;
  }

  /** What a device is set to carry, which is its rated current where nothing is set. */
  private static double carried(ProtectiveDevice device) {
    Double set =
        device instanceof AdjustableBreaker breaker ? breaker.settings().longTimeA() : null;
    return known(set == null ? device.data().ratedCurrentA() : set);
  }

  private static double known(Double value) {
    return value == null ? Double.POSITIVE_INFINITY : value;
  }

  /** B before C before D before K and Z; devices without a letter after those. */
  private static String letter(ProtectiveDevice device) {
    String letter = device instanceof Breaker breaker ? breaker.characteristic() : null;
    return letter == null ? "~" : letter;
  }
}
