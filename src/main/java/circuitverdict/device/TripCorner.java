package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Working;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * How a corner of a {@link TripBand} is found, for the reader: a multiple of the standard's tests
 * or a stated one times In, or a setting plus its tolerance. Only what is explained looks for it.
 */
final class TripCorner {
  private static final Formula OF_RATED = Formula.of("I", Unit.AMPERE, "m·In");
  private static final Formula OF_SETTING = Formula.of("I", Unit.AMPERE, "(1 + δ)·Iset");

  /** One of the ways in which a corner may come about. */
  private record Way(Formula formula, Figure factor, Figure current) {}

  private final List<Way> ways = new ArrayList<>(8);
  private final Dossier d;

  private TripCorner(Dossier d) {
    this.d = d;
  }

  /** The corner at this current with its step; null where no test or setting gives it. */
  static Figure of(ProtectiveDevice device, double ampere, Dossier d) {
    TripCorner corner = new TripCorner(d);
    if (device instanceof Breaker breaker) {
      corner.tests(breaker);
    } else if (device instanceof AdjustableBreaker breaker) {
      corner.tests(breaker);
    }
    for (Way way : corner.ways) {
      Figure tried = Working.silent().step(way.formula(), way.factor(), way.current());
      if (tried.value() == ampere) {
        return d.working().step(way.formula(), way.factor(), way.current());
      }
    }
    return null;
  }

  private void tests(Breaker breaker) {
    Figure rated = rated(breaker);
    test(Constant.BREAKER_TESTS_CONVENTIONAL_NON_TRIPPING, rated);
    test(Constant.BREAKER_TESTS_CONVENTIONAL_TRIPPING, rated);
    test(Constant.BREAKER_TESTS_THERMAL_TEST, rated);
    if (breaker.characteristic() != null) {
      Table bands = d.edition().table(TableName.MAGNETIC_BANDS);
      tabled(bands.at("lower", breaker.characteristic()), rated);
      tabled(bands.at("upper", breaker.characteristic()), rated);
    }
    stated(breaker, breaker.multiples(), rated);
  }

  private void tests(AdjustableBreaker breaker) {
    String settings = breaker.data().place() + "/settings";
    Figure rated = rated(breaker);
    Figure set =
        d.given(
            "In", breaker.settings().longTimeA(), Unit.AMPERE, new Pointer(settings, "longTimeA"));
    Figure carried = set.known() ? set : rated;
    test(Constant.ADJUSTABLE_TESTS_CONVENTIONAL_NON_TRIPPING, carried);
    test(Constant.ADJUSTABLE_TESTS_CONVENTIONAL_TRIPPING, carried);
    Figure instantaneous =
        d.given(
            "Iset",
            breaker.settings().instantaneousA(),
            Unit.AMPERE,
            new Pointer(settings, "instantaneousA"));
    Figure tolerance = d.constant("δ", Constant.ADJUSTABLE_TESTS_MAGNETIC_TOLERANCE);
    ways.add(new Way(OF_SETTING, tolerance, instantaneous));
    stated(breaker, breaker.multiples(), rated);
  }

  private void test(Constant multiple, Figure current) {
    ways.add(new Way(OF_RATED, d.constant("m", multiple), current));
  }

  private void tabled(Value multiple, Figure current) {
    if (multiple != null) {
      ways.add(new Way(OF_RATED, Figure.of("m", multiple), current));
    }
  }

  private void stated(ProtectiveDevice device, Multiples multiples, Figure current) {
    String place = device.data().place() + "/magneticMultiples";
    Figure lower = d.given("m", multiples.lower(), Unit.ONE, new Pointer(place, "lower"));
    Figure upper = d.given("m", multiples.upper(), Unit.ONE, new Pointer(place, "upper"));
    ways.add(new Way(OF_RATED, lower, current));
    ways.add(new Way(OF_RATED, upper, current));
  }

  private Figure rated(ProtectiveDevice device) {
    Pointer at = new Pointer(device.data().place(), "ratedCurrentA");
    return d.given("In", device.data().ratedCurrentA(), Unit.AMPERE, at);
  }
}
