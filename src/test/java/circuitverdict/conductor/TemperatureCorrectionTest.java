package circuitverdict.conductor;

import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ct = (230 + tp − (Ca²·Cg² − Ib²/It²)·(tp − 30))/(230 + tp), and where it may not be used. */
class TemperatureCorrectionTest {
  private static final CheckName CHECK = CheckName.VOLTAGE_DROP;

  /** Appendix 4 section 6.1, computed by hand for It 47 A; a heavier load corrects less. */
  @ParameterizedTest
  @CsvSource({"26.1, 66, 0.907783914", "20, 85, 0.890810321", "32, 53, 0.928474423"})
  void correctionFollowsTheLoad(double current, double length, double factor) {
    Finding found =
        Scenario.oven()
            .with("/load/designCurrentA", current)
            .with("/cable/lengthM", length)
            .finding(CHECK);
    assertEquals(factor, step("ct", found), 1e-8);
    assertTrue(remarks(found).contains(NoteCode.TEMPERATURE_CORRECTED));
  }

  /** Grouping factor 0.8 counts squared: (300 − (0.64 − 26.1²/47²)·40)/300. */
  @Test
  void groupingLeavesLessToCorrect() {
    Finding found =
        longer()
            .with("/cable/installation/groupedCircuits", 2)
            .with("/cable/installation/groupArrangement", "bunched")
            .finding(CHECK);
    assertEquals(0.955783914, step("ct", found), 1e-8);
  }

  /** A conductor at its rating or beyond is at its full temperature: never more than 1. */
  @Test
  void correctionNeverRaisesTheDrop() {
    Finding found =
        Scenario.oven().with("/load/designCurrentA", 50).with("/cable/lengthM", 40).finding(CHECK);
    assertEquals(1, step("ct", found), 1e-12);
    assertFalse(remarks(found).contains(NoteCode.TEMPERATURE_CORRECTED));
  }

  /** Each condition broken in turn: the uncorrected drop decides. */
  @ParameterizedTest
  @CsvSource({
    "/device/standard, \"BS 3036\"",
    "/cable/arrangement, \"ring\"",
    "/cable/parallelCables, 2",
    "/cable/installation/ambientTemperatureC, 35",
    "/cable/installation/insulationLengthM, 0.1"
  })
  void conditionsOfTheCorrectionAreKept(String pointer, String value) {
    Finding found = longer().with("/cable/lengthM", 300).withJson(pointer, value).finding(CHECK);
    assertFalse(corrected(found), pointer);
  }

  @Test
  void correctionIsTriedForTheScenarioItself() {
    assertTrue(corrected(longer().with("/cable/lengthM", 300).finding(CHECK)));
  }

  @Test
  void cablesInSeriesAreNotCorrected() {
    Finding found =
        longer()
            .withJson(
                "/furtherCables",
                """
                [{"construction": "flat-twin-and-earth", "conductor": "copper",
                  "insulation": "thermoplastic-70", "lineCsaMm2": 6, "lengthM": 200}]
                """)
            .finding(CHECK);
    assertFalse(corrected(found));
  }

  /** Without a device nobody knows that it is no rewireable fuse. */
  @Test
  void unknownDeviceIsNotCorrected() {
    assertFalse(corrected(longer().with("/cable/lengthM", 300).without("/device").finding(CHECK)));
  }

  /** Up to 16 mm²: there the drop is by resistance alone. */
  @ParameterizedTest
  @CsvSource({"16, true", "25, false"})
  void largeConductorsAreNotCorrected(double size, boolean corrected) {
    Finding found =
        longer()
            .with("/cable/construction", "multicore")
            .with("/cable/lineCsaMm2", size)
            .with("/cable/lengthM", 900)
            .finding(CHECK);
    assertEquals(corrected, corrected(found));
  }

  /** A hot cable held to the cool table is not rated at its own temperature. */
  @ParameterizedTest
  @CsvSource({"70, false", "90, true"})
  void cableHeldByItsTerminalsIsNotCorrected(double terminal, boolean corrected) {
    Finding found =
        longer()
            .with("/cable/construction", "armoured-multicore")
            .with("/cable/insulation", "thermosetting-90")
            .with("/cable/terminalTemperatureC", terminal)
            .with("/cable/lengthM", 300)
            .finding(CHECK);
    assertEquals(corrected, corrected(found));
  }

  private static boolean corrected(Finding found) {
    return found.working().stream().anyMatch(step -> step.result().symbol().equals("ct"));
  }

  private static Scenario longer() {
    return Scenario.oven().with("/cable/lengthM", 63);
  }
}
