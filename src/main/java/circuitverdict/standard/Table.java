package circuitverdict.standard;

import circuitverdict.quantity.Unit;
import java.util.List;
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
  private final Value[][] values;
  private final String[] columnNames;
  private final RowIndex index;

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
    this.index = new RowIndex(this.rows);
    this.values =
        rows.stream().map(row -> row.values().toArray(Value[]::new)).toArray(Value[][]::new);
    this.columnNames =
        columns.stream().map(Column::name).map(String::intern).toArray(String[]::new);
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
    return position(column) >= 0;
  }

  /** Value of the row whose only key is this word; null where there is none. */
  public Value at(String column, String key) {
    return cell(index.find(key), column);
  }

  /** Value of the row whose only key is or covers this number; null where there is none. */
  public Value at(String column, double key) {
    return cell(index.find(key), column);
  }

  /** Value of the row with these two keys; null where there is none. */
  public Value at(String column, String first, double second) {
    return cell(index.find(first, second), column);
  }

  /** Value of the row with these two words; null where there is none. */
  public Value at(String column, String first, String second) {
    return cell(index.find(first, second), column);
  }

  /** Value of the row with these two numbers; null where there is none. */
  public Value at(String column, double first, double second) {
    return cell(index.find(first, second), column);
  }

  /** Value of the row with these three numbers; null where there is none. */
  public Value at(String column, double first, double second, double third) {
    return cell(index.find(first, second, third), column);
  }

  /** Value of the row with these two words and number; null where there is none. */
  public Value at(String column, String first, String second, double third) {
    return cell(index.find(first, second, third), column);
  }

  /** Value of the row with these three words and number; null where there is none. */
  public Value at(String column, String first, String second, String third, double fourth) {
    return cell(index.find(first, second, third, fourth), column);
  }

  /** Value of the row with the least exact key not below this number; null beyond the table. */
  public Value atOrAbove(String column, double key) {
    int position = position(column);
    return position < 0 ? null : cell(index.atOrAbove(key, values, position), position);
  }

  /** As {@link #atOrAbove(String, double)} among the rows with this word as first key. */
  public Value atOrAbove(String column, String first, double second) {
    int position = position(column);
    return position < 0 ? null : cell(index.atOrAbove(first, second, values, position), position);
  }

  private Value cell(int row, String column) {
    return cell(row, position(column));
  }

  private Value cell(int row, int position) {
    return row == RowIndex.NO_ROW || position < 0 ? null : values[row][position];
  }

  private int position(String column) {
    for (int i = 0; i < columnNames.length; i++) {
      if (columnNames[i] == column) {
        return i;
      }
    }
    for (int i = 0; i < columnNames.length; i++) {
      if (columnNames[i].equals(column)) {
        return i;
      }
    }
    return -1;
  }
}
