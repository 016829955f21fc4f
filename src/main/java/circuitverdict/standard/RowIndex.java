package circuitverdict.standard;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds rows by their keys, as numbers from zero: those with the first word at once, then by
 * looking along few rows, at numbers before words.
 */
final class RowIndex {
  /** Where no row answers. */
  static final int NO_ROW = -1;

  private static final int[] NONE = {};

  private final KeyIndex[] keys;
  private final int[] all;
  private final int[][] byFirstWord;

  RowIndex(List<Row> rows) {
    int width = rows.isEmpty() ? 0 : rows.get(0).keys().size();
    keys = IntStream.range(0, width).mapToObj(i -> new KeyIndex(rows, i)).toArray(KeyIndex[]::new);
    all = IntStream.range(0, rows.size()).toArray();
    int words = width == 0 ? 0 : keys[0].words();
    byFirstWord =
        IntStream.range(0, words)
            .mapToObj(word -> IntStream.of(all).filter(row -> keys[0].is(row, word)).toArray())
            .toArray(int[][]::new);
  }

  private int[] among(String first) {
    int word = keys.length == 0 ? -1 : keys[0].number(first);
    return word < 0 ? NONE : byFirstWord[word];
  }

  /** The row with the least upper end of its only key not below a number, and a value. */
  int atOrAbove(double key, Value[][] values, int column) {
    return atOrAbove(all, keys[0], key, values, column);
  }

  /** The same among the rows with this first word, by their second key. */
  int atOrAbove(String first, double second, Value[][] values, int column) {
    return atOrAbove(among(first), keys[1], second, values, column);
  }

  private static int atOrAbove(int[] among, KeyIndex by, double key, Value[][] values, int column) {
    int best = NO_ROW;
    double bestAt = Double.POSITIVE_INFINITY;
    for (int row : among) {
      double at = by.upTo(row);
      if (at >= key && at < bestAt && values[row][column] != null) {
        best = row;
        bestAt = at;
      }
    }
    return best;
  }

  int find(String key) {
    int[] among = among(key);
    return among.length == 0 ? NO_ROW : among[0];
  }

  int find(double key) {
    for (int row : all) {
      if (keys[0].covers(row, key)) {
        return row;
      }
    }
    return NO_ROW;
  }

  int find(String first, double second) {
    for (int row : among(first)) {
      if (keys[1].covers(row, second)) {
        return row;
      }
    }
    return NO_ROW;
  }

  int find(String first, String second) {
    int word = keys[1].number(second);
    for (int row : among(first)) {
      if (keys[1].is(row, word)) {
        return row;
      }
    }
    return NO_ROW;
  }

  int find(double first, double second) {
    for (int row : all) {
      if (keys[0].covers(row, first) && keys[1].covers(row, second)) {
        return row;
      }
    }
    return NO_ROW;
  }

  /** Exact keys stand last and are looked at first. */
  int find(double first, double second, double third) {
    for (int row : all) {
      if (keys[2].covers(row, third) && keys[1].covers(row, second) && keys[0].covers(row, first)) {
        return row;
      }
    }
    return NO_ROW;
  }

  int find(String first, String second, double third) {
    int word = keys[1].number(second);
    for (int row : among(first)) {
      if (keys[1].is(row, word) && keys[2].covers(row, third)) {
        return row;
      }
    }
    return NO_ROW;
  }

  int find(String first, String second, String third, double fourth) {
    int word = keys[1].number(second);
    int next = keys[2].number(third);
    for (int row : among(first)) {
      if (keys[1].is(row, word) && keys[2].is(row, next) && keys[3].covers(row, fourth)) {
        return row;
      }
    }
    return NO_ROW;
  }
}
