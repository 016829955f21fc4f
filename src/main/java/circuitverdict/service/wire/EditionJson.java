package circuitverdict.service.wire;

import circuitverdict.standard.Citation;
import circuitverdict.standard.Edition;
import circuitverdict.standard.EditionHead;
import circuitverdict.standard.Editions;
import circuitverdict.standard.KeyColumn;
import circuitverdict.standard.Row;
import circuitverdict.standard.Table;
import circuitverdict.standard.Value;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Editions and their tables as the contract writes them: every value with source and confidence.
 */
public final class EditionJson {
  private EditionJson() {}

  /** All editions. */
  public static byte[] list(Editions editions) {
    return Json.object(
        json -> {
          json.writeArrayFieldStart("editions");
          for (Edition edition : editions.all()) {
            json.writeStartObject();
            head(json, edition);
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  /** One edition with its clauses and tables. */
  public static byte[] detail(Edition edition) {
    return Json.object(
        json -> {
          head(json, edition);
          json.writeArrayFieldStart("clauses");
          for (Map.Entry<String, String> clause :
              new TreeMap<>(edition.head().clauses()).entrySet()) {
            json.writeStartObject();
            json.writeStringField("rule", clause.getKey());
            json.writeStringField("reference", clause.getValue());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeArrayFieldStart("tables");
          for (Table table : edition.tables()) {
            json.writeStartObject();
            title(json, table);
            json.writeNumberField("rowCount", table.rows().size());
            columns(json, table);
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  /** One table, value by value. */
  public static byte[] table(Edition edition, Table table, Map<String, String> sources) {
    return Json.object(
        json -> {
          title(json, table);
          json.writeStringField("edition", edition.id());
          Json.text(json, "note", table.note().orElse(null));
          json.writeArrayFieldStart("keys");
          for (KeyColumn key : table.keys()) {
            json.writeStartObject();
            json.writeStringField("name", key.name());
            json.writeStringField("unit", key.unit().symbol());
            json.writeStringField("match", key.match().name().toLowerCase(java.util.Locale.ROOT));
            json.writeEndObject();
          }
          json.writeEndArray();
          columns(json, table);
          Set<String> seen = new TreeSet<>();
          json.writeArrayFieldStart("rows");
          for (Row row : table.rows()) {
            row(json, table, row, seen);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("sources");
          for (String code : seen) {
            json.writeStartObject();
            json.writeStringField("id", code);
            json.writeStringField("title", sources.get(code));
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private static void head(JsonGenerator json, Edition edition) throws IOException {
    EditionHead head = edition.head();
    json.writeStringField("id", edition.id());
    json.writeStringField("standard", head.standard());
    json.writeStringField("title", head.title());
    Json.text(json, "published", head.published());
    Json.text(json, "withdrawn", head.withdrawn());
    json.writeBooleanField("inForce", head.inForce());
    json.writeStringField("tablesDigest", edition.digest());
  }

  private static void title(JsonGenerator json, Table table) throws IOException {
    json.writeStringField("id", table.id());
    json.writeStringField("title", table.title());
    json.writeStringField("standard", table.standard());
    json.writeStringField("reference", table.reference());
  }

  private static void columns(JsonGenerator json, Table table) throws IOException {
    json.writeArrayFieldStart("columns");
    for (Table.Column column : table.columns()) {
      json.writeStartObject();
      json.writeStringField("name", column.name());
      if (column.unit() != null) {
        json.writeStringField("unit", column.unit().symbol());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void row(JsonGenerator json, Table table, Row row, Set<String> seen)
      throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("at");
    for (Row.Key key : row.keys()) {
      json.writeString(key.shown());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cells");
    for (int i = 0; i < table.columns().size(); i++) {
      Value value = row.values().get(i);
      if (value != null) {
        cell(json, table.columns().get(i).name(), value);
        seen.addAll(value.citation().seen());
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void cell(JsonGenerator json, String column, Value value) throws IOException {
    Citation citation = value.citation();
    json.writeStartObject();
    json.writeStringField("column", column);
    Json.number(json, "value", value.number());
    json.writeStringField("printed", value.printed());
    json.writeStringField("unit", value.unit().symbol());
    json.writeStringField("confidence", citation.confidence().word());
    json.writeStringField("standard", citation.standard());
    json.writeStringField("reference", citation.reference());
    if (!citation.seen().isEmpty()) {
      json.writeArrayFieldStart("seen");
      for (String code : citation.seen()) {
        json.writeString(code);
      }
      json.writeEndArray();
    }
    Json.text(json, "carriedOverFrom", citation.carriedOverFrom());
    json.writeEndObject();
  }
}
