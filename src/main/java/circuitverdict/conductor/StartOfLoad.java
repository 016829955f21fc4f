package circuitverdict.conductor;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.LoadInrush;
import circuitverdict.circuit.LoadInrush.Starting;
import circuitverdict.conductor.LoadStart.Held;
import circuitverdict.conductor.LoadStart.Kind;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Working;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Finds what one load, or one part, draws when it starts (512, common practice): from what is
 * stated of its start, for a quotation from the worst typical values, listed. A resistance draws no
 * more than its running current, a charging point neither, by guidance.
 */
final class StartOfLoad {
  private static final Formula OF_MULTIPLE = Formula.of("Ist", Unit.AMPERE, "m·Ib");
  private static final Formula OF_PEAK = Formula.of("Ist", Unit.AMPERE, "ip/√2");
  private static final Formula OF_ONE = Formula.of("Ist1", Unit.AMPERE, "m·Ib/n");
  private static final Formula PEAKS = Formula.of("ip", Unit.AMPERE, "n·ip1");
  private static final Formula SYMMETRIC = Formula.of("ip", Unit.AMPERE, "√2·Ist");
  private static final Formula OFFSET = Formula.of("ip", Unit.AMPERE, "2·√2·Ist");
  private static final Formula IN_DELTA = Formula.of("Idelta", Unit.AMPERE, "3·Ist");
  private static final Formula ENERGY = Formula.of("I²t", Unit.AMPERE_SQUARED_SECOND, "Ist²·tst");
  private static final Formula PEAK_ENERGY =
      Formula.of("I²t", Unit.AMPERE_SQUARED_SECOND, "ip²·tst");
  private static final Formula HALF_WAVE = Formula.of("th", Unit.SECOND, "1/(2·f)");

  /** Kinds whose inductance may offset the first wave of their current. */
  private static final Set<Load.Kind> UNOFFSET =
      EnumSet.of(
          Load.Kind.RESISTIVE,
          Load.Kind.VEHICLE_CHARGING,
          Load.Kind.TRANSFORMER,
          Load.Kind.LED,
          Load.Kind.DISCHARGE,
          Load.Kind.FILAMENT,
          Load.Kind.ELECTRONIC);

  /** Kinds that hold their starting current while they start. */
  private static final Set<Load.Kind> HOLDING =
      EnumSet.of(Load.Kind.RESISTIVE, Load.Kind.MOTOR, Load.Kind.WELDING, Load.Kind.X_RAY);

  private final Circuit circuit;
  private final LiveConductors live;
  private final Dossier d;

  StartOfLoad(Circuit circuit, LiveConductors live, Dossier d) {
    this.circuit = circuit;
    this.live = live;
    this.d = d;
  }

  LoadStart of(Load load, String place) {
    boolean stated = load.inrush().stated();
    if (!load.parts().isEmpty() && !stated) {
      return new SumOfStarts(d).of(load.parts(), place, this);
    }
    if (load.kind() == null) {
      d.missing(new Pointer(place, "kind"));
      return LoadStart.UNKNOWN;
    }
    boolean steady =
        load.kind() == Load.Kind.RESISTIVE || load.kind() == Load.Kind.VEHICLE_CHARGING;
    return steady && !stated ? steady(load, place) : started(load, place);
  }

  private LoadStart steady(Load load, String place) {
    d.assume(NoteCode.ASSUMED_NO_INRUSH, new Pointer(place, "inrush"));
    if (load.kind() == Load.Kind.VEHICLE_CHARGING) {
      // The vehicle asks for its current after it is connected; what its filters draw is not known.
      d.restsOn(Dossier.Strength.GUIDANCE);
    }
    Figure running = running(load, place).as("Ist");
    if (!running.known()) {
      return LoadStart.UNKNOWN;
    }
    Figure peak = d.working().step(SYMMETRIC, running);
    Figure none = LoadStart.UNKNOWN.energy();
    Figure noTime = LoadStart.UNKNOWN.duration();
    return new LoadStart(Kind.STEADY, running, noTime, peak, running, false, none, List.of());
  }

  private LoadStart started(Load load, String place) {
    String at = place + "/inrush";
    LoadInrush inrush = load.inrush();
    String row = row(load, at);
    Figure duration = value("tst", inrush.durationS(), Unit.SECOND, "duration", row, at);
    Figure one =
        d.given("ip1", inrush.peakCurrentA(), Unit.AMPERE, new Pointer(at, "peakCurrentA"));
    boolean motor = load.kind() == Load.Kind.MOTOR;
    boolean byPeak = inrush.currentMultiple() == null && !motor && (one.known() || peaked(load));
    if (byPeak) {
      Figure peak = value("ip1", inrush.peakCurrentA(), Unit.AMPERE, "peak", row, at);
      return peak.known()
          ? pulsed(d.working().step(PEAKS, items(load, place), peak), duration)
          : LoadStart.UNKNOWN;
    }
    Figure multiple = value("m", inrush.currentMultiple(), Unit.ONE, "multiple", row, at);
    Figure running = running(load, place);
    boolean unclear = motor && row == null && inrush.starting() == null;
    if (!multiple.known() || !running.known() || !duration.known() || unclear) {
      return LoadStart.UNKNOWN;
    }
    Figure current = d.working().step(OF_MULTIPLE, multiple, running.as("Ib"));
    Figure peaks = one.known() ? d.working().step(PEAKS, items(load, place), one) : one;
    if (one.known() && !peaks.known()) {
      return LoadStart.UNKNOWN;
    }
    return lasting(
        load, place, current, duration, peaks, held(load, place, multiple, running, duration));
  }

