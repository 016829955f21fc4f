package circuitverdict.service.edge;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * Answers of status 200 and 304 with the headers that all of them share. The entity tag is the
 * content's digest, so equal bytes have equal tags on every instance.
 */
public final class Representation {

  private static final String VARY = "Prefer, Accept, Accept-Language";
  private static final String CACHE = "public, max-age=3600";
  private static final int TAG_BYTES = 16;

  private Representation() {}

  /** The answer to a POST; preconditions are ignored there. */
  public static Response answer(Preference preference, byte[] json) {
    return complete(Response.ok(json), preference, etag(json)).build();
  }

  /** The answer to a GET that knows no preference. */
  public static Response cacheable(HttpHeaders headers, byte[] json) {
    return cacheable(headers, Preference.NONE, json);
  }

  /** The answer to a GET: 304 without a body where the caller holds these very bytes. */
  public static Response cacheable(HttpHeaders headers, Preference preference, byte[] json) {
    String etag = etag(json);
    boolean held = matches(headers.getRequestHeader(HttpHeaders.IF_NONE_MATCH), etag);
    Response.ResponseBuilder answer = held ? Response.notModified() : Response.ok(json);
    return complete(answer, preference, etag).header(HttpHeaders.CACHE_CONTROL, CACHE).build();
  }

  /** The strong entity tag of the content, quotes included. */
  public static String etag(byte[] content) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
      return '"' + HexFormat.of().formatHex(digest, 0, TAG_BYTES) + '"';
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }

  private static Response.ResponseBuilder complete(
      Response.ResponseBuilder answer, Preference preference, String etag) {
    answer
        .type(MediaType.APPLICATION_JSON_TYPE)
        .header(HttpHeaders.ETAG, etag)
        .header(HttpHeaders.VARY, VARY)
        .header(HttpHeaders.CONTENT_LANGUAGE, "en");
    if (preference.applied() != null) {
      answer.header("Preference-Applied", preference.applied());
    }
    return answer;
  }

  /** Whether the If-None-Match lines name the tag; compared weakly (RFC 9110, 13.1.2). */
  private static boolean matches(List<String> lines, String etag) {
    if (lines == null) {
      return false;
    }
    for (String line : lines) {
      for (String tag : HeaderList.split(line, ',')) {
        if (tag.equals("*") || tag.equals(etag) || tag.equals("W/" + etag)) {
          return true;
        }
      }
    }
    return false;
  }
}
