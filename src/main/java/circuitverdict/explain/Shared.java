package circuitverdict.explain;

import java.util.ArrayList;
import java.util.List;

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
    TEMPERATURE_FACTOR,
    HEAT_LIMIT_LINE,
    HEAT_LIMIT_NEUTRAL,
    HEAT_LIMIT_PROTECTIVE
  }

  record Memo(Topic topic, Object about, Object value, Dossier dossier) {}

  private final List<Memo> memos = new ArrayList<>(12);

  Memo find(Topic topic, Object about) {
    for (int i = 0; i < memos.size(); i++) {
      Memo memo = memos.get(i);
      if (memo.topic == topic && memo.about == about) {
        return memo;
      }
    }
    return null;
  }

  /** A fresh start that knows already what was evaluated about this, which nothing else touches. */
  public Shared knowing(Object about) {
    Shared next = new Shared();
    for (int i = 0; i < memos.size(); i++) {
      if (memos.get(i).about == about) {
        next.keep(memos.get(i));
      }
    }
    return next;
  }

  void keep(Memo memo) {
    memos.add(memo);
  }
}