  private LoadStart pulsed(Figure peak, Figure duration) {
    if (!peak.known() || !duration.known()) {
      return LoadStart.UNKNOWN;
    }
    Figure current = d.working().step(OF_PEAK, peak);
    Figure energy = d.working().step(PEAK_ENERGY, peak, duration);
    return new LoadStart(
        kind(duration), current, duration, peak, current, false, energy, List.of());
  }

  private LoadStart lasting(
      Load load, String place, Figure current, Figure duration, Figure peaks, List<Held> held) {
    Figure symmetric = d.working().step(SYMMETRIC, current);
    boolean starDelta = load.inrush().starting() == Starting.STAR_DELTA;
    boolean offset = !peaks.known() && !UNOFFSET.contains(load.kind());
    Figure peak = Figure.greater(symmetric, peaks);
    Figure guided = current;
    if (offset) {
      // The peak at the changeover to delta is bounded by nothing that is stated.
      peak = starDelta ? Figure.unknown("ip", Unit.AMPERE) : d.working().step(OFFSET, current);
      guided = starDelta ? d.working().step(IN_DELTA, current) : current;
    } else if (peaks.known()) {
      guided = d.working().step(OF_PEAK, peak);
    }
    // A pulse is told by its peak and half-value time: its energy is that of the peak.
    boolean byPeak = peaks.known() || kind(duration) == Kind.PULSE && peak.known();
    Figure energy =
        byPeak
            ? d.working().step(PEAK_ENERGY, peak, duration)
            : d.working().step(ENERGY, current, duration);
    return new LoadStart(kind(duration), current, duration, peak, guided, offset, energy, held);
  }

  private Kind kind(Figure duration) {
    Figure half = Working.silent().step(HALF_WAVE, d.constant("f", Constant.FREQUENCY));
    return Comparator.atMost(duration.value(), half.value()) ? Kind.PULSE : Kind.LASTING;
  }

  /** The start of one item alone, where it holds its current: that much is certain. */
  private List<Held> held(
      Load load, String place, Figure multiple, Figure running, Figure duration) {
    if (!HOLDING.contains(load.kind()) || !load.parts().isEmpty()) {
      return List.of();
    }
    Figure one = d.working().step(OF_ONE, multiple, running.as("Ib"), count(load, place));
    return List.of(new Held(one, duration));
  }

  /** The running current of all of it together: as stated, else by its ratings. */
  Figure running(Load load, String place) {
    return load.kind() == Load.Kind.SOCKET_OUTLETS && load == circuit.load()
        ? DesignCurrent.of(circuit, live, d)
        : DesignCurrent.ofOne(circuit, live, load.together(), place, d);
  }

  /** The row of typical values: by how a motor is started, else by the kind; null for none. */
  private String row(Load load, String at) {
    if (load.kind() != Load.Kind.MOTOR) {
      return word(load.kind());
    }
    Starting starting = load.inrush().starting();
    if (starting != null) {
      return word(starting);
    }
    Pointer pointer = new Pointer(at, "starting");
    if (!d.allows(Allowance.TYPICAL_VALUES)) {
      d.missing(pointer);
      return null;
    }
    d.assumeCurable(NoteCode.ASSUMED_DIRECT_ON_LINE, pointer);
    return word(Starting.DIRECT_ON_LINE);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A figure as stated, or the worst typical one where the stage allows it and there is one. */
  private Figure value(
      String symbol, Double stated, Unit unit, String column, String row, String at) {
    Table typical = d.edition().table(TableName.INRUSH_TYPICAL);
    Value standIn = row == null ? null : typical.at(column, row);
    Pointer pointer = new Pointer(at, member(column));
    return standIn == null
        ? d.need(symbol, stated, unit, pointer)
        : d.orAssume(
            symbol, stated, pointer, standIn, Allowance.TYPICAL_VALUES, NoteCode.TYPICAL_INRUSH);
  }

  private static String member(String column) {
    return switch (column) {
      case "duration" -> "durationS";
      case "peak" -> "peakCurrentA";
      default -> "currentMultiple";
    };
  }

  /** Kinds whose makers state a peak of one, not a multiple. */
  private static boolean peaked(Load load) {
    return load.kind() == Load.Kind.LED || load.kind() == Load.Kind.ELECTRONIC;
  }

  /**
   * How many peaks of one add up: of lamps and electronics one seldom stands for the whole load.
   */
  private Figure items(Load load, String place) {
    boolean many = peaked(load) || load.kind() == Load.Kind.DISCHARGE;
    if (many && load.count() == null) {
      d.missing(new Pointer(place, "count"));
      return Figure.unknown("n", Unit.ONE);
    }
    return count(load, place);
  }

  private static Figure count(Load load, String place) {
    return load.count() == null
        ? Figure.derived("n", 1, Unit.ONE)
        : new Figure("n", load.count(), Unit.ONE, new Pointer(place, "count"));
  }
}
