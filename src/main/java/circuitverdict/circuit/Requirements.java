package circuitverdict.circuit;

/**
 * What the caller demands beyond the rules.
 *
 * @param evidence whether published guidance may carry a verdict; null where not stated
 * @param selectivity whether only the downstream device may open; null where not stated
 */
public record Requirements(Evidence evidence, Selectivity selectivity) {
  /** How strong a proof must be. */
  public enum Evidence {
    PROVED,
    GUIDANCE
  }

  /** How much it is wanted that only the downstream device opens. */
  public enum Selectivity {
    REQUIRED,
    PREFERRED
  }
}
