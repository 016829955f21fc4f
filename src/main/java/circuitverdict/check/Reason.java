package circuitverdict.check;

import java.util.Locale;

/** Why a verdict is other than "complies". */
public enum Reason {
  LIMIT_EXCEEDED("A figure exceeds its limit, or falls short of it."),
  MISSING_INPUT("An input that decides was not stated, or the tables hold no value for it."),
  BETWEEN_BOUNDS(
      "What is known of the quantity is an interval that the limit divides: data of the maker would"
          + " settle it."),
  PROOF_WANTED("Only published guidance supports it, and proof was asked for."),
  STAND_IN_FAILS(
      "It fails with a typical or a worst value that stands for one not stated; the real one may"
          + " better it."),
  DEVICE_NOT_JUDGED("Devices of this kind are not judged by this check."),
  NO_SUCH_DUTY("The rule does not bear on what is stated."),
  CHECK_FAILS("A counted check does not comply."),
  CHECK_NOT_DETERMINED("A counted check is not determined."),
  CIRCUIT_NOT_VALID("What is stated of a circuit is not valid: its problem says why."),
  NOTHING_COUNTED("No check that counts applies."),
  NONE_SELECTED("No candidate passes every check."),
  NO_LIMIT("No limit can be given for a device of the list.");

  private final String word;
  private final String meaning;

  Reason(String meaning) {
    this.word = name().toLowerCase(Locale.ROOT).replace('_', '-');
    this.meaning = meaning;
  }

  /** The contract's word. */
  public String word() {
    return word;
  }

  /** What it means, for the catalogue. */
  public String meaning() {
    return meaning;
  }
}
