package circuitverdict.check;

import java.util.ArrayList;
import java.util.List;

/** Lists of which most hold one or two, which need no room to grow. */
final class Few {
  private Few() {}

  /** A list with one more. */
  static <T> List<T> with(List<T> list, T more) {
    if (list.isEmpty()) {
      return List.of(more);
    }
    return list.size() == 1 ? List.of(list.get(0), more) : joined(list, List.of(more));
  }

  /** Two lists, one after the other. */
  static <T> List<T> joined(List<T> first, List<T> then) {
    List<T> all = new ArrayList<>(first.size() + then.size());
    all.addAll(first);
    all.addAll(then);
    return List.copyOf(all);
  }
}
