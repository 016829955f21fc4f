package circuitverdict.conductor;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.limit;
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

/**
 * Voltage drop by the formula of IEC 60364-5-52 annex G (from memory): ρ1 0.0225 Ω·mm²/m of copper
 * and 0.036 of aluminium, λ 0.08 mΩ/m; limits of Table G.52.1.
 */
class AnnexDropTest {
  private static final CheckName CHECK = CheckName.VOLTAGE_DROP;

  /** 2·(22.5/S·cosφ + 0.08·sinφ), √3 of three phases, line to line; without cosφ the modulus. */
  @ParameterizedTest
  @CsvSource({
    "copper, 6, 2, 1, 7.5",
    "copper, 2.5, 2, 1, 18",
    "copper, 6, 2, 0.8, 6.096",
    "copper, 95, 2, 0.8, 0.474947368",
    "copper, 95, 3, 0.8, 0.411316486",
    "aluminium, 50, 2, 0.8, 1.248",
    "copper, 95, 2, , 0.499976731"
  })
  void dropPerAmpereAndMetre(String metal, double size, int lines, Double cosine, double mv) {
    Scenario circuit = circuit(size, lines).with("/cable/conductor", metal);
    Scenario asked =
        cosine == null
            ? circuit.without("/load/powerFactor")
            : circuit.with("/load/powerFactor", cosine);
    assertEquals(mv, step("mV", asked.finding(CHECK)), 1e-8);
  }

  /** 7.5 mV/A/m · 25 A · L against Table G.52.1: below, at and above the limit. */
  @ParameterizedTest
  @CsvSource({
    "public, lighting, 3, 36.8",
    "public, other, 5, 61.333333333333336",
    "private, lighting, 6, 73.6",
    "private, other, 8, 98.13333333333334"
  })
  void limitsOfTheTable(String ownership, String use, double percent, double longest) {
    Scenario circuit =
        circuit(6, 1)
            .with("/circuitKind", "distribution")
            .with("/supply/ownership", ownership)
            .with("/load/use", use)
            .with("/load/designCurrentA", 25);
    for (double length : new double[] {longest - 0.01, longest, longest + 0.01}) {
      Finding found = circuit.with("/cable/lengthM", length).finding(CHECK);
      judged(length <= longest, found);
      limit(percent, found);
    }
  }

  /** 0.005 % for each metre beyond 100 m, no more than 0.5 % in all. */
  @ParameterizedTest
  @CsvSource({"100, 5", "150, 5.25", "200, 5.5", "250, 5.5"})
  void allowanceForLength(double length, double percent) {
    Scenario circuit = circuit(35, 1).with("/load/designCurrentA", 10);
    limit(percent, complies(circuit.with("/cable/lengthM", length).finding(CHECK)));
  }

  /** The correction for cooler conductors is Appendix 4's: here the drop counts as it is. */
  @Test
  void theDropIsNotCorrectedForCoolerConductors() {
    Scenario circuit = circuit(6, 1).with("/load/designCurrentA", 25).with("/cable/lengthM", 62);
    judged(false, circuit.finding(CHECK));
    judged(true, circuit.with("/edition", "bs7671-2018-a4").finding(CHECK));
  }

  /** Single cores may lie apart: above 16 mm² their reactance must be stated. */
  @Test
  void reactanceOfLargeSinglesIsAskedFor() {
    Scenario singles = circuit(35, 1).with("/cable/construction", "singles");
    Finding found = singles.finding(CHECK);
    open(found, "/cable/reactanceOhmPerKm");
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
    complies(singles.with("/cable/reactanceOhmPerKm", 0.2).finding(CHECK));
    complies(singles.with("/cable/lineCsaMm2", 16).finding(CHECK));
  }

  /** Of flexible and mineral cables ρ1 does not speak. */
  @ParameterizedTest
  @CsvSource({"flexible", "mineral"})
  void otherCablesAreNotDetermined(String construction) {
    Finding found = circuit(6, 1).with("/cable/construction", construction).finding(CHECK);
    open(found, "/cable/conductor");
  }

  private static Scenario circuit(double size, int lines) {
    Scenario circuit =
        Scenario.oven()
            .with("/edition", "iec60364")
            .with("/cable/construction", "multicore")
            .with("/cable/lineCsaMm2", size);
    return lines == 3 ? circuit.withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\"]") : circuit;
  }
}
