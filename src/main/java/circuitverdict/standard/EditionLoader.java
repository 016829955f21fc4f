package circuitverdict.standard;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads the editions from the class path, strictly: an unknown member, a duplicated key, a value
 * without unit, citation or confidence, a gap or an overlap stops the start of the service.
 */
public final class EditionLoader {
  private static final String ROOT = "/editions/";
  private static final ObjectMapper YAML =
      JsonMapper.builder(new YAMLFactory())
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .build();

  private final Map<String, String> sources;
  private final Map<String, Map<String, Table>> loaded = new LinkedHashMap<>();
  private final Map<String, EditionHead> heads = new LinkedHashMap<>();

  private EditionLoader() {
    this.sources = new TreeMap<>(read("sources.yaml", Sources.class));
  }

  /** What the data folder holds: the editions, newest first, each with its own table files. */
  record Index(List<EditionFiles> editions) {
    record EditionFiles(String edition, List<String> tables) {}
  }

  private static final class Sources extends TreeMap<String, String> {}

  /**
   * All editions.
   *
   * @throws IllegalStateException where the data are incomplete or contradictory
   */
  public static Editions load() {
    return new EditionLoader().editions();
  }

  private Editions editions() {
    Index index = read("index.yaml", Index.class);
    for (Index.EditionFiles files : index.editions()) {
      heads.put(files.edition(), read(files.edition() + "/edition.yaml", EditionHead.class));
      Map<String, Table> own = new TreeMap<>();
      for (String table : files.tables()) {
        TableFile file = read(files.edition() + "/" + table + ".yaml", TableFile.class);
        own.put(table, TableBuilder.build(table, file, sources.keySet()));
      }
      loaded.put(files.edition(), own);
    }
    Map<String, Edition> editions = new LinkedHashMap<>();
    for (EditionHead head : heads.values()) {
      Map<String, Table> tables = withCarriedOver(head);
      editions.put(head.edition(), new Edition(head, tables, EditionDigest.of(head, tables)));
    }
    return new Editions(editions, sources);
  }

  private Map<String, Table> withCarriedOver(EditionHead head) {
    Map<String, Table> tables = new TreeMap<>(loaded.get(head.edition()));
    EditionHead.CarriedOver carried = head.carriedOver();
    if (carried == null) {
      return tables;
    }
    loaded
        .get(carried.from())
        .forEach(
            (id, table) -> {
              if (carried.covers(id) && !tables.containsKey(id)) {
                tables.put(id, carriedOver(table, carried.from()));
              }
            });
    return tables;
  }

  private static Table carriedOver(Table table, String from) {
    List<Row> rows = new ArrayList<>();
    for (Row row : table.rows()) {
      List<Value> values = new ArrayList<>();
      for (Value value : row.values()) {
        values.add(value == null ? null : value.carriedOver(from));
      }
      rows.add(new Row(row.keys(), values));
    }
    return new Table(
        table.id(),
        table.title(),
        table.standard(),
        table.reference(),
        table.note().orElse(null),
        table.keys(),
        table.columns(),
        rows);
  }

  private static <T> T read(String path, Class<T> type) {
    try (InputStream in = EditionLoader.class.getResourceAsStream(ROOT + path)) {
      if (in == null) {
        throw new IllegalStateException("no data file " + path);
      }
      return YAML.readValue(in, type);
    } catch (IOException e) {
      throw new UncheckedIOException("data file " + path, e);
    }
  }
}
