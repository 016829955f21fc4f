package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published guidance for protective conductors behind class 3 breakers (On-Site Guide). */
class ProtectiveGuidanceTest {
  private static final CheckName CHECK = CheckName.PROTECTIVE_CONDUCTOR;

  /**
   * Engineering basis, class limits: B6 of 6 kA on 1.5/1.0 mm² at 3 kA: the class promises 35 000 >
   * 13 225 A²s. On-Site Guide (from memory): 1.0 mm² up to 3 kA, 2.5 mm² above, type C 1.5 mm².
   */
  @ParameterizedTest
  @CsvSource({
    "B, 3000, 3, COMPLIES",
    "B, 3001, 3, NOT_DETERMINED",
    "C, 3000, 3, NOT_DETERMINED",
    "B, 3000, 2, NOT_DETERMINED",
    "B, 3000, 1, NOT_DETERMINED"
  })
  void guidanceCarriesALightingCircuitOfADesign(
      String type, double current, int energyClass, Verdict verdict) {
    Finding found =
        lights(current)
            .with("/device/characteristic", type)
            .with("/device/energyClass", energyClass)
            .finding(CHECK);
    assertEquals(verdict, found.verdict());
    if (verdict == Verdict.COMPLIES) {
      assertEquals(Strength.GUIDANCE, found.strength());
      assertTrue(remarks(found).contains(NoteCode.BY_GUIDANCE));
    } else {
      assertEquals(Reason.BETWEEN_BOUNDS, found.reason());
    }
  }

  /** Proof is the default at sign-off, and guidance can be asked for or refused anywhere. */
  @ParameterizedTest
  @CsvSource({
    "sign-off, , false",
    "sign-off, guidance, true",
    "design, , true",
    "design, proved, false"
  })
  void guidanceIsRefusedWhereProofIsWanted(String stage, String evidence, boolean carried) {
    Scenario staged = lights(3000).with("/stage", stage);
    Scenario asked = evidence == null ? staged : staged.with("/requirements/evidence", evidence);
    if (carried) {
      complies(asked.finding(CHECK));
    } else {
      Finding found = openBecause(Reason.PROOF_WANTED, asked.finding(CHECK));
      assertTrue(wanted(found).contains(NoteCode.PROOF_WANTED));
    }
  }

  /**
   * Guidance speaks for the magnetic zone: below 5·In = 30 A the standard's own bounds must do. The
   * cable, 22 m of 12.1 + 18.1 mΩ/m at 70 °C, adds 0.797 Ω: 30.4 A, and 29.9 A.
   */
  @Test
  void guidanceDoesNotSpeakBelowTheMagneticZone() {
    complies(lights(3000).with("/supply/loopImpedanceOhm", 6.4).finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS, lights(3000).with("/supply/loopImpedanceOhm", 6.5).finding(CHECK));
  }

  /** Guidance is for compliance only: what the maker's data disprove it does not carry. */
  @Test
  void guidanceDoesNotCureWhatTheMakerDisproves() {
    fails(lights(3000).withJson("/device/letThrough", flat(13226)).finding(CHECK));
  }

  private static Scenario oven(double current) {
    return Scenario.oven()
        .with("/supply/basis", "declared")
        .without("/supply/faultCurrents")
        .with("/supply/maximumFaultCurrentA", current);
  }

  private static Scenario lights(double current) {
    return oven(current)
        .with("/stage", "design")
        .with("/device/ratedCurrentA", 6)
        .with("/cable/lineCsaMm2", 1.5)
        .with("/cable/protectiveCsaMm2", 1);
  }

  private static String flat(double energy) {
    return ("[{\"prospectiveCurrentA\": 20, \"energyA2s\": %s},"
            + " {\"prospectiveCurrentA\": 20000, \"energyA2s\": %s}]")
        .formatted(energy, energy);
  }
}
