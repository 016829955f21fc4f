package circuitverdict.explain;

import java.util.List;

/**
 * Something the reader must know beside the figures: a missing input, an assumption, a remark, a
 * caution.
 *
 * @param code what it is; its text stands in the catalogue
 * @param pointer the member of the request it is about, or null
 * @param figures figures that belong to it
 */
public record Note(NoteCode code, Pointer pointer, List<Figure> figures) {

  /** A note about nothing in particular. */
  public static Note of(NoteCode code, Figure... figures) {
    return new Note(code, null, List.of(figures));
  }
}
