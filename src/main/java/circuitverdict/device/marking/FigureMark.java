package circuitverdict.device.marking;

import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import java.util.List;
import java.util.Set;

/**
 * A figure with a unit and no symbol: "30 mA", "6kA", "63 A", "50/60 Hz", "4 kV", "40 °C", "2P".
 */
final class FigureMark implements Recogniser {
  /** Of a range: a dash, or dots. */
  private static final int MOST_SIGNS = 3;

  private static final Set<String> BEFORE_AN_END =
      Set.of("-", "+", "/", ".", "~", "to", "max", "min", "up", "below", "above");

  @Override
  public Found at(Line line, int from) {
    Lexeme figure = line.at(from);
    if (!figure.figure()) {
      return null;
    }
    int frequency = frequency(line, from);
    if (frequency > 0) {
      return Found.of("frequency", nominal(line, from, frequency) ? null : "other", frequency);
    }
    if (line.at(from + 1).is("\u00B0") && line.at(from + 2).is("c")) {
      // An end of a range or a limit is no reference.
      return from > 0 && BEFORE_AN_END.contains(line.at(from - 1).text())
          ? Found.of("reference-temperature", null, from + 3)
          : said(line, "reference-temperature", DeviceMember.REFERENCE_TEMPERATURE, from, 1, 3);
    }
    int unit = line.at(from + 1).is("-") ? from + 2 : from + 1;
    return switch (line.at(unit).text()) {
      case "p", "pole", "poles" -> poles(line, from, unit + 1);
      case "ma" -> said(line, "residual-current", DeviceMember.RESIDUAL_CURRENT, from, 0.001, 2);
      case "ka" -> capacity(line, from);
      case "kv" -> Found.of("impulse-voltage", null, from + 2);
      case "a" -> ampere(line, from);
      default -> multiples(line, from);
    };
  }

  private static int frequency(Line line, int from) {
    if (line.at(from + 1).is("hz")) {
      return from + 2;
    }
    boolean joined = line.at(from + 1).is("/") || line.at(from + 1).is("-");
    return joined && line.at(from + 2).figure() && line.at(from + 3).is("hz") ? from + 4 : -1;
  }

  private static boolean nominal(Line line, int from, int end) {
    double nominal = line.edition().constant(Constant.FREQUENCY).number();
    for (int i = from; i < end; i++) {
      if (line.at(i).figure() && line.at(i).values()[0] == nominal) {
        return true;
      }
    }
    return false;
  }

  private static Found said(
      Line line, String kind, DeviceMember member, int from, double scale, int length) {
    List<Double> values = line.candidates(line.at(from), scale, member.path());
    return values.size() == 1
        ? Found.of(kind, null, from + length, Claim.says(member, values.get(0)))
        : Found.ambiguous(from + length);
  }

  private static Found capacity(Line line, int from) {
    List<Double> values =
        line.candidates(line.at(from), 1000, DeviceMember.BREAKING_CAPACITY.path());
    return values.size() == 1
        ? Found.bare("breaking-capacity", null, from + 2, Claim.capacity(values.get(0)))
        : Found.ambiguous(from + 2);
  }

  /** Amperes alone: a short-circuit capacity, a residual current or the rated current. */
  private static Found ampere(Line line, int from) {
    int end = from + 2;
    double capacity = line.standardCapacity(line.at(from));
    if (!Double.isNaN(capacity)) {
      return Found.bare("breaking-capacity", null, end, Claim.capacity(capacity));
    }
    if (line.at(from).values().length > 1) {
      return Found.ambiguous(end);
    }
    double ampere = line.at(from).values()[0];
    boolean residual =
        line.edition().table(TableName.RESIDUAL_RATINGS).at("industrial", ampere) != null;
    if (ampere < 1 && residual) {
      return line.usualRating(ampere)
          ? Found.ambiguous(end)
          : Found.of(
              "residual-current", null, end, Claim.says(DeviceMember.RESIDUAL_CURRENT, ampere));
    }
    List<Double> values = line.candidates(line.at(from), 1, DeviceMember.RATED_CURRENT.path());
    return values.size() == 1
        ? Found.bare(
            "rated-current", null, end, Claim.says(DeviceMember.RATED_CURRENT, values.get(0)))
        : Found.ambiguous(end);
  }

  /** Beside a neutral the poles that it has as a whole are not told. */
  private static Found poles(Line line, int from, int end) {
    if (line.at(from).values()[0] != Math.rint(line.at(from).values()[0])) {
      return null;
    }
    boolean neutral = line.at(end).is("+") && line.at(end + 1).is("n");
    return neutral
        ? said(line, "protected-poles", DeviceMember.PROTECTED_POLES, from, 1, end + 2 - from)
        : said(line, "poles", DeviceMember.POLES, from, 1, end - from);
  }

  /** "8-12 In", "10…14 x In": the maker's magnetic limits. */
  private static Found multiples(Line line, int from) {
    int at = from + 1;
    while (at - from <= MOST_SIGNS && (line.at(at).is("-") || line.at(at).is("."))) {
      at++;
    }
    int end = line.at(at + 1).is("x") ? at + 2 : at + 1;
    boolean ofRated = line.at(end).is("in") || line.at(end).is("xin");
    if (at == from + 1 || !line.at(at).figure() || !ofRated) {
      return null;
    }
    var lower = line.candidates(line.at(from), 1, DeviceMember.LOWER_MULTIPLE.path());
    var upper = line.candidates(line.at(at), 1, DeviceMember.UPPER_MULTIPLE.path());
    boolean sound = lower.size() == 1 && upper.size() == 1 && lower.get(0) <= upper.get(0);
    return sound
        ? Found.of(
            "magnetic-limits",
            null,
            end + 1,
            Claim.says(DeviceMember.LOWER_MULTIPLE, lower.get(0)),
            Claim.says(DeviceMember.UPPER_MULTIPLE, upper.get(0)))
        : Found.ambiguous(end + 1);
  }
}
