package circuitverdict.service.edge;

import jakarta.ws.rs.core.HttpHeaders;
import java.util.List;
import java.util.Locale;

/**
 * How deep an answer the caller prefers (RFC 7240, {@code return}). Preferences are wishes: one
 * that is unknown or not well formed is ignored, and of several the first counts.
 */
public enum Preference {
  /** Nothing was asked for: the full answer. */
  NONE(null),
  /** The full answer was asked for. */
  REPRESENTATION("return=representation"),
  /** Verdicts, reasons and figures only. */
  MINIMAL("return=minimal");

  private final String applied;

  Preference(String applied) {
    this.applied = applied;
  }

  /** Value of the Preference-Applied header, or null where there is none to send. */
  public String applied() {
    return applied;
  }

  /** Whether prose, working, comparisons, remedies and limits stay away. */
  public boolean isMinimal() {
    return this == MINIMAL;
  }

  /** The preference of a request. */
  public static Preference of(HttpHeaders headers) {
    List<String> lines = headers.getRequestHeader("Prefer");
    return lines == null || lines.isEmpty() ? NONE : of(lines);
  }

  /** The preference that these Prefer lines state. */
  static Preference of(List<String> lines) {
    for (String line : lines) {
      for (String item : HeaderList.split(line, ',')) {
        // Parameters of a preference follow a semicolon; `return` has none.
        String preference = HeaderList.split(item, ';').get(0);
        int equals = preference.indexOf('=');
        if (equals > 0 && preference.substring(0, equals).strip().equalsIgnoreCase("return")) {
          Preference found = ofValue(preference.substring(equals + 1));
          if (found != NONE) {
            return found;
          }
        }
      }
    }
    return NONE;
  }

  private static Preference ofValue(String value) {
    switch (HeaderList.unquote(value.strip()).toLowerCase(Locale.ROOT)) {
      case "minimal":
        return MINIMAL;
      case "representation":
        return REPRESENTATION;
      default:
        return NONE;
    }
  }
}
