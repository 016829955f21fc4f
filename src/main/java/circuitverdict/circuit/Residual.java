package circuitverdict.circuit;

/**
 * A residual current function.
 *
 * @param operatingCurrentA rated residual operating current IΔn, A
 * @param delay general, S (selective) or adjustable; null where not stated
 * @param delayS set delay of an adjustable one, s
 */
public record Residual(Double operatingCurrentA, Delay delay, Double delayS) {
  /** Kind of delay. */
  public enum Delay {
    GENERAL,
    S,
    ADJUSTABLE
  }
}
