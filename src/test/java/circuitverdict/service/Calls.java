package circuitverdict.service;

import circuitverdict.service.ContractDocument.Operation;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Stream;

/** Every good request that the tests know: the contract's examples, and the files kept beside. */
final class Calls {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final ContractDocument CONTRACT = ContractDocument.contract();

  private Calls() {}

  /** All of them. */
  static List<Call> all() {
    List<Call> calls = new ArrayList<>(ofContract());
    calls.addAll(ofFiles());
    return calls;
  }

  /** All that have a body. */
  static List<Call> posts() {
    return all().stream().filter(Call::isPost).toList();
  }

  /**
   * One for each request example of the contract; for a GET the examples of its parameters, those
   * of one name together.
   */
  static List<Call> ofContract() {
    List<Call> calls = new ArrayList<>();
    for (Operation operation : CONTRACT.operations()) {
      if (operation.hasBody()) {
        JsonNode examples = operation.node().at("/requestBody/content/application~1json/examples");
        for (Map.Entry<String, JsonNode> example : examples.properties()) {
          calls.add(post(operation, example.getKey(), example.getValue().path("value")));
        }
      } else {
        for (String name : names(operation)) {
          calls.add(new Call(operation.id(), name, "GET", address(operation, name), null));
        }
      }
    }
    return calls;
  }

  /** The call of that operation and example of the contract. */
  static Call ofContract(String operation, String example) {
    return ofContract().stream()
        .filter(call -> call.operation().equals(operation) && call.name().equals(example))
        .findFirst()
        .orElseThrow(() -> new AssertionError("No example " + example + " of " + operation));
  }

  /**
   * The requests of three kinds of caller in {@code src/test/resources/requests}, named {@code
   * <number>-<caller>-<operation>[-<variant>].json}.
   */
  static List<Call> ofFiles() {
    List<Call> calls = new ArrayList<>();
    for (Path file : files()) {
      calls.add(ofFile(file));
    }
    return calls;
  }

  private static List<Path> files() {
    try (Stream<Path> files = Files.list(Path.of(Calls.class.getResource("/requests").toURI()))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Call ofFile(Path file) {
    String name = file.getFileName().toString();
    JsonNode body;
    try {
      body = JSON.readTree(Files.readString(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String get = body.path("GET").textValue();
    for (Operation operation : CONTRACT.operations()) {
      if (get != null) {
        if (!operation.hasBody() && Call.matches(operation.path(), get)) {
          return new Call(operation.id(), name, "GET", get, null);
        }
      } else if (operation.hasBody() && name.contains("-" + operation.path().substring(4))) {
        return post(operation, name, body);
      }
    }
    throw new AssertionError(name + " belongs to no operation of the contract");
  }

  private static Call post(Operation operation, String name, JsonNode body) {
    return new Call(operation.id(), name, "POST", operation.path(), body.toString());
  }

  /** Names of the examples of a GET's query; where none has a name, one for all. */
  private static Set<String> names(Operation operation) {
    Set<String> names = new LinkedHashSet<>();
    for (JsonNode parameter : operation.node().path("parameters")) {
      parameter.path("examples").fieldNames().forEachRemaining(names::add);
    }
    return names.isEmpty() ? Set.of("example") : names;
  }

  private static String address(Operation operation, String example) {
    String path = operation.path();
    StringJoiner query = new StringJoiner("&", "?", "").setEmptyValue("");
    for (JsonNode written : operation.node().path("parameters")) {
      JsonNode parameter = CONTRACT.resolve(written);
      String name = parameter.path("name").asText();
      JsonNode named = parameter.path("examples").path(example).path("value");
      String text = (named.isMissingNode() ? parameter.path("example") : named).asText();
      String value = URLEncoder.encode(text, StandardCharsets.UTF_8);
      switch (parameter.path("in").asText()) {
        case "path" -> path = path.replace("{" + name + "}", value);
        case "query" -> {
          if (!text.isEmpty()) {
            query.add(name + "=" + value);
          }
        }
        default -> {
          // Headers are told apart by the tests that send them.
        }
      }
    }
    return path + query;
  }
}
