package circuitverdict.service;

import circuitverdict.service.Http.Reply;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.zip.GZIPOutputStream;

/**
 * Ways of being wrong that a single schema does not know of; those it knows are derived from it.
 */
final class BadRequests {
  private static final String CHECK = "/v1/circuit-checks";
  private static final String LIMIT =
      "/v1/loop-impedance-limits?standard=IEC%2060898-1&characteristic=B&ratedCurrentA=32";
  private static final int TWO_MEBIBYTES = 2 << 20;

  private final List<BadRequest> requests = new ArrayList<>();

  private BadRequests() {}

  /** All of them. */
  static List<BadRequest> all() {
    BadRequests all = new BadRequests();
    all.unreadable();
    all.misdirected();
    all.tooLarge();
    all.queries();
    all.requests.addAll(ContradictoryRequests.all());
    return all.requests;
  }

  private void unreadable() {
    text("nothing", "empty-body", "");
    text("white space", "empty-body", " \n\t ");
    text("half an object", "malformed-json", "{\"stage\": \"design\"");
    text("words", "malformed-json", "stage=design");
    text("not a number", "malformed-json", "{\"cable\": {\"lengthM\": NaN}}");
    text("an infinity", "malformed-json", "{\"cable\": {\"lengthM\": -Infinity}}");
    text("a comment", "malformed-json", "{} // none");
    text("two values", "malformed-json", "{} {}");
    text("a number that begins with nought", "malformed-json", "{\"limit\": 007}");
    text("an absurdly long number", "malformed-json", "{\"limit\": " + "9".repeat(5_000) + "}");
    text("a member twice", "duplicate-member", "{\"stage\": \"design\", \"stage\": \"design\"}");
    text("a thousand levels", "too-deep", "[".repeat(1_000) + "]".repeat(1_000));
    byte[] latin = "{\"reference\": \"Küche\"}".getBytes(StandardCharsets.ISO_8859_1);
    add("not UTF-8", 400, "malformed-json", "malformed-text", "", post(CHECK, bytes(latin)));
    byte[] cut = java.util.Arrays.copyOf(gzip(" ".repeat(400) + "{}"), 20);
    add(
        "broken gzip",
        400,
        "malformed-request",
        "broken-compression",
        "Content-Encoding",
        post(CHECK, bytes(cut), "Content-Encoding", "gzip"));
  }

  private void misdirected() {
    add("an unknown path", 404, "not-found", null, null, () -> Http.get("/v1/nowhere"));
    String editions = "/v1/editions/";
    add(
        "an edition",
        404,
        "unknown-edition",
        "unknown-value",
        "edition",
        () -> Http.get(editions + "bs7671-1991"));
    add("a table", 404, "not-found", null, null, () -> Http.get(editions + "bs7671-2008/tables/0"));
    for (ContractDocument.Operation operation : ContractDocument.contract().operations()) {
      String path = operation.path().replaceAll("\\{[^}]*}", "x");
      add("DELETE " + path, 405, "method-not-allowed", null, null, send("DELETE", path));
      add("PUT " + path, 405, "method-not-allowed", null, null, send("PUT", path));
      if (operation.hasBody()) {
        add(
            "HTML of " + path,
            406,
            "not-acceptable",
            null,
            null,
            post(path, string("{}"), "Accept", "text/html"));
        add(
            "text to " + path,
            415,
            "unsupported-media-type",
            null,
            null,
            typed(path, "text/plain"));
        add(
            "XML to " + path,
            415,
            "unsupported-media-type",
            null,
            null,
            typed(path, "application/xml"));
      } else {
        add(
            "HTML of " + path,
            406,
            "not-acceptable",
            null,
            null,
            () -> Http.get(path, "Accept", "text/html"));
      }
    }
    add(
        "no media type",
        415,
        "unsupported-media-type",
        "unsupported-header-value",
        "Content-Type",
        () -> Http.send("POST", CHECK, string("{}")));
    add(
        "Latin 1",
        415,
        "unsupported-media-type",
        "unsupported-header-value",
        "Content-Type",
        typed(CHECK, "application/json; charset=iso-8859-1"));
    add(
        "another coding",
        415,
        "unsupported-media-type",
        "unsupported-header-value",
        "Content-Encoding",
        post(CHECK, string("{}"), "Content-Encoding", "br"));
    add(
        "a correlation id in words",
        422,
        "invalid-request",
        "malformed-header",
        "X-Correlation-ID",
        () -> Http.get("/v1/codes", "X-Correlation-ID", "two words"));
  }

