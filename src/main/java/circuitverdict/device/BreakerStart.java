package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Shared.Topic;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/**
 * When a breaker operates at the current of a start: the step function of its standard's tests
 * ({@link TripBand}); up to the lower magnetic limit the drawn thermal curve of IEC 60898-1, by
 * guidance. A release to IEC 60947-2 has no drawn curve: its thermal zone is the maker's.
 */
final class BreakerStart implements StartBand {
  private static final Formula OF_RATED = Formula.of("Imag", Unit.AMPERE, "m·In");
  private static final Formula OF_SETTING = Formula.of("Imag", Unit.AMPERE, "(1 − δ)·Iset");
  private static final Formula HALF_WAVE =
      Formula.of("I²t,max", Unit.AMPERE_SQUARED_SECOND, "Imag²/(2·f)");

  private final ProtectiveDevice device;
  private final Figure rated;
  private final TripBand band;

  private BreakerStart(ProtectiveDevice device, Figure rated, TripBand band) {
    this.device = device;
    this.rated = rated;
    this.band = band;
  }

  static BreakerStart of(Breaker breaker, Dossier d) {
    String place = breaker.data().place();
    Figure rated = RatedCurrent.of(breaker, d);
    String letter = d.need(breaker.characteristic(), new Pointer(place, "characteristic"));
    if (letter != null && MagneticBand.of(breaker, d.edition()) == null) {
      d.missing(new Pointer(place + "/magneticMultiples", "upper"));
      return null;
    }
    return letter == null ? null : of((ProtectiveDevice) breaker, rated, d);
  }

  static BreakerStart of(AdjustableBreaker breaker, Dossier d) {
    return of(breaker, RatedCurrent.of(breaker, d), d);
  }

  private static BreakerStart of(ProtectiveDevice device, Figure rated, Dossier d) {
    TripBand band = d.once(Topic.TRIP_BAND, device, inner -> TripBand.of(device, inner.edition()));
    return band == null || !rated.known() ? null : new BreakerStart(device, rated, band);
  }

  @Override
  public Figure earliest(Figure current) {
    Value earliest = current.known() ? band.at(current.value()).earliest() : null;
    return earliest == null ? StartBand.never("te") : Figure.of("te", earliest);
  }

  @Override
  public Figure latest(Figure current) {
    Value latest = current.known() ? band.at(current.value()).latest() : null;
    return latest == null ? StartBand.never("tl") : Figure.of("tl", latest);
  }

  @Override
  public Figure drawn(Figure current, Dossier d) {
    Figure instantaneous = instantaneous(d.trial());
    if (!(device instanceof Breaker breaker)
        || !Comparator.atMost(current.value(), instantaneous.value())) {
      return StartBand.never("td");
    }
    double drawn = DrawnCurve.of(breaker, d.edition()).timeS(current.value());
    Value conventional =
        d.edition().table(TableName.BREAKER_TEST_TIMES).at("conventional", rated.value());
    Value asymptote = d.edition().constant(Constant.BREAKER_TESTS_DRAWN_ASYMPTOTE);
    // Where the curve rises without bound the standard's own hour is all that is claimed.
    return d.working()
        .look(
            drawn > conventional.number()
                ? Figure.of("td", conventional)
                : new Figure("td", drawn, Unit.SECOND, asymptote.citation()));
  }

  @Override
  public Figure instantaneous(Dossier d) {
    Figure in = rated.as("In");
    if (device instanceof Breaker breaker) {
      return d.working().step(OF_RATED, multiple(breaker, d), in);
    }
    AdjustableBreaker adjustable = (AdjustableBreaker) device;
    Figure least = Figure.unknown("Imag", Unit.AMPERE);
    Double multiple = adjustable.multiples().lower();
    if (multiple != null && device.data().ratedCurrentA() != null) {
      Pointer at = new Pointer(device.data().place(), "ratedCurrentA");
      Figure own = new Figure("In", device.data().ratedCurrentA(), Unit.AMPERE, at);
      least = d.working().step(OF_RATED, stated(multiple), own);
    }
    least = lesser(least, adjustable.settings().instantaneousA(), "instantaneousA", d);
    // A delayed release that picks up may trip within the start: its delay is not counted on.
    return lesser(least, adjustable.settings().shortTimeA(), "shortTimeA", d);
  }

  private Figure lesser(Figure least, Double setting, String member, Dossier d) {
    if (setting == null) {
      return least;
    }
    Pointer at = new Pointer(device.data().place() + "/settings", member);
    Figure set = new Figure("Iset", setting, Unit.AMPERE, at);
    Figure tolerance = d.constant("δ", Constant.ADJUSTABLE_TESTS_MAGNETIC_TOLERANCE);
    Figure other = d.working().step(OF_SETTING, tolerance, set);
    return least.known() ? Figure.lesser(least, other) : other;
  }

  private Figure multiple(Breaker breaker, Dossier d) {
    double lower = MagneticBand.of(breaker, d.edition()).lower();
    Value tabled =
        d.edition().table(TableName.MAGNETIC_BANDS).at("lower", breaker.characteristic());
    if (tabled != null && tabled.number() == lower) {
      return Figure.of("m", tabled);
    }
    Double own = breaker.multiples().lower();
    return own != null && own == lower
        ? stated(own)
        : d.constant("m", Constant.BREAKER_TESTS_CONVENTIONAL_NON_TRIPPING);
  }

  private Figure stated(double multiple) {
    String place = device.data().place() + "/magneticMultiples";
    return new Figure("m", multiple, Unit.ONE, new Pointer(place, "lower"));
  }

  /**
   * One half-wave at the lower magnetic limit does not trip it; a shorter pulse of less neither. A
   * release to IEC 60947-2 may be electronic and go by the peak: nothing is known of it.
   */
  @Override
  public Figure pulse(Dossier d) {
    if (device instanceof AdjustableBreaker) {
      return Figure.unknown("I²t,max", Unit.AMPERE_SQUARED_SECOND);
    }
    return d.working().step(HALF_WAVE, instantaneous(d), d.constant("f", Constant.FREQUENCY));
  }

  @Override
  public boolean byPeak() {
    return true;
  }

  @Override
  public Figure carried() {
    return rated;
  }
}
