package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import java.util.List;

/**
 * What is promised of the times at which an overcurrent device opens and holds (536.4.1), by its
 * standard's own tests. Lists rise in current; what is not known is not in them.
 *
 * @param carried conventional current that it carries, I1, A
 * @param operated conventional current that opens it, I2, A
 * @param threshold current up to which it does not open at once, A; unknown for fuses, of which it
 *     depends on the time
 * @param delayed a lower one, from which it opens after a set delay; null where it has none
 * @param atOnce current from which it opens at once, and within which time
 * @param opens from which currents it opens, within which times
 * @param holds up to which currents it holds, at least how long
 */
public record Promises(
    Figure carried,
    Figure operated,
    Figure threshold,
    Promise delayed,
    Promise atOnce,
    List<Promise> opens,
    List<Promise> holds) {

  /** Whether a device has an overcurrent release that its standard knows. */
  public static boolean known(ProtectiveDevice device) {
    return device instanceof Breaker
        || device instanceof AdjustableBreaker
        || device instanceof Fuse;
  }

  /** Of the device that is to open; what is missing is noted. */
  public static Promises ofDownstream(ProtectiveDevice device, Dossier d) {
    return of(device, false, d);
  }

  /** Of the device that is to hold: nothing assumed of it may let it hold longer. */
  public static Promises ofUpstream(ProtectiveDevice device, Dossier d) {
    return of(device, true, d);
  }

  private static Promises of(ProtectiveDevice device, boolean upstream, Dossier d) {
    if (device instanceof Breaker breaker) {
      return BreakerPromises.of(breaker, upstream, d);
    }
    if (device instanceof AdjustableBreaker breaker) {
      return AdjustablePromises.of(breaker, upstream, d);
    }
    return FusePromises.of((Fuse) device, upstream, d);
  }

  /** Greatest current up to which it holds at least so long, A; unknown where none is promised. */
  public Figure heldFor(double timeS) {
    Figure greatest = Figure.unknown("Ih", Unit.AMPERE);
    for (Promise each : holds) {
      if (Comparator.atMost(timeS, each.timeS())) {
        greatest = Figure.greater(each.current(), greatest);
      }
    }
    return greatest;
  }

  /** Current up to which it does not open while another opens at once, A. */
  public Figure thresholdFor(Promise atOnce) {
    double timeS = atOnce.timeS();
    if (!threshold.known()) {
      return heldFor(timeS);
    }
    // Below the current at which the other opens at once it may take longer than the delay.
    boolean waits =
        delayed == null
            || Comparator.atMost(timeS, delayed.timeS())
                && Comparator.atMost(atOnce.current().value(), delayed.current().value());
    return waits ? threshold : Figure.lesser(threshold, delayed.current());
  }
}
