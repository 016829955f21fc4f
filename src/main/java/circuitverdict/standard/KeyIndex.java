package circuitverdict.standard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One key of every row of a table. Its words are numbered, so that rows are told apart by numbers;
 * a word that is the very object of the table is found without comparing letters.
 */
final class KeyIndex {
  private static final int NONE = -1;

  private final Row.Key[] keys;
  private final double[] exact;
  private final int[] numbers;
  private final int words;
  private final String[] slots;
  private final int[] numberIn;

  KeyIndex(List<Row> rows, int position) {
    keys = rows.stream().map(row -> row.keys().get(position)).toArray(Row.Key[]::new);
    exact = Stream.of(keys).mapToDouble(Row.Key::exact).toArray();
    numbers = new int[keys.length];
    Map<String, Integer> numberOf = new LinkedHashMap<>();
    for (int row = 0; row < keys.length; row++) {
      String word = keys[row].text();
      numbers[row] = word == null ? NONE : numberOf.computeIfAbsent(word, each -> numberOf.size());
    }
    words = numberOf.size();
    slots = new String[Integer.highestOneBit(2 * words + 1) * 2];
    numberIn = new int[slots.length];
    numberOf.forEach(this::keep);
  }

  private void keep(String word, int number) {
    int slot = slot(word);
    while (slots[slot] != null) {
      slot = next(slot);
    }
    slots[slot] = word;
    numberIn[slot] = number;
  }

  private int slot(String word) {
    int hash = word.hashCode();
    return (hash ^ hash >>> 15) & slots.length - 1;
  }

  private int next(int slot) {
    return slot + 1 & slots.length - 1;
  }

  /** How many words there are; they are numbered from zero. */
  int words() {
    return words;
  }

  /** Number of a word; negative where no row has it. */
  int number(String word) {
    if (word == null) {
      return NONE;
    }
    int slot = slot(word);
    while (slots[slot] != null) {
      if (slots[slot] == word || slots[slot].equals(word)) {
        return numberIn[slot];
      }
      slot = next(slot);
    }
    return NONE;
  }

  /** Whether the key of a row is the word with this number. */
  boolean is(int row, int number) {
    return numbers[row] == number && number != NONE;
  }

  /** Whether the key of a row is or covers this number. */
  boolean covers(int row, double number) {
    return exact[row] == number || Double.isNaN(exact[row]) && keys[row].covers(number);
  }

  /** Upper end of the key of a row. */
  double upTo(int row) {
    return keys[row].to();
  }
}
