package circuitverdict.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A formula's right-hand side, read once and evaluated many times. Signs: {@code + − · / ² √( )},
 * {@code min(a; b)}, {@code max(a; b)}, and {@code exp( )}. Numbers in a formula are mathematics or
 * conversion of units, never constants of the trade.
 */
final class Expression {
  private final String text;
  private final List<String> names = new ArrayList<>();
  private int at;

  private Expression(String text) {
    this.text = text;
  }

  /** The compiled expression, with the names of its operands in the order of first appearance. */
  record Compiled(Node root, List<String> names) {}

  static Compiled compile(String text) {
    Expression expression = new Expression(text);
    Node root = expression.sum();
    if (expression.peek() != 0) {
      throw new IllegalArgumentException(
          "unread rest of formula: " + text.substring(expression.at));
    }
    return new Compiled(root, List.copyOf(expression.names));
  }

  private Node sum() {
    return chain('+', '−', this::product, Node.Sum::new, Node.LongSum::new);
  }

  private Node product() {
    return chain('·', '/', this::power, Node.Product::new, Node.LongProduct::new);
  }

  /** Joins two terms. */
  private interface Pair {
    Node of(Node first, boolean inverse, Node second);
  }

  /** Joins three terms. */
  private interface Triple {
    Node of(Node first, boolean inverse, Node second, boolean thenInverse, Node third);
  }

  /** Terms joined from left to right by signs of one rank, of which one is the other's inverse. */
  private Node chain(char sign, char inverse, Supplier<Node> term, Pair pair, Triple triple) {
    Node chain = term.get();
    while (peek() == sign || peek() == inverse) {
      boolean inverted = signed(inverse);
      Node second = term.get();
      if (peek() == sign || peek() == inverse) {
        boolean thenInverted = signed(inverse);
        chain = triple.of(chain, inverted, second, thenInverted, term.get());
      } else {
        chain = pair.of(chain, inverted, second);
      }
    }
    return chain;
  }

  /** Reads a sign: whether it is this one. */
  private boolean signed(char inverse) {
    boolean inverted = peek() == inverse;
    at++;
    return inverted;
  }

  private Node power() {
    Node base = atom();
    if (peek() != '²') {
      return base;
    }
    at++;
    return new Node.Square(base);
  }

  private Node atom() {
    char c = peek();
    if (c == '(') {
      return bracketed();
    }
    if (c == '√') {
      at++;
      Node inner = peek() == '(' ? bracketed() : atom();
      return new Node.Root(inner);
    }
    if (Character.isDigit(c)) {
      return number();
    }
    return named();
  }

  private Node bracketed() {
    expect('(');
    Node inner = sum();
    expect(')');
    return inner;
  }

  private Node number() {
    int from = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    return new Node.Number(Double.parseDouble(text.substring(from, at)));
  }

  private Node named() {
    int from = at;
    while (at < text.length() && partOfName()) {
      at++;
    }
    String name = text.substring(from, at);
    if (name.isEmpty()) {
      throw new IllegalArgumentException("a name is wanted at " + at + " of " + text);
    }
    if (name.equals("exp") && peek() == '(') {
      return new Node.Exponential(bracketed());
    }
    if ((name.equals("min") || name.equals("max")) && peek() == '(') {
      return extreme(name.equals("min"));
    }
    int index = names.indexOf(name);
    if (index < 0) {
      index = names.size();
      names.add(name);
    }
    return new Node.Operand(index);
  }

  private Node extreme(boolean least) {
    expect('(');
    Node first = sum();
    expect(';');
    Node second = sum();
    expect(')');
    return least ? new Node.Least(first, second) : new Node.Greatest(first, second);
  }

  private boolean partOfName() {
    char c = text.charAt(at);
    boolean comma =
        c == ',' && at + 1 < text.length() && Character.isLetterOrDigit(text.charAt(at + 1));
    return Character.isLetterOrDigit(c) || comma || c == '_';
  }

  private void expect(char sign) {
    if (peek() != sign) {
      throw new IllegalArgumentException("'" + sign + "' is wanted at " + at + " of " + text);
    }
    at++;
  }

  /** The next sign, or 0 at the end. */
  private char peek() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at < text.length() ? text.charAt(at) : 0;
  }
}
