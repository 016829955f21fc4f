package circuitverdict.device.marking;

import circuitverdict.standard.Marks.Word;

/** Words that are marks by themselves: "type AC", "CE", "1P" apart; and IP codes. */
final class WordMark implements Recogniser {
  private static final int MOST_WORDS = 3;

  @Override
  public Found at(Line line, int from) {
    if (line.at(from).is("ip") && line.at(from + 1).figure()) {
      int end = line.at(from + 2).word() && !line.at(from + 2).spaced() ? from + 3 : from + 2;
      return Found.of("degree-of-protection", null, end);
    }
    for (int words = MOST_WORDS; words > 0; words--) {
      Found found = phrase(line, from, words);
      if (found != null) {
        return found;
      }
    }
    boolean alone = from == 0 && line.size() == 1;
    return alone && line.at(0).is("s")
        ? Found.of("residual-delay", "S", 1, Claim.of(Claim.Sort.LONE_S, "S"))
        : null;
  }

  /** Phrases of several words come before types and labels that begin like them. */
  static final class Phrase implements Recogniser {
    @Override
    public Found at(Line line, int from) {
      for (int words = MOST_WORDS; words > 1; words--) {
        Found found = phrase(line, from, words);
        if (found != null) {
          return found;
        }
      }
      return null;
    }
  }

  private static Found phrase(Line line, int from, int words) {
    StringBuilder joined = new StringBuilder();
    int at = from;
    for (int i = 0; i < words; i++) {
      boolean sign = i == 0 && line.at(at).is("~");
      if (!line.at(at).word() && !sign) {
        return null;
      }
      joined.append(i == 0 ? "" : " ").append(line.at(at).text());
      at++;
      if (i + 1 < words && (line.at(at).is(".") || line.at(at).is("-") || line.at(at).is("/"))) {
        at++;
      }
    }
    Word word = line.marks().vocabulary().words().get(joined.toString());
    boolean choice =
        word != null
            && DeviceMember.RESIDUAL_TYPE.path().equals(word.member())
            && line.at(at).is("/")
            && line.at(at + 1).word();
    if (choice) {
      // "type F/A" leaves open which of the two it is.
      return Found.ambiguous(at + 2);
    }
    return word == null ? null : of(word, at);
  }

  static Found of(Word word, int end) {
    DeviceMember member = DeviceMember.ofPath(word.member());
    Object value = word.value() instanceof Number number ? number.doubleValue() : word.value();
    return member == null
        ? Found.of(word.kind(), word.variant(), end)
        : Found.of(word.kind(), word.variant(), end, Claim.says(member, value));
  }
}
