package circuitverdict.service.edge;

import io.quarkus.runtime.configuration.MemorySize;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * What happens under /v1 before and after the resources: the correlation id is taken and given
 * back, absurdly long bodies are refused, and whatever no resource answered is a problem too.
 */
@ApplicationScoped
public class EdgeRoutes {

  private static final Logger LOG = Logger.getLogger(EdgeRoutes.class);
  private static final String UNDER = "/v1/*";
  // Before the server's own limit (-2), whose answer is no problem document.
  private static final int FIRST = -100;
  // After the resources and all else.
  private static final int LAST = 100_000;

  private final long maximumBody;

  EdgeRoutes(@ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize maximumBody) {
    this.maximumBody = maximumBody.asLongValue();
  }

  void register(@Observes Router router) {
    // A request without a host, for instance, is refused before any route is looked at.
    router.errorHandler(400, EdgeRoutes::fail);
    router.route(UNDER).order(FIRST).handler(this::enter).failureHandler(EdgeRoutes::fail);
    router
        .route(UNDER)
        .order(LAST)
        .handler(context -> answer(context, Problem.of(ProblemCatalogue.NOT_FOUND)));
  }

  private void enter(RoutingContext context) {
    List<String> ids = context.request().headers().getAll(CorrelationId.HEADER);
    if (!ids.isEmpty()) {
      if (ids.size() > 1 || !CorrelationId.isValid(ids.get(0))) {
        answer(context, CorrelationId.refusal());
        return;
      }
      context.response().putHeader(CorrelationId.HEADER, ids.get(0));
    }
    if (BodyIntake.declaresMoreThan(context.request(), maximumBody)) {
      BodyIntake.start(context.request(), maximumBody, new Refusal(context, maximumBody));
      return;
    }
    context.next();
  }

  private static void fail(RoutingContext context) {
    int status = context.statusCode();
    if (context.failure() instanceof InvalidRequest) {
      answer(context, ((InvalidRequest) context.failure()).problem());
      return;
    }
    if (status < 400 || status >= 500) {
      LOG.errorf(
          context.failure(), "%s %s failed", context.request().method(), context.request().path());
    }
    answer(context, Problem.ofStatus(status < 400 ? 500 : status));
  }

  private static void answer(RoutingContext context, Problem problem) {
    HttpServerResponse response = context.response();
    if (response.ended() || response.closed()) {
      return;
    }
    if (response.headWritten()) {
      // Too late for a problem: an answer cut short must not look whole.
      context.request().connection().close();
      return;
    }
    response.setStatusCode(problem.status());
    response.putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE);
    response.putHeader(HttpHeaders.CONTENT_LANGUAGE, "en");
    if (problem.status() == 503) {
      response.putHeader(HttpHeaders.RETRY_AFTER, ProblemMappers.RETRY_AFTER_S);
    }
    response.end(Buffer.buffer(problem.toJson()));
  }

  /** Answers 413 once the client will listen. */
  private record Refusal(RoutingContext context, long limit) implements BodyIntake.Outcome {

    @Override
    public void whole(byte[] body) {
      // Fewer bytes came than were declared, which the server's decoder does not let happen.
      tooLarge();
    }

    @Override
    public void tooLarge() {
      answer(context, Inflation.tooLarge(limit).problem());
    }
  }
}
