package circuitverdict.service;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Puts examples of responses into the contract's text and leaves every other line as it stands. */
final class ExampleBlocks {
  private static final String OF_OPERATION = "      operationId: ";
  private static final String MARK = "# examples: from the service, see ResponseExamplesTest";

  private final List<String> lines;

  ExampleBlocks(List<String> lines) {
    this.lines = new ArrayList<>(lines);
  }

  /** The text with what was put. */
  List<String> lines() {
    return lines;
  }

  /** Replaces the examples of an operation's 200. */
  void putAnswers(String operation, ObjectNode examples) {
    int from = find(OF_OPERATION + operation, 0);
    int answer = find("        '200':", from);
    put(answer, 8, "application/json:", examples);
  }

  /** Replaces the examples of a response under components.responses. */
  void putProblems(String response, ObjectNode examples) {
    int from = find("  responses:", find("components:", 0));
    put(find("    " + response + ":", from), 4, "application/problem+json:", examples);
  }

  /** Within the block that begins at a line: all after the schema, to the block's end. */
  private void put(int begin, int depth, String mediaType, ObjectNode examples) {
    int end = begin + 1;
    while (end < lines.size() && depth(lines.get(end)) > depth) {
      end++;
    }
    String margin = " ".repeat(depth + 6);
    int media = find(" ".repeat(depth + 4) + mediaType, begin);
    int schema = find(margin + "schema:", media);
    if (schema > end) {
      throw new AssertionError("No schema in the block at line " + (begin + 1));
    }
    List<String> rest = lines.subList(schema + 2, end);
    rest.clear();
    rest.add(margin + MARK);
    rest.add(margin + "examples:");
    rest.addAll(YamlText.block(examples, depth + 8));
  }

  private int find(String line, int from) {
    for (int i = from; i < lines.size(); i++) {
      if (lines.get(i).equals(line)) {
        return i;
      }
    }
    throw new AssertionError("The contract has no line \"" + line + "\" after line " + from);
  }

  private static int depth(String line) {
    return line.isBlank() ? Integer.MAX_VALUE : line.length() - line.stripLeading().length();
  }
}
