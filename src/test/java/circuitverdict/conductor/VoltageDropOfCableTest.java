package circuitverdict.conductor;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.step;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** mV/A/m of a cable by size, power factor and phases (Appendix 4 section 6). */
class VoltageDropOfCableTest {
  private static final CheckName CHECK = CheckName.VOLTAGE_DROP;
  private static final String TWO = "[\"L1\", \"N\"]";
  private static final String THREE = "[\"L1\", \"L2\", \"L3\", \"N\"]";

  /** Tables 4D2B, 4E4B, 4D1B: z up to 16 mm² at any power factor. */
  @ParameterizedTest
  @CsvSource({
    "flat-twin-and-earth, thermoplastic-70, 6, 2, 0.6, 7.3",
    "multicore, thermoplastic-70, 16, 2, 0.6, 2.8",
    "multicore, thermoplastic-70, 16, 3, 0.6, 2.4",
    "armoured-multicore, thermosetting-90, 16, 2, 0.6, 2.9",
    "armoured-multicore, thermosetting-90, 16, 3, 1, 2.5",
    "singles, thermoplastic-70, 10, 3, 0.6, 3.8"
  })
  void smallConductorsDropByImpedance(
      String construction, String insulation, double size, int phases, double cosine, double mv) {
    Finding found =
        laid(construction, insulation, size, phases)
            .with("/load/powerFactor", cosine)
            .finding(CHECK);
    assertEquals(mv, step("mV", found), 1e-9);
  }

  /** Table 4D2B, 25 mm², two cores: r 1.75, x 0.17; at 0.8: 1.75·0.8 + 0.17·0.6 = 1.502. */
  @ParameterizedTest
  @CsvSource({
    "25, 2, 1, 1.75",
    "25, 2, 0.8, 1.502",
    "25, 2, 0, 0.17",
    "25, 3, 0.8, 1.287",
    "95, 3, 0.8, 0.409"
  })
  void largeConductorsDropByPowerFactor(double size, int phases, double cosine, double mv) {
    Finding found =
        laid("multicore", "thermoplastic-70", size, phases)
            .with("/load/powerFactor", cosine)
            .finding(CHECK);
    assertEquals(mv, step("mV", found), 1e-9);
  }

  /** z where the power factor is not stated: 0.50 and 0.43 mV/A/m (Table 4D2B, 95 mm²). */
  @ParameterizedTest
  @CsvSource({"2, 0.50", "3, 0.43"})
  void unknownPowerFactorTakesTheImpedance(int phases, double mv) {
    Finding found =
        laid("multicore", "thermoplastic-70", 95, phases)
            .without("/load/powerFactor")
            .finding(CHECK);
    assertEquals(mv, step("mV", complies(found)), 1e-9);
  }

  /** Worked example E03: 3.8·23.09·25/1000 = 2.19 V, 0.55 % of 400 V. */
  @Test
  void threePhasesAreHeldToFourHundredVolts() {
    Finding found =
        laid("multicore", "thermoplastic-70", 10, 3)
            .with("/load/designCurrentA", 23.09)
            .with("/cable/lengthM", 25)
            .finding(CHECK);
    assertEquals(2.19, step("ΔUtotal", found), 0.005);
    assertEquals(0.55, found.governing().actual().value(), 0.005);
    assertEquals(20, step("ΔU,max", found), 1e-9);
  }

  /** Worked examples E01 and E02: 2.8·21.74·18 and 4.4·26.087·18 mV, of 230 V. */
  @ParameterizedTest
  @CsvSource({"16, 21.74, 1.096", "10, 26.087, 2.066"})
  void onePhaseIsHeldToTwoHundredAndThirtyVolts(double size, double current, double volts) {
    Finding found =
        Scenario.oven()
            .with("/cable/lineCsaMm2", size)
            .with("/load/designCurrentA", current)
            .with("/cable/lengthM", 18)
            .finding(CHECK);
    assertEquals(volts, step("ΔUtotal", found), 0.001);
    assertEquals(11.5, step("ΔU,max", found), 1e-9);
  }

  /** Two lines are two-core drop on 400 V. */
  @Test
  void twoLinesAreHeldToFourHundredVolts() {
    Finding found =
        laid("multicore", "thermoplastic-70", 10, 2)
            .withJson("/liveConductors", "[\"L1\", \"L2\"]")
            .finding(CHECK);
    assertEquals(4.4, step("mV", found));
    assertEquals(20, step("ΔU,max", found), 1e-9);
  }

