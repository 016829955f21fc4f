package circuitverdict.service.edge;

import java.util.List;

/**
 * One thing wrong with a request. Exactly one of {@code pointer} (into the body), {@code parameter}
 * and {@code header} is set; the others are null. {@code allowed} is null unless the list is
 * closed.
 *
 * @param code a stable lower-case code
 * @param detail a sentence that says what is wanted
 * @param pointer RFC 6901 pointer into the body sent, or to the parent of what is missing
 * @param parameter name of the query or path parameter
 * @param header name of the request header
 * @param allowed the values or names that would be taken
 */
public record Fault(
    String code,
    String detail,
    String pointer,
    String parameter,
    String header,
    List<String> allowed) {

  /** A fault in the body, at {@code pointer}. */
  public static Fault inBody(String code, String detail, String pointer) {
    return new Fault(code, detail, pointer, null, null, null);
  }

  /** A fault in the body, at {@code pointer}, where only {@code allowed} is taken. */
  public static Fault inBody(String code, String detail, String pointer, List<String> allowed) {
    return new Fault(code, detail, pointer, null, null, allowed);
  }

  /** A fault in a query or path parameter; {@code allowed} may be null. */
  public static Fault inParameter(
      String code, String detail, String parameter, List<String> allowed) {
    return new Fault(code, detail, null, parameter, null, allowed);
  }

  /** A fault in a request header; {@code allowed} may be null. */
  public static Fault inHeader(String code, String detail, String header, List<String> allowed) {
    return new Fault(code, detail, null, null, header, allowed);
  }
}
