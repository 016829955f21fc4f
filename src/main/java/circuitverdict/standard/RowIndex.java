package circuitverdict.standard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds rows by their keys: by the first word through a hash, then by looking along few rows, at
 * numbers before words.
 */
final class RowIndex {
  private static final Row[] NONE = new Row[0];
  private static final Group EMPTY = new Group(List.of());

  private final Group all;
  private final Map<String, Group> groups = new HashMap<>();

  /** Rows that are looked along together, their keys beside each other. */
  private static final class Group {
    private final Row[] rows;
    private final Row.Key[][] keys;

    Group(List<Row> rows) {
      this.rows = rows.toArray(NONE);
      int width = rows.isEmpty() ? 0 : rows.get(0).keys().size();
      this.keys = new Row.Key[width][rows.size()];
      for (int i = 0; i < rows.size(); i++) {
        for (int k = 0; k < width; k++) {
          keys[k][i] = rows.get(i).keys().get(k);
        }
      }
    }

    boolean covers(int at, int key, double number) {
      return keys[key][at].covers(number);
    }

    boolean covers(int at, int key, String word) {
      return keys[key][at].covers(word);
    }
  }

  RowIndex(List<Row> rows) {
    all = new Group(rows);
    Map<String, List<Row>> byWord = new HashMap<>();
    for (Row row : rows) {
      String word = row.keys().get(0).text();
      if (word != null) {
        byWord.computeIfAbsent(word, key -> new ArrayList<>()).add(row);
      }
    }
    byWord.forEach((word, group) -> groups.put(word, new Group(group)));
  }

  Row[] all() {
    return all.rows;
  }

  Row[] group(String first) {
    return along(first).rows;
  }

  private Group along(String first) {
    Group group = groups.get(first);
    return group == null ? EMPTY : group;
  }

  Row find(String key) {
    Row[] group = group(key);
    return group.length == 0 ? null : group[0];
  }

  Row find(double key) {
    for (int i = 0; i < all.rows.length; i++) {
      if (all.covers(i, 0, key)) {
        return all.rows[i];
      }
    }
    return null;
  }

  Row find(String first, double second) {
    Group group = along(first);
    for (int i = 0; i < group.rows.length; i++) {
      if (group.covers(i, 1, second)) {
        return group.rows[i];
      }
    }
    return null;
  }

  Row find(String first, String second) {
    Group group = along(first);
    for (int i = 0; i < group.rows.length; i++) {
      if (group.covers(i, 1, second)) {
        return group.rows[i];
      }
    }
    return null;
  }

  Row find(double first, double second) {
    for (int i = 0; i < all.rows.length; i++) {
      if (all.covers(i, 0, first) && all.covers(i, 1, second)) {
        return all.rows[i];
      }
    }
    return null;
  }

  /** Exact keys stand last and are looked at first. */
  Row find(double first, double second, double third) {
    for (int i = 0; i < all.rows.length; i++) {
      if (all.covers(i, 2, third) && all.covers(i, 1, second) && all.covers(i, 0, first)) {
        return all.rows[i];
      }
    }
    return null;
  }

  Row find(String first, String second, double third) {
    Group group = along(first);
    for (int i = 0; i < group.rows.length; i++) {
      if (group.covers(i, 2, third) && group.covers(i, 1, second)) {
        return group.rows[i];
      }
    }
    return null;
  }

  Row find(String first, String second, String third, double fourth) {
    Group group = along(first);
    for (int i = 0; i < group.rows.length; i++) {
      if (group.covers(i, 3, fourth) && group.covers(i, 1, second) && group.covers(i, 2, third)) {
        return group.rows[i];
      }
    }
    return null;
  }
}
