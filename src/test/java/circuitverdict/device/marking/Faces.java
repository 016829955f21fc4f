package circuitverdict.device.marking;

import circuitverdict.explain.Note;
import circuitverdict.support.Scenario;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Faces of devices for tests. */
final class Faces {
  private static final MarkingReader READER = new MarkingReader(Scenario.editions().inForce());

  private Faces() {}

  /** What these strings tell. */
  static Reading read(String... markings) {
    return READER.read(Arrays.asList(markings), List.of(), null, "");
  }

  /** What these strings and symbols tell. */
  static Reading read(List<String> markings, List<String> symbols) {
    return READER.read(markings, symbols, null, "");
  }

  /** What these strings tell of a device whose standard is stated. */
  static Reading stated(String standard, String... markings) {
    return READER.read(Arrays.asList(markings), List.of(), standard, "");
  }

  /** The members that are told, by their paths; numbers as they are shortest. */
  static Map<String, String> told(Reading reading) {
    Map<String, String> told = new TreeMap<>();
    reading.device().forEach((member, value) -> told.put(member.path(), plain(value)));
    return told;
  }

  static String plain(Object value) {
    String text = String.valueOf(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** The codes of notes. */
  static Set<String> codes(List<Note> notes) {
    return notes.stream().map(note -> note.code().code()).collect(Collectors.toSet());
  }

  /** The places of notes of this code. */
  static List<String> places(List<Note> notes, String code) {
    return notes.stream()
        .filter(note -> note.code().code().equals(code))
        .map(note -> note.pointer().text())
        .toList();
  }

  /** The only mark of a string, or symbol. */
  static Mark only(Reading reading) {
    if (reading.marks().size() != 1) {
      throw new AssertionError(reading.marks());
    }
    return reading.marks().get(0);
  }
}
