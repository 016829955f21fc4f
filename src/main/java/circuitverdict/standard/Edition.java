package circuitverdict.standard;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One edition of the wiring rules: its clauses, its tables and the digest of both. */
public final class Edition {
  private final EditionHead head;
  private final Map<String, Table> tables;
  private final Map<String, Table> ordered;
  private final Citation[] clauses = new Citation[Clause.values().length];
  private final String digest;
  private final Marks marks;
  private final ProductModel products;
  private final Table[] read = new Table[TableName.values().length];
  private final Value[] constants = new Value[Constant.values().length];

  Edition(
      EditionHead head,
      Map<String, Table> tables,
      String digest,
      Marks marks,
      ProductModel products) {
    this.head = head;
    this.marks = marks;
    this.products = products;
    this.tables = new HashMap<>(tables);
    this.ordered = new LinkedHashMap<>(tables);
    this.digest = digest;
    for (Clause clause : Clause.values()) {
      String reference = head.clauses().get(clause.rule());
      if (reference == null) {
        throw new IllegalArgumentException(
            "edition " + id() + " names no clause for " + clause.rule());
      }
      clauses[clause.ordinal()] = Citation.rule(head.standard(), reference);
    }
    for (TableName name : TableName.values()) {
      boolean absent = head.lacks(name.id()) || !name.heldByAll() && !has(name.id());
      read[name.ordinal()] = absent ? none(name) : table(head.idOf(name.id()));
    }
    for (Constant constant : Constant.values()) {
      constants[constant.ordinal()] =
          head.lacks(constant.table())
              ? null
              : constant(head.idOf(constant.table()), constant.key());
    }
  }

  /** What stands for a table that the edition has not: whoever looks finds nothing. */
  private static Table none(TableName name) {
    return new Table(name.id(), "", "", "", null, List.of(), List.of(), List.of());
  }

  /** Identifier, for instance {@code bs7671-2018-a4}. */
  public String id() {
    return head.edition();
  }

  /** What the edition says of itself. */
  public EditionHead head() {
    return head;
  }

  /** Digest of every value and clause of the edition, {@code sha-256:…}. */
  public String digest() {
    return digest;
  }

  /** The marks of devices: of the product standards, so the same for every edition. */
  public Marks marks() {
    return marks;
  }

  /** What classified features of products tell of a device: the same for every edition. */
  public ProductModel products() {
    return products;
  }

  /** All tables, by id in alphabetical order. */
  public Collection<Table> tables() {
    return ordered.values();
  }

  /** Whether the edition has this table. */
  public boolean has(String id) {
    return tables.containsKey(id);
  }

  /**
   * The table with this id.
   *
   * @throws IllegalArgumentException where the edition has none
   */
  public Table table(String id) {
    Table table = tables.get(id);
    if (table == null) {
      throw new IllegalArgumentException("edition " + id() + " has no table " + id);
    }
    return table;
  }

  /** Whether the edition has the table that rules know by this name. */
  public boolean has(TableName name) {
    return !read[name.ordinal()].rows().isEmpty();
  }

  /** Whether the edition has the rule to which this value belongs. */
  public boolean has(Constant constant) {
    return constants[constant.ordinal()] != null;
  }

  /** A table by the name that rules know; empty where the edition is without it. */
  public Table table(TableName name) {
    return read[name.ordinal()];
  }

  /**
   * A value that a rule cannot do without.
   *
   * @throws IllegalStateException where the edition has no such rule: ask {@link #has(Constant)}
   */
  public Value constant(Constant constant) {
    Value value = constants[constant.ordinal()];
    if (value == null) {
      throw new IllegalStateException("edition " + id() + " is without " + constant.table());
    }
    return value;
  }

  /**
   * A value that the edition cannot do without: the first column of a table with words as keys.
   *
   * @throws IllegalArgumentException where it is missing
   */
  public Value constant(String table, String key) {
    Table found = table(table);
    Value value = found.at(found.columns().get(0).name(), key);
    if (value == null) {
      throw new IllegalArgumentException("table " + table + " has no value " + key);
    }
    return value;
  }

  /** Whether the edition has this rule. */
  public boolean has(Clause clause) {
    return !head.lacksRule(clause.rule());
  }

  /** The clause of this edition that holds a rule. */
  public Citation clause(Clause clause) {
    return clauses[clause.ordinal()];
  }
}