  private void tooLarge() {
    String blank = " ".repeat(TWO_MEBIBYTES);
    for (String path :
        List.of(
            CHECK,
            "/v1/breaking-capacity-verdicts",
            "/v1/let-through-verdicts",
            "/v1/selectivity-verdicts",
            "/v1/measurement-verdicts",
            "/v1/marking-readings")) {
      add("2 MiB", 413, "body-too-large", null, null, post(path, string(blank + "{}")));
      add("2 MiB in chunks", 413, "body-too-large", null, null, post(path, chunked(blank + "{}")));
      add(
          "2 MiB in gzip",
          413,
          "body-too-large",
          null,
          null,
          post(path, bytes(gzip(blank + "{}")), "Content-Encoding", "gzip"));
    }
    String more = blank + blank + "{}";
    for (String path :
        List.of(
            "/v1/device-selections",
            "/v1/loop-impedance-limits",
            "/v1/fault-currents",
            "/v1/board-checks",
            "/v1/edition-comparisons",
            "/v1/conductor-selections")) {
      add("4 MiB", 413, "body-too-large", null, null, post(path, string(more)));
      add(
          "4 MiB in gzip",
          413,
          "body-too-large",
          null,
          null,
          post(path, bytes(gzip(more)), "Content-Encoding", "gzip"));
    }
  }

  private void queries() {
    query(
        "an unknown parameter", "unknown-parameter", "colour", "&disconnectionTimeS=0.4&colour=1");
    query("a missing parameter", "missing-parameter", "disconnectionTimeS", "");
    query(
        "a parameter twice",
        "repeated-parameter",
        "disconnectionTimeS",
        "&disconnectionTimeS=0.4&disconnectionTimeS=5");
    query("a word for a number", "wrong-type", "disconnectionTimeS", "&disconnectionTimeS=soon");
    query("a time of none", "below-minimum", "disconnectionTimeS", "&disconnectionTimeS=0");
    query("a time beyond 5 s", "above-maximum", "disconnectionTimeS", "&disconnectionTimeS=5.1");
    add(
        "an edition of none",
        422,
        "unknown-edition",
        "unknown-value",
        "edition",
        () -> Http.get(LIMIT + "&disconnectionTimeS=0.4&edition=bs7671-1991"));
  }

  private void text(String name, String code, String body) {
    add(name, 400, "malformed-json", code, null, post(CHECK, string(body)));
  }

  private void query(String name, String code, String parameter, String more) {
    add(name, 422, "invalid-request", code, parameter, () -> Http.get(LIMIT + more));
  }

  private void add(
      String name, int status, String problem, String code, String place, Supplier<Reply> send) {
    requests.add(new BadRequest(name, status, problem, code, place, null, send));
  }

  private static Supplier<Reply> post(String path, BodyPublisher body, String... headers) {
    String[] all = java.util.Arrays.copyOf(headers, headers.length + 2);
    all[headers.length] = "Content-Type";
    all[headers.length + 1] = "application/json";
    return () -> Http.send("POST", path, body, all);
  }

  private static Supplier<Reply> typed(String path, String type) {
    return () -> Http.send("POST", path, string("{}"), "Content-Type", type);
  }

  private static Supplier<Reply> send(String method, String path) {
    return () -> Http.send(method, path, BodyPublishers.noBody());
  }

  private static BodyPublisher string(String text) {
    return BodyPublishers.ofString(text);
  }

  private static BodyPublisher bytes(byte[] bytes) {
    return BodyPublishers.ofByteArray(bytes);
  }

  /** Of unknown length, so that the client sends it in chunks. */
  private static BodyPublisher chunked(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(bytes));
  }

  private static byte[] gzip(String text) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
