package circuitverdict.standard;

import java.util.List;
import java.util.Objects;

/**
 * Where a value or a rule stands.
 *
 * @param standard the standard with its edition, for instance {@code BS 7671:2018+A2:2022}
 * @param reference clause or table
 * @param confidence how well the value is known; null for a rule
 * @param seen codes of the places where a printed value was seen
 * @param carriedOverFrom the edition whose value stands here unread in this edition's own print;
 *     null where it is the edition's own
 */
public record Citation(
    String standard,
    String reference,
    Confidence confidence,
    List<String> seen,
    String carriedOverFrom)
    implements Source {

  /** A citation of a rule. */
  public static Citation rule(String standard, String reference) {
    return new Citation(standard, reference, null, List.of(), null);
  }

  /** By what tells citations apart most; texts keep their own hash once it is found. */
  @Override
  public int hashCode() {
    return 31 * standard.hashCode() + reference.hashCode();
  }

  /** What tells citations apart most comes first. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Citation that
            && reference.equals(that.reference)
            && standard.equals(that.standard)
            && confidence == that.confidence
            && seen.equals(that.seen)
            && Objects.equals(carriedOverFrom, that.carriedOverFrom);
  }

  Citation carriedOver(String from) {
    return new Citation(standard, reference, confidence, seen, from);
  }
}
