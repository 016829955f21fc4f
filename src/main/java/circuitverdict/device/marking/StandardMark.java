package circuitverdict.device.marking;

import circuitverdict.standard.Marks;

/** "IEC/EN 60898-1:2015", "BS 88-3", "61009-1": the letters of bodies, a number and its part. */
final class StandardMark implements Recogniser {
  /** Longer than any that is written: without an end the time would grow with its square. */
  private static final int MOST_LEXEMES = 12;

  /** Numbers so long need no body before them. */
  private static final int LONG_NUMBER = 5;

  @Override
  public Found at(Line line, int from) {
    int at = from;
    while (at - from < MOST_LEXEMES
        && line.at(at).word()
        && line.marks().vocabulary().bodies().contains(line.at(at).text())) {
      at++;
      at += line.at(at).is("/") || line.at(at).is("-") ? 1 : 0;
    }
    Lexeme number = line.at(at);
    boolean bodied = at > from;
    if (!number.figure() || !bodied && number.text().length() != LONG_NUMBER) {
      return null;
    }
    at++;
    StringBuilder part = new StringBuilder();
    int first = at;
    while (at - first < MOST_LEXEMES
        && line.at(at).is("-")
        && !line.at(at).spaced()
        && line.at(at + 1).figure()) {
      part.append(part.length() == 0 ? "" : "-").append(line.at(at + 1).text());
      at += 2;
    }
    if (part.length() == 0 && partInWords(line, at)) {
      int figure = line.at(at).is("part") ? at + 1 : at + 2;
      part.append(line.at(figure).text());
      at = figure + 1;
    }
    at = year(line, at);
    String standard = known(line.marks(), number.text(), part.toString());
    if (standard == null) {
      return bodied ? Found.of(Found.NOT_READ, null, at) : null;
    }
    return Found.of("standard", standard, at, Claim.says(DeviceMember.STANDARD, standard));
  }

  private static boolean partInWords(Line line, int at) {
    int word = line.at(at).is(":") ? at + 1 : at;
    return line.at(word).is("part") && line.at(word + 1).figure();
  }

  /** The year of an edition and its amendments say nothing that a check needs. */
  private static int year(Line line, int at) {
    int next = at;
    if (line.at(next).is(":") && line.at(next + 1).figure()) {
      next += 2;
    }
    while (next - at < MOST_LEXEMES
        && line.at(next).is("+")
        && line.at(next + 1).is("a")
        && line.at(next + 2).figure()) {
      next += line.at(next + 3).is(":") && line.at(next + 4).figure() ? 5 : 3;
    }
    return next;
  }

  private static String known(Marks marks, String number, String part) {
    for (Marks.StandardMark each : marks.vocabulary().standards()) {
      String own = each.part() == null ? "" : each.part();
      if (each.number().equals(number) && own.equals(part)) {
        return each.standard();
      }
    }
    return null;
  }
}
