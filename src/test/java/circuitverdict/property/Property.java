package circuitverdict.property;

import static org.junit.jupiter.api.Assertions.fail;

import circuitverdict.service.wire.Contradictions;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Runs a property on many circuits drawn from a seed. The seed is fixed, so that the suite says the
 * same on every machine; {@code -Dproperty.seed=…} chooses another, and with the seed that a
 * failure prints its first try is the failing one. A counterexample is cut down to what it needs.
 */
final class Property {
  static final int TRIES = 10_000;
  private static final long SEED = Long.getLong("property.seed", 20_260_415L);
  private static final int EXAMPLES = Integer.getInteger("property.examples", 6);

  private Property() {}

  /** One try of a property. */
  interface Trial {
    /**
     * What contradicts the property, or null where it holds; the first line names the kind of
     * contradiction.
     */
    String refute(ObjectNode body, Random random);
  }

  /** Tries a property as often as the plan demands. */
  static void holds(String name, Function<Random, ObjectNode> circuits, Trial trial) {
    holds(name, TRIES, circuits, trial);
  }

  /** Tries a property this often. */
  static void holds(String name, int tries, Function<Random, ObjectNode> circuits, Trial trial) {
    Map<String, String> examples = new TreeMap<>();
    int refuted = 0;
    for (int i = 0; i < tries; i++) {
      long seed = SEED + i;
      ObjectNode body = circuits.apply(new Random(mixed(seed)));
      String found = trial.refute(body, new Random(mixed(~seed)));
      if (found != null) {
        refuted++;
        String kind = found.lines().findFirst().orElse("");
        if (examples.size() < EXAMPLES && !examples.containsKey(kind)) {
          examples.put(kind, describe(seed, body, trial));
        }
      }
    }
    if (refuted > 0) {
      fail(
          name
              + ": "
              + refuted
              + " of "
              + tries
              + " tries refute it\n"
              + String.join("\n", examples.values()));
    }
  }

  private static String describe(long seed, ObjectNode body, Trial trial) {
    ObjectNode small = cut(body, seed, trial);
    String found = trial.refute(small, new Random(mixed(~seed)));
    return "-Dproperty.seed=" + seed + "\n" + found + "\nin " + small;
  }

  /** The body without every member that the counterexample can do without. */
  private static ObjectNode cut(ObjectNode body, long seed, Trial trial) {
    ObjectNode small = body;
    String kind = kind(body, seed, trial);
    boolean smaller = true;
    while (smaller) {
      smaller = false;
      for (String pointer : Bodies.pointers(small)) {
        ObjectNode less = Bodies.without(small, pointer);
        if (Contradictions.of(less).isEmpty()
            && Supplies.agree(less)
            && kind.equals(kind(less, seed, trial))) {
          small = less;
          smaller = true;
          break;
        }
      }
    }
    return small;
  }

  private static String kind(ObjectNode body, long seed, Trial trial) {
    String found = trial.refute(body, new Random(mixed(~seed)));
    return found == null ? "" : found.lines().findFirst().orElse("");
  }

  /** Neighbouring seeds give neighbouring first numbers; this spreads them (splitmix64). */
  private static long mixed(long seed) {
    long z = seed * 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
