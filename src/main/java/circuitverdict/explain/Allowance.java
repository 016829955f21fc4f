package circuitverdict.explain;

/** What may stand in for an input that the caller did not state. */
public enum Allowance {
  /** Nothing about the installation: sign-off. */
  NOTHING,
  /** Defaults of devices and tables: design. */
  TABLE_DEFAULTS,
  /** Typical values too: quotation. */
  TYPICAL_VALUES
}
