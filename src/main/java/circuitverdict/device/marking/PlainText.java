package circuitverdict.device.marking;

import java.text.Normalizer;

/**
 * A string on a face in lower case and plain typography: all spaces alike, all dashes, tildes and
 * deltas alike, full-width and subscript letters plain. Remembers where each character stood.
 */
final class PlainText {
  private final StringBuilder text = new StringBuilder();
  private final int[] origins;
  private final int length;

  private PlainText(String written) {
    // Compatibility forms of one character are at most some two dozen; room is made as needed.
    int[] from = new int[written.length() * 2 + 32];
    int i = 0;
    while (i < written.length()) {
      int c = written.codePointAt(i);
      String plain = plain(c);
      for (int k = 0; k < plain.length(); k++) {
        if (text.length() == from.length) {
          from = java.util.Arrays.copyOf(from, from.length * 2);
        }
        from[text.length()] = i;
        text.append(plain.charAt(k));
      }
      i += Character.charCount(c);
    }
    origins = from;
    length = written.length();
  }

  static PlainText of(String written) {
    return new PlainText(written);
  }

  int length() {
    return text.length();
  }

  char at(int index) {
    return index < text.length() ? text.charAt(index) : '\0';
  }

  String between(int from, int to) {
    return text.substring(from, to);
  }

  /** Where the character with this index stood in the string; at its end the string's length. */
  int origin(int index) {
    return index < text.length() ? origins[index] : length;
  }

  private static String plain(int c) {
    if (c < 0x80) {
      return c < ' ' ? " " : String.valueOf((char) Character.toLowerCase(c));
    }
    return switch (c) {
      case '\u2206', '\u0394', '\u25B3' -> "\u03B4";
      case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> "-";
      case '\u223C', '\u223F', '\u301C', '\u23E6', '\uFF5E' -> "~";
      case '\u2044', '\u2215' -> "/";
      case '\u00D7', '\u2715' -> "x";
      case '\u2019', '\u2032' -> "'";
      case '\u00B7' -> ".";
      case '\u25A1', '\u25AD', '\u25FB', '\u2B1C', '\u20DE' -> String.valueOf((char) c);
      case '\u00AD', '\u200B', '\u200C', '\u200D', '\u2060', '\uFEFF' -> "";
      default -> compatible(c);
    };
  }

  private static String compatible(int c) {
    if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
      return " ";
    }
    StringBuilder lower = new StringBuilder();
    Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC)
        .codePoints()
        .map(Character::toLowerCase)
        .forEach(lower::appendCodePoint);
    return lower.toString();
  }
}
