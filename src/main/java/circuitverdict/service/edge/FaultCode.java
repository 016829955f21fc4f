package circuitverdict.service.edge;

/**
 * What can be wrong with one member, parameter or header of a request. The codes are stable:
 * clients branch on them. {@code meaning} is published with the code.
 */
public enum FaultCode {
  EMPTY_BODY("empty-body", "The request has no body, or only white space."),
  MALFORMED_JSON("malformed-json", "The body is not JSON (RFC 8259) at the line and column named."),
  MALFORMED_TEXT("malformed-text", "Text is not well-formed Unicode."),
  DUPLICATE_MEMBER("duplicate-member", "An object names the same member twice."),
  TOO_DEEP("too-deep", "Objects and arrays are nested deeper than any request needs."),
  BROKEN_COMPRESSION("broken-compression", "The gzip data cannot be inflated."),
  BODY_TOO_LARGE(
      "body-too-large", "The body, after inflation, is longer than the operation takes."),
  UNKNOWN_MEMBER("unknown-member", "The object has no such member; allowed lists those it has."),
  MISSING_MEMBER("missing-member", "A required member is absent; the pointer names its parent."),
  NULL_NOT_ALLOWED("null-not-allowed", "The value is null; leave the member out instead."),
  WRONG_TYPE("wrong-type", "The value is of another JSON type than the contract's."),
  NOT_AN_INTEGER("not-an-integer", "The number has a fraction where a whole number is wanted."),
  BELOW_MINIMUM("below-minimum", "The number lies below the least that is taken."),
  ABOVE_MAXIMUM("above-maximum", "The number, or an infinity, lies above the greatest taken."),
  TOO_SHORT("too-short", "The text has fewer characters than it must."),
  TOO_LONG("too-long", "The text has more characters than it may."),
  PATTERN_MISMATCH("pattern-mismatch", "The text is not of the form that the contract states."),
  UNKNOWN_VALUE("unknown-value", "The value is not in the closed list; allowed holds the list."),
  TOO_FEW_ITEMS("too-few-items", "The array has fewer items than it must."),
  TOO_MANY_ITEMS("too-many-items", "The array has more items than it may."),
  DUPLICATE_ITEM("duplicate-item", "The array holds the same item twice."),
  UNKNOWN_PARAMETER("unknown-parameter", "The operation has no such query parameter."),
  MISSING_PARAMETER("missing-parameter", "A required query parameter is absent."),
  REPEATED_PARAMETER("repeated-parameter", "A query parameter stands more than once."),
  MALFORMED_HEADER("malformed-header", "A request header is not of the form that it must have."),
  UNSUPPORTED_HEADER_VALUE(
      "unsupported-header-value",
      "A request header asks for or states what the service cannot do.");

  private final String code;
  private final String meaning;

  FaultCode(String code, String meaning) {
    this.code = code;
    this.meaning = meaning;
  }

  /** The stable lower-case code, as answered. */
  public String code() {
    return code;
  }

  /** One sentence on what the code says. */
  public String meaning() {
    return meaning;
  }
}
