package circuitverdict.service.edge;

import java.util.List;
import java.util.regex.Pattern;

/** A caller's own name for a request: given back as a header, never part of an answer's body. */
final class CorrelationId {

  static final String HEADER = "X-Correlation-ID";

  private static final Pattern FORM = Pattern.compile("[A-Za-z0-9._:-]{1,128}");

  private CorrelationId() {}

  static boolean isValid(String id) {
    return FORM.matcher(id).matches();
  }

  static Problem refusal() {
    String detail =
        "The header must stand once, with 1 to 128 letters, digits, dots, underscores, colons or"
            + " hyphens.";
    String code = FaultCode.MALFORMED_HEADER.code();
    ProblemCatalogue kind = ProblemCatalogue.INVALID_REQUEST;
    List<Fault> faults = List.of(Fault.inHeader(code, detail, HEADER, null));
    return new Problem(kind, kind.status(), detail, faults);
  }
}
