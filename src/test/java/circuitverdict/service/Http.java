package circuitverdict.service;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.RestAssured;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;

/** A plain client of the service under test: it adds no header that a test did not ask for. */
final class Http {
  private static final HttpClient CLIENT =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private static final ObjectMapper JSON = new ObjectMapper();

  private Http() {}

  /** What came back. */
  record Reply(int status, java.net.http.HttpHeaders headers, byte[] bytes) {
    String header(String name) {
      return headers.firstValue(name).orElse(null);
    }

    String mediaType() {
      String type = header("Content-Type");
      return type == null ? null : type.replaceAll(";.*", "").strip();
    }

    String text() {
      return new String(bytes, StandardCharsets.UTF_8);
    }

    JsonNode json() {
      try {
        return JSON.readTree(bytes);
      } catch (IOException e) {
        throw new UncheckedIOException(text(), e);
      }
    }
  }

  /** Sends a call; {@code headers} are names and values in turn. */
  static Reply send(Call call, String... headers) {
    if (!call.isPost()) {
      return send(call.method(), call.address(), BodyPublishers.noBody(), headers);
    }
    String[] all = new String[headers.length + 2];
    all[0] = "Content-Type";
    all[1] = "application/json";
    System.arraycopy(headers, 0, all, 2, headers.length);
    return send("POST", call.address(), BodyPublishers.ofString(call.body()), all);
  }

  static Reply get(String address, String... headers) {
    return send("GET", address, BodyPublishers.noBody(), headers);
  }

  static Reply post(String address, String body) {
    BodyPublisher publisher = BodyPublishers.ofString(body);
    return send("POST", address, publisher, "Content-Type", "application/json");
  }

  static Reply send(String method, String address, BodyPublisher body, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + RestAssured.port + address))
            .method(method, body);
    if (headers.length > 0) {
      request.headers(headers);
    }
    try {
      HttpResponse<byte[]> response = CLIENT.send(request.build(), BodyHandlers.ofByteArray());
      return new Reply(response.statusCode(), response.headers(), response.body());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
