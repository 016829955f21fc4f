package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;

/**
 * Up to which current a device lets no more energy through than another stands without opening
 * (536.4.1): the downstream device's greatest against the least pre-arcing energy of a fuse.
 */
final class EnergyReach {
  /** Halvings of a stretch between two points of the maker: to the last figure of a number. */
  private static final int HALVINGS = 60;

  private EnergyReach() {}

  /**
   * The greatest current from a start on up to which the energy is kept; the start itself where
   * nothing says so above it.
   */
  static Figure of(
      ProtectiveDevice device,
      LetThrough through,
      Figure start,
      Figure end,
      Figure energy,
      Dossier d) {
    double last = start.value();
    if (!(end.value() > last) || !energy.known()) {
      return start;
    }
    EnergyBound[] bounds = through.bounds();
    double[] corners = Corners.within(last, end.value(), bounds);
    for (int i = 0; i + 1 < corners.length; i++) {
      double next = corners[i + 1];
      if (!keeps(through, last, next, energy) || !keeps(through, next, next, energy)) {
        return within(device, through, start, last, next, energy, d);
      }
      last = next;
    }
    return end;
  }

  private static boolean keeps(LetThrough through, double from, double to, Figure energy) {
    EnergyBound bound = through.tightest(from, to);
    return bound != null && Comparator.atMost(bound.greatest(from, to), energy.value());
  }

  /** The end within a stretch: between two points of the maker, else where the stretch begins. */
  private static Figure within(
      ProtectiveDevice device,
      LetThrough through,
      Figure start,
      double from,
      double to,
      Figure energy,
      Dossier d) {
    double low = from;
    if (through.tightest(from, to) instanceof MakersPoints) {
      double high = to;
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        if (keeps(through, from, middle, energy)) {
          low = middle;
        } else {
          high = middle;
        }
      }
    }
    if (low == start.value()) {
      return start;
    }
    Pointer maker = new Pointer(device.data().place(), "letThrough");
    return low > from
        ? d.working().look(new Figure("Is", low, Unit.AMPERE, maker))
        : d.working().look(Corners.figure(low, through.bounds(), d).as("Is"));
  }
}
