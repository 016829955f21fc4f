package circuitverdict.published;

import static circuitverdict.check.CheckName.VOLTAGE_DROP;
import static circuitverdict.check.Verdict.COMPLIES;
import static circuitverdict.published.Bench.actual;
import static circuitverdict.published.Bench.allowed;
import static circuitverdict.published.Bench.breaker;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.check.Finding;
import circuitverdict.support.Scenario;

/** Published examples of voltage drop. */
class VoltageDropExamplesTest {
  @WorkedExample(
      id = "F01",
      title = "Summer house 5 kW, 40 m, SWA XLPE",
      source = "Summerhouse electric supply, page 2",
      standard = "BS 7671:2001 Table 4E4")
  void theTwoCoreColumnServesTheSummerHouse() {
    Scenario circuit =
        current(breaker("B", 25), 5000.0 / 230, 40)
            .with("/cable/construction", "armoured-multicore")
            .with("/cable/insulation", "thermosetting-90")
            .with("/cable/lineCsaMm2", 4);
    Finding four = circuit.finding(VOLTAGE_DROP);
    assertEquals(10.435, actual(four, "ΔUtotal"), 0.001);
    assertEquals(4.54, actual(four, "Δu"), 0.005);
    Finding six = circuit.with("/cable/lineCsaMm2", 6).finding(VOLTAGE_DROP);
    assertEquals(6.87, actual(six, "ΔUtotal"), 0.005);
    assertEquals(2.99, actual(six, "Δu"), 0.005);
  }

  @WorkedExample(
      id = "F03",
      title = "Ring final circuit: divide by four",
      source = "Voltage drop",
      standard = "BS 7671:2008 17th Edition (Uo = 230 V, no Cmin)")
  void aRingDropsAQuarterOfItsWholeLoop() {
    Scenario radial =
        current(breaker("B", 32), 32, 40)
            .with("/cable/lineCsaMm2", 2.5)
            .with("/cable/protectiveCsaMm2", 1.5);
    assertEquals(23.04, actual(radial.finding(VOLTAGE_DROP), "ΔUtotal"), 1e-9);
    Scenario ring = radial.with("/cable/arrangement", "ring");
    assertEquals(5.76, actual(ring.finding(VOLTAGE_DROP), "ΔUtotal"), 1e-9);
    Scenario spread = ring.with("/load/designCurrentA", 26);
    assertEquals(4.68, actual(spread.finding(VOLTAGE_DROP), "ΔUtotal"), 1e-9);
  }

  @WorkedExample(
      id = "F04",
      title = "100 A, 150 m, three-phase: 35 mm² fails 2.5 %, 70 mm² chosen",
      source = "Voltage drop calculations",
      standard = "IEE Regulations, 415/240 V, 2.5 %")
  void whatFailedByTheOldLimitPassesByTodays() {
    Scenario circuit =
        current(breaker("C", 100), 100, 150)
            .withJson("/liveConductors", "[\"L1\",\"L2\",\"L3\"]")
            .with("/cable/construction", "multicore")
            .with("/cable/lineCsaMm2", 35)
            .without("/load/powerFactor");
    Finding drop = circuit.finding(VOLTAGE_DROP);
    // 16.5 V exceeded the 2.5 % of 415 V of editions not held; today 5 % and 0.25 % for 150 m.
    assertEquals(16.5, actual(drop, "ΔUtotal"), 0.05);
    assertEquals(21, allowed(drop, "ΔUtotal"), 1e-9);
    assertEquals(COMPLIES, drop.verdict());
  }

  @WorkedExample(
      id = "F05",
      title = "Motor feeder: running and starting drop, 16 mm² total impedance",
      source = "Handbook of Electrical Engineering, p. 239, Table 9.33",
      standard = "IEC practice, 415 V")
  void runningDropFromResistanceAndReactance() {
    // 0.296 Ω hot and 0.0268 Ω a conductor, as 200 m, which 16 mm² can have; U = 415 V. The
    // drop while it starts is not judged.
    Scenario motor =
        current(breaker("C", 80), 65.82, 200)
            .withJson("/liveConductors", "[\"L1\",\"L2\",\"L3\"]")
            .with("/supply/ownership", "private")
            .with("/supply/lineToEarthVoltageV", 415 / Math.sqrt(3))
            .with("/load/powerFactor", 0.85)
            .with("/cable/construction", "multicore")
            .with("/cable/lineCsaMm2", 16)
            .with("/cable/lineResistanceOhmPerKm", 0.296 / 1.2 / 0.2)
            .with("/cable/reactanceOhmPerKm", 0.0268 / 0.2);
    assertEquals(7.2995, actual(motor.finding(VOLTAGE_DROP), "Δu"), 0.0005);
  }

  /** A given current along a given length, at the origin of a public supply. */
  private static Scenario current(Scenario scenario, double ampere, double metres) {
    return scenario
        .with("/load/designCurrentA", ampere)
        .with("/cable/lengthM", metres)
        // Ct would lower a drop that fails: the examples do without it.
        .with("/cable/installation/ambientTemperatureC", 35);
  }
}
