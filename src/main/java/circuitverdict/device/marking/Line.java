package circuitverdict.device.marking;

import circuitverdict.standard.Edition;
import circuitverdict.standard.Marks;
import circuitverdict.standard.TableName;
import java.util.ArrayList;
import java.util.List;

/** The lexemes of one string, with what the recognisers ask of them and of the tables. */
final class Line {
  private static final Lexeme END =
      new Lexeme(Lexeme.Sort.SIGN, "", new double[0], Integer.MAX_VALUE, Integer.MAX_VALUE, true);
  private static final String SEPARATORS = "/,;|()&+:";

  private final String written;
  private final List<Lexeme> lexemes;
  private final Marks marks;
  private final Edition edition;

  Line(String written, Marks marks, Edition edition) {
    this.written = written;
    this.lexemes = Lexer.read(written);
    this.marks = marks;
    this.edition = edition;
  }

  Marks marks() {
    return marks;
  }

  Edition edition() {
    return edition;
  }

  int size() {
    return lexemes.size();
  }

  Lexeme at(int index) {
    return index >= 0 && index < lexemes.size() ? lexemes.get(index) : END;
  }

  boolean ends(int index) {
    return index >= lexemes.size();
  }

  /** The string between two lexemes as it was written. */
  String text(int from, int to) {
    return written.substring(at(from).from(), at(to - 1).to()).strip();
  }

  char writtenAt(int index) {
    return written.charAt(at(index).from());
  }

  boolean separates(int index) {
    Lexeme each = at(index);
    return each.sort() == Lexeme.Sort.SIGN
        && each.text().length() == 1
        && SEPARATORS.contains(each.text());
  }

  /** The first lexeme from here on that parts nothing. */
  int after(int index) {
    int next = index;
    while (!ends(next) && separates(next)) {
      next++;
    }
    return next;
  }

  /** Whether a mark may end before this lexeme. */
  boolean boundary(int index) {
    return ends(index) || at(index).spaced() || separates(index);
  }

  /** The words from here on, up to so many, joined by what joins; null where there are fewer. */
  String words(int from, int count, String joint) {
    StringBuilder joined = new StringBuilder();
    for (int i = 0; i < count; i++) {
      if (!at(from + i).word()) {
        return null;
      }
      joined.append(i == 0 ? "" : joint).append(at(from + i).text());
    }
    return joined.toString();
  }

  /** The values of a figure times a factor that the member can have. */
  List<Double> candidates(Lexeme figure, double factor, String member) {
    List<Double> values = new ArrayList<>();
    for (double value : figure.values()) {
      // Divided where it can be: 30/1000 is 0.03, and 30·0.001 is not.
      double scaled = factor < 1 ? value / Math.rint(1 / factor) : value * factor;
      if (member == null || marks.canBe(member, scaled)) {
        values.add(scaled);
      }
    }
    return values;
  }

  /** Whether a rated current is preferred by the standard or at least sold. */
  boolean usualRating(double ampere) {
    return listed(TableName.STANDARD_RATINGS, ampere) || listed(TableName.MARKETED_RATINGS, ampere);
  }

  boolean listed(TableName table, double value) {
    return edition.table(table).at("listed", value) != null;
  }

  /** The value of a figure that is a standard short-circuit capacity; NaN where none is. */
  double standardCapacity(Lexeme figure) {
    for (double value : figure.values()) {
      if (listed(TableName.MARKED_CAPACITIES, value)) {
        return value;
      }
    }
    return Double.NaN;
  }
}
