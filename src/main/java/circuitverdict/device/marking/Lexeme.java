package circuitverdict.device.marking;

/**
 * The smallest part of a string on a face: a figure, a word of letters, or a sign.
 *
 * @param sort which of them
 * @param text as written, in lower case and plain typography
 * @param values what a figure can be: one value, or two where a comma or point may part thousands
 *     or decimals; none where it is no number
 * @param from where it begins in the string
 * @param to where it ends in the string
 * @param spaced whether a space stands before it
 */
record Lexeme(Sort sort, String text, double[] values, int from, int to, boolean spaced) {
  enum Sort {
    FIGURE,
    WORD,
    SIGN
  }

  boolean figure() {
    return sort == Sort.FIGURE && values.length > 0;
  }

  boolean word() {
    return sort == Sort.WORD;
  }

  boolean is(String wanted) {
    return text.equals(wanted);
  }
}
