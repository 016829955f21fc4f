package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.openBecause;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;

/**
 * A delayed release of IEC 60947-2 serves disconnection by guidance alone: its standard promises no
 * greatest clearing time. Settings with 20 % tolerance: 1.2·200 and 1.2·120 A, within 5 s.
 */
class DelayedReleaseTest {
  private static final CheckName CHECK = CheckName.EARTH_FAULT_DISCONNECTION;

  @Test
  void instantaneousReleaseProvesWhatItReaches() {
    Finding found = complies(loop(0.9).with("/requirements/evidence", "proved").finding(CHECK));
    assertEquals(Strength.RULE, found.strength());
    limit(218.5 / 240, found);
  }

  @Test
  void delayedReleaseCarriesTheRestByGuidance() {
    Finding found = complies(loop(1.5).finding(CHECK));
    assertEquals(Strength.GUIDANCE, found.strength());
    limit(218.5 / 144, found);
    openBecause(
        Reason.PROOF_WANTED, loop(1.5).with("/requirements/evidence", "proved").finding(CHECK));
  }

  /** Beyond both the release that decides is shown. */
  @Test
  void loopBeyondBothFails() {
    Finding found = fails(loop(1.6).finding(CHECK));
    assertEquals(Strength.RULE, found.strength());
    limit(218.5 / 240, found);
  }

  /** Its delay with the standard's 0.2 s must fit: 4.8 s does within 5 s, 4.9 s does not. */
  @Test
  void delayMustFitTheTime() {
    complies(loop(1.5).with("/device/settings/shortTimeDelayS", 4.8).finding(CHECK));
    fails(loop(1.5).with("/device/settings/shortTimeDelayS", 4.9).finding(CHECK));
  }

  private static Scenario loop(double zs) {
    return Scenario.oven()
        .with("/stage", "design")
        .with("/supply/basis", "declared")
        .with("/supply/loopImpedanceOhm", zs - 0.276936)
        .with("/device/standard", "IEC 60947-2")
        .with("/device/ratedCurrentA", 40)
        .withJson(
            "/device/settings",
            "{\"longTimeA\": 40, \"instantaneousA\": 200, \"shortTimeA\": 120,"
                + " \"shortTimeDelayS\": 0.3}");
  }
}
