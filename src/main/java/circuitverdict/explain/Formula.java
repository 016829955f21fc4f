package circuitverdict.explain;

import circuitverdict.quantity.Shown;
import circuitverdict.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * A formula as it is shown and as it is evaluated: one text for both.
 *
 * <p>Example: {@code Formula.of("Zs", Unit.OHM, "Zdb + L·(r1 + r2)·Cθ/1000")}.
 */
public final class Formula {
  private final String symbol;
  private final Unit unit;
  private final String text;
  private final Expression.Node root;
  private final List<String> operands;
  private final int wanted;
  private final List<Piece> pieces;

  private Formula(String symbol, Unit unit, String text) {
    this.symbol = symbol;
    this.unit = unit;
    this.text = text;
    Expression.Compiled compiled = Expression.compile(text);
    this.root = compiled.root();
    this.operands = compiled.names();
    this.wanted = operands.size();
    this.pieces = pieces(text, operands);
  }

  /**
   * A formula.
   *
   * @throws IllegalArgumentException where the text cannot be read
   */
  public static Formula of(String symbol, Unit unit, String text) {
    return new Formula(symbol, unit, text);
  }

  /** Symbol of the result. */
  public String symbol() {
    return symbol;
  }

  /** Unit of the result. */
  public Unit unit() {
    return unit;
  }

  /** The formula as shown. */
  public String text() {
    return text;
  }

  /** Symbols of the operands, in the order in which they are given. */
  public List<String> operands() {
    return operands;
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
    for (Piece piece : pieces) {
      out.append(
          piece.operand() < 0 ? piece.text() : Shown.plain(figures.get(piece.operand()).value()));
    }
    return out.toString();
  }

  /** A stretch of the text: an operand's symbol, or what stands between. */
  private record Piece(String text, int operand) {}

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
    return pieces;
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
