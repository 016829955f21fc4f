package circuitverdict.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;

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
    return chain('+', '−', this::product);
  }

  private Node product() {
    return chain('·', '/', this::power);
  }

  private Node chain(char one, char other, Supplier<Node> term) {
    Chain chain = new Chain();
    chain.add(one, term.get());
    while (peek() == one || peek() == other) {
      char sign = text.charAt(at);
      at++;
      chain.add(sign, term.get());
    }
    return chain.nodes.length == 1 ? chain.nodes[0] : chain;
  }

  /** One operand. */
  private record Operand(int index) implements Node {
    @Override
    public double value(Figure[] operands) {
      return operands[index].value();
    }
  }

  /** Terms joined by signs of one rank, from left to right; operands are read in place. */
  private static final class Chain implements Node {
    private Node[] nodes = {};
    private int[] operand = {};
    private char[] signs = {};

    void add(char sign, Node node) {
      int size = nodes.length;
      nodes = Arrays.copyOf(nodes, size + 1);
      operand = Arrays.copyOf(operand, size + 1);
      signs = Arrays.copyOf(signs, size + 1);
      nodes[size] = node;
      operand[size] = node instanceof Operand leaf ? leaf.index() : -1;
      signs[size] = sign;
    }

    @Override
    public double value(Figure[] operands) {
      double value = term(0, operands);
      for (int i = 1; i < nodes.length; i++) {
        double next = term(i, operands);
        switch (signs[i]) {
          case '+' -> value += next;
          case '−' -> value -= next;
          case '·' -> value *= next;
          default -> value /= next;
        }
      }
      return value;
    }

    private double term(int at, Figure[] operands) {
      int index = operand[at];
      return index >= 0 ? operands[index].value() : nodes[at].value(operands);
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
    return new Operand(index);
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
