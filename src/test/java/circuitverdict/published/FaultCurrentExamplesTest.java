package circuitverdict.published;

import static circuitverdict.check.CheckName.BREAKING_CAPACITY;
import static circuitverdict.check.Verdict.COMPLIES;
import static circuitverdict.check.Verdict.DOES_NOT_COMPLY;
import static circuitverdict.check.Verdict.NOT_DETERMINED;
import static circuitverdict.published.Bench.breaker;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.Finding;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;

/** Published examples of greatest fault currents and breaking capacity. */
class FaultCurrentExamplesTest {
  @WorkedExample(
      id = "D10",
      title = "Ze = 0.03 ohm: 7.67 kA against 6 kA breakers",
      source = "PFC/PSC test",
      standard = "BS 7671 434.5.1")
  void aSixKiloampereBreakerAloneDoesNotHoldAStifferSupply() {
    Scenario circuit = single(230 / 0.03);
    Finding finding = circuit.finding(BREAKING_CAPACITY);
    assertEquals(7666.7, finding.governing().actual().value(), 0.05);
    assertEquals(DOES_NOT_COMPLY, finding.verdict());
  }

  @WorkedExample(
      id = "D11",
      title =
          "Same fault level, but UK consumer unit behind a 100 A service fuse: back-up accepted",
      source = "Low Ze high PFC help",
      standard = "BS 7671:2018 reg 536.4.201, BS EN 61439-3 Annex ZB")
  void theConditionalRatingOfADomesticUnitHoldsIt() {
    Scenario unit =
        single(8000)
            .withJson(
                "/assembly",
                "{\"standard\":\"IEC 61439-3\",\"conditionalRatingA\":16000,"
                    + "\"maximumUpstreamFuseA\":100,\"deviceDeclared\":true}")
            .withJson(
                "/upstreamDevice",
                "{\"standard\":\"BS 1361\",\"ratedCurrentA\":100,\"breakingCapacityA\":33000}");
    assertEquals(COMPLIES, unit.verdict(BREAKING_CAPACITY));
    // Its conditions: the maker's own devices, a single phase, the fuse named, no greater than 100
    // A.
    assertEquals(
        DOES_NOT_COMPLY, unit.with("/assembly/deviceDeclared", false).verdict(BREAKING_CAPACITY));
    assertEquals(
        NOT_DETERMINED, unit.without("/assembly/deviceDeclared").verdict(BREAKING_CAPACITY));
    assertEquals(DOES_NOT_COMPLY, unit.with("/supply/phases", 3).verdict(BREAKING_CAPACITY));
    assertEquals(
        DOES_NOT_COMPLY,
        unit.with("/upstreamDevice/ratedCurrentA", 160).verdict(BREAKING_CAPACITY));
    assertEquals(
        DOES_NOT_COMPLY,
        unit.with("/upstreamDevice/standard", "BS 88-2").verdict(BREAKING_CAPACITY));
  }

  @WorkedExample(
      id = "D12",
      title = "3 kA breaker with 7 kA recorded, 315 A BS 88 upstream: not proven",
      source = "PSC higher than MCB breaking capacity",
      standard = "BS 7671 434.5.1 / 434.5.2")
  void theMerePresenceOfAnUpstreamFuseProvesNothing() {
    Scenario circuit =
        single(7000)
            .with("/device/breakingCapacityA", 3000)
            .withJson("/upstreamDevice", "{\"standard\":\"BS 88-2\",\"ratedCurrentA\":315}");
    assertEquals(DOES_NOT_COMPLY, circuit.verdict(BREAKING_CAPACITY));
  }

  @WorkedExample(
      id = "D14",
      title = "Supply figures to assume: 16/25 kA; 19.6/25.9 kA; 16 kA beyond 2 m of service",
      source = "For contractors; forum quoting a network operator; trade-body bulletin",
      standard = "ENA EREC P25 issue 2 (2018), BS 7671:2018 313.1")
  void aQuotationMayTakeTheTypicalFiguresOfASupplyAndListsThem() {
    // 16 kA beyond the service cable, 0.35 Ω and 0.8 Ω.
    Scenario quoted =
        Scenario.oven()
            .with("/stage", "quotation")
            .withJson(
                "/supply",
                "{\"point\":\"origin\",\"earthing\":\"TN-C-S\",\"phases\":1,\"ownership\":\"public\"}");
    assertEquals(
        16_000, assumed(quoted.finding(BREAKING_CAPACITY), NoteCode.TYPICAL_FAULT_CURRENT));
    assertEquals(0.35, loop(quoted));
    assertEquals(0.8, loop(quoted.with("/supply/earthing", "TN-S")));
    // Nothing of it at sign-off.
    assertEquals(NOT_DETERMINED, quoted.with("/stage", "sign-off").verdict(BREAKING_CAPACITY));
  }

  private static double loop(Scenario scenario) {
    return assumed(
        scenario.finding(circuitverdict.check.CheckName.EARTH_FAULT_DISCONNECTION),
        NoteCode.TYPICAL_LOOP_IMPEDANCE);
  }

  private static double assumed(Finding finding, NoteCode code) {
    for (Note note : finding.assumptions()) {
      if (note.code() == code) {
        return note.figures().get(0).value();
      }
    }
    throw new AssertionError(code + " is not among " + finding.assumptions());
  }

  @WorkedExample(
      id = "D15",
      title = "Three-phase multiplier: sqrt 3, not 1.74, and the doubling rule",
      source = "Prospective fault current",
      standard = "BS 7671:2008 17th Edition (Uo = 230 V, no Cmin)")
  void threePhaseIsBoundedByTwiceTheLineNeutralCurrent() {
    Scenario circuit =
        Scenario.oven()
            .with("/stage", "design")
            .withJson("/liveConductors", "[\"L1\",\"L2\",\"L3\",\"N\"]")
            .withJson("/supply/faultCurrents", "{\"lineToNeutral\":{\"maximumA\":1000}}")
            .with("/supply/basis", "declared")
            .without("/supply/maximumFaultCurrentA");
    double current = circuit.finding(BREAKING_CAPACITY).governing().actual().value();
    // √3 or 1.74 of the source understates it.
    assertEquals(2000, current);
    assertTrue(current > 1740);
  }

  private static Scenario single(double ampere) {
    return breaker("B", 32)
        .with("/supply/phases", 1)
        .with("/supply/basis", "declared")
        .withJson("/supply/faultCurrents", "{}")
        .with("/supply/maximumFaultCurrentA", ampere);
  }
}
