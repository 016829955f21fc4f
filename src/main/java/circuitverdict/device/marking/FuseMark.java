package circuitverdict.device.marking;

import circuitverdict.standard.Marks.Word;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/** "gG 63", "63 A gG", "63M80"; and "M6", the category of duty of the withdrawn standard. */
final class FuseMark implements Recogniser {
  private static final String MOTOR = "gM";

  @Override
  public Found at(Line line, int from) {
    if (line.at(from).figure()) {
      return figureFirst(line, from);
    }
    if (line.at(from).is("m") && line.at(from + 1).figure()) {
      return duty(line, from);
    }
    Word category = category(line, from);
    if (category == null || !line.at(from + 1).figure()) {
      return null;
    }
    int end = line.at(from + 2).is("a") ? from + 3 : from + 2;
    boolean unit = line.at(from + 2).word() && !line.at(from + 2).spaced() && end == from + 2;
    unit |= Lexer.UNITS.contains(line.at(from + 2).text());
    boolean motor = line.at(from + 2).is("m") && line.at(from + 3).figure();
    return unit || motor ? null : rated(line, category, line.at(from + 1), end);
  }

  private static Found figureFirst(Line line, int at) {
    if (line.at(at + 1).is("m") && !line.at(at + 1).spaced() && line.at(at + 2).figure()) {
      return motor(line, at);
    }
    int next = line.at(at + 1).is("a") ? at + 2 : at + 1;
    Word category = category(line, next);
    return category == null ? null : rated(line, category, line.at(at), next + 1);
  }

  private static Word category(Line line, int at) {
    Word word =
        line.at(at).word() ? line.marks().vocabulary().words().get(line.at(at).text()) : null;
    return word != null && word.kind().equals("fuse-category") ? word : null;
  }

  private static Found rated(Line line, Word category, Lexeme figure, int end) {
    var ratings = line.candidates(figure, 1, DeviceMember.RATED_CURRENT.path());
    if (ratings.size() != 1) {
      return Found.ambiguous(end);
    }
    return Found.of(
        category.kind(),
        category.variant(),
        end,
        Claim.says(DeviceMember.CATEGORY, category.value()),
        Claim.says(DeviceMember.RATED_CURRENT, ratings.get(0)));
  }

  private static Found motor(Line line, int at) {
    int end = line.at(at + 3).is("a") ? at + 4 : at + 3;
    var rated = line.candidates(line.at(at), 1, DeviceMember.RATED_CURRENT.path());
    var curve = line.candidates(line.at(at + 2), 1, DeviceMember.CHARACTERISTIC_CURRENT.path());
    if (rated.size() != 1 || curve.size() != 1 || curve.get(0) < rated.get(0)) {
      return null;
    }
    return Found.of(
        "motor-fuse-rating",
        null,
        end,
        Claim.says(DeviceMember.CATEGORY, MOTOR),
        Claim.says(DeviceMember.RATED_CURRENT, rated.get(0)),
        Claim.says(DeviceMember.CHARACTERISTIC_CURRENT, curve.get(0)));
  }

  private static Found duty(Line line, int from) {
    for (double rating : line.at(from + 1).values()) {
      Value capacity = line.edition().table(TableName.OLD_BREAKER_CAPACITIES).at("value", rating);
      if (capacity != null) {
        Claim claim = Claim.says(DeviceMember.BREAKING_CAPACITY, capacity.number());
        return Found.of("withdrawn-capacity", null, from + 2, claim);
      }
    }
    return null;
  }
}
