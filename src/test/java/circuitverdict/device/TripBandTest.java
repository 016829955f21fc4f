package circuitverdict.device;

import static circuitverdict.device.Devices.EDITION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The band of types B, C and D against tests a to e of IEC 60898-1 table 7, just below, at and just
 * above each corner, for every preferred rating.
 */
class TripBandTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final double BIT = 1e-9;

  /** Bands of IEC 60898-1 table 7, multiples of In. */
  private static final Map<String, double[]> MAGNETIC =
      Map.of("B", new double[] {3, 5}, "C", new double[] {5, 10}, "D", new double[] {10, 20});

  static java.util.stream.Stream<Arguments> breakers() {
    return MAGNETIC.keySet().stream()
        .flatMap(
            letter ->
                java.util.stream.DoubleStream.of(
                        6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125)
                    .mapToObj(in -> Arguments.of(letter, in)));
  }

  private static TripBand band(String letter, double in) {
    return TripBand.of(Devices.breaker(letter, in), EDITION);
  }

  /** Test a and b: 1 h up to 63 A, 2 h above. */
  private static double conventional(double in) {
    return in <= 63 ? 3600 : 7200;
  }

  /** Test c: 60 s up to 32 A, 120 s above. */
  private static double thermal(double in) {
    return in <= 32 ? 60 : 120;
  }

  @ParameterizedTest
  @MethodSource("breakers")
  void belowTestANoTripWithinTheConventionalTime(String letter, double in) {
    TripBand band = band(letter, in);
    for (double current : new double[] {0, in, 1.13 * in * (1 - BIT)}) {
      assertEquals(conventional(in), band.earliestS(current));
      assertEquals(NEVER, band.latestS(current));
    }
  }

  @ParameterizedTest
  @MethodSource("breakers")
  void betweenTestsAAndBATripIsPossibleAndNotPromised(String letter, double in) {
    TripBand band = band(letter, in);
    for (double current : new double[] {1.13 * in * (1 + BIT), 1.4 * in, 1.45 * in * (1 - BIT)}) {
      assertEquals(1, band.earliestS(current));
      assertEquals(NEVER, band.latestS(current));
    }
  }

  @ParameterizedTest
  @MethodSource("breakers")
  void fromTestBOnATripIsPromisedWithinTheConventionalTime(String letter, double in) {
    TripBand band = band(letter, in);
    for (double current :
        new double[] {1.45 * in, 1.45 * in * (1 + BIT), 2 * in, 2.55 * in * (1 - BIT)}) {
      assertEquals(1, band.earliestS(current));
      assertEquals(conventional(in), band.latestS(current));
    }
  }

  @ParameterizedTest
  @MethodSource("breakers")
  void fromTestCOnATripIsPromisedWithinItsTime(String letter, double in) {
    TripBand band = band(letter, in);
    double lower = MAGNETIC.get(letter)[0] * in;
    for (double current :
        new double[] {
          2.55 * in, 2.55 * in * (1 + BIT), (2.55 * in + lower) / 2, lower * (1 - BIT)
        }) {
      assertEquals(0.1, band.earliestS(current));
      assertEquals(thermal(in), band.latestS(current));
    }
  }

  @ParameterizedTest
  @MethodSource("breakers")
  void fromTestDOnItMayTripAtOnce(String letter, double in) {
    TripBand band = band(letter, in);
    double lower = MAGNETIC.get(letter)[0] * in;
    double upper = MAGNETIC.get(letter)[1] * in;
    for (double current :
        new double[] {lower * (1 + BIT), (lower + upper) / 2, upper * (1 - BIT)}) {
      assertEquals(0, band.earliestS(current));
      assertEquals(thermal(in), band.latestS(current));
    }
    // At the limit itself test d says no trip within 0.1 s: it is not promised to be longer.
    assertTrue(band.earliestS(lower) <= 0.1);
    assertEquals(thermal(in), band.latestS(lower));
  }

  @ParameterizedTest
  @MethodSource("breakers")
  void fromTestEOnItTripsWithinATenthOfASecond(String letter, double in) {
    TripBand band = band(letter, in);
    double upper = MAGNETIC.get(letter)[1] * in;
    for (double current : new double[] {upper, upper * (1 + BIT), 10 * upper, 1e6}) {
      assertEquals(0, band.earliestS(current));
      assertEquals(0.1, band.latestS(current));
    }
  }

  @ParameterizedTest
  @MethodSource("breakers")
  void moreCurrentNeverPromisesALaterTrip(String letter, double in) {
    TripBand band = band(letter, in);
    assertEquals(6, band.steps().size());
    assertEquals(0, band.steps().get(0).fromA());
    assertEquals(NEVER, band.steps().get(5).toA());
    for (int i = 1; i < band.steps().size(); i++) {
      TripBand.Step before = band.steps().get(i - 1);
      TripBand.Step here = band.steps().get(i);
      assertEquals(before.toA(), here.fromA());
      assertTrue(here.earliestS() <= before.earliestS());
      assertTrue(here.latestS() <= before.latestS());
      assertTrue(here.earliestS() < here.latestS());
    }
  }

  /** Figures within 1e-12 of each other are equal: a corner reached but for rounding is reached. */
  @ParameterizedTest
  @MethodSource("breakers")
  void aTestCurrentReachedButForBinaryRoundingIsReached(String letter, double in) {
    TripBand band = band(letter, in);
    for (int i = 1; i < band.steps().size(); i++) {
      TripBand.Step step = band.steps().get(i);
      assertEquals(step, band.at(Math.nextDown(step.fromA())));
      assertEquals(step, band.at(step.fromA()));
      assertEquals(band.steps().get(i - 1), band.at(step.fromA() * (1 - 1e-11)));
    }
  }

  @Test
  void fiftyAmperesTypeBAtSeventyIsNeitherPromisedToTripNorToHold() {
    // Common practice: such a device needs about 70 A (1.4 In) for some 10 000 s before it trips.
    TripBand band = band("B", 50);
    assertEquals(NEVER, band.latestS(70));
    assertEquals(1, band.earliestS(70));
    double drawn = DrawnCurve.of(Devices.breaker("B", 50.0), EDITION).timeS(70);
    assertEquals(10_000, drawn, 2_000);
  }

  @Test
  void theLatestTimeNamesTheValueItComesFrom() {
    TripBand band = band("C", 16);
    assertNull(band.at(17).latest());
    assertEquals(3600, band.at(30).latest().number());
    assertEquals(60, band.at(50).latest().number());
    assertEquals(0.1, band.at(500).latest().number());
    assertEquals("Table 7, tests d and e", band.at(500).latest().citation().reference());
  }

  @Test
  void whatIsNotStatedOrHasNoTripBandGivesNone() {
    assertNull(TripBand.of(Devices.breaker("B", null), EDITION));
    assertNull(TripBand.of(Devices.breaker(null, 32.0), EDITION));
    assertNull(TripBand.of(Devices.breaker("K", 32.0), EDITION));
    assertNull(TripBand.of(Devices.fuse("BS 88-2", 32.0, "gG"), EDITION));
    assertNull(TripBand.of(Devices.rccb(null, null), EDITION));
    assertNull(TripBand.of(Devices.other(), EDITION));
    assertNotNull(band("B", 32));
  }

  @Test
  void otherLettersCountWithTheLimitsStatedForTheDevice() {
    // Type K as 8 to 12 In (from memory: not in IEC 60898-1).
    TripBand band = TripBand.of(Devices.stated("K", 10.0, 8.0, 12.0), EDITION);
    assertEquals(0.1, band.earliestS(79));
    assertEquals(0, band.earliestS(81));
    assertEquals(60, band.latestS(119));
    assertEquals(0.1, band.latestS(120));
  }

  @Test
  void aLowerLimitBelowTheThermalTestLetsItTripAtOnceFromThere() {
    // Type Z as 2 to 3 In (from memory: not in IEC 60898-1).
    TripBand band = TripBand.of(Devices.stated("Z", 10.0, 2.0, 3.0), EDITION);
    assertEquals(1, band.earliestS(19.9));
    assertEquals(0, band.earliestS(20.1));
    assertEquals(3600, band.latestS(25.4));
    assertEquals(60, band.latestS(29.9));
    assertEquals(0.1, band.latestS(30));
    TripBand unknown = TripBand.of(Devices.stated("Z", 10.0, null, 3.0), EDITION);
    assertEquals(0, unknown.earliestS(19.9));
    assertEquals(0.1, unknown.latestS(30));
  }

  /**
   * Tests a and b hold whatever the letter: up to 1.13 In it does not trip, below 1.45 In no trip
   * is promised. Between them nothing denies an instantaneous one where its lower limit is not
   * stated.
   */
  @Test
  void withoutALowerLimitItMayTripAtOnceFromTestAOn() {
    for (String letter : new String[] {"K", "Z"}) {
      TripBand band = TripBand.of(Devices.stated(letter, 10.0, null, 12.0), EDITION);
      assertEquals(3600, band.earliestS(11.29));
      assertEquals(NEVER, band.latestS(11.29));
      assertEquals(0, band.earliestS(11.31));
      assertEquals(0, band.earliestS(14.49));
      assertEquals(NEVER, band.latestS(14.49));
      assertEquals(0, band.earliestS(14.51));
      assertEquals(3600, band.latestS(14.51));
      assertEquals(0, band.earliestS(119));
      assertEquals(60, band.latestS(119));
      assertEquals(0.1, band.latestS(120));
    }
    TripBand upper = TripBand.of(Devices.stated("Z", 10.0, null, 1.1), EDITION);
    assertEquals(0, upper.earliestS(11.01));
    assertEquals(NEVER, upper.latestS(14.49));
  }

  /** A stated lower limit counts wherever it lies: from it on an instantaneous trip is possible. */
  @Test
  void aLowerLimitBelowTheConventionalCurrentsIsHeeded() {
    TripBand between = TripBand.of(Devices.stated("Z", 10.0, 1.3, 3.0), EDITION);
    assertEquals(3600, between.earliestS(11.29));
    assertEquals(1, between.earliestS(12.99));
    assertEquals(0, between.earliestS(13.01));
    assertEquals(NEVER, between.latestS(14.49));
    assertEquals(3600, between.latestS(14.51));
    TripBand below = TripBand.of(Devices.stated("Z", 10.0, 1.05, 3.0), EDITION);
    assertEquals(3600, below.earliestS(10.49));
    assertEquals(0, below.earliestS(10.51));
    assertEquals(NEVER, below.latestS(14.49));
  }

  @Test
  void statedLimitsWidenTheBandOfALetterAndNeverNarrowIt() {
    Breaker wide = Devices.stated("B", 10.0, 2.7, 6.0);
    TripBand band = TripBand.of(wide, EDITION);
    assertEquals(0.1, band.earliestS(26.9));
    assertEquals(0, band.earliestS(27.1));
    assertEquals(60, band.latestS(59.9));
    assertEquals(0.1, band.latestS(60));
    assertEquals(
        band("B", 10).steps(), TripBand.of(Devices.stated("B", 10.0, 4.0, 4.5), EDITION).steps());
    assertNull(TripBand.of(Devices.stated(null, 10.0, 2.0, 3.0), EDITION));
    assertNull(TripBand.of(Devices.stated("K", 10.0, 8.0, null), EDITION));
  }
}
