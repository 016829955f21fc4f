package circuitverdict.device.marking;

import static circuitverdict.device.marking.DeviceMember.BREAKING_CAPACITY;
import static circuitverdict.device.marking.DeviceMember.CHARACTERISTIC;
import static circuitverdict.device.marking.DeviceMember.ENERGY_CLASS;
import static circuitverdict.device.marking.DeviceMember.INSTANTANEOUS;
import static circuitverdict.device.marking.DeviceMember.LONG_TIME;
import static circuitverdict.device.marking.DeviceMember.LOWER_MULTIPLE;
import static circuitverdict.device.marking.DeviceMember.POLES;
import static circuitverdict.device.marking.DeviceMember.PROTECTED_POLES;
import static circuitverdict.device.marking.DeviceMember.RATED_CURRENT;
import static circuitverdict.device.marking.DeviceMember.RESIDUAL_CURRENT;
import static circuitverdict.device.marking.DeviceMember.SERVICE_CAPACITY;
import static circuitverdict.device.marking.DeviceMember.SHORT_TIME;
import static circuitverdict.device.marking.DeviceMember.UNIDIRECTIONAL;
import static circuitverdict.device.marking.DeviceMember.UPPER_MULTIPLE;
import static circuitverdict.device.marking.DeviceMember.VOLTAGE;
import static circuitverdict.device.marking.DeviceMember.VOLTAGE_TO_EARTH;

import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/** Which marks cannot stand on one face, and what is said of those that can. */
final class FaceRules {
  private FaceRules() {}

  /** Holds a face to them: what is contradictory is told and not taken. */
  static void hold(Facts facts) {
    ratings(facts);
    residual(facts);
    poles(facts);
    ofStandard(facts);
    capacities(facts);
    settings(facts);
    band(facts);
    energyClass(facts);
  }

  /** IEC 60898-1 clause 6: the letter stands before the rated current, preferred values. */
  private static void ratings(Facts facts) {
    if (!facts.has(CHARACTERISTIC)) {
      return;
    }
    if (!facts.has(RATED_CURRENT)) {
      facts.contradict(NoteCode.LETTER_WITHOUT_RATING, facts.place(CHARACTERISTIC));
      return;
    }
    boolean industrial = MarkedStandard.INDUSTRIAL.equals(facts.standard());
    double rated = facts.number(RATED_CURRENT);
    boolean usual =
        listed(facts, TableName.STANDARD_RATINGS, rated)
            || listed(facts, TableName.MARKETED_RATINGS, rated);
    boolean letter = Character.isLetter(facts.word(CHARACTERISTIC).charAt(0));
    if (letter && !industrial && !usual) {
      facts.contradict(NoteCode.RATING_NOT_PREFERRED, facts.place(RATED_CURRENT));
    }
  }

  private static boolean listed(Facts facts, TableName table, double value) {
    return facts.edition().table(table).at("listed", value) != null;
  }

  /** IEC 61008-1 and 61009-1, standard values; IEC 60947-2 annex B has greater ones. */
  private static void residual(Facts facts) {
    if (!facts.has(RESIDUAL_CURRENT)) {
      return;
    }
    boolean household =
        MarkedStandard.RCCB.equals(facts.standard())
            || MarkedStandard.RCBO.equals(facts.standard());
    Value value =
        facts
            .edition()
            .table(TableName.RESIDUAL_RATINGS)
            .at(household ? "household" : "industrial", facts.number(RESIDUAL_CURRENT));
    if (value == null) {
      facts.deny(NoteCode.RESIDUAL_NOT_PREFERRED, RESIDUAL_CURRENT);
    }
  }

  /** Between lines one pole breaks nothing, and three need the voltage between lines. */
  private static void poles(Facts facts) {
    if (facts.number(PROTECTED_POLES) > facts.number(POLES)) {
      facts.deny(NoteCode.MARKS_DISAGREE, POLES, PROTECTED_POLES);
    }
    boolean industrial = MarkedStandard.INDUSTRIAL.equals(facts.standard());
    double poles = facts.number(POLES);
    boolean one = poles == 1 && facts.has(VOLTAGE) && !facts.has(VOLTAGE_TO_EARTH) && !industrial;
    boolean many =
        poles > 2 && facts.has(VOLTAGE) && facts.number(VOLTAGE) == facts.number(VOLTAGE_TO_EARTH);
    if (one || many) {
      facts.deny(NoteCode.VOLTAGE_NOT_OF_POLES, POLES, VOLTAGE_TO_EARTH, VOLTAGE);
    }
  }

