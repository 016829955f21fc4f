package circuitverdict.circuit;

/**
 * A residual current function.
 *
 * @param type by the residual waveform that it detects; null where not stated
 * @param operatingCurrentA rated residual operating current IΔn, A
 * @param delay general, S (selective) or adjustable; null where not stated
 * @param delayS set delay of an adjustable one, s
 */
public record Residual(Type type, Double operatingCurrentA, Delay delay, Double delayS) {
  /** Residual waveforms that a function detects: each those of the one before it too. */
  public enum Type {
    AC,
    A,
    F,
    B
  }

  /** Kind of delay. */
  public enum Delay {
    GENERAL,
    S,
    ADJUSTABLE
  }
}
