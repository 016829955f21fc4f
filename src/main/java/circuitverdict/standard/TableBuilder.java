package circuitverdict.standard;

import circuitverdict.quantity.Unit;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Makes a {@link Table} of its file and refuses whatever is incomplete or contradictory. */
final class TableBuilder {
  private final TableFile file;
  private final String name;
  private final Set<String> sourceCodes;

  private TableBuilder(String name, TableFile file, Set<String> sourceCodes) {
    this.name = name;
    this.file = file;
    this.sourceCodes = sourceCodes;
  }

  /**
   * The table of a file.
   *
   * @throws IllegalStateException naming the table and what is wrong with it
   */
  static Table build(String name, TableFile file, Set<String> sourceCodes) {
    return new TableBuilder(name, file, sourceCodes).table();
  }

  private Table table() {
    require(name.equals(file.table()), "the file's name and its table member differ");
    require(file.title() != null && file.standard() != null, "title or standard is missing");
    require(file.reference() != null, "reference is missing");
    require(file.keys() != null && !file.keys().isEmpty(), "keys are missing");
    require(file.columns() != null && !file.columns().isEmpty(), "columns are missing");
    require(file.rows() != null && !file.rows().isEmpty(), "rows are missing");
    List<KeyColumn> keys = file.keys().stream().map(this::key).toList();
    List<Table.Column> columns = file.columns().stream().map(this::column).toList();
    List<Row> rows = new ArrayList<>();
    for (TableFile.RowFile row : file.rows()) {
      rows.add(row(row, keys, columns));
    }
    RowOrder.check(this.name, keys, rows);
    return new Table(
        name, file.title(), file.standard(), file.reference(), file.note(), keys, columns, rows);
  }

  private KeyColumn key(TableFile.KeyFile key) {
    require(key.name() != null && key.match() != null, "a key needs name and match");
    Unit unit = key.unit() == null ? Unit.ONE : Unit.ofSymbol(key.unit());
    return new KeyColumn(
        key.name(), unit, KeyColumn.Match.valueOf(key.match().toUpperCase(Locale.ROOT)));
  }

  private Table.Column column(TableFile.ColumnFile column) {
    require(column.name() != null, "a column needs a name");
    Unit unit = column.unit() == null ? null : Unit.ofSymbol(column.unit());
    return new Table.Column(column.name(), unit, column.sparse());
  }

  private Row row(TableFile.RowFile row, List<KeyColumn> keys, List<Table.Column> columns) {
    require(row.at() != null && row.at().size() == keys.size(), "a row's keys do not fit");
    require(
        row.values() != null && row.values().size() == columns.size(),
        "a row's cells do not fit " + row.at());
    if (row.cells() != null) {
      Set<String> known = new HashSet<>();
      columns.forEach(column -> known.add(column.name()));
      require(known.containsAll(row.cells().keySet()), "cells names a column that is not there");
    }
    List<Row.Key> at = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      at.add(rowKey(keys.get(i), row.at().get(i)));
    }
    List<Value> values = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      values.add(value(row, i));
    }
    return new Row(List.copyOf(at), java.util.Collections.unmodifiableList(values));
  }

  private Row.Key rowKey(KeyColumn key, JsonNode at) {
    return switch (key.match()) {
      case TEXT -> {
        require(at.isTextual(), "a word is wanted as key " + key.name() + ", not " + at);
        yield new Row.Key(at.textValue(), Double.NaN, Double.NaN);
      }
      case EXACT -> {
        require(at.isNumber(), "a number is wanted as key " + key.name() + ", not " + at);
        yield new Row.Key(null, at.doubleValue(), at.doubleValue());
      }
      case BAND -> {
        require(at.isArray() && at.size() == 2, "a band is wanted as key " + key.name());
        double above = end(at.get(0), Double.NEGATIVE_INFINITY);
        double to = end(at.get(1), Double.POSITIVE_INFINITY);
        require(above < to, "a band must rise");
        yield new Row.Key(null, above, to);
      }
    };
  }

  /** An end of a band; the word {@code any} leaves it open. */
  private double end(JsonNode node, double open) {
    boolean any = node.isTextual() && node.textValue().equals("any");
    require(any || node.isNumber(), "a band ends in a number or in any, not in " + node);
    return any ? open : node.doubleValue();
  }

  private Value value(TableFile.RowFile row, int index) {
    TableFile.Cell cell = row.values().get(index);
    TableFile.ColumnFile column = file.columns().get(index);
    if (cell == null) {
      require(column.sparse(), "an empty cell in column " + column.name());
      return null;
    }
    TableFile.CellFile own = row.cells() == null ? null : row.cells().get(column.name());
    String confidence =
        first(
            own == null ? null : own.confidence(),
            row.confidence(),
            column.confidence(),
            file.confidence());
    require(confidence != null, "a value without confidence");
    Confidence known = Confidence.ofWord(confidence);
    List<String> seen =
        first(own == null ? null : own.seen(), row.seen(), column.seen(), file.seen());
    if (known == Confidence.PRINTED) {
      require(seen != null && !seen.isEmpty(), "a printed value must say where it was seen");
      require(sourceCodes.containsAll(seen), "an unknown source among " + seen);
    }
    String unit = first(own == null ? null : own.unit(), row.unit(), column.unit(), file.unit());
    require(unit != null, "a value without unit");
    String standard =
        first(
            own == null ? null : own.standard(),
            row.standard(),
            column.standard(),
            file.standard());
    String reference =
        first(
            own == null ? null : own.reference(),
            row.reference(),
            column.reference(),
            file.reference());
    Citation citation =
        new Citation(
            standard,
            reference,
            known,
            known == Confidence.PRINTED ? List.copyOf(seen) : List.of(),
            null);
    return new Value(cell.number(), cell.printed(), Unit.ofSymbol(unit), citation);
  }

  @SafeVarargs
  private static <T> T first(T... candidates) {
    for (T candidate : candidates) {
      if (candidate != null) {
        return candidate;
      }
    }
    return null;
  }

  private void require(boolean condition, String otherwise) {
    if (!condition) {
      throw new IllegalStateException("table " + name + ": " + otherwise);
    }
  }
}
