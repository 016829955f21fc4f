package circuitverdict.device.marking;

/**
 * A figure alone: a standard short-circuit capacity, or a class; a rated current it is not told.
 */
final class BareNumberMark implements Recogniser {
  @Override
  public Found at(Line line, int from) {
    Lexeme figure = line.at(from);
    if (!figure.figure() || !line.boundary(from + 1)) {
      return null;
    }
    double capacity = line.standardCapacity(figure);
    if (!Double.isNaN(capacity)) {
      return Found.bare("breaking-capacity", null, from + 1, Claim.capacity(capacity));
    }
    if (isClassDigit(figure)) {
      return Found.bare(
          ClassMark.KIND, figure.text(), from + 1, Claim.of(Claim.Sort.DIGIT, figure.values()[0]));
    }
    boolean digit = figure.text().length() == 1;
    boolean rating = figure.values().length == 1 && line.usualRating(figure.values()[0]);
    return digit || rating ? Found.ambiguous(from + 1) : null;
  }

  static boolean isClassDigit(Lexeme figure) {
    return figure.is("1") || figure.is("2") || figure.is("3");
  }
}