  /**
   * A fuse has no direction; IEC 60898-1 and 61009-1, clause 4, protect one pole at the least, and
   * three of three or more.
   */
  private static void ofStandard(Facts facts) {
    String standard = facts.standard();
    if (standard != null && standard.startsWith("BS ") && facts.has(UNIDIRECTIONAL)) {
      facts.deny(NoteCode.MARK_NOT_OF_STANDARD, UNIDIRECTIONAL);
    }
    double protectedPoles = facts.number(PROTECTED_POLES);
    boolean none = protectedPoles == 0;
    boolean tooFew = facts.number(POLES) > 2 && protectedPoles <= 2;
    if (standard != null && MarkedStandard.HOUSEHOLD.contains(standard) && (none || tooFew)) {
      facts.deny(NoteCode.MARK_NOT_OF_STANDARD, PROTECTED_POLES);
    }
  }

  private static void capacities(Facts facts) {
    if (facts.number(SERVICE_CAPACITY) > facts.number(BREAKING_CAPACITY)) {
      facts.deny(NoteCode.SERVICE_ABOVE_BREAKING, BREAKING_CAPACITY, SERVICE_CAPACITY);
    }
  }

  private static void settings(Facts facts) {
    double longTime = facts.number(LONG_TIME);
    if (longTime > facts.number(RATED_CURRENT)) {
      facts.deny(NoteCode.SETTINGS_CONTRADICT, LONG_TIME);
    } else if (longTime > facts.number(SHORT_TIME) || longTime > facts.number(INSTANTANEOUS)) {
      facts.deny(NoteCode.SETTINGS_CONTRADICT, LONG_TIME, SHORT_TIME, INSTANTANEOUS);
    }
    if (facts.has(INSTANTANEOUS) && facts.has(UPPER_MULTIPLE)) {
      facts.deny(NoteCode.SETTINGS_CONTRADICT, INSTANTANEOUS, LOWER_MULTIPLE, UPPER_MULTIPLE);
    }
    if (facts.number(LOWER_MULTIPLE) > facts.number(UPPER_MULTIPLE)) {
      facts.deny(NoteCode.SETTINGS_CONTRADICT, LOWER_MULTIPLE, UPPER_MULTIPLE);
    }
  }

  /**
   * IEC 60898-1 Table 7: only type D may have a band that reaches further, and then it is marked.
   */
  private static void band(Facts facts) {
    String letter = facts.word(CHARACTERISTIC);
    Value lower = letter == null ? null : bands(facts).at("lower", letter);
    if (lower == null) {
      return;
    }
    double upper = bands(facts).at("upper", letter).number();
    if (facts.number(UPPER_MULTIPLE) < upper || facts.number(LOWER_MULTIPLE) > lower.number()) {
      facts.deny(NoteCode.SETTINGS_CONTRADICT, LOWER_MULTIPLE, UPPER_MULTIPLE);
    }
  }

  private static Table bands(Facts facts) {
    return facts.edition().table(TableName.MAGNETIC_BANDS);
  }

  /** EN 60898-1 annex ZA covers types B and C, ratings up to 32 A and capacities up to 10 kA. */
  private static void energyClass(Facts facts) {
    double number = facts.number(ENERGY_CLASS);
    boolean known =
        number > 1
            && facts.has(CHARACTERISTIC)
            && facts.has(RATED_CURRENT)
            && facts.has(BREAKING_CAPACITY);
    if (!known) {
      return;
    }
    Value figure =
        facts
            .edition()
            .table(TableName.ENERGY_LIMITS)
            .at(
                facts.word(CHARACTERISTIC),
                facts.number(RATED_CURRENT),
                facts.number(BREAKING_CAPACITY),
                number);
    if (figure == null) {
      facts.remark(NoteCode.CLASS_WITHOUT_FIGURE, facts.place(ENERGY_CLASS));
    }
  }
}
