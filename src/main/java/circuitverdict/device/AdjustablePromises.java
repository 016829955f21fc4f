package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import java.util.ArrayList;
import java.util.List;

/**
 * Tests of the releases of IEC 60947-2: the conventional currents of the setting, and the tolerance
 * of the short-circuit settings. Between them the standard promises no time, and of a delay no
 * least one: that it lasts as long as it is set is guidance.
 */
final class AdjustablePromises {
  private static final Formula OF_SETTING = Formula.of("Ih", Unit.AMPERE, "(1 − δ)·Iset");
  private static final Formula OF_MULTIPLE = Formula.of("Ih", Unit.AMPERE, "m·In");

  private AdjustablePromises() {}

  static Promises of(AdjustableBreaker breaker, boolean upstream, Dossier d) {
    String settings = breaker.data().place() + "/settings";
    boolean set = breaker.settings().longTimeA() != null;
    Figure rated;
    if (upstream && !set) {
      // The setting may be less than In, and hold less.
      rated = d.need("In", null, Unit.AMPERE, new Pointer(settings, "longTimeA"));
    } else {
      rated = RatedCurrent.of(breaker, d);
    }
    Figure carried = ConventionalCurrent.carried(breaker, rated, d);
    Figure operated = ConventionalCurrent.of(breaker, rated, d);
    double atOnceS = d.edition().constant(Constant.ADJUSTABLE_TESTS_INSTANTANEOUS).number();
    boolean stated =
        breaker.settings().instantaneousA() != null || breaker.multiples().upper() != null;
    // Where the upper limit of the one upstream is not known, nothing is asked for: it only fails.
    Dossier asked = upstream && !stated ? d.trial() : d;
    Figure atOnce = AdjustableOperation.within(breaker, atOnceS, asked).current();
    Figure threshold = threshold(breaker, upstream, d);
    Promise delayed = delayed(breaker, d);
    List<Promise> opens = new ArrayList<>(2);
    List<Promise> holds = new ArrayList<>(1);
    if (rated.known()) {
      double conventional =
          d.edition()
              .table(TableName.ADJUSTABLE_TEST_TIMES)
              .at("conventional", rated.value())
              .number();
      opens.add(new Promise(operated, conventional));
      if (set && threshold.known()) {
        // What is only assumed to be set carries no promise of holding.
        Figure least = Figure.lesser(carried, threshold);
        holds.add(
            new Promise(
                delayed == null ? least : Figure.lesser(least, delayed.current()), conventional));
      }
      if (atOnce.known()) {
        opens.add(new Promise(atOnce, atOnceS));
      }
    }
    return new Promises(
        carried, operated, threshold, delayed, new Promise(atOnce, atOnceS), opens, holds);
  }

  private static Figure threshold(AdjustableBreaker breaker, boolean upstream, Dossier d) {
    String place = breaker.data().place();
    Pointer instantaneous = new Pointer(place + "/settings", "instantaneousA");
    boolean fixed = breaker.multiples().lower() != null;
    if (breaker.settings().instantaneousA() == null && !fixed) {
      if (upstream) {
        d.missing(instantaneous);
      }
      return Figure.unknown("Ih", Unit.AMPERE);
    }
    Figure least = ofSetting(breaker.settings().instantaneousA(), instantaneous, d);
    if (fixed) {
      Pointer at = new Pointer(place + "/magneticMultiples", "lower");
      Figure multiple = d.given("m", breaker.multiples().lower(), Unit.ONE, at);
      Pointer ratedAt = new Pointer(place, "ratedCurrentA");
      Figure rated = d.need("In", breaker.data().ratedCurrentA(), Unit.AMPERE, ratedAt);
      Figure own = d.working().step(OF_MULTIPLE, multiple, rated);
      least = own.known() ? Figure.lesser(own, least) : own;
    }
    return least;
  }

  /** The delayed release: without a stated delay it may open at once. */
  private static Promise delayed(AdjustableBreaker breaker, Dossier d) {
    Pointer at = new Pointer(breaker.data().place() + "/settings", "shortTimeA");
    Double setting = breaker.settings().shortTimeA();
    Double delay = breaker.settings().shortTimeDelayS();
    return setting == null
        ? null
        : new Promise(ofSetting(setting, at, d), delay == null ? 0 : delay);
  }

  private static Figure ofSetting(Double setting, Pointer at, Dossier d) {
    Figure tolerance = d.constant("δ", Constant.ADJUSTABLE_TESTS_MAGNETIC_TOLERANCE);
    return d.working().step(OF_SETTING, tolerance, d.given("Iset", setting, Unit.AMPERE, at));
  }
}
