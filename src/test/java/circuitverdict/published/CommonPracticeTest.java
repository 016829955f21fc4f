package circuitverdict.published;

import static circuitverdict.published.Bench.WITH_CMIN;
import static circuitverdict.published.Bench.breaker;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.device.DrawnCurve;
import circuitverdict.device.TripBand;
import circuitverdict.standard.Edition;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;

/** Facts of the trade without a published source (common practice). */
class CommonPracticeTest {
  private static final Edition EDITION = Scenario.edition(WITH_CMIN);

  /** Common practice: about 70 A, 1.4 In, for some 10 000 s. */
  @Test
  void aFiftyAmpereBreakerMayTripAtSeventyAmpereButNothingIsPromised() {
    Breaker fifty = (Breaker) breaker("B", 50).circuit().device();
    TripBand band = TripBand.of(fifty, EDITION);
    assertTrue(Double.isInfinite(band.latestS(70)), "no trip is promised below 1.45 In");
    assertTrue(band.earliestS(70) < 3600, "a trip above 1.13 In is possible");
    assertEquals(10_000, DrawnCurve.of(fifty, EDITION).timeS(70), 2_000);
  }

  /** IEC 60898-1: at 1.45 In it trips within the hour, at 1.13 In not within it. */
  @Test
  void theConventionalCurrentsBoundTheHour() {
    TripBand band = TripBand.of(breaker("B", 50).circuit().device(), EDITION);
    assertEquals(3600, band.latestS(1.45 * 50));
    assertTrue(Double.isInfinite(band.latestS(1.45 * 50 * (1 - 1e-11))));
    assertEquals(3600, band.earliestS(1.13 * 50 * (1 - 1e-11)));
  }

  /** Common practice: 230 V between line and neutral, 400 V between lines. */
  @Test
  void aSinglePhaseCircuitHasTwoHundredAndThirtyVoltAndAThreePhaseOneFourHundred() {
    assertEquals(230, voltage(new LiveConductors(1, true)));
    assertEquals(400, voltage(new LiveConductors(3, true)));
    assertEquals(400, voltage(new LiveConductors(3, false)));
    assertEquals(400, voltage(new LiveConductors(2, false)));
  }

  private static double voltage(LiveConductors live) {
    return NominalVoltage.ofCircuit(breaker("B", 32).circuit(), live, Bench.dossier(WITH_CMIN))
        .value();
  }
}
