package circuitverdict.device;

import static circuitverdict.device.Devices.EDITION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawn curve passes through the tests of IEC 60898-1 and falls smoothly between them. */
class DrawnCurveTest {

  private static DrawnCurve curve(double in) {
    return DrawnCurve.of(Devices.breaker("B", in), EDITION);
  }

  @ParameterizedTest
  @ValueSource(doubles = {6, 32, 40, 63, 80, 125})
  void itPassesThroughTestsBAndC(double in) {
    // Test b: 1.45 In within 1 h or 2 h; test c: 2.55 In within 60 s or 120 s.
    double hour = in <= 63 ? 3600 : 7200;
    assertEquals(hour, curve(in).timeS(1.45 * in), hour * 1e-9);
    double thermal = in <= 32 ? 60 : 120;
    assertEquals(thermal, curve(in).timeS(2.55 * in), thermal * 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {6, 50, 125})
  void itFallsWithTheCurrentAndNeverTripsAtItsRating(double in) {
    assertEquals(Double.POSITIVE_INFINITY, curve(in).timeS(in));
    assertEquals(Double.POSITIVE_INFINITY, curve(in).timeS(1.35 * in));
    double before = Double.POSITIVE_INFINITY;
    for (double multiple = 1.36; multiple < 5; multiple += 0.01) {
      double time = curve(in).timeS(multiple * in);
      assertTrue(time < before && time > 0);
      before = time;
    }
  }

  @Test
  void aboutTenThousandSecondsAtSeventyAmperesOfAFiftyAmpereDevice() {
    // Common practice: 1.4 In for some 10 000 s.
    assertEquals(10_000, curve(50).timeS(70), 2_000);
  }
}
