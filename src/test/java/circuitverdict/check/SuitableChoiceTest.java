package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.DeviceData;
import circuitverdict.select.Change;
import circuitverdict.select.DeviceSelection;
import circuitverdict.select.Remedies;
import circuitverdict.select.Remedy;
import circuitverdict.support.Scenario;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is chosen, and what mends, has the poles and the voltage of its circuit. */
class SuitableChoiceTest {
  /** Poles of the series by the conductors that must be opened (431.1.1, 462.2, from memory). */
  @ParameterizedTest
  @CsvSource({
    "TN-C-S, L1 N, , 1",
    "TT, L1 N, , 2",
    "TT, L1 N, 2, 1",
    "TT, L1 N, 1, 2",
    "TN-S, L1 L2, , 2",
    "TN-S, L1 L2 L3 N, , 3",
    "TT, L1 L2 L3 N, , 4"
  })
  void seriesHasThePolesOfTheCircuit(String earthing, String live, Integer incomer, int poles) {
    Scenario circuit =
        Scenario.oven()
            .without("/device")
            .with("/supply/earthing", earthing)
            .with("/liveConductors", Arrays.asList(live.split(" ")));
    Scenario behind =
        incomer == null
            ? circuit
            : circuit
                .with("/incomer/standard", "IEC 60947-3")
                .with("/incomer/isolation", true)
                .with("/incomer/poles", incomer);
    DeviceSelection.Selection found =
        new DeviceSelection(behind.circuit(), behind.edition(), suitability(), List.of())
            .ofSeries(false);
    assertFalse(found.selected().isEmpty());
    assertTrue(found.undetermined().isEmpty());
    assertTrue(found.rejected().isEmpty());
    for (DeviceSelection.Candidate each : found.selected()) {
      DeviceData data = each.device().data();
      assertEquals(poles, data.poles());
      boolean twoLines = live.equals("L1 L2");
      assertEquals(twoLines ? 400.0 : null, data.nameplate().ratedVoltageV());
      assertEquals(twoLines ? 2 : null, data.nameplate().protectedPoles());
    }
  }

  /** 421.1.7: socket-outlets of a home for the elderly; series of the least that protects. */
  @ParameterizedTest
  @CsvSource({"true, , true, true", "false, , false, true", "true, 61009-1, true, false"})
  void seriesHasTheArcFaultDetectionThatIsOwed(
      boolean owed, String before, boolean arcFault, boolean residual) {
    Scenario sockets =
        Scenario.oven()
            .without("/device")
            .with("/load/kind", "socket-outlets")
            .with("/load/connection", "socket-outlet")
            .with("/load/ratedCurrentA", 13)
            .with("/load/residualWaveform", "pulsating-direct")
            .with("/premises/higherRiskResidential", owed);
    Scenario circuit =
        before == null
            ? sockets
            : sockets
                .with("/residualDevice/standard", "IEC " + before)
                .with("/residualDevice/breakingCapacityA", 6000)
                .with("/residualDevice/poles", 2)
                .with("/residualDevice/residual/operatingCurrentA", 0.03)
                .with("/residualDevice/residual/type", "A")
                .with("/residualDevice/residual/delay", "general");
    DeviceSelection.Selection found =
        new DeviceSelection(
                circuit.circuit(),
                circuit.edition(),
                List.of(new AdditionalProtection()),
                List.of())
            .ofSeries(false);
    assertFalse(found.selected().isEmpty());
    for (DeviceSelection.Candidate each : found.selected()) {
      DeviceData data = each.device().data();
      assertEquals(arcFault ? Boolean.TRUE : null, data.arcFaultDetection());
      assertEquals(residual, data.residual() != null);
    }
  }

  /** Poles that are too few are mended by the least number that will do. */
  @Test
  void moreProtectedPolesMend() {
    Scenario three =
        Scenario.oven()
            .with("/liveConductors", List.of("L1", "L2", "L3"))
            .with("/device/poles", 1)
            .with("/device/protectedPoles", 1);
    List<Remedy> remedies =
        new Remedies(
                three.circuit(),
                three.edition(),
                suitability(),
                CircuitCheck.run(suitability(), three.circuit(), three.edition(), false))
            .all();
    assertEquals(1, remedies.size());
    assertEquals(List.of(CheckName.DEVICE_SUITABILITY), remedies.get(0).mends());
    assertEquals("Fit a device of 3 poles.", remedies.get(0).change().words());
    assertEquals(
        List.of(
            new Change.Member("/device/poles", 3), new Change.Member("/device/protectedPoles", 3)),
        remedies.get(0).change().members());
  }

  private static List<Check> suitability() {
    return List.of(new DeviceSuitability());
  }
}
