package circuitverdict.device.marking;

import circuitverdict.explain.Pointer;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Marks;
import circuitverdict.standard.Marks.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the face of a device: strings as they are printed on it, in any order and usual spelling,
 * and symbols in the trade's words (IEC 60898-1 clause 6 and its kin). Immutable.
 */
public final class MarkingReader {
  private final Marks marks;
  private final Edition edition;

  /** Reads by the marks and the series of rated values of an edition. */
  public MarkingReader(Edition edition) {
    this.marks = edition.marks();
    this.edition = edition;
  }

  /**
   * What strings and symbols tell.
   *
   * @param markings the strings
   * @param symbols words of {@link Marks#symbols()}; others are not known
   * @param stated the standard that the caller states, which goes before the one marked; or null
   * @param place where markings and symbols stand in the request, a JSON pointer
   */
  public Reading read(List<String> markings, List<String> symbols, String stated, String place) {
    List<MarkParser.Part> parts = new ArrayList<>();
    List<Pointer> places = new ArrayList<>();
    for (int i = 0; i < markings.size(); i++) {
      Line line = new Line(markings.get(i), marks, edition);
      for (MarkParser.Part part : MarkParser.parts(line)) {
        parts.add(part);
        places.add(new Pointer(place + "/markings", String.valueOf(i)));
      }
    }
    for (int i = 0; i < symbols.size(); i++) {
      Word word = marks.symbols().get(symbols.get(i));
      if (word == null) {
        throw new IllegalArgumentException("no symbol " + symbols.get(i));
      }
      parts.add(new MarkParser.Part(symbols.get(i), WordMark.of(word, 0)));
      places.add(new Pointer(place + "/symbols", String.valueOf(i)));
    }
    Face face = new Face(marks, edition, new MarkedStandard(parts, stated));
    for (int i = 0; i < parts.size(); i++) {
      face.take(parts.get(i), places.get(i));
    }
    return face.reading();
  }
}
