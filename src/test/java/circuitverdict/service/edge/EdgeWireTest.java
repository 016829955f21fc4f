package circuitverdict.service.edge;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What only a hand-made client sends. */
@QuarkusTest
class EdgeWireTest {

  private static final String POST =
      "POST /v1/test-edge/circuits HTTP/1.1\r\nHost: t\r\nContent-Type: application/json\r\n";

  @TestHTTPResource("/")
  URI server;

  /** Sends the parts, then reads until the server closes or has nothing more to say. */
  private String exchange(String... parts) throws IOException {
    try (Socket socket = new Socket(server.getHost(), server.getPort())) {
      socket.setSoTimeout(5000);
      OutputStream out = socket.getOutputStream();
      for (String part : parts) {
        out.write(part.getBytes(StandardCharsets.ISO_8859_1));
        out.flush();
      }
      return readAll(socket);
    }
  }

  private static String readAll(Socket socket) throws IOException {
    StringBuilder answer = new StringBuilder();
    InputStream in = socket.getInputStream();
    byte[] buffer = new byte[8192];
    try {
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        answer.append(new String(buffer, 0, n, StandardCharsets.ISO_8859_1));
        // What belongs to the answer follows at once.
        socket.setSoTimeout(400);
      }
    } catch (java.net.SocketTimeoutException e) {
      // A connection that is kept: all has been said.
      return answer.toString();
    }
    return answer.toString();
  }

  private static void answers(int status, String answer) {
    assertTrue(answer.startsWith("HTTP/1.1 " + status), answer);
    assertTrue(answer.contains("application/problem+json"), answer);
  }

  @Test
  void chunksAreCounted() throws IOException {
    String chunk = Integer.toHexString(65536) + "\r\n" + " ".repeat(65536) + "\r\n";
    String start = POST + "Transfer-Encoding: chunked\r\n\r\n";
    String good = "2\r\n{}\r\n0\r\n\r\n";
    assertTrue(exchange(start, chunk, chunk, chunk, good).startsWith("HTTP/1.1 200"));
    answers(413, exchange(start, chunk, chunk, chunk, chunk, good));
  }

  @Test
  void theConnectionServesOnAfterARefusal() throws IOException {
    String chunk = Integer.toHexString(65536) + "\r\n" + " ".repeat(65536) + "\r\n";
    String large = POST + "Transfer-Encoding: chunked\r\n\r\n" + chunk.repeat(6) + "0\r\n\r\n";
    String good = POST + "Content-Length: 2\r\n\r\n{}";
    String answer = exchange(large, good);
    answers(413, answer);
    assertTrue(answer.contains("HTTP/1.1 200"), answer);
  }

  @Test
  void nobodySendsForEver() throws IOException {
    String length = String.valueOf(1L << 40);
    answers(413, exchange(POST + "Content-Length: " + length + "\r\n\r\n"));
  }

  @Test
  void leaveToSendIsGivenOnlyWhereItHelps() throws IOException {
    String waiting = POST + "Expect: 100-continue\r\n";
    answers(413, exchange(waiting + "Content-Length: 300000\r\n\r\n"));
    String good = exchange(waiting + "Content-Length: 2\r\n\r\n", "{}");
    assertTrue(good.startsWith("HTTP/1.1 100"), good);
    assertTrue(good.contains("HTTP/1.1 200"), good);
  }

  @Test
  void aTypeMustBeNamed() throws IOException {
    String post = "POST /v1/test-edge/circuits HTTP/1.1\r\nHost: t\r\nContent-Length: 2\r\n";
    answers(415, exchange(post + "\r\n{}"));
    for (String type : new String[] {"", ";;;", "nonsense", "/", "a/b/c", "application/json;x"}) {
      String answer = exchange(post + "Content-Type: " + type + "\r\n\r\n{}");
      if (!type.equals("application/json;x")) {
        assertTrue(answer.contains("application/problem+json"), type + " " + answer);
        assertTrue(answer.matches("(?s)HTTP/1.1 4(00|15) .*"), type + " " + answer);
      } else {
        assertTrue(answer.matches("(?s)HTTP/1.1 (200|400|415) .*"), type + " " + answer);
      }
    }
  }

  @Test
  void whatIsNotHttpIsRefusedByTheServerItself() throws IOException {
    // Before any of our code runs: a bare 400, and nothing that the caller could learn from it.
    for (String address : new String[] {"/v1/%zz", "/v1/%", "/v1/test-edge/limits?x=%zz"}) {
      String answer = exchange("GET " + address + " HTTP/1.1\r\nHost: t\r\n\r\n");
      assertTrue(answer.matches("(?s)HTTP/1.1 400 Bad Request\r\n.*\r\n\r\n"), answer);
    }
  }

  @Test
  void aHostMustBeNamed() throws IOException {
    answers(400, exchange("GET /v1/test-edge/constants HTTP/1.1\r\n\r\n"));
  }

  @Test
  void aClientThatLeavesHarmsNobody() throws Exception {
    for (int i = 0; i < 20; i++) {
      try (Socket socket = new Socket(server.getHost(), server.getPort())) {
        socket
            .getOutputStream()
            .write((POST + "Content-Length: 99\r\n\r\n{").getBytes(StandardCharsets.ISO_8859_1));
      }
    }
    assertTrue(
        exchange(POST + "Content-Length: 2\r\n\r\n{}").startsWith("HTTP/1.1 200"), "after leaving");
  }
}
