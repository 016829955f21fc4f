package circuitverdict.check;

import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.conductor.HeatLimit;
import circuitverdict.support.Facts;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One protective conductor beside several cables, and one laid apart from its cable. */
class ParallelProtectionTest {
  private static final CheckName CHECK = CheckName.PROTECTIVE_CONDUCTOR;

  /**
   * Table 54.7 asks 47.5 mm² of one line of 95 mm². It does not speak of several in parallel, of
   * which one may have to stand a fault alone (434.4): only their energy shows that.
   */
  @ParameterizedTest
  @CsvSource({
    "4, 95, separate, 190, false",
    "1, 95, separate, 47.5, true",
    "1, 95, separate, 47, false",
    "2, 16, separate, 16, false",
    "4, 95, core, 47.5, false"
  })
  void tableCarriesOneLineOnly(
      int cables, double line, String means, double protective, boolean holds) {
    Scenario parallel =
        laid(means)
            .with("/cable/parallelCables", cables)
            .with("/cable/lineCsaMm2", line)
            .with("/cable/neutralCsaMm2", line)
            .with("/cable/protectiveCsaMm2", protective);
    Finding found = parallel.finding(CHECK);
    if (holds) {
      limit(protective, Facts.complies(found));
    } else {
      open(found, "/device/letThrough");
    }
  }

  /** One of the cores stands 115²·50² = 33.1 MA²s: what the maker shows to pass counts first. */
  @ParameterizedTest
  @CsvSource({"33.0e6, true", "33.2e6, false"})
  void tableDoesNotOutweighTheEnergyOfOneAmongParallel(double energy, boolean holds) {
    Finding found =
        laid("core")
            .with("/cable/parallelCables", 4)
            .with("/cable/lineCsaMm2", 95)
            .with("/cable/neutralCsaMm2", 95)
            .with("/cable/protectiveCsaMm2", 50)
            .withJson(
                "/device/letThrough",
                "[{\"prospectiveCurrentA\": 100, \"energyA2s\": "
                    + energy
                    + "}, {\"prospectiveCurrentA\": 9000, \"energyA2s\": "
                    + energy
                    + "}]")
            .finding(CHECK);
    if (holds) {
      Facts.complies(found);
    } else {
      Facts.fails(found);
    }
  }

  /** Its own insulation is not stated: k = 143 (Table 54.2, 70 °C), whatever the cable's is. */
  @Test
  void conductorApartIsTakenWithTheLeastInsulation() {
    Scenario apart =
        laid("separate")
            .with("/cable/insulation", "thermosetting-90")
            .with("/cable/protectiveCsaMm2", 6);
    assertEquals(
        143.0 * 143 * 36,
        HeatLimit.protective(apart.circuit().cable(), Facts.dossier(apart)).value(),
        1e-6);
  }

  private static Scenario laid(String means) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", 9000)
        .with("/cable/construction", "multicore")
        .with("/cable/protectiveMeans", means)
        .with("/cable/protectiveConductor", "copper");
  }
}
