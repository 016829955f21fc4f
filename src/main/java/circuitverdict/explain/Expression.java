package circuitverdict.explain;

import java.util.ArrayList;
import java.util.List;

/**
 * A formula's right-hand side, read once and evaluated many times. Signs: {@code + − · / ² √( )},
 * and {@code min(a; b)}, {@code max(a; b)}. Numbers in a formula are mathematics or conversion of
 * units, never constants of the trade.
 */
final class Expression {
  /** A node of the expression. */
  interface Node {
    double value(Figure[] operands);
  }

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
    Node left = product();
    while (true) {
      char sign = peek();
      if (sign != '+' && sign != '−') {
        return left;
      }
      at++;
      Node first = left;
      Node second = product();
      left =
          sign == '+'
              ? v -> first.value(v) + second.value(v)
              : v -> first.value(v) - second.value(v);
    }
  }

  private Node product() {
    Node left = power();
    while (true) {
      char sign = peek();
      if (sign != '·' && sign != '/') {
        return left;
      }
      at++;
      Node first = left;
      Node second = power();
      left =
          sign == '·'
              ? v -> first.value(v) * second.value(v)
              : v -> first.value(v) / second.value(v);
    }
  }

  private Node power() {
    Node base = atom();
    if (peek() != '²') {
      return base;
    }
    at++;
    return v -> {
      double x = base.value(v);
      return x * x;
    };
  }

  private Node atom() {
    char c = peek();
    if (c == '(') {
      return bracketed();
    }
    if (c == '√') {
      at++;
      Node inner = peek() == '(' ? bracketed() : atom();
      return v -> Math.sqrt(inner.value(v));
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
    double number = Double.parseDouble(text.substring(from, at));
    return v -> number;
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
    if ((name.equals("min") || name.equals("max")) && peek() == '(') {
      return extreme(name.equals("min"));
    }
    int index = names.indexOf(name);
    if (index < 0) {
      index = names.size();
      names.add(name);
    }
    int operand = index;
    return v -> v[operand].value();
  }

  private Node extreme(boolean least) {
    expect('(');
    Node first = sum();
    expect(';');
    Node second = sum();
    expect(')');
    return least
        ? v -> Math.min(first.value(v), second.value(v))
        : v -> Math.max(first.value(v), second.value(v));
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
