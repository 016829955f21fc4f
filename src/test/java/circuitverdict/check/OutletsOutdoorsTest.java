package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.support.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * BS 7671:2008, 411.3.3 (from memory): outlets up to 20 A for general use by ordinary persons, and
 * mobile equipment up to 32 A for use outdoors.
 */
class OutletsOutdoorsTest {
  private static final Scenario OUTLET =
      Scenario.oven()
          .with("/edition", "bs7671-2008")
          .with("/load/kind", "socket-outlets")
          .with("/load/connection", "socket-outlet")
          .with("/load/residualWaveform", "pulsating-direct")
          .with("/premises/use", "commercial")
          .with("/premises/operatedBy", "ordinary-persons");

  @ParameterizedTest
  @CsvSource({
    "20, [], DOES_NOT_COMPLY",
    "20.1, [], NOT_APPLICABLE",
    "32, [], NOT_APPLICABLE",
    "32, '[\"outdoors\"]', DOES_NOT_COMPLY",
    "32.1, '[\"outdoors\"]', NOT_APPLICABLE",
    "32, , NOT_DETERMINED",
  })
  void byRatingAndPlace(double rated, String locations, Verdict verdict) {
    Scenario outlet = OUTLET.with("/load/ratedCurrentA", rated);
    Scenario placed =
        locations == null
            ? outlet.without("/premises/locations")
            : outlet.withJson("/premises/locations", locations);
    assertEquals(verdict, placed.finding(CheckName.ADDITIONAL_PROTECTION).verdict());
  }
}
