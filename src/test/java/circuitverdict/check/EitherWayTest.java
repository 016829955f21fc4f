package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.open;

import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;

/**
 * One way to disconnect suffices (411.4.4, 411.5.3): while another may yet serve, a residual
 * function that does not serve is no failure.
 */
class EitherWayTest {
  private static final CheckName CHECK = CheckName.EARTH_FAULT_DISCONNECTION;

  /** Near a transformer an RCCB of 500 A cannot break what flows; the breaker may trip in time. */
  @Test
  void openOvercurrentDeviceKeepsAResidualFailureOpen() {
    Scenario scenario = tooGreatForTheRccb();
    complies(scenario.finding(CHECK));
    open(scenario.without("/cable/lengthM").finding(CHECK), "/cable/lengthM");
    fails(scenario.with("/cable/lengthM", 100).finding(CHECK));
  }

  /** 21 Ω of electrode trips no breaker of 32 A, whatever else is not known. */
  @Test
  void electrodeAloneCondemnsTheOvercurrentDevice() {
    Scenario scenario =
        Scenario.oven()
            .with("/supply/earthing", "TT")
            .with("/supply/earthElectrodeResistanceOhm", 200)
            .without("/supply/loopImpedanceOhm")
            .withJson(
                "/residualDevice",
                """
                {"standard": "IEC 61008-1", "ratedCurrentA": 63,
                 "residual": {"operatingCurrentA": 0.3, "delay": "general"}}
                """);
    fails(scenario.finding(CHECK));
    open(
        scenario.with("/supply/earthElectrodeResistanceOhm", 20).finding(CHECK),
        "/supply/loopImpedanceOhm");
  }

  /** An incomplete residual function may serve where the complete one beside it does not. */
  @Test
  void openResidualFunctionKeepsTheOtherOpen() {
    Scenario scenario =
        tooGreatForTheRccb()
            .with("/cable/lengthM", 100)
            .with("/device/standard", "IEC 61009-1")
            .with("/device/residual/delay", "general");
    open(scenario.finding(CHECK), "/device/residual/operatingCurrentA");
    complies(scenario.with("/device/residual/operatingCurrentA", 0.03).finding(CHECK));
  }

  private static Scenario tooGreatForTheRccb() {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .with("/supply/loopImpedanceOhm", 0.1)
        .with("/cable/lengthM", 15)
        .with("/device/characteristic", "D")
        .with("/supply/faultCurrents/lineToEarth/maximumA", 3000)
        .with("/supply/maximumFaultCurrentA", 3000)
        .withJson(
            "/residualDevice",
            """
            {"standard": "IEC 61008-1", "ratedCurrentA": 63, "residualMakingBreakingA": 500,
             "residual": {"operatingCurrentA": 0.03, "delay": "general"}}
            """);
  }
}
