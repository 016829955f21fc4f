package circuitverdict.standard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Proves that no two rows of a table answer the same question and that bands leave no gap. */
final class RowOrder {
  private RowOrder() {}

  static void check(String table, List<KeyColumn> keys, List<Row> rows) {
    unique(table, rows);
    for (int i = 0; i < keys.size(); i++) {
      if (keys.get(i).match() == KeyColumn.Match.BAND) {
        contiguous(table, i, rows);
      }
    }
  }

  private static void unique(String table, List<Row> rows) {
    Set<List<Row.Key>> seen = new HashSet<>();
    for (Row row : rows) {
      if (!seen.add(row.keys())) {
        throw new IllegalStateException(
            "table " + table + ": two rows with the keys " + row.keys());
      }
    }
  }

  private static void contiguous(String table, int band, List<Row> rows) {
    Map<List<Row.Key>, List<Row.Key>> groups = new LinkedHashMap<>();
    for (Row row : rows) {
      List<Row.Key> others = new ArrayList<>(row.keys());
      Row.Key key = others.remove(band);
      groups.computeIfAbsent(others, k -> new ArrayList<>()).add(key);
    }
    for (List<Row.Key> group : groups.values()) {
      group.sort(Comparator.comparingDouble(Row.Key::above));
      for (int i = 1; i < group.size(); i++) {
        if (group.get(i).above() != group.get(i - 1).to()) {
          throw new IllegalStateException(
              "table " + table + ": bands with a gap or overlap at " + group.get(i).shown());
        }
      }
    }
  }
}
