package circuitverdict.standard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The data of the marks: complete, cited, and in the words of the vocabulary. */
class MarksTest {
  private static final Marks MARKS = Scenario.editions().inForce().marks();

  @Test
  void allEditionsHaveTheSame() {
    Scenario.editions().all().forEach(edition -> assertSame(MARKS, edition.marks()));
  }

  @Test
  void everyKindHasAMeaningThatTheContractCanTell() {
    MARKS
        .kinds()
        .forEach(
            (code, kind) -> {
              assertTrue(code.matches("[a-z0-9]+(-[a-z0-9]+)*"), code);
              assertTrue(kind.meaning().length() <= 600, code);
              kind.variants()
                  .keySet()
                  .forEach(each -> assertTrue(kind.meaningOf(each).length() <= 600, code));
            });
  }

  /** What is printed says where it was seen; all else is from memory. */
  @Test
  void everyClauseSaysHowWellItIsKnown() {
    for (Marks.Kind kind : MARKS.kinds().values()) {
      for (Citation citation : kind.citations("IEC 60898-1", Scenario.editions().inForce())) {
        boolean rule = citation.confidence() == null;
        assertTrue(rule || citation.confidence() != Confidence.COMPUTED);
        assertEquals(citation.confidence() == Confidence.PRINTED, !citation.seen().isEmpty());
      }
    }
  }

  /** Rules of the wiring rules are named as every edition names them. */
  @Test
  void everyRuleIsOneOfEachEdition() {
    for (Edition edition : Scenario.editions().all()) {
      MARKS
          .kinds()
          .forEach(
              (code, kind) ->
                  assertTrue(
                      edition.head().clauses().keySet().containsAll(kind.rules()),
                      edition.id() + " " + code));
    }
  }

  @Test
  void wordsAreInLowerCaseAsTheReaderMeetsThem() {
    Marks.Vocabulary words = MARKS.vocabulary();
    for (List<String> each :
        List.of(
            List.copyOf(words.words().keySet()),
            List.copyOf(words.labels().keySet()),
            List.copyOf(words.letters().keySet()),
            words.bodies(),
            words.classes(),
            words.types(),
            words.frames())) {
      each.forEach(word -> assertEquals(word.toLowerCase(java.util.Locale.ROOT), word));
      assertFalse(each.isEmpty());
    }
  }
}
