package circuitverdict.device.marking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Parts one string into marks. A run of text without spaces is read whole or not at all, so that no
 * mark is found inside a reference code; a separator such as a stroke ends a run after a mark. The
 * time grows with the length of the string alone.
 */
final class MarkParser {
  /** Marks that one run of text can hold. */
  private static final int MOST_IN_A_RUN = 8;

  private static final List<Recogniser> RECOGNISERS =
      List.of(
          new ClassMark(),
          new StandardMark(),
          new VoltageMark(),
          new LabelledMark(),
          new FuseMark(),
          new WordMark.Phrase(),
          new TypeMark(),
          new FigureMark(),
          new WordMark(),
          new BareNumberMark());

  private final Line line;
  private final List<Part> parts = new ArrayList<>();
  private String opaque;
  private int opaqueFrom;
  private int opaqueEnd;

  /** A mark and the text it was read from. */
  record Part(String text, Found found) {}

  private MarkParser(Line line) {
    this.line = line;
  }

  static List<Part> parts(Line line) {
    MarkParser parser = new MarkParser(line);
    int at = line.after(0);
    while (!line.ends(at)) {
      at = line.after(parser.run(at));
    }
    parser.close();
    parser.doubtWhatWordsQualify();
    return parser.parts;
  }

  /** "max fuse 63 A", "fuse 80 A": a word before a figure in its string may say whose it is. */
  private void doubtWhatWordsQualify() {
    List<String> others = line.marks().vocabulary().others();
    boolean qualified = false;
    for (int i = 0; i < parts.size(); i++) {
      if (qualified && parts.get(i).found().bare()) {
        doubt(i);
      }
      Part part = parts.get(i);
      qualified |=
          part.found().kind().equals(Found.NOT_READ)
              || others.contains(part.text().toLowerCase(Locale.ROOT));
    }
  }

  private int run(int from) {
    List<Part> run = new ArrayList<>();
    int at = from;
    for (int i = 0; i < MOST_IN_A_RUN; i++) {
      Found found = i > 0 && loneLetter(at) ? null : recognise(at);
      if (found == null) {
        break;
      }
      run.add(new Part(line.text(at, found.end()), found));
      at = found.end();
      if (line.boundary(at)) {
        boolean beside = opaque != null && opaqueEnd == from;
        close();
        parts.addAll(run);
        doubtBareNumbers(run.size(), beside, at);
        return at;
      }
    }
    return opaque(from);
  }

  /**
   * "2 Nm", "series 3", "max fuse 63 A": a figure alone beside text that no rule knows can be
   * anything.
   */
  private void doubtBareNumbers(int count, boolean afterOpaque, int next) {
    boolean beforeOpaque = line.at(next).word() && recognise(next) == null;
    int first = parts.size() - count;
    if (afterOpaque && parts.get(first).found().bare()) {
      doubt(first);
    }
    if (beforeOpaque && parts.get(parts.size() - 1).found().bare()) {
      doubt(parts.size() - 1);
    }
  }

  private void doubt(int index) {
    Part part = parts.get(index);
    parts.set(index, new Part(part.text(), Found.ambiguous(part.found().end())));
  }

  /** "C16N" is no C16 with a neutral terminal. */
  private boolean loneLetter(int at) {
    boolean letter = line.at(at).word() && line.at(at).text().length() == 1;
    return letter && (line.ends(at + 1) || line.at(at + 1).spaced());
  }

  private Found recognise(int at) {
    for (Recogniser recogniser : RECOGNISERS) {
      Found found = recogniser.at(line, at);
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** The run as it stands; runs of one kind after one another are one text. */
  private int opaque(int from) {
    int end = from + 1;
    while (!line.ends(end) && !line.at(end).spaced()) {
      end++;
    }
    // What only parts it from the next belongs to neither.
    while (end > from + 1 && line.separates(end - 1)) {
      end--;
    }
    boolean letters = false;
    boolean figures = false;
    for (int i = from; i < end; i++) {
      letters |= line.at(i).word();
      figures |= line.at(i).sort() == Lexeme.Sort.FIGURE;
    }
    String kind = letters && figures ? Found.REFERENCE : Found.NOT_READ;
    if (!kind.equals(opaque)) {
      close();
      opaque = kind;
      opaqueFrom = from;
    }
    opaqueEnd = end;
    return end;
  }

  /** Ends the text of which nothing was read. */
  private void close() {
    if (opaque != null) {
      Found found = Found.of(opaque, null, opaqueEnd);
      parts.add(new Part(line.text(opaqueFrom, opaqueEnd), found));
      opaque = null;
    }
  }
}
