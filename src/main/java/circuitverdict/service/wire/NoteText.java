package circuitverdict.service.wire;

import circuitverdict.check.Labels;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;

/** A note in words. */
final class NoteText {
  private NoteText() {}

  static String of(Note note) {
    if (note.pointer() == null) {
      return note.code().text();
    }
    if (note.code() == NoteCode.MISSING_INPUT) {
      return "Needed: " + Labels.of(note.pointer()) + ".";
    }
    if (note.code() == NoteCode.NOT_IN_TABLES) {
      return "For " + Labels.of(note.pointer()) + ": " + lower(note.code().text());
    }
    return note.code().text();
  }

  private static String lower(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }
}
