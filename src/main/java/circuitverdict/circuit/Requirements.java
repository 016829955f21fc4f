package circuitverdict.circuit;

/**
 * What the caller demands beyond the rules.
 *
 * @param evidence whether published guidance may carry a verdict; null where not stated
 * @param inrush whether the finding on inrush counts; null where not stated
 * @param selectivity whether only the downstream device may open; null where not stated
 */
public record Requirements(Evidence evidence, Inrush inrush, Selectivity selectivity) {
  /** How strong a proof must be. */
  public enum Evidence {
    PROVED,
    GUIDANCE
  }

  /** Whether the finding on inrush counts. */
  public enum Inrush {
    REQUIRED,
    REPORTED
  }

  /** How much it is wanted that only the downstream device opens. */
  public enum Selectivity {
    REQUIRED,
    PREFERRED
  }
}
