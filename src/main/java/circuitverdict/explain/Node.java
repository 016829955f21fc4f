package circuitverdict.explain;

/**
 * A part of a formula that has a value. Records throughout, and chains of two or three terms rather
 * than lists: the components of a constant formula are then constants to the compiler, which makes
 * straight code of it.
 */
sealed interface Node {
  /** Its value for operands in the order of the formula. */
  double value(Figure[] operands);

  /** One operand. */
  record Operand(int index) implements Node {
    @Override
    public double value(Figure[] operands) {
      return operands[index].value();
    }
  }

  /** A number of mathematics. */
  record Number(double number) implements Node {
    @Override
    public double value(Figure[] operands) {
      return number;
    }
  }

  /** A square. */
  record Square(Node base) implements Node {
    @Override
    public double value(Figure[] operands) {
      double x = base.value(operands);
      return x * x;
    }
  }

  /** A square root. */
  record Root(Node radicand) implements Node {
    @Override
    public double value(Figure[] operands) {
      return Math.sqrt(radicand.value(operands));
    }
  }

  /** A power of e. */
  record Exponential(Node exponent) implements Node {
    @Override
    public double value(Figure[] operands) {
      return StrictMath.exp(exponent.value(operands));
    }
  }

  /** The lesser of two. */
  record Least(Node one, Node other) implements Node {
    @Override
    public double value(Figure[] operands) {
      return Math.min(one.value(operands), other.value(operands));
    }
  }

  /** The greater of two. */
  record Greatest(Node one, Node other) implements Node {
    @Override
    public double value(Figure[] operands) {
      return Math.max(one.value(operands), other.value(operands));
    }
  }

  /** A sum or a difference. */
  record Sum(Node first, boolean minus, Node second) implements Node {
    @Override
    public double value(Figure[] operands) {
      return added(first.value(operands), minus, second.value(operands));
    }

    static double added(double first, boolean minus, double second) {
      return minus ? first - second : first + second;
    }
  }

  /** Two sums or differences, from left to right. */
  record LongSum(Node first, boolean minus, Node second, boolean thenMinus, Node third)
      implements Node {
    @Override
    public double value(Figure[] operands) {
      double sum = Sum.added(first.value(operands), minus, second.value(operands));
      return Sum.added(sum, thenMinus, third.value(operands));
    }
  }

  /** A product or a quotient. */
  record Product(Node first, boolean over, Node second) implements Node {
    @Override
    public double value(Figure[] operands) {
      return multiplied(first.value(operands), over, second.value(operands));
    }

    static double multiplied(double first, boolean over, double second) {
      return over ? first / second : first * second;
    }
  }

  /** Two products or quotients, from left to right. */
  record LongProduct(Node first, boolean over, Node second, boolean thenOver, Node third)
      implements Node {
    @Override
    public double value(Figure[] operands) {
      double product = Product.multiplied(first.value(operands), over, second.value(operands));
      return Product.multiplied(product, thenOver, third.value(operands));
    }
  }
}
