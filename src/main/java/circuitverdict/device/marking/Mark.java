package circuitverdict.device.marking;

import circuitverdict.explain.Pointer;
import circuitverdict.standard.Citation;
import java.util.List;

/**
 * One mark on the face of a device.
 *
 * @param at where the caller states it
 * @param text the mark as it was stated
 * @param kind its kind, a code of {@link circuitverdict.standard.Marks}
 * @param meaning what it means for the job
 * @param clauses where that is held
 */
public record Mark(Pointer at, String text, String kind, String meaning, List<Citation> clauses) {
  /** Whether it can mean two things. */
  public boolean ambiguous() {
    return kind.equals(Found.AMBIGUOUS);
  }

  /** Whether nothing could be read from it. */
  public boolean unread() {
    return kind.equals(Found.REFERENCE) || kind.equals(Found.NOT_READ);
  }
}
