package circuitverdict.service.wire;

import com.fasterxml.jackson.core.io.SerializedString;

/** Names of the members that every finding and every step has, encoded once. */
final class Names {
  static final SerializedString ACTUAL = new SerializedString("actual");
  static final SerializedString CHECK = new SerializedString("check");
  static final SerializedString CODE = new SerializedString("code");
  static final SerializedString COMPARATOR = new SerializedString("comparator");
  static final SerializedString FORMULA = new SerializedString("formula");
  static final SerializedString LIMIT = new SerializedString("limit");
  static final SerializedString MARGIN = new SerializedString("marginPercent");
  static final SerializedString POINTER = new SerializedString("pointer");
  static final SerializedString REASON = new SerializedString("reason");
  static final SerializedString REFERENCE = new SerializedString("reference");
  static final SerializedString SHOWN = new SerializedString("shown");
  static final SerializedString SOURCES = new SerializedString("sources");
  static final SerializedString SUBJECT = new SerializedString("subject");
  static final SerializedString SUBSTITUTION = new SerializedString("substitution");
  static final SerializedString SUMMARY = new SerializedString("summary");
  static final SerializedString SYMBOL = new SerializedString("symbol");
  static final SerializedString TEXT = new SerializedString("text");
  static final SerializedString UNIT = new SerializedString("unit");
  static final SerializedString VALUE = new SerializedString("value");
  static final SerializedString VERDICT = new SerializedString("verdict");

  private Names() {}
}
