package circuitverdict.device.marking;

import circuitverdict.standard.Constant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** "230/400V ~", "400 V", "~ 230V", "230V/400V AC", "60VDC"; of usual pairs "230/400" alone. */
final class VoltageMark implements Recogniser {
  private static final Set<String> VOLT = Set.of("v", "volt", "volts", "vac", "vdc");
  private static final Set<String> ALTERNATING = Set.of("~", "ac");
  private static final Set<String> DIRECT = Set.of("dc", "\u2393", "=");

  @Override
  public Found at(Line line, int from) {
    int at = from;
    boolean alternating = ALTERNATING.contains(line.at(at).text());
    if (alternating && line.at(at + 1).figure()) {
      at++;
    }
    if (DIRECT.contains(line.at(at).text()) && line.at(at + 1).figure()) {
      Found found = volts(line, at + 1, true);
      return found == null ? null : Found.of("direct-voltage", null, found.end());
    }
    return volts(line, at, true);
  }

  /** The voltages from here on; with their unit where that is demanded, or as a usual pair. */
  static Found volts(Line line, int from, boolean unitWanted) {
    if (!line.at(from).figure()) {
      return null;
    }
    int at = from + 1;
    boolean unit = VOLT.contains(line.at(at).text());
    boolean direct = line.at(at).is("vdc");
    at += unit ? 1 : 0;
    double second = Double.NaN;
    if (joins(line, at) && line.at(at + 1).figure()) {
      int after = at + 2;
      boolean own = VOLT.contains(line.at(after).text());
      if (own || usual(line, one(line.at(from)), one(line.at(at + 1)))) {
        second = one(line.at(at + 1));
        direct |= line.at(after).is("vdc");
        unit |= own;
        at = own ? after + 1 : after;
      }
    }
    if (ALTERNATING.contains(line.at(at).text())) {
      at++;
    } else if (DIRECT.contains(line.at(at).text())) {
      direct = true;
      at++;
    }
    double first = one(line.at(from));
    boolean pair = usual(line, first, second);
    if (unitWanted && !unit && !pair || Double.isNaN(first)) {
      return null;
    }
    if (direct) {
      return Found.of("direct-voltage", null, at);
    }
    return Double.isNaN(second) ? single(line, first, at) : star(first, second, pair, at);
  }

  private static boolean joins(Line line, int at) {
    return line.at(at).is("/") || line.at(at).is("-");
  }

  private static double one(Lexeme figure) {
    return figure.values().length == 1 ? figure.values()[0] : Double.NaN;
  }

  private static boolean usual(Line line, double first, double second) {
    for (List<Double> pair : line.marks().vocabulary().voltagePairs()) {
      if (pair.get(0) == first && pair.get(1) == second) {
        return true;
      }
    }
    return false;
  }

  private static Found star(double first, double second, boolean usual, int end) {
    return usual
        ? Found.of(
            "rated-voltage",
            "star",
            end,
            Claim.says(DeviceMember.VOLTAGE_TO_EARTH, first),
            Claim.says(DeviceMember.VOLTAGE, second))
        : Found.ambiguous(end);
  }

  /**
   * A single voltage holds between any two poles; it is one to earth, too, where the household
   * standards know systems of such a voltage to earth.
   */
  private static Found single(Line line, double volt, int end) {
    if (!line.marks().canBe(DeviceMember.VOLTAGE.path(), volt)) {
      return Found.ambiguous(end);
    }
    List<Claim> claims = new ArrayList<>();
    claims.add(Claim.says(DeviceMember.VOLTAGE, volt));
    double greatest = line.edition().constant(Constant.BREAKER_TESTS_GREATEST_VOLTAGE).number();
    if (Math.sqrt(3) * volt <= greatest) {
      claims.add(Claim.says(DeviceMember.VOLTAGE_TO_EARTH, volt));
    }
    return new Found("rated-voltage", "single", end, claims);
  }
}
