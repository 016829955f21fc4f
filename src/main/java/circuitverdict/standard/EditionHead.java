package circuitverdict.standard;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;

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
 */
public record EditionHead(
    String edition,
    String standard,
    String title,
    String published,
    String withdrawn,
    boolean inForce,
    Map<String, String> clauses,
    CarriedOver carriedOver) {

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
}
