package circuitverdict.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/**
 * The real endpoint against no-ops over HTTP, in one process and one run, in turns. What counts is
 * the processor time of the server's event loops for each request: on a server that owns one core
 * the throughput is its inverse, and neither the client nor the machine's other work is in it. Of
 * many short rounds the middle one counts; beside it stand the quarters.
 *
 * <p>{@code mvn -P benchmark test -Dtest=HttpLoadRun}. It asserts no figure.
 */
@QuarkusTest
class HttpLoadRun {
  private static final int CLIENTS = 2;

  /** Long: on a slow machine the compiler is still at work after half a minute. */
  private static final int WARM_UP_S = Integer.getInteger("load.warmUpS", 40);

  /** Short and many: other work on the machine then meets all endpoints alike. */
  private static final int ROUND_S = Integer.getInteger("load.roundS", 1);

  private static final int ROUNDS = Integer.getInteger("load.rounds", 25);
  private static final List<String> CIRCUITS =
      List.of(System.getProperty("load.circuits", "oven,failing-oven").split(","));
  private static final String REAL = "v1/circuit-checks";
  private static final List<String> PATHS =
      List.of(REAL, "benchmark/no-op", "benchmark/bare-no-op");

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  @TestHTTPResource URI root;

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  /** One endpoint under load. */
  private record Round(long requests, double cpuMicros) {}

  @Test
  void comparesTheRealEndpointWithNoOps() throws Exception {
    for (String circuit : CIRCUITS) {
      for (String preference : List.of("representation", "minimal")) {
        compare(circuit, preference);
      }
    }
  }

  private void compare(String circuit, String preference) throws Exception {
    String body = Circuits.named(circuit).json().toString();
    byte[] answer = client.send(request(REAL, body, preference), BodyHandlers.ofByteArray()).body();
    NoOpResource.answerWith(answer);
    for (String path : PATHS) {
      load(request(path, body, preference), WARM_UP_S);
    }
    double[][] micros = new double[PATHS.size()][ROUNDS];
    double[][] ratios = new double[PATHS.size()][ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < micros.length; i++) {
        Round measured = load(request(PATHS.get(i), body, preference), ROUND_S);
        micros[i][round] = measured.cpuMicros() / measured.requests();
        ratios[i][round] = micros[i][round] / micros[0][round];
      }
    }
    for (int i = 0; i < micros.length; i++) {
      Arrays.sort(micros[i]);
      Arrays.sort(ratios[i]);
      System.out.printf(
          Locale.ROOT,
          "%-12s %-14s in %5d B, out %5d B  %-22s %7.1f µs  ratio %.2f (%.2f to %.2f)%n",
          circuit,
          preference,
          body.length(),
          answer.length,
          PATHS.get(i),
          micros[i][ROUNDS / 2],
          ratios[i][ROUNDS / 2],
          ratios[i][ROUNDS / 4],
          ratios[i][ROUNDS * 3 / 4]);
    }
  }

  private HttpRequest request(String path, String body, String preference) {
    return HttpRequest.newBuilder(root.resolve("/" + path))
        .header("Content-Type", "application/json")
        .header("Prefer", "return=" + preference)
        .POST(HttpRequest.BodyPublishers.ofString(body))
        .build();
  }

  private Round load(HttpRequest request, int seconds) throws Exception {
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    ExecutorService pool = Executors.newFixedThreadPool(CLIENTS);
    long before = eventLoopNanos();
    List<Callable<Long>> callers = new ArrayList<>();
    for (int i = 0; i < CLIENTS; i++) {
      callers.add(() -> call(request, until));
    }
    long requests = 0;
    for (var done : pool.invokeAll(callers)) {
      requests += done.get();
    }
    pool.shutdown();
    return new Round(requests, (eventLoopNanos() - before) / 1000.0);
  }

  private long call(HttpRequest request, long until) throws Exception {
    long requests = 0;
    while (System.nanoTime() < until) {
      assertEquals(200, answer(request).statusCode());
      requests++;
    }
    return requests;
  }

  /**
   * Once in a million times the client closes a connection that it is about to use: asked again.
   */
  private HttpResponse<byte[]> answer(HttpRequest request) throws Exception {
    try {
      return client.send(request, BodyHandlers.ofByteArray());
    } catch (IOException closed) {
      return client.send(request, BodyHandlers.ofByteArray());
    }
  }

  private static long eventLoopNanos() {
    long nanos = 0;
    for (ThreadInfo thread : THREADS.getThreadInfo(THREADS.getAllThreadIds())) {
      if (thread != null && thread.getThreadName().startsWith("vert.x-eventloop-thread")) {
        nanos += THREADS.getThreadCpuTime(thread.getThreadId());
      }
    }
    return nanos;
  }
}
