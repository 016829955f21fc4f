package circuitverdict.device.marking;

import java.util.List;

/**
 * A mark found in a string.
 *
 * @param kind its kind
 * @param variant its value, where its kind has several; null else
 * @param end the lexeme after it
 * @param claims what it says
 * @param bare whether it is a figure alone, or with its unit alone
 */
record Found(String kind, String variant, int end, List<Claim> claims, boolean bare) {
  Found(String kind, String variant, int end, List<Claim> claims) {
    this(kind, variant, end, claims, false);
  }

  /** Kind of a mark that can mean more than one thing. */
  static final String AMBIGUOUS = "ambiguous";

  /** Kind of text that no rule knows. */
  static final String NOT_READ = "not-read";

  /** Kind of text formed like a reference code. */
  static final String REFERENCE = "reference";

  static Found of(String kind, String variant, int end, Claim... claims) {
    return new Found(kind, variant, end, List.of(claims));
  }

  static Found bare(String kind, String variant, int end, Claim claim) {
    return new Found(kind, variant, end, List.of(claim), true);
  }

  static Found ambiguous(int end) {
    return of(AMBIGUOUS, null, end);
  }
}
