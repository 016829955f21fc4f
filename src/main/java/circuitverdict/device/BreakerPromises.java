package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/** Tests a to e of IEC 60898-1 table 7, the same for RCBOs to IEC 61009-1. */
final class BreakerPromises {
  private static final Formula THRESHOLD = Formula.of("Ih", Unit.AMPERE, "m·In");
  private static final Formula THERMAL = Formula.of("Ic", Unit.AMPERE, "mc·In");
  private static final Formula HELD = Formula.of("Ih", Unit.AMPERE, "min(Ic; Ih)");

  private BreakerPromises() {}

  static Promises of(Breaker breaker, boolean upstream, Dossier d) {
    Figure rated = RatedCurrent.of(breaker, d);
    Figure carried = ConventionalCurrent.carried(breaker, rated, d);
    Figure operated = ConventionalCurrent.of(breaker, rated, d);
    Figure thermal =
        d.working().step(THERMAL, d.constant("mc", Constant.BREAKER_TESTS_THERMAL_TEST), rated);
    double atOnceS = d.edition().constant(Constant.BREAKER_TESTS_INSTANTANEOUS).number();
    d.need(breaker.characteristic(), new Pointer(breaker.data().place(), "characteristic"));
    // Where the upper limit of the one upstream is not known, nothing is asked for: it only fails.
    boolean asks = !upstream || MagneticBand.of(breaker, d.edition()) != null;
    Dossier asked = asks ? d : d.trial();
    Figure atOnce = BreakerOperation.within(breaker, atOnceS, asked).current();
    Figure threshold = threshold(breaker, rated, upstream, d);
    Value conventional = time("conventional", rated, d);
    Value latest = time("thermal-latest", rated, d);
    List<Promise> opens = new ArrayList<>(3);
    List<Promise> holds = new ArrayList<>(3);
    if (conventional != null && operated.known() && atOnce.known()) {
      opens.add(new Promise(operated, conventional.number()));
      if (latest != null && thermal.value() < atOnce.value()) {
        opens.add(new Promise(thermal, latest.number()));
      }
      opens.add(new Promise(atOnce, atOnceS));
    }
    if (conventional != null && threshold.known()) {
      // A magnetic release below its conventional current holds no more than that.
      holds.add(new Promise(Figure.lesser(carried, threshold), conventional.number()));
      double earliest = d.edition().constant(Constant.BREAKER_TESTS_THERMAL_EARLIEST).number();
      holds.add(new Promise(d.working().step(HELD, thermal, threshold), earliest));
      holds.add(new Promise(threshold, atOnceS));
    }
    return new Promises(
        carried, operated, threshold, null, new Promise(atOnce, atOnceS), opens, holds);
  }

  /** The lower limit of the magnetic band, as {@link MagneticBand} widens it. */
  private static Figure threshold(Breaker breaker, Figure rated, boolean upstream, Dossier d) {
    MagneticBand band = MagneticBand.of(breaker, d.edition());
    if (band == null || !rated.known()) {
      return Figure.unknown("Ih", Unit.AMPERE);
    }
    Value tabled =
        d.edition().table(TableName.MAGNETIC_BANDS).at("lower", breaker.characteristic());
    Pointer at = new Pointer(breaker.data().place() + "/magneticMultiples", "lower");
    Figure multiple;
    if (tabled != null && tabled.number() == band.lower()) {
      multiple = Figure.of("m", tabled);
    } else if (breaker.multiples().lower() != null) {
      multiple = d.given("m", band.lower(), Unit.ONE, at);
    } else {
      if (upstream) {
        d.missing(at);
      }
      return Figure.unknown("Ih", Unit.AMPERE);
    }
    return d.working().step(THRESHOLD, multiple, rated);
  }

  private static Value time(String column, Figure rated, Dossier d) {
    return rated.known()
        ? d.edition().table(TableName.BREAKER_TEST_TIMES).at(column, rated.value())
        : null;
  }
}
