package circuitverdict.service.edge;

import java.util.ArrayList;
import java.util.List;

/** The list syntax of HTTP header fields, read leniently. */
final class HeaderList {

  private HeaderList() {}

  /** The parts between separators that stand outside quotes, stripped; at least one. */
  static List<String> split(String line, char separator) {
    List<String> parts = new ArrayList<>();
    boolean quoted = false;
    int start = 0;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == '\\' && quoted) {
        i++;
      } else if (c == separator && !quoted) {
        parts.add(line.substring(start, i).strip());
        start = i + 1;
      }
    }
    parts.add(line.substring(start).strip());
    return parts;
  }

  /** The value without the quotes around it, if it has any. */
  static String unquote(String value) {
    boolean quoted = value.length() >= 2 && value.startsWith("\"") && value.endsWith("\"");
    return quoted ? value.substring(1, value.length() - 1) : value;
  }
}
