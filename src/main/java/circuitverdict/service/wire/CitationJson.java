package circuitverdict.service.wire;

import circuitverdict.standard.Citation;

/** A citation as the contract writes it. */
final class CitationJson {
  private CitationJson() {}

  static String text(Citation citation) {
    StringBuilder out = new StringBuilder(128);
    member(out, "{", "standard", citation.standard());
    member(out, ",", "reference", citation.reference());
    if (citation.confidence() != null) {
      member(out, ",", "confidence", citation.confidence().word());
      if (!citation.seen().isEmpty()) {
        member(out, ",", "seen", String.join(" ", citation.seen()));
      }
    }
    if (citation.carriedOverFrom() != null) {
      member(out, ",", "carriedOverFrom", citation.carriedOverFrom());
    }
    return out.append('}').toString();
  }

  private static void member(StringBuilder out, String before, String name, String text) {
    out.append(before).append('"').append(name).append("\":").append(Stretches.quoted(text));
  }
}
