package circuitverdict.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.fault.SourceExamplesTest;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every case of the case file is tested. */
class CoverageTest {
  private static final List<Class<?>> TESTS =
      List.of(
          LoopLimitExamplesTest.class,
          LoopExamplesTest.class,
          HeatExamplesTest.class,
          FaultCurrentExamplesTest.class,
          ReadingExamplesTest.class,
          SourceExamplesTest.class,
          InrushExamplesTest.class,
          RatingExamplesTest.class,
          VoltageDropExamplesTest.class);

  @Test
  void everyCaseIsTestedOnce() {
    List<String> seen = new ArrayList<>();
    tested().forEach(each -> seen.add(each.id()));
    assertEquals(new ArrayList<>(new TreeSet<>(cases().keySet())), seen.stream().sorted().toList());
    assertEquals(44, seen.size());
  }

  @Test
  void everyTestNamesItsCaseAsTheFileDoes() {
    Map<String, JsonNode> cases = cases();
    for (WorkedExample each : tested().toList()) {
      JsonNode published = cases.get(each.id());
      assertEquals(published.get("title").textValue(), each.title());
      assertEquals(published.at("/source/title").textValue(), each.source());
      assertEquals(published.get("standard").textValue(), each.standard());
    }
  }

  private static Stream<WorkedExample> tested() {
    return TESTS.stream()
        .flatMap(test -> Stream.of(test.getDeclaredMethods()))
        .filter(method -> method.isAnnotationPresent(WorkedExample.class))
        .map((Method method) -> method.getAnnotation(WorkedExample.class));
  }

  private static Map<String, JsonNode> cases() {
    try (InputStream in =
        CoverageTest.class.getResourceAsStream("/published/worked-examples.json")) {
      Map<String, JsonNode> cases = new TreeMap<>();
      new ObjectMapper().readTree(in).forEach(each -> cases.put(each.get("id").textValue(), each));
      return cases;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
