package circuitverdict.check;

/** The four verdicts. */
public enum Verdict {
  COMPLIES("complies", "Shown to comply by what is stated."),
  DOES_NOT_COMPLY("does-not-comply", "Shown not to comply, whatever is not stated."),
  NOT_DETERMINED("not-determined", "What is stated decides it neither way."),
  NOT_APPLICABLE("not-applicable", "The rule does not apply to what is stated.");

  private final String word;
  private final String meaning;

  Verdict(String word, String meaning) {
    this.word = word;
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
