package circuitverdict.standard;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Set;

/**
 * The head of an edition.
 *
 * @param edition identifier
 * @param standard the standard with its edition as clauses quote it
 * @param title its title
 * @param published day of publication
 * @param withdrawn day of withdrawal, or null
 * @param inForce whether it is the edition in force, the default
 * @param clauses clause by name of the rule
 * @param carriedOver what is taken from another edition, or null
 * @param named ids under which it holds tables that rules know by another name; null for none
 * @param without rules and tables that it has not, or null
 */
public record EditionHead(
    String edition,
    String standard,
    String title,
    String published,
    String withdrawn,
    boolean inForce,
    Map<String, String> clauses,
    CarriedOver carriedOver,
    Map<String, String> named,
    Without without) {

  /**
   * Tables taken from another edition.
   *
   * @param from the edition they come from
   * @param because why
   * @param tables {@code all} or a list of table ids
   */
  public record CarriedOver(String from, String because, JsonNode tables) {
    boolean covers(String table) {
      if (tables.isTextual()) {
        return tables.textValue().equals("all");
      }
      for (JsonNode id : tables) {
        if (id.asText().equals(table)) {
          return true;
        }
      }
      return false;
    }
  }

  /**
   * What other editions have and this one has not: what rests on such a table is not determined,
   * and such a rule asks for nothing.
   *
   * @param because why
   * @param rules names of the rules; each keeps a clause, which says so
   * @param tables ids of the tables
   */
  public record Without(String because, Set<String> rules, Set<String> tables) {}

  /** The id under which the edition holds a table that rules know by this name. */
  String idOf(String name) {
    return named == null ? name : named.getOrDefault(name, name);
  }

  /** Whether the edition says that it has no such rule. */
  boolean lacksRule(String rule) {
    return without != null && without.rules().contains(rule);
  }

  /** Whether the edition says that it has no table of this name. */
  boolean lacks(String name) {
    return without != null && without.tables().contains(name);
  }
}
