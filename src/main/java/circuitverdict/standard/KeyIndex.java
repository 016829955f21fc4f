package circuitverdict.standard;

import java.util.HashMap;
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
  private final String[] words;
  private final Map<String, Integer> numberOf = new HashMap<>();

  KeyIndex(List<Row> rows, int position) {
    keys = rows.stream().map(row -> row.keys().get(position)).toArray(Row.Key[]::new);
    exact = Stream.of(keys).mapToDouble(Row.Key::exact).toArray();
    numbers = new int[keys.length];
    for (int row = 0; row < keys.length; row++) {
      String word = keys[row].text();
      numbers[row] = word == null ? NONE : numberOf.computeIfAbsent(word, each -> numberOf.size());
    }
    words = new String[numberOf.size()];
    numberOf.forEach((word, number) -> words[number] = word);
  }

  /** How many words there are; they are numbered from zero. */
  int words() {
    return words.length;
  }

  /** Number of a word; negative where no row has it. */
  int number(String word) {
    for (int number = 0; number < words.length; number++) {
      if (words[number] == word) {
        return number;
      }
    }
    return numberOf.getOrDefault(word, NONE);
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
