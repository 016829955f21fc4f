package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A breaker behind a gG fuse (536.4.1): by guidance only where its drawn thermal curve stays below
 * the fuse's gates too (IEC 60269-1 table 3: a 63 A link holds 10 s up to 160 A, 0.1 s up to 320
 * A); and a declared limit above what the breaker breaks.
 */
class BehindFuseTest {
  private static final Scenario PAIR =
      Scenario.of(
          """
          {"edition": "bs7671-2018-a4", "stage": "design",
           "supply": {"phases": 1, "ownership": "public", "basis": "declared",
                      "maximumFaultCurrentA": 300},
           "liveConductors": ["L1", "N"],
           "device": {"standard": "IEC 60898-1", "characteristic": "B", "ratedCurrentA": 32,
                      "breakingCapacityA": 6000, "energyClass": 3, "poles": 1},
           "upstreamDevice": {"id": "main", "standard": "BS 88-2", "utilizationCategory": "gG",
                              "ratedCurrentA": 63},
           "requirements": {"selectivity": "required"}}
          """);

  private static Finding of(Scenario scenario) {
    return scenario.finding(CheckName.SELECTIVITY);
  }

  /**
   * At 160 A the drawn curve of a B32 (5·In) stands near 2 s, that of a B50 (3.2·In) near 44 s, of
   * which the tests of IEC 60898-1 allow 60 and 120 s at 2.55·In: against 10 s of the fuse.
   */
  @ParameterizedTest
  @CsvSource({"25, true", "32, true", "50, false"})
  void theThermalCurveLiesBelowTheGates(int rated, boolean selective) {
    Finding found = of(PAIR.with("/device/ratedCurrentA", rated));
    if (selective) {
      assertEquals(Strength.GUIDANCE, complies(found).strength());
    } else {
      open(found, "/device/selectivity");
      assertTrue(remarks(found).contains(NoteCode.NOT_SELECTIVE_ON_OVERLOAD), found::toString);
    }
  }

  /** A release to IEC 60947-2 has no drawn curve: its maker's word is asked for. */
  @Test
  void ofAnAdjustableReleaseNothingIsDrawn() {
    Scenario adjustable =
        PAIR.withJson(
            "/device",
            """
            {"standard": "IEC 60947-2", "ratedCurrentA": 32, "breakingCapacityA": 10000,
             "poles": 1, "settings": {"longTimeA": 32, "instantaneousA": 160}}
            """);
    open(of(adjustable), "/device/selectivity");
  }

  /** A maker's limit of 8 kA for a breaker of 6 kA holds above 6 kA with a declared combination. */
  @Test
  void aDeclaredLimitEndsAtWhatTheDeviceBreaks() {
    Scenario declared =
        PAIR.withJson(
                "/device/selectivity", "[{\"upstreamId\": \"main\", \"limitCurrentA\": 8000}]")
            .with("/supply/maximumFaultCurrentA", 6000);
    limit(8000, complies(of(declared.with("/device/breakingCapacityA", 10000))));
    complies(of(declared));
    Scenario above = declared.with("/supply/maximumFaultCurrentA", 6001);
    limit(6000, open(of(above), "/device/selectivity"));
    Scenario combined =
        above.with("/backUp/combinationRatingA", 9000).with("/backUp/evidence", "maker's table");
    limit(8000, complies(of(combined)));
    open(of(combined.with("/supply/maximumFaultCurrentA", 8001)), "/device/selectivity");
    open(of(above.without("/device/breakingCapacityA")), "/device/breakingCapacityA");
  }
}
