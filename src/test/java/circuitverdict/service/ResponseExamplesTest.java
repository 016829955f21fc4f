package circuitverdict.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The contract's response examples are what the service answers. After a change of what it answers
 * write them anew: {@code mvn test -Dtest=ResponseExamplesTest -Dexamples=write}.
 */
@QuarkusTest
class ResponseExamplesTest {
  private static final String REMEDY =
      "The contract's examples are not what the service answers. Where the service is right, run"
          + " mvn test -Dtest=ResponseExamplesTest -Dexamples=write";
  private static final Path FILE = Path.of("openapi", "openapi.yaml");

  @Test
  void areWhatTheServiceAnswers() throws IOException {
    if ("write".equals(System.getProperty("examples"))) {
      Files.write(FILE, ResponseExamples.into(Files.readAllLines(FILE)));
    }
    JsonNode contract = new YAMLMapper().readTree(FILE.toFile());
    ContractDocument document = ContractDocument.contract();
    for (Map.Entry<String, ObjectNode> expected : ResponseExamples.answers().entrySet()) {
      ContractDocument.Operation operation = document.operation(expected.getKey());
      JsonNode written =
          contract
              .path("paths")
              .path(operation.path())
              .path(operation.method().toLowerCase(java.util.Locale.ROOT))
              .at("/responses/200/content/application~1json/examples");
      same(expected.getKey(), expected.getValue(), written);
    }
    for (Map.Entry<String, ObjectNode> expected : ResponseExamples.problems().entrySet()) {
      JsonNode written =
          contract
              .at("/components/responses/" + expected.getKey())
              .at("/content/application~1problem+json/examples");
      same(expected.getKey(), expected.getValue(), written);
    }
  }

  /** Every other line of the contract is left as it stands. */
  @Test
  void writingThemTwiceChangesNothing() throws IOException {
    List<String> lines = Files.readAllLines(FILE);
    assertEquals(lines, ResponseExamples.into(lines), REMEDY);
  }

  /** As texts, since the trees differ in how they hold numbers. */
  private static void same(String what, JsonNode expected, JsonNode written) {
    assertEquals(expected.toPrettyString(), written.toPrettyString(), () -> what + ": " + REMEDY);
  }
}
