package circuitverdict.service.edge;

import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Inject;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Every way in which a resource, or the way to it, can fail becomes a problem. */
public class ProblemMappers {

  private static final Logger LOG = Logger.getLogger(ProblemMappers.class);
  static final String RETRY_AFTER_S = "5";

  @Inject Contract contract;

  /** The caller's doing, found by us. */
  @ServerExceptionMapper
  public Response invalid(InvalidRequest fault) {
    return response(fault.problem()).build();
  }

  /** The caller's doing, found by the framework; or an answer that a resource chose to throw. */
  @ServerExceptionMapper
  public Response framework(WebApplicationException fault, HttpServerRequest request) {
    Response given = fault.getResponse();
    if (given.getStatus() < 400) {
      return given;
    }
    if (given.getStatus() >= 500 && given.getStatus() != 503) {
      return failure(fault, request);
    }
    Response.ResponseBuilder answer = response(Problem.ofStatus(given.getStatus()));
    if (given.getStatus() == 405) {
      // The framework does not say which methods there are; the contract does.
      answer.header(HttpHeaders.ALLOW, String.join(", ", contract.methods(request.path())));
    }
    String retryAfter = given.getHeaderString(HttpHeaders.RETRY_AFTER);
    if (retryAfter != null) {
      answer.header(HttpHeaders.RETRY_AFTER, null).header(HttpHeaders.RETRY_AFTER, retryAfter);
    }
    return answer.build();
  }

  /** Our own doing: recorded with its cause, of which the caller learns nothing. */
  @ServerExceptionMapper
  public Response failure(Throwable fault, HttpServerRequest request) {
    LOG.errorf(fault, "%s %s failed", request.method(), request.path());
    return response(Problem.of(ProblemCatalogue.INTERNAL_ERROR)).build();
  }

  /** The problem as a response, to be completed. */
  public static Response.ResponseBuilder response(Problem problem) {
    Response.ResponseBuilder answer =
        Response.status(problem.status())
            .type(Problem.MEDIA_TYPE)
            .header(HttpHeaders.CONTENT_LANGUAGE, "en")
            .entity(problem.toJson());
    if (problem.status() == 503) {
      answer.header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_S);
    }
    return answer;
  }
}