  /** A private supply's own nominal voltage: 240 V, and √3·240 V between lines. */
  @ParameterizedTest
  @CsvSource({"2, 240", "3, 415.69219381653056"})
  void privateVoltageIsTaken(int phases, double volts) {
    Finding found =
        laid("multicore", "thermoplastic-70", 10, phases)
            .with("/supply/ownership", "private")
            .with("/supply/lineToEarthVoltageV", 240)
            .finding(CHECK);
    assertEquals(0.08 * volts, step("ΔU,max", found), 1e-9);
  }

  /** Two in parallel carry half each. */
  @Test
  void parallelCablesShareTheDrop() {
    Finding found = Scenario.oven().with("/cable/parallelCables", 2).finding(CHECK);
    assertEquals(7.3 * 26.1 * 22 / 2000, step("ΔU", found), 1e-9);
  }

  /** A stated resistance: 2·3.08·1.2 = 7.392, √3·3.08·1.2 = 6.4017 mV/A/m. */
  @ParameterizedTest
  @CsvSource({"2, 7.392", "3, 6.401659784776450"})
  void statedResistanceIsBroughtToOperatingTemperature(int phases, double mv) {
    Finding found =
        laid("multicore", "thermoplastic-70", 16, phases)
            .with("/cable/lineResistanceOhmPerKm", 3.08)
            .finding(CHECK);
    assertEquals(mv, step("mV", found), 1e-9);
  }

  /** Above 16 mm² it needs its reactance: 2·0.1·0.8 + 2·0.08·0.6 with r 0.1/1.2 at 20 °C. */
  @ParameterizedTest
  @CsvSource({"2, 0.8, 0.256", "3, 0.8, 0.22170250336881628", "2, , 0.2561249694973139"})
  void statedResistanceOfALargeConductorNeedsItsReactance(int phases, Double cosine, double mv) {
    Scenario large =
        laid("multicore", "thermoplastic-70", 240, phases)
            .with("/cable/lineResistanceOhmPerKm", 0.1 / 1.2);
    open(large.finding(CHECK), "/cable/reactanceOhmPerKm");
    Scenario stated = large.with("/cable/reactanceOhmPerKm", 0.08);
    Finding found =
        (cosine == null
                ? stated.without("/load/powerFactor")
                : stated.with("/load/powerFactor", cosine))
            .finding(CHECK);
    assertEquals(mv, step("mV", found), 1e-9);
  }

  @Test
  void statedReactanceOfASmallConductorCountsToo() {
    Finding found =
        laid("multicore", "thermoplastic-70", 16, 2)
            .with("/cable/lineResistanceOhmPerKm", 1.2 / 1.2)
            .with("/cable/reactanceOhmPerKm", 0.08)
            .with("/load/powerFactor", 0.6)
            .finding(CHECK);
    assertEquals(2.4 * 0.6 + 0.16 * 0.8, step("mV", found), 1e-9);
  }

  /** What no table speaks of is not extrapolated. */
  @ParameterizedTest
  @CsvSource({
    "flat-twin-and-earth, thermoplastic-70, 25, copper",
    "flat-twin-and-earth, thermosetting-90, 6, copper",
    "singles, thermoplastic-70, 25, copper",
    "mineral, thermoplastic-70, 6, copper",
    "flexible, thermoplastic-70, 6, copper",
    "multicore, mineral-70, 6, copper",
    "multicore, thermoplastic-70, 6, aluminium"
  })
  void whatIsNotTabledIsNotKnown(
      String construction, String insulation, double size, String conductor) {
    Finding found =
        laid(construction, insulation, size, 2).with("/cable/conductor", conductor).finding(CHECK);
    open(found);
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
  }

  @ParameterizedTest
  @CsvSource({
    "/cable/construction",
    "/cable/insulation",
    "/cable/lineCsaMm2",
    "/cable/conductor",
    "/cable/lengthM",
    "/liveConductors",
    "/load/designCurrentA"
  })
  void whatTheDropNeedsIsAskedFor(String pointer) {
    open(Scenario.oven().without(pointer).finding(CHECK), pointer);
  }

  private static Scenario laid(String construction, String insulation, double size, int phases) {
    return Scenario.oven()
        .withJson("/liveConductors", phases == 3 ? THREE : TWO)
        .with("/cable/construction", construction)
        .with("/cable/insulation", insulation)
        .with("/cable/lineCsaMm2", size);
  }
}
