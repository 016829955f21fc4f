package circuitverdict.standard;

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
    Marks marks = MarksLoader.load();
    ProductModel products = ProductModel.load(sources.keySet());
    Map<String, Edition> editions = new LinkedHashMap<>();
    for (EditionHead head : heads.values()) {
      Map<String, Table> tables = withCarriedOver(head);
      String digest = EditionDigest.of(head, tables);
      editions.put(head.edition(), new Edition(head, tables, digest, marks, products));
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
    return YamlData.read(ROOT, path, type);
  }
}
