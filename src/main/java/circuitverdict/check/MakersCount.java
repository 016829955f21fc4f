package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.LoadInrush.CountLimit;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.List;

/**
 * The maker's greatest number of items on one breaker, which settles it both ways. What is allowed
 * on a lesser device, of lower letter and rating, is allowed on this one too.
 */
final class MakersCount {
  private static final List<String> LETTERS = List.of("B", "C", "D");

  private MakersCount() {}

  /** Compares the number of items, where the maker speaks of such a device. */
  static boolean decides(Circuit circuit, Judgement judgement, Dossier d) {
    return circuit.device() instanceof Breaker breaker
        && breaker.characteristic() != null
        && breaker.data().ratedCurrentA() != null
        && decides(circuit.load(), At.LOAD, breaker, judgement, d);
  }

  private static boolean decides(
      Load load, String place, Breaker breaker, Judgement judgement, Dossier d) {
    List<CountLimit> limits = load.inrush().countLimits();
    boolean whole = place.equals(At.LOAD) && load.parts().isEmpty();
    int deciding = deciding(limits, breaker, whole ? count(load, place) : null);
    if (deciding >= 0 && load.count() == null && whole) {
      // How many there are is the question itself: nothing stands in for it.
      d.missing(new Pointer(place, "count"));
      judgement.undetermined();
      return true;
    }
    if (deciding >= 0) {
      Figure count = count(load, place);
      Pointer at = new Pointer(place + "/inrush/countLimits/" + deciding, "count");
      Figure most = new Figure("nmax", limits.get(deciding).count(), Unit.ONE, at);
      // Beside other parts that start too a part can only fail.
      if (whole || !Comparator.atMost(count.value(), most.value())) {
        judgement.compare("/device", d.working().look(count), Comparator.AT_MOST, most);
        return true;
      }
    }
    for (int i = 0; i < load.parts().size(); i++) {
      if (decides(load.parts().get(i), place + "/parts/" + i, breaker, judgement, d)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The limit for this device, else one for a lesser device that allows the number; none below 0.
   */
  private static int deciding(List<CountLimit> limits, Breaker breaker, Figure count) {
    int lesser = -1;
    for (int i = 0; i < limits.size(); i++) {
      if (own(limits.get(i), breaker)) {
        return i;
      }
      boolean allows = count != null && Comparator.atMost(count.value(), limits.get(i).count());
      lesser = allows && lesser(limits.get(i), breaker) ? i : lesser;
    }
    return lesser;
  }

  private static boolean own(CountLimit limit, Breaker breaker) {
    return limit.characteristic().equals(breaker.characteristic())
        && limit.ratedCurrentA() == breaker.data().ratedCurrentA();
  }

  private static boolean lesser(CountLimit limit, Breaker breaker) {
    int letter = LETTERS.indexOf(limit.characteristic());
    return letter >= 0
        && letter <= LETTERS.indexOf(breaker.characteristic())
        && limit.ratedCurrentA() <= breaker.data().ratedCurrentA();
  }

  private static Figure count(Load load, String place) {
    return load.count() == null
        ? Figure.derived("n", 1, Unit.ONE)
        : new Figure("n", load.count(), Unit.ONE, new Pointer(place, "count"));
  }
}
