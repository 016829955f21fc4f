package circuitverdict.device.marking;

/**
 * "class 3", "energy limiting class 3"; "[6000]", "3 in a square", "[S]": what stands in a frame.
 */
final class ClassMark implements Recogniser {
  static final String KIND = "energy-class";
  private static final int MOST_WORDS = 3;
  private static final String FRAME_BEFORE = "[\u25A1\u25AD\u25FB\u2B1C";
  private static final String FRAME_AROUND = "\u20DE";

  @Override
  public Found at(Line line, int from) {
    for (int words = MOST_WORDS; words > 0; words--) {
      String said = line.words(from, words, " ");
      if (said != null && line.marks().vocabulary().classes().contains(said)) {
        int figure = line.at(from + words).is(".") ? from + words + 1 : from + words;
        return line.at(figure).figure() ? energyClass(line.at(figure), figure + 1) : null;
      }
    }
    return framed(line, from);
  }

  private static Found energyClass(Lexeme figure, int end) {
    return Found.of(
        KIND, figure.text(), end, Claim.says(DeviceMember.ENERGY_CLASS, figure.values()[0]));
  }

  private static Found framed(Line line, int from) {
    boolean before =
        line.at(from).text().length() == 1 && FRAME_BEFORE.contains(line.at(from).text());
    int inside = before ? from + 1 : from;
    int end = end(line, from, inside);
    if (end < 0) {
      return null;
    }
    if (line.at(inside).is("s")) {
      return Found.of("residual-delay", "S", end, Claim.says(DeviceMember.RESIDUAL_DELAY, "S"));
    }
    Lexeme figure = line.at(inside);
    if (!figure.figure()) {
      return null;
    }
    if (figure.text().length() == 1) {
      return energyClass(figure, end);
    }
    double standard = line.standardCapacity(figure);
    double ampere = Double.isNaN(standard) ? figure.values()[0] : standard;
    return line.marks().canBe(DeviceMember.BREAKING_CAPACITY.path(), ampere)
        ? Found.of("breaking-capacity", null, end, Claim.capacity(ampere))
        : Found.ambiguous(end);
  }

  /** The lexeme after the frame; -1 where there is none. */
  private static int end(Line line, int from, int inside) {
    if (inside > from) {
      boolean bracket = line.at(from).is("[");
      return bracket ? (line.at(inside + 1).is("]") ? inside + 2 : -1) : inside + 1;
    }
    if (line.at(from + 1).is(FRAME_AROUND)) {
      return from + 2;
    }
    if (!line.at(from + 1).is("in")) {
      return -1;
    }
    int word = line.at(from + 2).is("a") ? from + 3 : from + 2;
    return line.marks().vocabulary().frames().contains(line.at(word).text()) ? word + 1 : -1;
  }
}
