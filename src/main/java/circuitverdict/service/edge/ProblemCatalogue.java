package circuitverdict.service.edge;

/**
 * The kinds of problem the service answers with (RFC 9457). Type and title never change for a kind;
 * the status is that of the usual case, and a problem may state another.
 */
public enum ProblemCatalogue {
  MALFORMED_REQUEST(
      "malformed-request",
      400,
      "The request cannot be read",
      "The address, a header or the compression of the request is not well formed."),
  MALFORMED_JSON(
      "malformed-json",
      400,
      "The body is not JSON",
      "The body cannot be read as one JSON value; the errors name line and column."),
  NOT_FOUND("not-found", 404, "There is nothing here", "The service has nothing at this address."),
  METHOD_NOT_ALLOWED(
      "method-not-allowed",
      405,
      "The method is not allowed",
      "The address exists, but not for this method; the Allow header lists those it has."),
  NOT_ACCEPTABLE(
      "not-acceptable",
      406,
      "The answer cannot be given in that form",
      "The Accept header admits none of the media types that the operation answers with."),
  BODY_TOO_LARGE(
      "body-too-large",
      413,
      "The body is too large",
      "The body, counted after inflation, is longer than the operation takes."),
  UNSUPPORTED_MEDIA_TYPE(
      "unsupported-media-type",
      415,
      "The body's media type is not supported",
      "Bodies are application/json in UTF-8, plain or compressed with gzip."),
  INVALID_REQUEST(
      "invalid-request",
      422,
      "The request is not valid",
      "The request can be read but breaks the contract; the errors list everything wrong."),
  UNKNOWN_EDITION(
      "unknown-edition",
      422,
      "The edition is not known",
      "No such edition is held; the errors list those there are. Another one never stands in."),
  INTERNAL_ERROR(
      "internal-error",
      500,
      "The service failed",
      "The fault is the service's own and has been recorded; the request may be sent again."),
  UNAVAILABLE(
      "unavailable",
      503,
      "The service is not available now",
      "The service cannot answer at the moment; Retry-After says in how many seconds to try.");

  private static final String PREFIX = "urn:circuit-verdicts:problem:";

  private final String slug;
  private final int status;
  private final String title;
  private final String meaning;

  ProblemCatalogue(String slug, int status, String title, String meaning) {
    this.slug = slug;
    this.status = status;
    this.title = title;
    this.meaning = meaning;
  }

  /** The kind's lower-case name. */
  public String slug() {
    return slug;
  }

  /** The absolute URI that identifies the kind. */
  public String type() {
    return PREFIX + slug;
  }

  /** The status of the usual case. */
  public int status() {
    return status;
  }

  /** The constant title. */
  public String title() {
    return title;
  }

  /** One sentence on what the kind means; it also serves as detail where there is none better. */
  public String meaning() {
    return meaning;
  }

  /** The kind that stands for a bare HTTP status; never null for 4xx and 5xx. */
  public static ProblemCatalogue ofStatus(int status) {
    switch (status) {
      case 404:
        return NOT_FOUND;
      case 405:
        return METHOD_NOT_ALLOWED;
      case 406:
        return NOT_ACCEPTABLE;
      case 413:
        return BODY_TOO_LARGE;
      case 415:
        return UNSUPPORTED_MEDIA_TYPE;
      case 422:
        return INVALID_REQUEST;
      case 503:
        return UNAVAILABLE;
      default:
        return status < 500 ? MALFORMED_REQUEST : INTERNAL_ERROR;
    }
  }
}
