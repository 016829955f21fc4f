package circuitverdict.service;

import circuitverdict.service.Http.Reply;
import circuitverdict.service.edge.Problem;
import circuitverdict.service.edge.ProblemCatalogue;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the contract's response examples must be: the service's own answers, whole. Most are asked
 * for with {@code Prefer: return=minimal}, since full ones are long; an example says so in its
 * {@code x-prefer}.
 */
final class ResponseExamples {
  /** Operations' examples whose full answer the contract shows. */
  private static final Set<String> IN_FULL =
      Set.of(
          "checkCircuit complies",
          "judgeBreakingCapacity does-not-comply",
          "judgeSelectivity declared");

  private static final Set<String> WITHOUT_DEPTH =
      Set.of("listEditions", "getEdition", "getEditionTable", "listCodes");

  private static final String MINIMAL = "return=minimal";
  private static final ObjectMapper JSON = new ObjectMapper();

  private ResponseExamples() {}

  /** The examples of every operation's 200, by operation. */
  static Map<String, ObjectNode> answers() {
    Map<String, ObjectNode> answers = new LinkedHashMap<>();
    for (Call call : Calls.ofContract()) {
      ObjectNode examples =
          answers.computeIfAbsent(call.operation(), id -> JSON.createObjectNode());
      answer(call, examples.putObject(call.name()));
    }
    return answers;
  }

  private static void answer(Call call, ObjectNode example) {
    boolean whole = WITHOUT_DEPTH.contains(call.operation()) || IN_FULL.contains(call.toString());
    Reply reply = whole ? Http.send(call) : Http.send(call, "Prefer", MINIMAL);
    if (reply.status() != 200) {
      throw new AssertionError(call + ": " + reply.text());
    }
    String request =
        call.isPost()
            ? "the request example of this name"
            : "the parameters' examples of this name";
    String depth =
        WITHOUT_DEPTH.contains(call.operation())
            ? ""
            : whole ? ", in full" : ", asked for with Prefer " + MINIMAL;
    example.put("summary", "Answer to " + request + depth);
    if (!whole) {
      example.put("x-prefer", MINIMAL);
    }
    example.set("value", reply.json());
  }

  /** The examples of the service's problems, by response. */
  static Map<String, ObjectNode> problems() {
    String check = "/v1/circuit-checks";
    Map<String, ObjectNode> problems = new LinkedHashMap<>();
    problems.put(
        "BadRequest", problem("malformed-json", 400, Http.post(check, "{\"stage\": \"design\"")));
    problems.put("NotFound", problem("unknown-edition", 404, Http.get("/v1/editions/bs7671-1991")));
    problems.put(
        "MethodNotAllowed",
        problem("method-not-allowed", 405, Http.send("DELETE", check, BodyPublishers.noBody())));
    problems.put(
        "NotAcceptable",
        problem("not-acceptable", 406, Http.get("/v1/codes", "Accept", "text/html")));
    problems.put(
        "BodyTooLarge",
        problem("body-too-large", 413, Http.post(check, " ".repeat(2 << 20) + "{}")));
    problems.put(
        "UnsupportedMediaType",
        problem(
            "unsupported-media-type",
            415,
            Http.send("POST", check, BodyPublishers.ofString("{}"), "Content-Type", "text/plain")));
    String faulty = "{\"stage\": \"soon\", \"cable\": {\"lengthM\": -3, \"lenght\": 22}}";
    problems.put("InvalidRequest", problem("invalid-request", 422, Http.post(check, faulty)));
    problems.put("InternalError", problem(ProblemCatalogue.INTERNAL_ERROR));
    problems.put("Unavailable", problem(ProblemCatalogue.UNAVAILABLE));
    return problems;
  }

  /** Of problems that no request can bring about, as they would be written. */
  private static ObjectNode problem(ProblemCatalogue kind) {
    String text = new String(Problem.of(kind).toJson(), StandardCharsets.UTF_8);
    ObjectNode examples = JSON.createObjectNode();
    ObjectNode example = examples.putObject(kind.slug());
    example.put("summary", kind.title());
    example.set("value", Variations.tree(text));
    return examples;
  }

  private static ObjectNode problem(String name, int status, Reply reply) {
    if (reply.status() != status) {
      throw new AssertionError(name + ": " + reply.text());
    }
    ObjectNode examples = JSON.createObjectNode();
    ObjectNode example = examples.putObject(name);
    example.put("summary", reply.json().path("title").textValue());
    example.set("value", reply.json());
    return examples;
  }

  /** The contract's lines with all examples put in. */
  static List<String> into(List<String> contract) {
    ExampleBlocks blocks = new ExampleBlocks(contract);
    answers().forEach(blocks::putAnswers);
    problems().forEach(blocks::putProblems);
    return blocks.lines();
  }
}
