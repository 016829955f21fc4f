package circuitverdict.explain;

import circuitverdict.quantity.Shown;
import circuitverdict.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * A formula as it is shown and as it is evaluated: one text for both. Made by {@link #of} only; a
 * record, so that the compiler takes a constant formula for what it is.
 *
 * <p>Example: {@code Formula.of("Zs", Unit.OHM, "Zdb + L·(r1 + r2)·Cθ/1000")}.
 *
 * @param symbol symbol of the result
 * @param unit unit of the result
 * @param text the formula as shown
 * @param operands symbols of the operands, in the order in which they are given
 * @param wanted how many operands there are
 * @param root what is evaluated
 * @param pieces what is shown with figures put in
 */
public record Formula(
    String symbol,
    Unit unit,
    String text,
    List<String> operands,
    int wanted,
    Node root,
    List<Piece> pieces) {

  /**
   * A formula.
   *
   * @throws IllegalArgumentException where the text cannot be read
   */
  public static Formula of(String symbol, Unit unit, String text) {
    Expression.Compiled compiled = Expression.compile(text);
    List<String> names = compiled.names();
    return new Formula(
        symbol, unit, text, names, names.size(), compiled.root(), pieces(text, names));
  }

  /** All else follows from the text. */
  @Override
  public int hashCode() {
    return 31 * symbol.hashCode() + text.hashCode();
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Formula that
            && text.equals(that.text)
            && symbol.equals(that.symbol)
            && unit == that.unit;
  }

  double evaluate(Figure[] figures) {
    if (figures.length != wanted) {
      throw new IllegalArgumentException(text + " wants " + operands);
    }
    assert inOrder(figures) : text + " wants " + operands + " in this order";
    return root.value(figures);
  }

  private boolean inOrder(Figure[] figures) {
    for (int i = 0; i < figures.length; i++) {
      if (!figures[i].symbol().equals(operands.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** The formula with the operands' figures in place of their symbols. */
  String substituted(List<Figure> figures) {
    StringBuilder out = new StringBuilder(text.length() + 32);
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      if (piece.operand() < 0) {
        out.append(piece.text());
      } else {
        Shown.plain(out, figures.get(piece.operand()).value());
      }
    }
    return out.toString();
  }

  /** A stretch of the text: an operand's symbol, or what stands between. */
  record Piece(String text, int operand) {}

  private static List<Piece> pieces(String text, List<String> names) {
    List<Piece> pieces = new ArrayList<>();
    StringBuilder between = new StringBuilder();
    int at = 0;
    while (at < text.length()) {
      int end = nameEnd(text, at);
      int operand = end == at ? -1 : names.indexOf(text.substring(at, end));
      if (operand < 0) {
        int next = Math.max(end, at + 1);
        between.append(text, at, next);
        at = next;
        continue;
      }
      pieces.add(new Piece(between.toString(), -1));
      between.setLength(0);
      pieces.add(new Piece(names.get(operand), operand));
      at = end;
    }
    pieces.add(new Piece(between.toString(), -1));
    return List.copyOf(pieces);
  }

  private static int nameEnd(String text, int from) {
    int end = from;
    while (end < text.length() && inName(text, end)) {
      end++;
    }
    return end;
  }

  private static boolean inName(String text, int at) {
    char c = text.charAt(at);
    boolean comma =
        c == ',' && at + 1 < text.length() && Character.isLetterOrDigit(text.charAt(at + 1));
    return Character.isLetterOrDigit(c) || c == '.' || c == '_' || comma;
  }
}
