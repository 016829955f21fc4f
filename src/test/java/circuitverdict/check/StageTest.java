package circuitverdict.check;

import static circuitverdict.support.Facts.missing;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.Circuit;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Facts;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What may stand in at each stage: nothing at sign-off, table defaults in a design, typical values.
 */
class StageTest {

  @Test
  void stagesAllowMoreAndMore() {
    assertEquals(Allowance.NOTHING, CircuitCheck.allowance(Circuit.Stage.SIGN_OFF));
    assertEquals(Allowance.TABLE_DEFAULTS, CircuitCheck.allowance(Circuit.Stage.DESIGN));
    assertEquals(Allowance.TYPICAL_VALUES, CircuitCheck.allowance(Circuit.Stage.QUOTATION));
  }

  /** Each parameter removed in turn: at which stages it may be absent, and what is then listed. */
  @ParameterizedTest
  @CsvSource({
    "CONDUCTOR_RATING, /cable/installation/ambientTemperatureC, ASSUMED_AMBIENT, design",
    "CONDUCTOR_RATING, /cable/installation/groupedCircuits, ASSUMED_SINGLE_CIRCUIT, quotation",
    "CONDUCTOR_RATING, /cable/conductor, ASSUMED_COPPER, quotation",
    "CONDUCTOR_RATING, /cable/installation/referenceMethod, , never",
    "CONDUCTOR_RATING, /cable/lineCsaMm2, , never",
    "VOLTAGE_DROP, /cable/lengthM, , never",
    "VOLTAGE_DROP, /cable/conductor, ASSUMED_COPPER, quotation",
    "EARTH_FAULT_DISCONNECTION, /cable/protectiveCsaMm2, ASSUMED_PROTECTIVE_SIZE, design",
    "EARTH_FAULT_DISCONNECTION, /supply/loopImpedanceOhm, TYPICAL_LOOP_IMPEDANCE, quotation",
    "EARTH_FAULT_DISCONNECTION, /supply/instrumentUncertaintyPercent, ASSUMED_EXACT_READING, design",
    "EARTH_FAULT_DISCONNECTION, /supply/earthing, , never",
    "EARTH_FAULT_DISCONNECTION, /device/characteristic, , never",
    "BREAKING_CAPACITY, /device/breakingCapacityA, , never",
    "LET_THROUGH_ENERGY, /cable/insulation, , never",
    "PROTECTIVE_CONDUCTOR, /cable/insulation, , never"
  })
  void parameterIsTakenOnlyWhereItsStageAllows(
      CheckName check, String pointer, NoteCode listed, String from) {
    for (String stage : List.of("sign-off", "design", "quotation")) {
      Finding found = circuit().with("/stage", stage).without(pointer).finding(check);
      boolean allowed =
          from.equals("design") && !stage.equals("sign-off")
              || from.equals("quotation") && stage.equals("quotation");
      if (allowed) {
        assertTrue(Facts.assumptions(found).contains(listed), () -> stage + " " + found);
        assertFalse(missing(found).contains(pointer), () -> stage + " " + found);
      } else {
        assertEquals(Verdict.NOT_DETERMINED, found.verdict(), () -> stage + " " + found);
        assertTrue(missing(found).contains(pointer), () -> stage + " " + found);
      }
    }
  }

  /**
   * Nominal voltage: 230 V follows from a public supply; else it is stated, or taken in a design.
   */
  @ParameterizedTest
  @CsvSource({
    "public, sign-off, true, false",
    "private, sign-off, false, false",
    "private, design, true, true",
    ", design, true, true",
    ", sign-off, false, false"
  })
  void nominalVoltageFollowsThePublicSupply(
      String ownership, String stage, boolean known, boolean assumed) {
    Scenario bare = circuit().with("/stage", stage).without("/supply/lineToEarthVoltageV");
    Scenario supply =
        ownership == null
            ? bare.without("/supply/ownership")
            : bare.with("/supply/ownership", ownership);
    Finding found = supply.finding(CheckName.EARTH_FAULT_DISCONNECTION);
    assertEquals(known, found.verdict() == Verdict.COMPLIES, found::toString);
    assertEquals(!known, missing(found).contains("/supply/lineToEarthVoltageV"));
    assertEquals(assumed, Facts.assumptions(found).contains(NoteCode.ASSUMED_NOMINAL_VOLTAGE));
  }

  /** Another nominal voltage only where the supply is said to be private. */
  @ParameterizedTest
  @CsvSource({"private, true", "public, false", ", false"})
  void anotherVoltageNeedsAPrivateSupply(String ownership, boolean taken) {
    Scenario other = circuit().with("/supply/lineToEarthVoltageV", 240);
    Scenario supply =
        ownership == null
            ? other.without("/supply/ownership")
            : other.with("/supply/ownership", ownership);
    Finding found = supply.finding(CheckName.EARTH_FAULT_DISCONNECTION);
    assertEquals(taken, found.verdict() == Verdict.COMPLIES, found::toString);
    assertEquals(!taken, missing(found).contains("/supply/ownership"));
  }

  /** What complies at sign-off complies at every stage before it. */
  @ParameterizedTest
  @CsvSource({"design", "quotation"})
  void earlierStagesAskNoMore(String stage) {
    Result signed = circuit().result();
    assertEquals(Verdict.COMPLIES, signed.verdict(), signed::toString);
    assertEquals(Verdict.COMPLIES, circuit().with("/stage", stage).result().verdict());
  }

  /** A supply at the origin of a single-phase service, its greatest current of any kind alone. */
  private static Scenario circuit() {
    return Scenario.oven().with("/supply/phases", 1).without("/supply/faultCurrents");
  }
}
