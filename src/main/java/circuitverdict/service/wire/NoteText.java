package circuitverdict.service.wire;

import circuitverdict.check.Labels;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;

/** A note in words. */
final class NoteText {
  private NoteText() {}

  /** Whether the code alone says it, whatever it is about. */
  static boolean isOfCode(Note note) {
    return note.pointer() == null
        || note.code() != NoteCode.MISSING_INPUT && note.code() != NoteCode.NOT_IN_TABLES;
  }

  static String of(Note note) {
    if (isOfCode(note)) {
      return note.code().text();
    }
    if (note.code() == NoteCode.MISSING_INPUT) {
      return "Needed: " + Labels.of(note.pointer()) + ".";
    }
    return "For " + Labels.of(note.pointer()) + ": " + lower(note.code().text());
  }

  private static String lower(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }
}
