package circuitverdict.standard;

import circuitverdict.quantity.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A table of a standard: rows found by their keys, values cited one by one. Look-ups return null
 * where the table has no such row or no value in it: the caller must treat that as not known, and
 * never extrapolate.
 */
public final class Table {
  private final String id;
  private final String title;
  private final String standard;
  private final String reference;
  private final String note;
  private final List<KeyColumn> keys;
  private final List<Column> columns;
  private final List<Row> rows;
  private final Map<String, Integer> columnIndex = new HashMap<>();

  /**
   * A column of values.
   *
   * @param name its name
   * @param unit unit of its values where the row does not say otherwise
   * @param sparse whether cells may be empty
   */
  public record Column(String name, Unit unit, boolean sparse) {}

  Table(
      String id,
      String title,
      String standard,
      String reference,
      String note,
      List<KeyColumn> keys,
      List<Column> columns,
      List<Row> rows) {
    this.id = id;
    this.title = title;
    this.standard = standard;
    this.reference = reference;
    this.note = note;
    this.keys = List.copyOf(keys);
    this.columns = List.copyOf(columns);
    this.rows = List.copyOf(rows);
    for (int i = 0; i < columns.size(); i++) {
      columnIndex.put(columns.get(i).name(), i);
    }
  }

  public String id() {
    return id;
  }

  public String title() {
    return title;
  }

  public String standard() {
    return standard;
  }

  public String reference() {
    return reference;
  }

  public Optional<String> note() {
    return Optional.ofNullable(note);
  }

  public List<KeyColumn> keys() {
    return keys;
  }

  public List<Column> columns() {
    return columns;
  }

  public List<Row> rows() {
    return rows;
  }

  /** Whether the table has this column. */
  public boolean has(String column) {
    return columnIndex.containsKey(column);
  }

  /** Value of the row whose only key is this word; null where there is none. */
  public Value at(String column, String key) {
    for (Row row : rows) {
      if (row.keys().get(0).covers(key)) {
        return cell(row, column);
      }
    }
    return null;
  }

  /** Value of the row whose only key is or covers this number; null where there is none. */
  public Value at(String column, double key) {
    for (Row row : rows) {
      if (row.keys().get(0).covers(key)) {
        return cell(row, column);
      }
    }
    return null;
  }

  /** Value of the row with these two keys; null where there is none. */
  public Value at(String column, String first, double second) {
    for (Row row : rows) {
      if (row.keys().get(0).covers(first) && row.keys().get(1).covers(second)) {
        return cell(row, column);
      }
    }
    return null;
  }

  /** Value of the row with these two words; null where there is none. */
  public Value at(String column, String first, String second) {
    for (Row row : rows) {
      if (row.keys().get(0).covers(first) && row.keys().get(1).covers(second)) {
        return cell(row, column);
      }
    }
    return null;
  }

  /** Value of the row with these two numbers; null where there is none. */
  public Value at(String column, double first, double second) {
    for (Row row : rows) {
      if (row.keys().get(0).covers(first) && row.keys().get(1).covers(second)) {
        return cell(row, column);
      }
    }
    return null;
  }

  /** Value of the row with these three numbers; null where there is none. */
  public Value at(String column, double first, double second, double third) {
    for (Row row : rows) {
      List<Row.Key> k = row.keys();
      if (k.get(0).covers(first) && k.get(1).covers(second) && k.get(2).covers(third)) {
        return cell(row, column);
      }
    }
    return null;
  }

  /** Value of the row with these two words and number; null where there is none. */
  public Value at(String column, String first, String second, double third) {
    for (Row row : rows) {
      List<Row.Key> k = row.keys();
      if (k.get(0).covers(first) && k.get(1).covers(second) && k.get(2).covers(third)) {
        return cell(row, column);
      }
    }
    return null;
  }

  /** Value of the row with these three words and number; null where there is none. */
  public Value at(String column, String first, String second, String third, double fourth) {
    for (Row row : rows) {
      List<Row.Key> k = row.keys();
      if (k.get(0).covers(first)
          && k.get(1).covers(second)
          && k.get(2).covers(third)
          && k.get(3).covers(fourth)) {
        return cell(row, column);
      }
    }
    return null;
  }

  /** Value of the row with the least exact key not below this number; null beyond the table. */
  public Value atOrAbove(String column, double key) {
    Row best = null;
    for (Row row : rows) {
      double at = row.keys().get(0).to();
      if (at >= key && cell(row, column) != null && (best == null || at < best.keys().get(0).to())) {
        best = row;
      }
    }
    return best == null ? null : cell(best, column);
  }

  /** As {@link #atOrAbove(String, double)} among the rows with this word as first key. */
  public Value atOrAbove(String column, String first, double second) {
    Row best = null;
    for (Row row : rows) {
      double at = row.keys().get(row.keys().size() - 1).to();
      if (row.keys().get(0).covers(first)
          && at >= second
          && cell(row, column) != null
          && (best == null || at < best.keys().get(1).to())) {
        best = row;
      }
    }
    return best == null ? null : cell(best, column);
  }

  private Value cell(Row row, String column) {
    Integer index = columnIndex.get(column);
    return index == null ? null : row.values().get(index);
  }
}
