package circuitverdict.service.wire;

import circuitverdict.check.CheckName;
import circuitverdict.check.Reason;
import circuitverdict.check.Verdict;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Step;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Citation;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/**
 * Stretches of JSON that stand in one answer after the other, encoded once: the names, signs and
 * words between the figures. Unless said otherwise one that begins an object has its brace, one
 * that goes on in it begins with its comma; a text left open is closed by what comes next.
 */
final class Stretches {
  static final byte[] VALUE = utf8(",\"value\":");
  static final byte[] LEAST = utf8(",\"least\":");
  static final byte[] GREATEST = utf8(",\"greatest\":");
  static final byte[] SHOWN = utf8(",\"shown\":\"");
  static final byte[] MARGIN = utf8(",\"marginPercent\":");
  static final byte[] TEXT_END_VALUE = utf8("\",\"value\":");
  static final byte[] ACTUAL = utf8(",\"actual\":");
  static final byte[] LIMIT = utf8(",\"limit\":");
  static final byte[] PRINTED = utf8(",\"printed\":");
  static final byte[] CLAUSES = utf8(",\"clauses\":");
  static final byte[] COMPARISONS = utf8(",\"comparisons\":[");
  static final byte[] MISSING = utf8(",\"missing\":");
  static final byte[] REMARKS = utf8(",\"remarks\":");
  static final byte[] SUMMARY = utf8(",\"summary\":");
  static final byte[] WORKING = utf8(",\"working\":");
  static final byte[] VALUES = utf8(",\"values\":[");
  static final byte[] SOURCES = utf8(",\"sources\":[");
  static final byte[] NO_SOURCES = utf8(",\"sources\":[{\"reference\":\"nothing applies here\"}]");

  private static final byte[][] UNITS =
      each(Unit.values(), unit -> ",\"unit\":" + quoted(unit.symbol()));
  private static final byte[][] COMPARATORS =
      each(Comparator.values(), sign -> ",\"comparator\":" + quoted(sign.symbol()));
  private static final byte[][] REASONS =
      each(Reason.values(), reason -> ",\"reason\":" + quoted(reason.word()));
  private static final byte[][] VERDICTS =
      each(Verdict.values(), verdict -> ",\"verdict\":" + quoted(verdict.word()));
  private static final byte[][][] COUNTED = heads(true);
  private static final byte[][][] NOT_COUNTED = heads(false);
  private static final byte[][] CODES =
      each(NoteCode.values(), code -> "{\"code\":" + quoted(code.code()));
  private static final byte[][] CODES_WITH_TEXT =
      each(NoteCode.values(), code -> withText(code, code.text()));

  private static final Recurring<String> FIGURES =
      new Recurring<>(symbol -> "{\"symbol\":" + quoted(symbol));
  private static final Recurring<String> SUBJECTS =
      new Recurring<>(subject -> "\"subject\":" + quoted(subject));
  private static final Recurring<Formula> FORMULAS =
      new Recurring<>(formula -> step(formula.symbol(), formula.text()));
  private static final Recurring<String> LOOKED_UP =
      new Recurring<>(symbol -> step(symbol, symbol));
  private static final Recurring<Relation> RELATIONS = new Recurring<>(Relation::step);
  private static final Recurring<String> EARLIER =
      new Recurring<>(symbol -> "{\"reference\":" + quoted("step " + symbol) + "}");
  private static final Recurring<Pointer> POINTERS =
      new Recurring<>(pointer -> "{" + member(pointer) + "}");
  private static final Recurring<Pointer> OF_POINTERS =
      new Recurring<>(pointer -> "," + member(pointer));
  private static final Recurring<Wanted> WANTED = new Recurring<>(Wanted::head);
  private static final Recurring<Citation> CITATIONS = new Recurring<>(CitationJson::text);

  private Stretches() {}

  /** A figure's object begun with its symbol. */
  static byte[] figure(String symbol) {
    return FIGURES.of(symbol);
  }

  static byte[] unit(Unit unit) {
    return UNITS[unit.ordinal()];
  }

  static byte[] comparator(Comparator comparator) {
    return COMPARATORS[comparator.ordinal()];
  }

  static byte[] reason(Reason reason) {
    return REASONS[reason.ordinal()];
  }

  static byte[] verdict(Verdict verdict) {
    return VERDICTS[verdict.ordinal()];
  }

  /** A finding begun. */
  static byte[] finding(CheckName check, Verdict verdict, boolean counted) {
    return (counted ? COUNTED : NOT_COUNTED)[check.ordinal()][verdict.ordinal()];
  }

  /** A subject, without brace or comma. */
  static byte[] subject(String subject) {
    return SUBJECTS.of(subject);
  }

  /** A step begun, up to the text of its substitution. */
  static byte[] step(Step step) {
    if (step.comparator() != null) {
      return RELATIONS.of(Relation.of(step));
    }
    return step.formula() == null
        ? LOOKED_UP.of(step.result().symbol())
        : FORMULAS.of(step.formula());
  }

  /** A note begun with its code and, in full, its text. */
  static byte[] note(Note note, boolean full) {
    if (!full) {
      return CODES[note.code().ordinal()];
    }
    return NoteText.isOfCode(note)
        ? CODES_WITH_TEXT[note.code().ordinal()]
        : WANTED.of(new Wanted(note.code(), note.pointer()));
  }

  /** The pointer of an object that goes on. */
  static byte[] andPointer(Pointer pointer) {
    return OF_POINTERS.of(pointer);
  }

  /** A member of the request as a source, whole. */
  static byte[] source(Pointer pointer) {
    return POINTERS.of(pointer);
  }

  /** An earlier step as a source, whole. */
  static byte[] earlier(String symbol) {
    return EARLIER.of(symbol);
  }

  /** A citation, whole. */
  static byte[] citation(Citation citation) {
    return CITATIONS.of(citation);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** A text as JSON writes it, quotes included. */
  static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }

  private static String step(String symbol, String formula) {
    return "{\"symbol\":"
        + quoted(symbol)
        + ",\"formula\":"
        + quoted(formula)
        + ",\"substitution\":\"";
  }

  private static String member(Pointer pointer) {
    return "\"pointer\":" + quoted(pointer.text());
  }

  private static String withText(NoteCode code, String text) {
    return "{\"code\":" + quoted(code.code()) + ",\"text\":" + quoted(text);
  }

  private static byte[][][] heads(boolean counted) {
    CheckName[] checks = CheckName.values();
    byte[][][] heads = new byte[checks.length][][];
    for (CheckName check : checks) {
      heads[check.ordinal()] =
          each(
              Verdict.values(),
              verdict ->
                  "{\"check\":"
                      + quoted(check.word())
                      + ",\"verdict\":"
                      + quoted(verdict.word())
                      + ",\"counted\":"
                      + counted);
    }
    return heads;
  }

  private static <T> byte[][] each(T[] values, Function<T, String> text) {
    byte[][] each = new byte[values.length][];
    for (int i = 0; i < each.length; i++) {
      each[i] = utf8(text.apply(values[i]));
    }
    return each;
  }

  /** The comparison that closes a working. */
  private record Relation(String symbol, Comparator comparator, String limit) {

    static Relation of(Step step) {
      String limit = step.operands().get(1).symbol();
      return new Relation(step.result().symbol(), step.comparator(), limit);
    }

    String step() {
      return Stretches.step(symbol, Step.relation(symbol, comparator, limit));
    }
  }

  /** What names the member that it is about. */
  private record Wanted(NoteCode code, Pointer pointer) {

    String head() {
      return withText(code, NoteText.of(new Note(code, pointer, List.of())));
    }
  }
}
