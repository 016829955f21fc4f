package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Residual selectivity (536.4.1.4, from memory): three times the operating current, and type S (IEC
 * 61008-1) or a set delay.
 */
class ResidualSelectivityTest {
  /** An RCBO of 30 mA behind an RCCB, which no overcurrent opens. */
  private static Scenario pair(double upper, String delay) {
    return Scenario.of(
            """
            {"edition": "bs7671-2018-a4", "stage": "sign-off",
             "supply": {"phases": 1, "ownership": "public", "basis": "declared",
                        "maximumFaultCurrentA": 1550},
             "liveConductors": ["L1", "N"],
             "device": {"standard": "IEC 61009-1", "characteristic": "B", "ratedCurrentA": 32,
                        "breakingCapacityA": 6000, "energyClass": 3,
                        "residual": {"operatingCurrentA": 0.03, "delay": "general"}},
             "upstreamDevice": {"standard": "IEC 61008-1", "ratedCurrentA": 80,
                        "residual": {"operatingCurrentA": 0.1, "delay": "S"}}}
            """)
        .with("/upstreamDevice/residual/operatingCurrentA", upper)
        .with("/upstreamDevice/residual/delay", delay);
  }

  private static Finding of(Scenario scenario) {
    return scenario.finding(CheckName.SELECTIVITY);
  }

  @ParameterizedTest
  @CsvSource({"0.089, false", "0.09, true", "0.1, true", "0.3, true"})
  void typeSThreeTimesLessSensitive(double upper, boolean selective) {
    Finding found = of(pair(upper, "S"));
    assertEquals(selective ? Verdict.COMPLIES : Verdict.NOT_DETERMINED, found.verdict());
    actual(upper, found);
    limit(0.09, found);
    assertTrue(clauses(found).contains("536.4.1.4"));
    assertTrue(remarks(found).contains(NoteCode.UPSTREAM_WITHOUT_RELEASE));
  }

  /** Without a delay both may open, but neither is certain to. */
  @Test
  void withoutADelayItIsOpen() {
    Finding found = open(of(pair(0.3, "general")), "/upstreamDevice/residual");
    assertTrue(remarks(found).contains(NoteCode.RESIDUAL_NOT_SELECTIVE));
    open(
        of(pair(0.3, "S").without("/upstreamDevice/residual/delay")),
        "/upstreamDevice/residual/delay");
    open(of(pair(0.3, "S").without("/device/residual/delay")), "/device/residual/delay");
    // Two of type S wait for each other.
    open(of(pair(0.3, "S").with("/device/residual/delay", "S")), "/upstreamDevice/residual");
  }

  /**
   * A set delay against the latest break time of the other where the upstream one may begin to
   * operate, at half its IΔn (IEC 61008-1): five times IΔn 0.04 s, one and a half times 0.3 s.
   */
  @ParameterizedTest
  @CsvSource({"0.3, 0.039, false", "0.3, 0.04, true", "0.09, 0.299, false", "0.09, 0.3, true"})
  void aSetDelayOutlastsTheOther(double upper, double delay, boolean selective) {
    Scenario set =
        pair(upper, "adjustable")
            .with("/upstreamDevice/standard", "IEC 60947-2")
            .with("/upstreamDevice/residual/delayS", delay)
            .withJson("/upstreamDevice/settings", "{\"longTimeA\": 250, \"instantaneousA\": 9000}")
            .withJson("/device/selectivity", "[{\"upstreamId\": \"Q1\", \"limitCurrentA\": 6000}]")
            .with("/upstreamDevice/id", "Q1");
    assertEquals(
        selective ? Verdict.COMPLIES : Verdict.NOT_DETERMINED,
        of(set).verdict(),
        () -> "" + of(set));
    open(of(set.without("/upstreamDevice/residual/delayS")), "/upstreamDevice/residual/delayS");
  }

  /** At 0.1 A the one upstream opens; a function of 0.3 A does not below 0.15 A. */
  @Test
  void aMoreSensitiveOneUpstreamFails() {
    Finding found = fails(of(pair(0.1, "S").with("/device/residual/operatingCurrentA", 0.3)));
    actual(0.15, found);
    limit(0.1, found);
    assertEquals(
        Verdict.NOT_DETERMINED,
        of(pair(0.15, "S").with("/device/residual/operatingCurrentA", 0.3)).verdict());
  }

  /**
   * A circuit without a residual function carries 32 A to earth while 0.3 A opens the upstream one.
   */
  @Test
  void withoutAFunctionOfItsOwnTheCircuitFails() {
    Scenario bare =
        pair(0.3, "S").with("/device/standard", "IEC 60898-1").without("/device/residual");
    Finding found = fails(of(bare));
    actual(32, found);
    limit(0.3, found);
    // One whose function its standard does not know is not certain to lack it.
    open(of(bare.withJson("/device/residual", "{\"operatingCurrentA\": 0.03}")));
    open(of(bare.without("/device/standard")), "/device/standard");
    // A residual device of the circuit's own is as good as one in its breaker.
    complies(
        of(
            bare.withJson(
                "/residualDevice",
                "{\"standard\": \"IEC 61008-1\", \"residual\": {\"operatingCurrentA\": 0.03,"
                    + " \"delay\": \"general\"}}")));
  }

  @Test
  void whatIsMissingIsNamed() {
    open(
        of(pair(0.3, "S").without("/upstreamDevice/residual")),
        "/upstreamDevice/residual/operatingCurrentA",
        "/upstreamDevice/residual/delay");
    open(of(pair(0.3, "S").without("/device/residual")), "/device/residual/operatingCurrentA");
  }
}
