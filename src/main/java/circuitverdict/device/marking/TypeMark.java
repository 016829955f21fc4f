package circuitverdict.device.marking;

import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import java.util.Locale;
import java.util.Map;

/** "C16", "16 C", "type B", "C curve", "K 20 A"; "type 2" of the withdrawn standard; "L 16". */
final class TypeMark implements Recogniser {
  private static final String CURRENT = "type-and-rating";
  private static final String LETTER = "type-letter";

  @Override
  public Found at(Line line, int from) {
    boolean named = line.marks().vocabulary().types().contains(line.at(from).text());
    int at = named ? from + 1 : from;
    if (named && line.at(at).figure()) {
      return old(line, at);
    }
    if (line.at(at).figure()) {
      return named ? null : figureFirst(line, at);
    }
    String letter = letter(line, at);
    if (letter == null) {
      return null;
    }
    int next = at + 1;
    boolean curve = line.at(line.at(next).is("-") ? next + 1 : next).is("curve");
    if (curve) {
      next += line.at(next).is("-") ? 2 : 1;
    }
    double rated = rating(line, next);
    if (!Double.isNaN(rated)) {
      return rated(line, letter, rated, withAmpere(line, next + 1));
    }
    boolean choice = line.at(next).is("/") && line.at(next + 1).word();
    if (choice && (named || from == 0)) {
      // "type B/A" leaves open which of the two it is.
      return Found.ambiguous(next + 2);
    }
    boolean type = named && !curve && !line.at(from).is("curve");
    boolean alone = from == 0 && line.ends(next) && line.at(at).spaced();
    return named || curve || alone ? letterAlone(line, letter, type, next) : null;
  }

  private static String letter(Line line, int at) {
    boolean known =
        line.at(at).word() && line.marks().vocabulary().letters().containsKey(line.at(at).text());
    return known ? line.at(at).text() : null;
  }

  /** A rated current that breakers with a letter can have, A; NaN where the figure is none. */
  private static double rating(Line line, int at) {
    Lexeme figure = line.at(at);
    double most = line.edition().constant(Constant.BREAKER_TESTS_GREATEST_RATED_CURRENT).number();
    boolean ofOther = Lexer.UNITS.contains(line.at(at + 1).text());
    boolean one = figure.figure() && figure.values().length == 1 && !ofOther;
    boolean can = one && figure.values()[0] > 0 && figure.values()[0] <= most;
    return can && line.marks().canBe(DeviceMember.RATED_CURRENT.path(), figure.values()[0])
        ? figure.values()[0]
        : Double.NaN;
  }

  private static int withAmpere(Line line, int at) {
    return line.at(at).is("a") ? at + 1 : at;
  }

  private static Found rated(Line line, String letter, double rated, int end) {
    String kind = line.marks().vocabulary().letters().get(letter);
    if (!kind.equals(CURRENT)) {
      return terminalOrOld(line, letter, rated, kind, end);
    }
    String capital = letter.toUpperCase(Locale.ROOT);
    return Found.of(
        kind,
        capital,
        end,
        Claim.says(DeviceMember.CHARACTERISTIC, capital),
        Claim.says(DeviceMember.RATED_CURRENT, rated));
  }

  /** L1 to L3 are terminals; other withdrawn letters count only before a preferred rating. */
  private static Found terminalOrOld(Line line, String letter, double rated, String kind, int end) {
    if (line.marks().vocabulary().words().containsKey(letter + Math.round(rated))) {
      return Found.of("line-terminal", null, end);
    }
    return line.listed(TableName.STANDARD_RATINGS, rated) ? Found.of(kind, null, end) : null;
  }

  private static Found letterAlone(Line line, String letter, boolean type, int end) {
    if (!line.marks().vocabulary().letters().get(letter).equals(CURRENT)) {
      return null;
    }
    if (letter.equals("b")) {
      Claim.Sort sort = type ? Claim.Sort.TYPE_B : Claim.Sort.LETTER_B;
      return Found.of(LETTER, "B", end, Claim.of(sort, "B"));
    }
    String capital = letter.toUpperCase(Locale.ROOT);
    return Found.of(LETTER, capital, end, Claim.says(DeviceMember.CHARACTERISTIC, capital));
  }

  /** "16 C": unless the letter belongs to the figure after it, or the figure is a temperature. */
  private static Found figureFirst(Line line, int at) {
    double rated = rating(line, at);
    String letter = letter(line, at + 1);
    if (Double.isNaN(rated) || letter == null) {
      return null;
    }
    if (!line.marks().vocabulary().letters().get(letter).equals(CURRENT)) {
      return null;
    }
    boolean near = !line.at(at + 1).spaced();
    Lexeme after = line.at(at + 2);
    double other = rating(line, at + 2);
    if (!Double.isNaN(other)) {
      boolean nearOther = !after.spaced();
      boolean leftHere = explained(line, at);
      boolean leftThere = explained(line, at + 2);
      if (near == nearOther && leftHere == leftThere) {
        return Found.ambiguous(at + 3);
      }
      boolean mine = near == nearOther ? leftThere : near;
      if (!mine) {
        return null;
      }
    }
    if (letter.equals("c") && !line.usualRating(rated)) {
      return Found.ambiguous(at + 2);
    }
    return rated(line, letter, rated, at + 2);
  }

  /** Whether a figure left over would be a mark by itself. */
  private static boolean explained(Line line, int at) {
    return BareNumberMark.isClassDigit(line.at(at))
        || !Double.isNaN(line.standardCapacity(line.at(at)));
  }

  private static Found old(Line line, int at) {
    Map<String, String> types = line.marks().kind("withdrawn-type").variants();
    String number = line.at(at).text();
    return types.containsKey(number)
        ? Found.of(
            "withdrawn-type", number, at + 1, Claim.says(DeviceMember.CHARACTERISTIC, number))
        : null;
  }
}
