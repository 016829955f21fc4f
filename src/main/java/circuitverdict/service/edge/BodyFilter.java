package circuitverdict.service.edge;

import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.io.ByteArrayInputStream;
import java.lang.annotation.Annotation;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;

/**
 * Takes JSON bodies in on the event loop, before the resource runs: media type, charset,
 * compression and size are settled here, and the resource's {@code byte[]} is the inflated body.
 * Runs only for a request that has found its resource; bodies of another type, which a resource
 * must name in {@code @Consumes}, pass untouched.
 */
public class BodyFilter {

  private static final Set<String> WITH_BODY = Set.of("POST", "PUT", "PATCH");
  private static final Set<String> GZIP = Set.of("gzip", "x-gzip");

  @Inject Limits limits;

  /** Suspends the request until its body is there; refuses it with 400, 413 or 415. */
  @ServerRequestFilter(nonBlocking = true)
  public void takeBody(ResteasyReactiveContainerRequestContext context) {
    if (!WITH_BODY.contains(context.getMethod())) {
      return;
    }
    MediaType type = mediaType(context);
    if (!MediaType.APPLICATION_JSON_TYPE.isCompatible(type)) {
      return;
    }
    String charset = type.getParameters().get(MediaType.CHARSET_PARAMETER);
    if (charset != null && !charset.equalsIgnoreCase("utf-8")) {
      throw unsupported("JSON is taken in UTF-8 only.", "Content-Type");
    }
    boolean compressed = isCompressed(context.getHeaderString(HttpHeaders.CONTENT_ENCODING));

    var reactive = (ResteasyReactiveRequestContext) context.getServerRequestContext();
    HttpServerRequest request = reactive.serverRequest().unwrap(RoutingContext.class).request();
    int limit = isSelectionSized(reactive) ? limits.selectionBytes() : limits.circuitBytes();
    context.suspend();
    BodyIntake.start(request, limit, new Arrival(context, compressed, limit));
  }

  private static MediaType mediaType(ContainerRequestContext context) {
    String written = context.getHeaderString(HttpHeaders.CONTENT_TYPE);
    try {
      if (written != null && !written.isBlank()) {
        return MediaType.valueOf(written);
      }
    } catch (IllegalArgumentException e) {
      // Refused below: what is no media type is none that we take.
    }
    throw unsupported("The Content-Type header must be application/json.", "Content-Type");
  }

  private static boolean isCompressed(String encoding) {
    if (encoding == null || encoding.isBlank()) {
      return false;
    }
    String coding = encoding.strip().toLowerCase(Locale.ROOT);
    if (GZIP.contains(coding)) {
      return true;
    }
    if (coding.equals("identity")) {
      return false;
    }
    throw unsupported("Bodies are sent plain or compressed with gzip.", "Content-Encoding");
  }

  private static boolean isSelectionSized(ResteasyReactiveRequestContext reactive) {
    for (Annotation annotation : reactive.getTarget().getLazyMethod().getAnnotations()) {
      if (annotation instanceof SelectionSized) {
        return true;
      }
    }
    return false;
  }

  private static InvalidRequest unsupported(String detail, String header) {
    List<String> allowed =
        header.equals("Content-Type") ? List.of("application/json") : List.of("gzip", "identity");
    String code = FaultCode.UNSUPPORTED_HEADER_VALUE.code();
    List<Fault> faults = List.of(Fault.inHeader(code, detail, header, allowed));
    return new InvalidRequest(ProblemCatalogue.UNSUPPORTED_MEDIA_TYPE, faults);
  }

  /** Hands the body to the suspended request. */
  private static final class Arrival implements BodyIntake.Outcome {

    private final ResteasyReactiveContainerRequestContext context;
    private final boolean compressed;
    private final int limit;
    // Callbacks of the connection do not come with the application's loader in development mode.
    private final ClassLoader loader = Thread.currentThread().getContextClassLoader();

    Arrival(ResteasyReactiveContainerRequestContext context, boolean compressed, int limit) {
      this.context = context;
      this.compressed = compressed;
      this.limit = limit;
    }

    @Override
    public void whole(byte[] body) {
      Thread.currentThread().setContextClassLoader(loader);
      byte[] inflated;
      try {
        inflated = compressed ? Inflation.gunzip(body, limit) : body;
      } catch (InvalidRequest e) {
        context.resume(e);
        return;
      }
      context.setEntityStream(new ByteArrayInputStream(inflated));
      context.resume();
    }

    @Override
    public void tooLarge() {
      Thread.currentThread().setContextClassLoader(loader);
      context.resume(Inflation.tooLarge(limit));
    }
  }
}
