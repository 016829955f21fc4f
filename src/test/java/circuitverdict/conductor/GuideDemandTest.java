package circuitverdict.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Comparison;
import circuitverdict.check.Finding;
import circuitverdict.check.Verdict;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Household cooking by the On-Site Guide, appendix A: 10 A, 30 % of the rest, 5 A for an outlet.
 */
class GuideDemandTest {
  private static Scenario cooker(String rule, double watt) {
    return Scenario.oven()
        .with("/stage", "design")
        .with("/circuitKind", rule.contains("cooking") ? "final" : "distribution")
        .without("/load/designCurrentA")
        .with("/load/ratedPowerW", watt)
        .with("/load/demandRule", rule);
  }

  private static double drawn(Finding finding) {
    return finding.comparisons().stream()
        .map(Comparison::actual)
        .filter(each -> each.symbol().equals("Ib"))
        .findFirst()
        .orElseThrow()
        .value();
  }

  /** Below, at and above the 10 A that count whole; the published 12 kW: 52.17 A and 27.65 A. */
  @ParameterizedTest
  @CsvSource({
    "household-cooking, 1150, 5",
    "household-cooking, 2300, 10",
    "household-cooking, 4600, 13",
    "household-cooking, 12000, 22.652",
    "household-cooking-with-socket-outlet, 2300, 15",
    "household-cooking-with-socket-outlet, 12000, 27.652",
    "household-lighting, 2300, 6.6",
    "household-heating, 1150, 5",
    "household-heating, 4600, 15",
    "shop-lighting, 2300, 9",
    "guest-house-lighting, 2300, 7.5"
  })
  void aPartOfTheRatedCurrentIsDrawn(String rule, double watt, double ampere) {
    Finding found = cooker(rule, watt).finding(CheckName.OVERLOAD_PROTECTION);
    assertEquals(ampere, drawn(found), 0.0005);
    assertTrue(
        found.assumptions().stream()
            .anyMatch(note -> note.code() == NoteCode.ASSUMED_GUIDE_DEMAND));
  }

  /** A distribution circuit of several kinds: 0.66·10 A + 10 A + 0.5·10 A. */
  @Test
  void partsOfADistributionCircuitEachHaveTheirRule() {
    Scenario circuit =
        cooker("household-lighting", 2_300)
            .withJson(
                "/load",
                "{\"kind\": \"mixed\", \"parts\": [{\"kind\": \"resistive\", \"ratedPowerW\": 2300,"
                    + " \"demandRule\": \"household-lighting\"}, {\"kind\": \"resistive\","
                    + " \"ratedPowerW\": 4600, \"demandRule\": \"household-heating\"}]}");
    assertEquals(6.6 + 15, drawn(circuit.finding(CheckName.OVERLOAD_PROTECTION)), 1e-9);
  }

  /** IEC 60364 has no such guide, and a sign-off rests on none. */
  @Test
  void whereThereIsNoGuideTheCurrentIsWanted() {
    Scenario cooker = cooker("household-cooking", 12_000);
    Finding iec =
        cooker
            .with("/edition", "iec60364")
            .with("/cable/construction", "multicore")
            .finding(CheckName.OVERLOAD_PROTECTION);
    assertEquals(Verdict.NOT_DETERMINED, iec.verdict());
    assertTrue(
        iec.missing().stream()
            .anyMatch(
                note ->
                    note.code() == NoteCode.NOT_IN_TABLES
                        && note.pointer().text().equals("/load/demandRule")));
    Finding signed = cooker.with("/stage", "sign-off").finding(CheckName.OVERLOAD_PROTECTION);
    assertTrue(
        signed.missing().stream()
            .anyMatch(note -> note.pointer().text().equals("/load/designCurrentA")));
  }

  /** Nobody knows what is drawn at once: what fails by the guide is open. */
  @Test
  void noFailureRestsOnTheGuide() {
    Finding small =
        cooker("household-cooking", 12_000)
            .with("/device/ratedCurrentA", 20)
            .finding(CheckName.OVERLOAD_PROTECTION);
    assertEquals(Verdict.NOT_DETERMINED, small.verdict());
  }
}
