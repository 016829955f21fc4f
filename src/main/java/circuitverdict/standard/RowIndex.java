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

  private final Row[] all;
  private final Map<String, Row[]> groups = new HashMap<>();

  RowIndex(List<Row> rows) {
    all = rows.toArray(NONE);
    Map<String, List<Row>> byWord = new HashMap<>();
    for (Row row : rows) {
      String word = row.keys().get(0).text();
      if (word != null) {
        byWord.computeIfAbsent(word, key -> new ArrayList<>()).add(row);
      }
    }
    byWord.forEach((word, group) -> groups.put(word, group.toArray(NONE)));
  }

  Row[] all() {
    return all;
  }

  Row[] group(String first) {
    return groups.getOrDefault(first, NONE);
  }

  Row find(String key) {
    Row[] group = group(key);
    return group.length == 0 ? null : group[0];
  }

  Row find(double key) {
    for (Row row : all) {
      if (row.keys().get(0).covers(key)) {
        return row;
      }
    }
    return null;
  }

  Row find(String first, double second) {
    for (Row row : group(first)) {
      if (row.keys().get(1).covers(second)) {
        return row;
      }
    }
    return null;
  }

  Row find(String first, String second) {
    for (Row row : group(first)) {
      if (row.keys().get(1).covers(second)) {
        return row;
      }
    }
    return null;
  }

  Row find(double first, double second) {
    for (Row row : all) {
      if (row.keys().get(0).covers(first) && row.keys().get(1).covers(second)) {
        return row;
      }
    }
    return null;
  }

  Row find(double first, double second, double third) {
    for (Row row : all) {
      List<Row.Key> keys = row.keys();
      if (keys.get(0).covers(first) && keys.get(1).covers(second) && keys.get(2).covers(third)) {
        return row;
      }
    }
    return null;
  }

  Row find(String first, String second, double third) {
    for (Row row : group(first)) {
      List<Row.Key> keys = row.keys();
      if (keys.get(2).covers(third) && keys.get(1).covers(second)) {
        return row;
      }
    }
    return null;
  }

  Row find(String first, String second, String third, double fourth) {
    for (Row row : group(first)) {
      List<Row.Key> keys = row.keys();
      if (keys.get(3).covers(fourth) && keys.get(1).covers(second) && keys.get(2).covers(third)) {
        return row;
      }
    }
    return null;
  }
}
