package circuitverdict.check;

import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A neutral smaller than its line (524.2.1, from memory; 433.1.204; Appendix 4, 6). */
class NeutralSizeTest {
  /** In a single-phase circuit of two conductors it is no smaller, whatever the size. */
  @ParameterizedTest
  @CsvSource({"6, true", "10, true", "4, false"})
  void neutralOfOneLineIsNoSmaller(double neutral, boolean holds) {
    Finding found = multicore(neutral).finding(CheckName.CONDUCTOR_RATING);
    if (holds) {
      assertFalse(clauses(complies(found)).contains("524.2.1"));
    } else {
      limit(6, fails(found));
      assertTrue(clauses(found).contains("524.2.1"));
    }
  }

  /** Of two lines or three its own protection decides (431.2). */
  @ParameterizedTest
  @CsvSource({"'[\"L1\", \"L2\", \"N\"]'", "'[\"L1\", \"L2\", \"L3\", \"N\"]'"})
  void smallerNeutralOfSeveralLinesIsNotJudged(String live) {
    Finding found =
        multicore(4)
            .with("/supply/phases", 3)
            .withJson("/liveConductors", live)
            .finding(CheckName.CONDUCTOR_RATING);
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
    assertTrue(wanted(found).contains(NoteCode.REDUCED_NEUTRAL));
  }

  /** 433.1.204 names line and neutral: 2.5 mm² each. */
  @ParameterizedTest
  @CsvSource({"2.5, true", "1.5, false"})
  void neutralOfARingIsNoSmaller(double neutral, boolean holds) {
    Scenario ring = RingCircuitTest.ring().with("/cable/neutralCsaMm2", neutral);
    Verdict verdict = ring.verdict(CheckName.OVERLOAD_PROTECTION);
    assertEquals(holds ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY, verdict);
  }

  /** Its unfused spurs are part of it. */
  @ParameterizedTest
  @CsvSource({"2.5, complies", "1.5, does-not-comply"})
  void spurOfARingIsNoSmaller(double line, String verdict) {
    Scenario spurred =
        RingCircuitTest.ring()
            .with("/stage", "design")
            .withJson(
                "/furtherCables",
                """
                [{"construction": "flat-twin-and-earth", "conductor": "copper",
                  "insulation": "thermoplastic-70", "lineCsaMm2": %s, "protectiveCsaMm2": 1,
                  "lengthM": 5, "installation": {"referenceMethod": "C",
                  "ambientTemperatureC": 30, "groupedCircuits": 1}}]
                """
                    .formatted(line));
    assertEquals(verdict, spurred.verdict(CheckName.OVERLOAD_PROTECTION).word());
  }

  /** (4.61 + 12.1)·1.20 mV/A/m, not 2·4.61·1.20: 15 A over 60 m drop 18.0 V, 7.8 %. */
  @Test
  void dropRunsBackThroughTheNeutralItself() {
    Scenario stated =
        multicore(1.5)
            .with("/cable/lineCsaMm2", 4)
            .with("/cable/lineResistanceOhmPerKm", 4.61)
            .with("/cable/lengthM", 60)
            .with("/load/designCurrentA", 15)
            .with("/supply/voltageDropPercent", 0);
    Finding found = fails(stated.finding(CheckName.VOLTAGE_DROP));
    assertEquals(
        100 * (4.61 + 12.1) * 1.2 * 15 * 60 / 1000 / 230, found.governing().actual().value(), 0.01);
  }

  private static Scenario multicore(double neutral) {
    return Scenario.oven()
        .with("/cable/construction", "multicore")
        .with("/cable/protectiveMeans", "core")
        .with("/cable/neutralCsaMm2", neutral);
  }
}
