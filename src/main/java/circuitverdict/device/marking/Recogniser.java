package circuitverdict.device.marking;

/** Knows one way in which marks are written. */
interface Recogniser {
  /** The mark that begins at this lexeme; null where none of its kind does. */
  Found at(Line line, int from);
}
