package circuitverdict.standard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The marks that protective devices bear on their faces by their product standards: the kinds with
 * what they mean for the job, and the words, labels and symbols by which they are written. The same
 * for all editions of the wiring rules; read once, at start.
 */
public final class Marks {
  private final Map<String, Kind> kinds;
  private final Vocabulary vocabulary;
  private final Map<String, Word> symbols;
  private final Map<String, List<String>> needs;
  private final Map<String, List<Double>> ranges;

  Marks(
      Map<String, Kind> kinds,
      Vocabulary vocabulary,
      Map<String, Word> symbols,
      Map<String, List<String>> needs,
      Map<String, List<Double>> ranges) {
    this.ranges = ranges;
    this.kinds = kinds;
    this.vocabulary = vocabulary;
    this.symbols = symbols;
    this.needs = needs;
  }

  /**
   * A kind of mark.
   *
   * @param meaning what such a mark means for the job
   * @param variants what single values of it mean besides, by value; may be absent
   * @param clauses where the product standards hold it
   * @param rules names of the rules of an edition that it bears on; may be absent
   * @param notOn product standards on whose devices such a mark cannot be; may be absent
   * @param withdrawn the values whose standard is withdrawn, or {@code any}; may be absent
   */
  public record Kind(
      String meaning,
      Map<String, String> variants,
      List<KindClause> clauses,
      List<String> rules,
      List<String> notOn,
      List<String> withdrawn) {
    /** What is not stated is empty. */
    public Kind {
      variants = variants == null ? Map.of() : Map.copyOf(variants);
      clauses = clauses == null ? List.of() : List.copyOf(clauses);
      rules = rules == null ? List.of() : List.copyOf(rules);
      notOn = notOn == null ? List.of() : List.copyOf(notOn);
      withdrawn = withdrawn == null ? List.of() : List.copyOf(withdrawn);
    }

    /** What a mark of this kind and value means. */
    public String meaningOf(String variant) {
      String more = variant == null ? null : variants.get(variant);
      return more == null ? meaning : meaning + " " + more;
    }

    /** Whether the standard of such a mark is withdrawn. */
    public boolean isWithdrawn(String variant) {
      return withdrawn.contains("any") || variant != null && withdrawn.contains(variant);
    }

    /** Where it is held: by the standard of the device, and by rules of an edition. */
    public List<Citation> citations(String standard, Edition edition) {
      List<Citation> citations = new ArrayList<>();
      boolean own = clauses.stream().anyMatch(each -> each.holdsOf(standard));
      for (KindClause clause : clauses) {
        if (own ? clause.holdsOf(standard) : clauses.indexOf(clause) == 0) {
          citations.add(clause.citation());
        }
      }
      for (String rule : rules) {
        String reference = edition.head().clauses().get(rule);
        if (reference != null) {
          citations.add(Citation.rule(edition.head().standard(), reference));
        }
      }
      return citations;
    }
  }

  /**
   * Where a product standard holds a kind of mark.
   *
   * @param of the devices' standards that it speaks for; absent for any
   * @param standard the standard that is cited
   * @param reference its clause
   * @param confidence how well that is known
   * @param seen where it was seen, if printed
   */
  public record KindClause(
      List<String> of, String standard, String reference, String confidence, List<String> seen) {
    boolean holdsOf(String device) {
      return of == null || of.contains(device);
    }

    Citation citation() {
      Confidence known = Confidence.ofWord(confidence);
      return new Citation(standard, reference, known, seen == null ? List.of() : seen, null);
    }
  }

  /**
   * A word or symbol that is a mark by itself.
   *
   * @param kind its kind
   * @param variant its value, where its kind has several; may be absent
   * @param member the member of a device that it tells of; may be absent
   * @param value what it tells of it
   * @param meaning of a symbol, how it looks; absent for words
   */
  public record Word(String kind, String variant, String member, Object value, String meaning) {}

  /**
   * A label before a figure.
   *
   * @param kind kind of mark that it begins
   * @param member the member of a device that the figure is; may be absent
   * @param unit what the figure is measured in: A, V or s
   */
  public record Label(String kind, String member, String unit) {}

  /**
   * A standard as it is written.
   *
   * @param number its number
   * @param part its part, or parts joined by hyphens; absent where it is written without one
   * @param standard the contract's word
   */
  public record StandardMark(String number, String part, String standard) {}

  /**
   * The words by which marks are written, all in lower case.
   *
   * @param bodies the bodies whose letters stand before a standard's number
   * @param standards numbers of standards
   * @param labels labels of figures
   * @param words words that are marks by themselves, with their words parted by single spaces
   * @param classes words before the figure of an energy limiting class
   * @param types words before the letter or figure of a type
   * @param frames words for the frame around a figure
   * @param others words for a device that stands before many another, whose figures those after are
   * @param voltagePairs voltages line to neutral and between lines that belong together, V
   * @param letters letters of breakers, each with the kind of its marks
   */
  public record Vocabulary(
      List<String> bodies,
      List<StandardMark> standards,
      Map<String, Label> labels,
      Map<String, Word> words,
      List<String> classes,
      List<String> types,
      List<String> frames,
      List<String> others,
      List<List<Double>> voltagePairs,
      Map<String, String> letters) {}

  /** A kind by its code. */
  public Kind kind(String code) {
    Kind kind = kinds.get(code);
    if (kind == null) {
      throw new IllegalArgumentException("no kind of mark " + code);
    }
    return kind;
  }

  /** All kinds by code. */
  public Map<String, Kind> kinds() {
    return kinds;
  }

  /** The words by which marks are written. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** Symbols by the trade's word for each. */
  public Map<String, Word> symbols() {
    return symbols;
  }

  /**
   * The members that checks need of a device to a standard, in order; of one whose standard is not
   * known those that every device has. Alternatives are joined by a bar.
   */
  public List<String> needs(String standard) {
    return needs.getOrDefault(standard == null ? "any" : standard, needs.get("any"));
  }

  /** Whether a figure read off a face can be that member of a device. */
  public boolean canBe(String member, double value) {
    List<Double> range = ranges.get(member);
    return range == null || value >= range.get(0) && value <= range.get(1);
  }

  static <V> Map<String, V> ordered(Map<String, V> map) {
    return java.util.Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
