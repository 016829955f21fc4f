package circuitverdict.device.marking;

import circuitverdict.standard.Marks.Label;
import circuitverdict.standard.TableName;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** "In 32 A", "IΔn = 0,03 A", "Ics=75% Icu", "Ir 0.8 x In": a symbol, then a figure. */
final class LabelledMark implements Recogniser {
  private static final int MOST_WORDS = 3;
  private static final Set<DeviceMember> SETTINGS =
      EnumSet.of(DeviceMember.LONG_TIME, DeviceMember.SHORT_TIME, DeviceMember.INSTANTANEOUS);
  private static final double PERCENT = 100;
  private static final Map<String, Double> AMPERES = Map.of("a", 1.0, "ka", 1000.0, "ma", 0.001);
  private static final Map<String, Double> VOLTS = Map.of("v", 1.0, "kv", 1000.0);
  private static final Map<String, Double> SECONDS = Map.of("s", 1.0, "ms", 0.001);
  private static final Map<String, Map<String, Double>> UNITS =
      Map.of("A", AMPERES, "V", VOLTS, "s", SECONDS);

  @Override
  public Found at(Line line, int from) {
    for (int words = MOST_WORDS; words > 0; words--) {
      Label label = label(line, from, words);
      if (label != null) {
        return preposition(line, from) ? null : figure(line, label, value(line, from + words));
      }
    }
    return null;
  }

  /** "Made in 2019": In begins with a capital. */
  private static boolean preposition(Line line, int from) {
    return line.at(from).is("in") && line.writtenAt(from) == 'i';
  }

  private static Label label(Line line, int from, int words) {
    Map<String, Label> labels = line.marks().vocabulary().labels();
    String joined = line.words(from, words, "");
    Label label = joined == null ? null : labels.get(joined);
    return label != null || joined == null ? label : labels.get(line.words(from, words, " "));
  }

  private static int value(Line line, int at) {
    return line.at(at).is("=") || line.at(at).is(":") ? at + 1 : at;
  }

  private static Found figure(Line line, Label label, int at) {
    DeviceMember member = DeviceMember.ofPath(label.member());
    if (member == DeviceMember.VOLTAGE) {
      return VoltageMark.volts(line, at, false);
    }
    if (member != null && base(line, at) != null && line.at(at).word()) {
      return Found.of(label.kind(), null, at + 1, Claim.share(member, 1, base(line, at)));
    }
    if (!line.at(at).figure()) {
      return null;
    }
    Found share = member == null ? null : share(line, label, member, at);
    return share == null ? measured(line, label, member, at) : share;
  }

  /** A symbol that stands for a member of which another is a multiple. */
  private static DeviceMember base(Line line, int at) {
    return switch (line.at(at).text()) {
      case "in", "xin" -> DeviceMember.RATED_CURRENT;
      case "ir", "xir" -> DeviceMember.LONG_TIME;
      case "icu", "icn" -> DeviceMember.BREAKING_CAPACITY;
      default -> null;
    };
  }

  private static Found share(Line line, Label label, DeviceMember member, int at) {
    double factor = line.at(at).values()[line.at(at).values().length - 1];
    int next = at + 1;
    boolean percent = line.at(next).is("%");
    next += percent ? 1 : 0;
    next += line.at(next).is("x") || line.at(next).is("of") || line.at(next).is("*") ? 1 : 0;
    DeviceMember base = base(line, next);
    boolean whole = percent && member == DeviceMember.SERVICE_CAPACITY;
    if (base == null && !whole || base == member) {
      return null;
    }
    int end = base == null ? next : next + 1;
    DeviceMember of = base == null ? DeviceMember.BREAKING_CAPACITY : base;
    double share = percent ? factor / PERCENT : factor;
    return Found.of(label.kind(), null, end, Claim.share(member, share, of));
  }

  /** Above the greatest multiple of any band the figure is no multiple: it is of amperes. */
  private static boolean beyondDial(Line line, Lexeme figure) {
    double most = line.edition().table(TableName.MAGNETIC_BANDS).at("upper", "D").number();
    return figure.values().length == 1 && figure.values()[0] > most;
  }

  private static Found measured(Line line, Label label, DeviceMember member, int at) {
    Lexeme figure = line.at(at);
    Map<String, Double> units = UNITS.get(label.unit());
    Double scale = line.at(at + 1).word() ? units.get(line.at(at + 1).text()) : null;
    int end = scale == null ? at + 1 : at + 2;
    if (member == null) {
      return Found.of(label.kind(), null, end);
    }
    boolean share = line.at(at + 1).is("%");
    if (share || scale == null && SETTINGS.contains(member) && !beyondDial(line, figure)) {
      // A dial shows multiples: a figure without its unit may be one.
      return Found.of(Found.AMBIGUOUS, null, share ? at + 2 : end, Claim.doubt(member));
    }
    Set<Double> values = new LinkedHashSet<>();
    values.addAll(line.candidates(figure, scale == null ? 1 : scale, member.path()));
    if (scale == null && member == DeviceMember.RESIDUAL_CURRENT) {
      values.addAll(line.candidates(figure, AMPERES.get("ma"), member.path()));
    }
    if (values.size() != 1) {
      return Found.of(Found.AMBIGUOUS, null, end, Claim.doubt(member));
    }
    return Found.of(label.kind(), null, end, Claim.says(member, values.iterator().next()));
  }
}
