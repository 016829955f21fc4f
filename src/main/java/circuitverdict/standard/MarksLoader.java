package circuitverdict.standard;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the marks of devices from the class path, strictly. */
final class MarksLoader {
  private static final String ROOT = "/marks/";

  private MarksLoader() {}

  private static final class Kinds extends LinkedHashMap<String, Marks.Kind> {}

  private static final class Symbols extends LinkedHashMap<String, Marks.Word> {}

  private static final class Needs extends LinkedHashMap<String, List<String>> {}

  private static final class Ranges extends LinkedHashMap<String, List<Double>> {}

  private static final class Sources extends LinkedHashMap<String, String> {}

  /**
   * All marks.
   *
   * @throws IllegalStateException where the data are incomplete
   */
  static Marks load() {
    Kinds kinds = YamlData.read(ROOT, "kinds.yaml", Kinds.class);
    Marks.Vocabulary words = YamlData.read(ROOT, "vocabulary.yaml", Marks.Vocabulary.class);
    Symbols symbols = YamlData.read(ROOT, "symbols.yaml", Symbols.class);
    Needs needs = YamlData.read(ROOT, "needs.yaml", Needs.class);
    Ranges ranges = YamlData.read(ROOT, "ranges.yaml", Ranges.class);
    Set<String> sources = YamlData.read("/editions/", "sources.yaml", Sources.class).keySet();
    kinds.forEach((code, kind) -> check(code, kind, sources));
    words.labels().values().forEach(label -> require(kinds, label.kind()));
    words.words().values().forEach(word -> require(kinds, word.kind()));
    words.letters().values().forEach(kind -> require(kinds, kind));
    symbols.values().forEach(word -> require(kinds, word.kind()));
    return new Marks(
        Marks.ordered(kinds),
        words,
        Marks.ordered(symbols),
        Marks.ordered(needs),
        Marks.ordered(ranges));
  }

  private static void require(Map<String, Marks.Kind> kinds, String kind) {
    if (!kinds.containsKey(kind)) {
      throw new IllegalStateException("marks: no kind " + kind);
    }
  }

  private static void check(String code, Marks.Kind kind, Set<String> sources) {
    if (kind.meaning() == null) {
      throw new IllegalStateException("marks: no meaning of " + code);
    }
    for (Marks.KindClause clause : kind.clauses()) {
      if (clause.standard() == null || clause.reference() == null) {
        throw new IllegalStateException("marks: a clause without standard or reference: " + code);
      }
      boolean printed = Confidence.ofWord(clause.confidence()) == Confidence.PRINTED;
      boolean seen = clause.seen() != null && !clause.seen().isEmpty();
      if (printed != seen || seen && !sources.containsAll(clause.seen())) {
        throw new IllegalStateException("marks: a clause must say where it was seen: " + code);
      }
    }
  }
}
