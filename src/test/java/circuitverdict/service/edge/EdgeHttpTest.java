package circuitverdict.service.edge;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.anyOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The edge as a client meets it. */
@QuarkusTest
class EdgeHttpTest {

  private static final String CIRCUITS = "/v1/test-edge/circuits";
  private static final String BOARDS = "/v1/test-edge/boards";
  private static final byte[] GOOD = "{\"stage\":\"design\"}".getBytes(StandardCharsets.UTF_8);

  private static RequestSpecification json() {
    EncoderConfig plain =
        EncoderConfig.encoderConfig().appendDefaultContentCharsetToContentTypeIfUndefined(false);
    return given()
        .config(RestAssured.config().encoderConfig(plain))
        .header("Content-Type", "application/json");
  }

  private static ValidatableResponse problem(
      io.restassured.response.Response response, int status, String slug) {
    return response
        .then()
        .statusCode(status)
        .contentType(is("application/problem+json"))
        .header("Content-Language", "en")
        .body("type", equalTo("urn:circuit-verdicts:problem:" + slug))
        .body("title", notNullValue())
        .body("status", equalTo(status))
        .body("detail", notNullValue())
        .body(not(containsString("xception")))
        .body(not(containsString("circuitverdict")));
  }

  private static byte[] gzip(byte[] plain) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
      gzip.write(plain);
    }
    return bytes.toByteArray();
  }

  /** Valid JSON of the given length. */
  private static byte[] padded(int length) {
    return (" ".repeat(length - GOOD.length) + new String(GOOD, StandardCharsets.UTF_8))
        .getBytes(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {CIRCUITS, BOARDS})
  void answersWithTheSharedHeaders(String path) {
    json()
        .header("Prefer", "return=minimal")
        .header("X-Correlation-ID", "job-7")
        .header("If-None-Match", "*")
        .body(GOOD)
        .post(path)
        .then()
        .statusCode(200)
        .contentType(containsString("application/json"))
        .header("ETag", Representation.etag(GOOD))
        .header("Preference-Applied", "return=minimal")
        .header("Vary", "Prefer, Accept, Accept-Language")
        .header("Content-Language", "en")
        .header("X-Correlation-ID", "job-7")
        .header("Cache-Control", nullValue())
        .body("stage", equalTo("design"));
  }

  @Test
  void withoutAPreferenceNoneIsApplied() {
    json().body(GOOD).post(CIRCUITS).then().header("Preference-Applied", nullValue());
  }

  @Test
  void whatIsHeldIsNotSentAgain() {
    String path = "/v1/test-edge/constants";
    String tag =
        given()
            .get(path)
            .then()
            .statusCode(200)
            .header("Cache-Control", "public, max-age=3600")
            .extract()
            .header("ETag");
    for (String held : new String[] {tag, "W/" + tag, "\"x,y\", " + tag, "*"}) {
      given()
          .header("If-None-Match", held)
          .get(path)
          .then()
          .statusCode(304)
          .header("ETag", tag)
          .header("Cache-Control", "public, max-age=3600")
          .body(is(""));
    }
    given().header("If-None-Match", "\"other\"").get(path).then().statusCode(200);
    given().head(path).then().statusCode(200).header("ETag", tag);
  }

  @Test
  void listsAllFaultsAtOnce() {
    problem(json().body("{\"stage\":1,\"limit\":0}").post(CIRCUITS), 422, "invalid-request")
        .body("errors.code", equalTo(java.util.List.of("wrong-type", "below-minimum")))
        .body("errors.pointer", equalTo(java.util.List.of("/stage", "/limit")));
  }

  @Test
  void queriesAreReadStrictly() {
    problem(given().get("/v1/test-edge/limits?x=1"), 422, "invalid-request")
        .body("errors[0].parameter", equalTo("x"))
        .body("errors[0].code", equalTo("unknown-parameter"));
  }

  @Test
  void nothingThere() {
    problem(given().get("/v1/nowhere"), 404, "not-found");
    problem(json().body(padded(3_000_000)).post("/v1/nowhere"), 404, "not-found");
    problem(given().get("/v1/test-edge/circuits/1"), 404, "not-found");
    problem(given().get("/v1"), 404, "not-found");
    problem(given().get("/v1/"), 404, "not-found");
  }

  @ParameterizedTest
  @ValueSource(strings = {"GET", "PUT", "DELETE", "PATCH"})
  void anotherMethod(String method) {
    problem(given().request(method, CIRCUITS), 405, "method-not-allowed")
        .header("Allow", notNullValue());
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/html", "application/xml", "image/*", "application/problem+json"})
  void anAnswerInAnotherForm(String accept) {
    problem(json().header("Accept", accept).body(GOOD).post(CIRCUITS), 406, "not-acceptable");
    problem(given().header("Accept", accept).get("/v1/test-edge/constants"), 406, "not-acceptable");
  }

  @ParameterizedTest
  @ValueSource(strings = {"nonsense", ";;;", "/", "a/b/c", "text", "*", "application/json;q=x"})
  void aBrokenAccept(String accept) {
    json()
        .header("Accept", accept)
        .body(GOOD)
        .post(CIRCUITS)
        .then()
        .statusCode(anyOf(is(200), is(400), is(406)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "text/plain",
        "application/xml",
        "application/x-ndjson",
        "application/json; charset=iso-8859-1",
        "application/json; charset=utf-16",
      })
  void aBodyOfAnotherType(String type) {
    problem(
        given()
            .config(
                RestAssured.config()
                    .encoderConfig(
                        EncoderConfig.encoderConfig()
                            .encodeContentTypeAs(type, io.restassured.http.ContentType.TEXT)))
            .header("Content-Type", type)
            .body(GOOD)
            .post(CIRCUITS),
        415,
        "unsupported-media-type");
  }

  @ParameterizedTest
  @ValueSource(strings = {"application/json;charset=UTF-8", "application/json; charset=\"utf-8\""})
  void utf8MayBeNamed(String type) {
    json().header("Content-Type", type).body(GOOD).post(CIRCUITS).then().statusCode(200);
  }

  @Test
  void anEmptyBody() {
    problem(json().post(CIRCUITS), 400, "malformed-json")
        .body("errors[0].code", equalTo("empty-body"));
  }

  @ParameterizedTest
  @CsvSource({CIRCUITS + ",262144", BOARDS + ",4194304"})
  void sizesEndWhereTheyShould(String path, int limit) throws IOException {
    json().body(padded(limit)).post(path).then().statusCode(200);
    problem(json().body(padded(limit + 1)).post(path), 413, "body-too-large")
        .body("detail", containsString(String.valueOf(limit)));
    json()
        .header("Content-Encoding", "gzip")
        .body(gzip(padded(limit)))
        .post(path)
        .then()
        .statusCode(200);
    problem(
        json().header("Content-Encoding", "gzip").body(gzip(padded(limit + 1))).post(path),
        413,
        "body-too-large");
  }

  @Test
  void absurdSizes() {
    problem(json().body(padded(2 << 20)).post(CIRCUITS), 413, "body-too-large");
    problem(json().body(padded(6 << 20)).post(CIRCUITS), 413, "body-too-large");
  }

  @Test
  void brokenCompression() throws IOException {
    byte[] whole = gzip(GOOD);
    byte[] cut = java.util.Arrays.copyOf(whole, whole.length - 6);
    for (byte[] body : new byte[][] {GOOD, cut, {}}) {
      problem(
              json().header("Content-Encoding", "gzip").body(body).post(CIRCUITS),
              400,
              "malformed-request")
          .body("errors[0].header", equalTo("Content-Encoding"));
    }
    problem(
        json().header("Content-Encoding", "br").body(GOOD).post(CIRCUITS),
        415,
        "unsupported-media-type");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a b", "", "ü", "<script>"})
  void aBrokenCorrelationId(String id) {
    problem(json().header("X-Correlation-ID", id).body(GOOD).post(CIRCUITS), 422, "invalid-request")
        .body("errors[0].header", equalTo("X-Correlation-ID"))
        .header("X-Correlation-ID", nullValue());
  }

  @Test
  void problemsCarryTheCorrelationId() {
    problem(
            json().header("X-Correlation-ID", "a-1").body("{").post(CIRCUITS),
            400,
            "malformed-json")
        .header("X-Correlation-ID", "a-1");
  }

  @Test
  void ourOwnFaultsLeakNothing() {
    problem(given().get("/v1/test-edge/failing"), 500, "internal-error")
        .body(not(containsString("secret")));
  }

  @Test
  void whenToComeBackIsWhatTheContractShows() throws IOException {
    String example;
    try (InputStream contract = getClass().getResourceAsStream("/META-INF/openapi.yaml")) {
      example =
          new YAMLMapper().readTree(contract).at("/components/headers/RetryAfter/example").asText();
    }
    problem(given().get("/v1/test-edge/unavailable"), 503, "unavailable")
        .header("Retry-After", equalTo(example));
  }
}
