package circuitverdict.property;

import java.util.List;
import java.util.Random;

/** Draws single values: plausible ones often, odd ones sometimes. */
final class Draw {
  private final Random random;

  Draw(Random random) {
    this.random = random;
  }

  /** True this often, of a hundred. */
  boolean percent(int often) {
    return random.nextInt(100) < often;
  }

  /** One of these. */
  @SafeVarargs
  final <T> T of(T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** One of these. */
  <T> T of(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  /** A number between two bounds, as likely in each decade, to four digits. */
  double between(double from, double to) {
    double value = from * Math.pow(to / from, random.nextDouble());
    double digits = Math.pow(10, 3 - Math.floor(Math.log10(value)));
    return Math.min(to, Math.max(from, Math.rint(value * digits) / digits));
  }

  /** A whole number between two bounds, both included. */
  int whole(int from, int to) {
    return from + random.nextInt(to - from + 1);
  }
}
