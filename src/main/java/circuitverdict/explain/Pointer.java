package circuitverdict.explain;

import circuitverdict.standard.Source;

/**
 * A member of the request.
 *
 * @param parent JSON pointer of the object, {@code ""} for the request itself
 * @param member the member's name
 */
public record Pointer(String parent, String member) implements Source {

  /** The whole JSON pointer. */
  public String text() {
    return member.isEmpty() ? parent : parent + "/" + member;
  }
}
