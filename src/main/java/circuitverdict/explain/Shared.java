package circuitverdict.explain;

/**
 * What the checks of one run have in common, evaluated once: each with the steps and notes that
 * came with it, so that every check that uses it tells them as its own.
 */
public final class Shared {
  /** What can be shared. */
  public enum Topic {
    DESIGN_CURRENT,
    RATING,
    COORDINATION,
    SUPPLY_EARTH_CURRENT,
    SUPPLY_NEUTRAL_CURRENT,
    GREATEST_OF_ANY_KIND,
    EARTH_LOOP,
    LEAST_EARTH_CURRENT,
    NEUTRAL_LOOP,
    LEAST_NEUTRAL_CURRENT,
    LEAST_CURRENT_BETWEEN_LINES,
    TRIP_BAND,
    ENERGY_BOUNDS,
    DISCONNECTION_TIME,
    LOOP_LIMIT,
    TEMPERATURE_FACTOR,
    HEAT_LIMIT_LINE,
    HEAT_LIMIT_NEUTRAL,
    HEAT_LIMIT_PROTECTIVE
  }

  private static final int TOPICS = Topic.values().length;

  /** What was found about something, and what was found on the same topic before. */
  record Memo(Object about, Object value, Dossier dossier, Memo before) {}

  private final Memo[] last = new Memo[TOPICS];

  Memo find(Topic topic, Object about) {
    Memo memo = last[topic.ordinal()];
    while (memo != null && memo.about != about) {
      memo = memo.before;
    }
    return memo;
  }

  /** A fresh start that knows already what was evaluated about this, which nothing else touches. */
  public Shared knowing(Object about) {
    Shared next = new Shared();
    for (Topic topic : Topic.values()) {
      Memo memo = find(topic, about);
      if (memo != null) {
        next.keep(topic, about, memo.value, memo.dossier);
      }
    }
    return next;
  }

  Memo keep(Topic topic, Object about, Object value, Dossier dossier) {
    Memo memo = new Memo(about, value, dossier, last[topic.ordinal()]);
    last[topic.ordinal()] = memo;
    return memo;
  }
}
