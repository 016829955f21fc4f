package circuitverdict.service.edge;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Text of bounded length, of a stated form, or from a closed list. Lengths count code points. */
final class StringShape implements Shape {

  private final int minimumLength;
  private final int maximumLength;
  private final Pattern pattern;
  private final List<String> allowed;
  private final Set<String> allowedSet;

  /**
   * @param pattern searched for in the text, or null
   * @param allowed the closed list, empty where there is none
   */
  StringShape(int minimumLength, int maximumLength, Pattern pattern, List<String> allowed) {
    this.minimumLength = minimumLength;
    this.maximumLength = maximumLength;
    this.pattern = pattern;
    this.allowed = List.copyOf(allowed);
    this.allowedSet = new HashSet<>(allowed);
  }

  int minimumLength() {
    return minimumLength;
  }

  int maximumLength() {
    return maximumLength;
  }

  Pattern pattern() {
    return pattern;
  }

  List<String> allowed() {
    return allowed;
  }

  @Override
  public String wanted() {
    return "text";
  }

  @Override
  public void check(JsonNode value, Place place, Faults faults) {
    if (!value.isTextual()) {
      reportType(value, place, faults);
      return;
    }
    String text = value.textValue();
    if (!allowed.isEmpty()) {
      if (!allowedSet.contains(text)) {
        reportUnknown(text, place, faults);
      }
      return;
    }
    if (!Text.isWellFormed(text)) {
      String detail = place.subject() + " holds half of a surrogate pair.";
      faults.add(FaultCode.MALFORMED_TEXT, place, detail);
      return;
    }
    // Code points are never more than chars: the exact count is needed only beyond the bound.
    if (text.length() > maximumLength && text.codePointCount(0, text.length()) > maximumLength) {
      String detail = place.subject() + " must have at most " + maximumLength + " characters.";
      faults.add(FaultCode.TOO_LONG, place, detail);
      return;
    }
    if (minimumLength > 0 && text.codePointCount(0, text.length()) < minimumLength) {
      String detail = place.subject() + " must have at least " + minimumLength + " characters.";
      faults.add(FaultCode.TOO_SHORT, place, detail);
    }
    if (pattern != null && !pattern.matcher(text).find()) {
      String detail =
          place.subject() + " must match " + pattern.pattern().replace("\\z", "$") + ".";
      faults.add(FaultCode.PATTERN_MISMATCH, place, detail);
    }
  }

  private void reportUnknown(String text, Place place, Faults faults) {
    String nearest = Text.nearest(text, allowed);
    String hint = nearest == null ? "." : "; did you mean \"" + nearest + "\"?";
    String detail = place.subject() + " is not one of the values allowed" + hint;
    faults.add(FaultCode.UNKNOWN_VALUE, place, detail, allowed);
  }
}
