package circuitverdict.device.marking;

import circuitverdict.device.marking.Lexeme.Sort;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Parts a string on a face into figures, words and signs. Every character is looked at once. */
final class Lexer {
  private static final int GROUP = 3;

  /** Digits that a figure on a face can have at most. */
  private static final int MOST_DIGITS = 9;

  private static final double[] NO_NUMBER = {};

  /** Units by which a figure of three digits is one of its own, not the end of thousands. */
  static final Set<String> UNITS =
      Set.of("v", "vac", "vdc", "hz", "ma", "ka", "kv", "mm", "p", "pole", "poles");

  private final PlainText text;
  private final List<Lexeme> found = new ArrayList<>();
  private int at;

  private Lexer(PlainText text) {
    this.text = text;
  }

  static List<Lexeme> read(String written) {
    return new Lexer(PlainText.of(written)).all();
  }

  private List<Lexeme> all() {
    boolean spaced = true;
    while (at < text.length()) {
      char c = text.at(at);
      if (c == ' ') {
        spaced = true;
        at++;
        continue;
      }
      int from = at;
      if (digit(at) || begins(c) && digit(at + 1)) {
        double[] values = figure();
        add(Sort.FIGURE, from, values, spaced);
      } else if (Character.isLetter(c)) {
        while (Character.isLetter(text.at(at))) {
          at++;
        }
        add(Sort.WORD, from, NO_NUMBER, spaced);
      } else {
        at++;
        add(Sort.SIGN, from, NO_NUMBER, spaced);
      }
      spaced = false;
    }
    return found;
  }

  private void add(Sort sort, int from, double[] values, boolean spaced) {
    found.add(
        new Lexeme(
            sort,
            text.between(from, at),
            values,
            text.origin(from),
            text.origin(at - 1) + 1,
            spaced));
  }

  /** ".03", but not the end of "8…12". */
  private boolean begins(char c) {
    char before = at == 0 ? ' ' : text.at(at - 1);
    return (c == '.' || c == ',') && (before == ' ' || before == '=' || before == ':');
  }

  private boolean digit(int index) {
    char c = text.at(index);
    return c >= '0' && c <= '9';
  }

  /** Reads on over a figure. */
  private double[] figure() {
    int from = at;
    List<String> groups = new ArrayList<>();
    StringBuilder parts = new StringBuilder();
    groups.add(digits());
    while (parts.length() < GROUP && parted(text.at(at)) && digit(at + 1)) {
      parts.append(text.at(at));
      at++;
      groups.add(digits());
    }
    if (parts.length() == 0 && thousandsFollow(groups.get(0))) {
      at++;
      groups.add(digits());
      parts.append(' ');
    }
    int count = at - from;
    return count > MOST_DIGITS + GROUP ? NO_NUMBER : values(groups, parts.toString());
  }

  private static boolean parted(char c) {
    return c == '.' || c == ',' || c == '\'';
  }

  private String digits() {
    int from = at;
    while (digit(at)) {
      at++;
    }
    return text.between(from, at);
  }

  /** "6 000" and "1 500" are one figure; "3 230 V" and "3 100 A" are two. */
  private boolean thousandsFollow(String first) {
    boolean begins = !first.isEmpty() && first.length() <= GROUP && first.charAt(0) != '0';
    int next = at + 1;
    if (!begins || text.at(at) != ' ' || !digit(next) || digit(next + GROUP)) {
      return false;
    }
    String group = text.between(next, Math.min(text.length(), next + GROUP));
    boolean thousands = group.equals("000") || group.equals("500");
    boolean goesOn = parted(text.at(next + GROUP)) && digit(next + GROUP + 1);
    return thousands && !goesOn && !UNITS.contains(wordAfter(next + GROUP));
  }

  /** As far as a unit can be long. */
  private String wordAfter(int index) {
    int from = text.at(index) == ' ' ? index + 1 : index;
    int to = from;
    while (to - from <= GROUP && Character.isLetter(text.at(to))) {
      to++;
    }
    return text.between(Math.min(from, text.length()), Math.min(to, text.length()));
  }

  private static double[] values(List<String> groups, String parts) {
    String first = groups.get(0);
    String last = groups.get(groups.size() - 1);
    if (parts.isEmpty()) {
      return new double[] {Double.parseDouble(first)};
    }
    boolean grouped = !first.isEmpty() && first.length() <= GROUP && first.charAt(0) != '0';
    for (int i = 1; i < groups.size(); i++) {
      grouped &= groups.get(i).length() == GROUP;
    }
    boolean alike = parts.chars().distinct().count() == 1;
    if (grouped && alike) {
      double thousands = Double.parseDouble(String.join("", groups));
      boolean decimal = parts.equals(".") || parts.equals(",");
      return decimal
          ? new double[] {thousands, Double.parseDouble(first + "." + last)}
          : new double[] {thousands};
    }
    if (groups.size() == 2 && !parts.equals("'") && !parts.equals(" ")) {
      return new double[] {Double.parseDouble((first.isEmpty() ? "0" : first) + "." + last)};
    }
    return NO_NUMBER;
  }
}
