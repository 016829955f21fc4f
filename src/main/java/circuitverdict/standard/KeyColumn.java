package circuitverdict.standard;

import circuitverdict.quantity.Unit;

/**
 * One key of a table: an exact number, a band of numbers (above, to], or a word.
 *
 * @param name what the key is
 * @param unit its unit; {@link Unit#ONE} for words and counts
 * @param match how a row is found by it
 */
public record KeyColumn(String name, Unit unit, Match match) {
  /** How a key selects a row. */
  public enum Match {
    EXACT,
    BAND,
    TEXT
  }
}
