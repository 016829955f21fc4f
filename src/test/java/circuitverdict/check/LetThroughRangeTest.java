package circuitverdict.check;

import static circuitverdict.check.LetThroughEnergyTest.flat;
import static circuitverdict.check.LetThroughEnergyTest.oven;
import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Over which currents the energy counts: kinds of fault, ends of the range that are not known
 * (434.5.2).
 */
class LetThroughRangeTest {
  private static final CheckName CHECK = CheckName.LET_THROUGH_ENERGY;

  /** Single-pole or not, the greater of line–neutral and line–earth flows in the line. */
  @Test
  void greatestOfBothKindsCounts() {
    Finding found =
        oven(6000)
            .without("/device/energyClass")
            .with("/device/poles", 2)
            .with("/supply/faultCurrents/lineToNeutral/maximumA", 1000)
            .with("/supply/faultCurrents/lineToEarth/maximumA", 2000)
            .finding(CHECK);
    actual(0.1 * 2000 * 2000, complies(found));
  }

  /**
   * The greatest of any kind may be a line–earth fault, which is not stated: what its energy alone
   * exceeds is not determined. What a stated kind exceeds fails.
   */
  @ParameterizedTest
  @CsvSource({"2000, ", "5000, false"})
  void kindThatIsNotStatedDecides(double neutral, Boolean holds) {
    Finding found =
        oven(6000)
            .with("/supply/faultCurrents/lineToNeutral/maximumA", neutral)
            .withJson(
                "/device/letThrough",
                "[{\"prospectiveCurrentA\": 50, \"energyA2s\": 1000},"
                    + " {\"prospectiveCurrentA\": 2000, \"energyA2s\": 1000},"
                    + " {\"prospectiveCurrentA\": 5000, \"energyA2s\": 500000},"
                    + " {\"prospectiveCurrentA\": 6000, \"energyA2s\": 500000}]")
            .finding(CHECK);
    if (holds == null) {
      open(found, "/supply/faultCurrents/lineToEarth/maximumA");
    } else {
      judged(holds, found);
    }
  }

  /**
   * Below 5·In only 60 s are promised: 160²·60 exceeds k²S². An earth fault of 150 A counts in the
   * line, unless a residual function clears it, which does not see line to neutral.
   */
  @Test
  void smallEarthFaultCountsUnlessAResidualDeviceClearsIt() {
    Scenario weak = oven(3000).with("/supply/loopImpedanceOhm", 1.2).with("/device/energyClass", 1);
    openBecause(Reason.BETWEEN_BOUNDS, weak.finding(CHECK));
    complies(
        oven(2000)
            .with("/supply/loopImpedanceOhm", 1.2)
            .without("/device/energyClass")
            .with("/device/standard", "IEC 61009-1")
            .with("/device/residual/operatingCurrentA", 0.03)
            .finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS,
        oven(2000)
            .with("/supply/loopImpedanceOhm", 1.2)
            .without("/device/energyClass")
            .finding(CHECK));
    openBecause(
        Reason.BETWEEN_BOUNDS,
        oven(2000)
            .with("/supply/lineToNeutralLoopImpedanceOhm", 1.3)
            .without("/device/energyClass")
            .with("/device/standard", "IEC 61009-1")
            .with("/device/residual/operatingCurrentA", 0.03)
            .finding(CHECK));
  }

  /**
   * In TT the earth fault is the residual device's; the line–neutral loop is needed all the same.
   */
  @Test
  void ttCountsTheLineToNeutralFaultAlone() {
    Scenario tt =
        oven(2000)
            .with("/supply/earthing", "TT")
            .with("/supply/loopImpedanceOhm", 21)
            .without("/device/energyClass");
    complies(tt.finding(CHECK));
    open(
        tt.without("/supply/lineToNeutralLoopImpedanceOhm").finding(CHECK),
        "/supply/lineToNeutralLoopImpedanceOhm");
  }

  /** 435.1 covers the live conductors: the line–neutral loop is not needed then. */
  @Test
  void loopIsNotNeededWhereTheCombinedDeviceCovers() {
    Finding found = oven(3000).without("/supply/lineToNeutralLoopImpedanceOhm").finding(CHECK);
    complies(found);
    assertEquals(Strength.DEEMED, found.strength());
  }

  /** Without the least current the upper end can fail the check, never pass it. */
  @ParameterizedTest
  @CsvSource({"476101, true", "1000, false"})
  void withoutLeastCurrentOnlyFailureIsCertain(double energy, boolean fails) {
    Scenario unknown =
        oven(3000)
            .without("/supply/lineToNeutralLoopImpedanceOhm")
            .with("/device/energyClass", 1)
            .withJson("/device/letThrough", flat(energy));
    if (fails) {
      fails(unknown.finding(CHECK));
    } else {
      open(unknown.finding(CHECK), "/supply/lineToNeutralLoopImpedanceOhm");
    }
  }

  /**
   * Whatever the greatest current is, the least one is among those that flow: what the device is
   * shown to let through there, over 115²·6² = 476 100 A²s, fails the check.
   */
  @ParameterizedTest
  @CsvSource({"476101, true", "476100, false", "1000, false"})
  void withoutGreatestCurrentOnlyFailureIsCertain(double energy, boolean fails) {
    Scenario unknown =
        oven(3000)
            .without("/supply/maximumFaultCurrentA")
            .withJson("/device/letThrough", flat(energy));
    if (fails) {
      actual(energy, fails(unknown.finding(CHECK)));
      fails(unknown.with("/supply/maximumFaultCurrentA", 3000).finding(CHECK));
    } else {
      open(unknown.finding(CHECK), "/supply/maximumFaultCurrentA");
    }
  }

  /** At quotation a typical current stands for it, which carries no failure. */
  @Test
  void aTypicalLoopCarriesNoFailureWithoutGreatestCurrent() {
    Finding found =
        oven(3000)
            .with("/stage", "quotation")
            .without("/supply/maximumFaultCurrentA")
            .without("/supply/loopImpedanceOhm")
            .without("/supply/lineToNeutralLoopImpedanceOhm")
            .withJson("/device/letThrough", flat(476101))
            .finding(CHECK);
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
  }
}
