package circuitverdict.service.wire;

import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.quantity.Shown;
import java.util.List;

/** Notes as the contract writes them, in full or without their texts. */
final class NoteJson {
  private NoteJson() {}

  /** The notes as an array. */
  static void array(Out out, List<Note> notes, boolean full) {
    out.put('[');
    for (int i = 0; i < notes.size(); i++) {
      if (i > 0) {
        out.put(',');
      }
      write(out, notes.get(i), full);
    }
    out.put(']');
  }

  private static void write(Out out, Note note, boolean full) {
    out.put(Stretches.note(note, full));
    if (note.pointer() != null) {
      out.put(Stretches.andPointer(note.pointer()));
    }
    List<Figure> figures = note.figures();
    if (!figures.isEmpty()) {
      out.put(Stretches.VALUES);
      for (int i = 0; i < figures.size(); i++) {
        if (i > 0) {
          out.put(',');
        }
        figure(out, figures.get(i), full);
      }
      out.put(']');
      StepJson.sources(out, figures);
    }
    out.put('}');
  }

  private static void figure(Out out, Figure figure, boolean full) {
    out.put(Stretches.figure(figure.symbol()));
    if (!Double.isInfinite(figure.value()) && figure.known()) {
      out.put(Stretches.VALUE).number(figure.value());
      if (full) {
        out.put(Stretches.SHOWN).plain(Shown.plain(figure.value())).put('"');
      }
    }
    out.put(Stretches.unit(figure.unit())).put('}');
  }
}
