package circuitverdict.service.edge;

import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;

/**
 * Takes a body off the wire without ever holding more of it than the limit. What comes beyond is
 * read and dropped for a while, since most clients look at the answer only after they have sent
 * all; a client that goes on for too long, or waits for leave to send, is answered at once and cut
 * off.
 */
final class BodyIntake {

  /** Told once, on the event loop, how the intake ended. */
  interface Outcome {
    void whole(byte[] body);

    void tooLarge();
  }

  private static final long MAXIMUM_DROPPED = 16L << 20;

  private final HttpServerRequest request;
  private final long limit;
  private final Outcome outcome;
  private Buffer kept = Buffer.buffer();
  private long received;
  private boolean over;

  private BodyIntake(HttpServerRequest request, long limit, Outcome outcome) {
    this.request = request;
    this.limit = limit;
    this.outcome = outcome;
  }

  /** Starts the intake; the outcome may be told before this returns. */
  static void start(HttpServerRequest request, long limit, Outcome outcome) {
    new BodyIntake(request, limit, outcome).start();
  }

  /** True where the request itself says that its body is longer. */
  static boolean declaresMoreThan(HttpServerRequest request, long limit) {
    return declaredLength(request) > limit;
  }

  private void start() {
    if (request.isEnded()) {
      finish(() -> outcome.whole(new byte[0]));
      return;
    }
    boolean awaitsLeave = "100-continue".equalsIgnoreCase(request.getHeader(HttpHeaders.EXPECT));
    long declared = declaredLength(request);
    if (declared > limit && (awaitsLeave || declared > MAXIMUM_DROPPED)) {
      cutOff();
      return;
    }
    request.handler(this::take);
    request.endHandler(end -> finish(kept == null ? outcome::tooLarge : this::deliver));
    if (awaitsLeave) {
      request.response().writeContinue();
    }
    request.resume();
  }

  private void take(Buffer part) {
    received += part.length();
    if (received <= limit) {
      kept.appendBuffer(part);
      return;
    }
    kept = null;
    if (received > MAXIMUM_DROPPED && !over) {
      cutOff();
    }
  }

  private void deliver() {
    outcome.whole(kept.getBytes());
  }

  private void cutOff() {
    if (request.version() != HttpVersion.HTTP_2) {
      request.response().putHeader(HttpHeaders.CONNECTION, HttpHeaders.CLOSE);
    }
    finish(outcome::tooLarge);
  }

  private void finish(Runnable end) {
    if (!over) {
      over = true;
      end.run();
    }
  }

  private static long declaredLength(HttpServerRequest request) {
    String declared = request.getHeader(HttpHeaders.CONTENT_LENGTH);
    try {
      return declared == null ? -1 : Long.parseLong(declared);
    } catch (NumberFormatException e) {
      // A length that is no number of 64 bits: the server's own decoder has refused all others.
      return Long.MAX_VALUE;
    }
  }
}
