package circuitverdict.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.Finding;
import circuitverdict.check.ReadingCheck;
import circuitverdict.check.Verdict;
import circuitverdict.explain.NoteCode;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.support.Scenario;
import java.util.List;

/** Published examples of readings. */
class ReadingExamplesTest {
  /**
   * 54 m of ring by its 0.40 Ω; with 1.5 mm² r2 is 0.667 Ω, and 0.05 Ω more is the most; with 1.0
   * mm² it is 1.00 Ω. 0.80 Ω fits neither.
   */
  @WorkedExample(
      id = "J12",
      title = "Ring with r1 = rn = 0.40 and r2 = 0.80 ohm: suspicious",
      source = "Ends to ends",
      standard = "ring test, ratio 1.67 for 2.5/1.5")
  void aRingWhoseProtectiveConductorDoesNotFit() {
    assertEquals(List.of(Verdict.COMPLIES, Verdict.COMPLIES, Verdict.NOT_DETERMINED), of(1.5, 0.8));
    assertEquals(List.of(Verdict.COMPLIES, Verdict.COMPLIES, Verdict.COMPLIES), of(1.5, 0.71));
    assertEquals(List.of(Verdict.COMPLIES, Verdict.COMPLIES, Verdict.COMPLIES), of(1.0, 1.0));
    assertEquals(List.of(Verdict.COMPLIES, Verdict.COMPLIES, Verdict.NOT_DETERMINED), of(1.0, 0.8));
    Finding flagged = findings(1.5, 0.8).get(2);
    assertEquals(NoteCode.READING_IMPLAUSIBLE, flagged.missing().get(0).code());
    assertEquals(0.8 - 0.4 * 2.5 / 1.5, flagged.governing().actual().value(), 1e-9);
    assertTrue(flagged.missing().get(0).pointer().text().equals("/readings/2/resistanceOhm"));
  }

  private static List<Verdict> of(double protective, double r2) {
    return findings(protective, r2).stream().map(Finding::verdict).toList();
  }

  private static List<Finding> findings(double protective, double r2) {
    Scenario ring =
        Scenario.oven()
            .with("/stage", "design")
            .with("/supply/point", "origin")
            .with("/supply/basis", "declared")
            .with("/cable/arrangement", "ring")
            .with("/cable/lineCsaMm2", 2.5)
            .with("/cable/protectiveCsaMm2", protective)
            .with("/cable/lengthM", 54)
            .withJson(
                "/readings",
                """
                [{"kind": "ring-r1", "resistanceOhm": 0.40},
                 {"kind": "ring-rn", "resistanceOhm": 0.40},
                 {"kind": "ring-r2", "resistanceOhm": %s}]
                """
                    .formatted(r2));
    return ReadingCheck.of(
            ring.circuit(),
            CircuitMapping.readings(ring.json()),
            Scenario.edition("bs7671-2018-a4"),
            true)
        .findings();
  }
}
