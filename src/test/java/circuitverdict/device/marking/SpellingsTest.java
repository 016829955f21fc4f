package circuitverdict.device.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The spellings kept in {@code src/test/resources/marks}; each names where such a mark is from. */
class SpellingsTest {

  /** One spelling and what it tells. */
  record Spelling(String marks, String told, String source) {
    @Override
    public String toString() {
      return marks + " (" + source + ")";
    }
  }

  static Stream<Spelling> spellings() {
    try (InputStream in = SpellingsTest.class.getResourceAsStream("/marks/spellings.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .map(SpellingsTest::spelling)
              .toList()
              .stream();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Spelling spelling(String line) {
    int told = line.indexOf(" => ");
    int source = line.lastIndexOf(" # ");
    return new Spelling(
        line.substring(0, told), line.substring(told + 4, source), line.substring(source + 3));
  }

  @Test
  void thereAreMoreThanTwoHundred() {
    assertTrue(spellings().count() > 200);
    assertTrue(spellings().noneMatch(each -> each.source().isBlank()));
  }

  @ParameterizedTest
  @MethodSource("spellings")
  void tellsWhatItSaysAndNothingElse(Spelling spelling) {
    Reading reading = Faces.read(spelling.marks().split(" ;; "));
    Map<String, String> members = new TreeMap<>();
    Set<String> codes = new TreeSet<>();
    Set<String> kinds = new TreeSet<>();
    for (String word : spelling.told().split(" ")) {
      if (word.startsWith("<")) {
        kinds.add(word);
      } else if (word.startsWith("!") || word.startsWith("?")) {
        codes.add(word);
      } else {
        int cut = word.indexOf('=');
        members.put(word.substring(0, cut), word.substring(cut + 1).replace('_', ' '));
      }
    }
    assertEquals(members, Faces.told(reading));
    assertEquals(codes, codes(reading));
    Set<String> found =
        reading.marks().stream().map(mark -> "<" + mark.kind() + ">").collect(Collectors.toSet());
    assertTrue(found.containsAll(kinds), found::toString);
  }

  private static Set<String> codes(Reading reading) {
    Set<String> codes = new TreeSet<>();
    Faces.codes(reading.contradictions()).forEach(code -> codes.add("!" + code));
    Faces.codes(reading.remarks()).forEach(code -> codes.add("?" + code));
    return codes;
  }

  /** Marks come in any order: what one face tells does not depend on it. */
  @ParameterizedTest
  @MethodSource("spellings")
  void theOrderOfTheStringsDoesNotMatter(Spelling spelling) {
    List<String> marks = new java.util.ArrayList<>(List.of(spelling.marks().split(" ;; ")));
    Reading forward = Faces.read(marks, List.of());
    java.util.Collections.reverse(marks);
    Reading backward = Faces.read(marks, List.of());
    assertEquals(Faces.told(forward), Faces.told(backward));
    assertEquals(codes(forward), codes(backward));
  }
}
