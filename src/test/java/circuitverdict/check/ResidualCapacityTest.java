package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a residual device breaks must reach up to where the overcurrent device takes over, or to the
 * greatest earth fault current: between the two nothing would be promised (IEC 61008-1, 536.4.3.2).
 */
class ResidualCapacityTest {
  private static final CheckName CHECK = CheckName.EARTH_FAULT_DISCONNECTION;

  /** B32 takes over at 160 A. */
  @ParameterizedTest
  @CsvSource({"161, true", "160, true", "159, false"})
  void capacityReachesTheOvercurrentDevice(double breaks, boolean holds) {
    Finding found = rccb().with("/residualDevice/residualMakingBreakingA", breaks).finding(CHECK);
    judged(holds, found);
    assertEquals(holds ? 160 : 3255, found.comparisons().get(2).actual().value(), 1e-9);
    assertEquals(breaks, found.comparisons().get(2).limit().value());
    assertEquals("/residualDevice", found.comparisons().get(2).subject());
  }

  /** Below that, the greatest earth fault current itself serves: declared 150 A. */
  @ParameterizedTest
  @CsvSource({"150, true", "149, false"})
  void orTheGreatestEarthFaultCurrent(double breaks, boolean holds) {
    Finding found =
        rccb()
            .with("/supply/basis", "declared")
            .with("/supply/faultCurrents/lineToEarth/maximumA", 150)
            .with("/residualDevice/residualMakingBreakingA", breaks)
            .finding(CHECK);
    judged(holds, found);
    assertEquals(150, found.comparisons().get(2).actual().value());
  }

  /** At least 500 A by the standard, from memory: enough for a B32, not for a C63 at 630 A. */
  @Test
  void leastOfTheStandardServesUnlessStated() {
    Finding found = complies(rccb().finding(CHECK));
    assertEquals(500, found.comparisons().get(2).limit().value());
    Scenario greater = rccb().with("/device/characteristic", "C").with("/device/ratedCurrentA", 63);
    open(greater.finding(CHECK), "/residualDevice/residualMakingBreakingA");
    fails(greater.with("/residualDevice/residualMakingBreakingA", 500).finding(CHECK));
    complies(greater.with("/residualDevice/residualMakingBreakingA", 630).finding(CHECK));
  }

  /** An RCBO breaks up to its Icn, which must be stated. */
  @Test
  void capacityOfTheBreakerItselfIsNeeded() {
    Scenario rcbo =
        tt().with("/device/standard", "IEC 61009-1")
            .with("/device/residual/operatingCurrentA", 0.03)
            .with("/device/residual/delay", "general");
    assertEquals(6000, complies(rcbo.finding(CHECK)).comparisons().get(2).limit().value());
    open(rcbo.without("/device/breakingCapacityA").finding(CHECK), "/device/breakingCapacityA");
  }

  private static Scenario rccb() {
    return tt().withJson(
            "/residualDevice",
            """
            {"standard": "IEC 61008-1", "ratedCurrentA": 63,
             "residual": {"operatingCurrentA": 0.03, "delay": "general"}}
            """);
  }

  private static Scenario tt() {
    return Scenario.oven()
        .with("/supply/earthing", "TT")
        .with("/supply/loopImpedanceOhm", 21)
        .with("/supply/earthElectrodeResistanceOhm", 20);
  }
}
