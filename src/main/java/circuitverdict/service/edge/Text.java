package circuitverdict.service.edge;

import java.util.List;

/** Text that came from a caller, made fit to be answered; and names that resemble one another. */
final class Text {

  private static final String ELLIPSIS = "…";
  // Longer names are no slip of the keyboard, and comparing them would cost time.
  private static final int COMPARABLE_LENGTH = 60;

  private Text() {}

  /** True where every surrogate has its other half, so that the text can be written as UTF-8. */
  static boolean isWellFormed(String text) {
    int length = text.length();
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      if (Character.isSurrogate(c)) {
        if (Character.isLowSurrogate(c)
            || i + 1 == length
            || !Character.isLowSurrogate(text.charAt(i + 1))) {
          return false;
        }
        i++;
      }
    }
    return true;
  }

  /** The text in at most {@code length} characters, well formed. */
  static String fit(String text, int length) {
    String whole = isWellFormed(text) ? text : replaceHalves(text);
    if (whole.length() <= length) {
      return whole;
    }
    int end = length - ELLIPSIS.length();
    if (Character.isHighSurrogate(whole.charAt(end - 1))) {
      end--;
    }
    return whole.substring(0, end) + ELLIPSIS;
  }

  /** The pointer itself, or that of its nearest ancestor that fits: it always resolves. */
  static String fitPointer(String pointer, int length) {
    String fitting = pointer;
    while (fitting.length() > length || !isWellFormed(fitting)) {
      fitting = fitting.substring(0, fitting.lastIndexOf('/'));
    }
    return fitting;
  }

  private static String replaceHalves(String text) {
    StringBuilder replaced = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE ? 0xFFFD : c)
        .forEach(replaced::appendCodePoint);
    return replaced.toString();
  }

  /** The one of {@code names} that {@code written} probably meant, or null. */
  static String nearest(String written, List<String> names) {
    if (written.length() > COMPARABLE_LENGTH) {
      return null;
    }
    String nearest = null;
    int least = Math.max(1, written.length() / 3) + 1;
    for (String name : names) {
      int distance = written.equalsIgnoreCase(name) ? 0 : distance(written, name, least);
      if (distance < least) {
        least = distance;
        nearest = name;
      }
    }
    return nearest;
  }

  /** Edits (insertion, deletion, exchange) between the two, or {@code enough} if as many. */
  private static int distance(String a, String b, int enough) {
    if (Math.abs(a.length() - b.length()) >= enough) {
      return enough;
    }
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int cost = a.charAt(i - 1) == b.charAt(j - 1) ? diagonal : diagonal + 1;
        diagonal = row[j];
        row[j] = Math.min(cost, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
