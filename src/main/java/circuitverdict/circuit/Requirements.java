package circuitverdict.circuit;

/**
 * What the caller demands beyond the rules.
 *
 * @param evidence whether published guidance may carry a verdict; null where not stated
 */
public record Requirements(Evidence evidence) {
  /** How strong a proof must be. */
  public enum Evidence {
    PROVED,
    GUIDANCE
  }
}
