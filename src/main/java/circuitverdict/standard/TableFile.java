package circuitverdict.standard;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import java.io.IOException;
import java.util.List;
import java.util.Map;

/** The members of a table's file, as written; {@link TableBuilder} makes a {@link Table} of it. */
record TableFile(
    String table,
    String title,
    String standard,
    String reference,
    String note,
    List<KeyFile> keys,
    List<ColumnFile> columns,
    String confidence,
    List<String> seen,
    String unit,
    List<RowFile> rows) {

  record KeyFile(String name, String unit, String match) {}

  record ColumnFile(
      String name,
      String unit,
      boolean sparse,
      String confidence,
      List<String> seen,
      String standard,
      String reference) {}

  record RowFile(
      List<JsonNode> at,
      List<Cell> values,
      String confidence,
      List<String> seen,
      String unit,
      String standard,
      String reference,
      String note,
      Map<String, CellFile> cells) {}

  record CellFile(
      String confidence,
      List<String> seen,
      String unit,
      String standard,
      String reference,
      String note) {}

  /** A number with the digits it is written with: 1.00 is not 1. */
  @JsonDeserialize(using = CellReader.class)
  record Cell(String printed) {
    double number() {
      return Double.parseDouble(printed);
    }
  }

  static final class CellReader extends JsonDeserializer<Cell> {
    @Override
    public Cell deserialize(JsonParser parser, DeserializationContext context) throws IOException {
      if (!parser.currentToken().isNumeric()) {
        throw new IOException("a value must be a number: " + parser.getText());
      }
      return new Cell(parser.getText());
    }

    @Override
    public Cell getNullValue(DeserializationContext context) {
      return null;
    }
  }
}
