package circuitverdict.standard;

/** How well a value of a table is known. */
public enum Confidence {
  /** Seen in print, in the places named beside it. */
  PRINTED("printed", "Seen in print in the places named beside the value."),
  /** Computed from values that are themselves known. */
  COMPUTED("computed", "Computed from values that are themselves known."),
  /** Recalled, not read: to be checked against the printed standard. */
  MEMORY("memory", "Recalled from memory, not read: check against the printed standard.");

  private final String word;
  private final String meaning;

  Confidence(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** The contract's word. */
  public String word() {
    return word;
  }

  /** What the word means, for the catalogue. */
  public String meaning() {
    return meaning;
  }

  static Confidence ofWord(String word) {
    for (Confidence confidence : values()) {
      if (confidence.word.equals(word)) {
        return confidence;
      }
    }
    throw new IllegalArgumentException("unknown confidence " + word);
  }
}
