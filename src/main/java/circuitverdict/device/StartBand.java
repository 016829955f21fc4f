package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;

/**
 * What is known of when a device operates at the current of a start: never before a time, for
 * certain by a time, and where a typical curve is drawn. Unknown figures promise nothing.
 */
public sealed interface StartBand permits BreakerStart, FuseStart, MakersStart {
  /** The band of a device that is judged; null where what it needs is missing, which is noted. */
  static StartBand of(ProtectiveDevice device, Dossier d) {
    StartBand promised = promised(device, d);
    return MakersStart.over(promised, device);
  }

  private static StartBand promised(ProtectiveDevice device, Dossier d) {
    if (device instanceof Breaker breaker) {
      return BreakerStart.of(breaker, d);
    }
    if (device instanceof AdjustableBreaker breaker) {
      return BreakerStart.of(breaker, d);
    }
    if (device instanceof Fuse fuse) {
      return FuseStart.of(fuse, d);
    }
    NotJudged.note(device, d);
    return null;
  }

  /** Time before which it does not operate at a current, s. */
  Figure earliest(Figure current);

  /** Time by which it has operated at a current for certain, s. */
  Figure latest(Figure current);

  /** Time at which the drawn curve has it operate at a current, s; guidance, no promise. */
  Figure drawn(Figure current, Dossier d);

  /** Current up to which it does not operate at once, r.m.s., A. */
  Figure instantaneous(Dossier d);

  /** Energy of a pulse shorter than a half-wave that does not operate it, A²s; guidance. */
  Figure pulse(Dossier d);

  /** Whether a peak can operate it at once. */
  boolean byPeak();

  /** Current that it carries whatever the time, A. */
  Figure carried();

  /** A time that nothing gives. */
  static Figure never(String symbol) {
    return Figure.unknown(symbol, Unit.SECOND);
  }
}
