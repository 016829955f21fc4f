package circuitverdict.fault;

import static circuitverdict.fault.GreatestCurrentTest.stated;
import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which greatest current an earth fault has, in TN and in TT (434.1, 543.1.3). */
class GreatestEarthCurrentTest {
  private static final String CURRENTS = "/supply/faultCurrents/";

  /** In TT the one to earth is small: the greatest of any kind says nothing of it. */
  @Test
  void earthFaultOfTtIsAsStated() {
    Scenario supply =
        stated(1500.0, 12.0, null, 1600.0).with("/supply/phases", 1).with("/supply/earthing", "TT");
    assertEquals(12, GreatestCurrent.toEarth(supply.circuit(), dossier(supply)).value());
  }

  /** To earth: as stated, else in TN the greatest of any kind. */
  @ParameterizedTest
  @CsvSource({"1800, 1800", ", 4000"})
  void earthFaultCurrentOfTn(Double stated, double current) {
    Scenario supply = stated(1500.0, stated, 3000.0, 4000.0);
    assertEquals(current, GreatestCurrent.toEarth(supply.circuit(), dossier(supply)).value(), 1e-9);
  }

  /** In TT Cmax·Uo/(RA/2) = 1.1·230/(20/2) = 25.3 A in a design, listed; stated it is taken. */
  @ParameterizedTest
  @CsvSource({"design, , 25.3", "design, 40, 40", "sign-off, , 4000"})
  void earthFaultCurrentOfTt(String stage, Double stated, double current) {
    Scenario supply =
        stated(1500.0, stated, null, 4000.0)
            .with("/stage", stage)
            .with("/supply/earthing", "TT")
            .with("/supply/earthElectrodeResistanceOhm", 20);
    Dossier d = dossier(supply);
    assertEquals(current, GreatestCurrent.toEarth(supply.circuit(), d).value(), 1e-9);
    assertEquals(
        current == 25.3,
        d.assumptions().stream()
            .anyMatch(note -> note.code() == NoteCode.ASSUMED_TT_FAULT_CURRENT));
  }

  /**
   * Of a reading the smaller side lets more flow: 25.3 A/0.8. One that may be nothing bounds
   * nothing: then the greatest of any kind, widened.
   */
  @ParameterizedTest
  @CsvSource({"measured-cold, 20, 31.625", ", 20, 31.625", "measured-cold, 100, 8000"})
  void readingOfTheElectrodeIsTakenAtItsLeast(String basis, double percent, double current) {
    Scenario supply =
        stated(1500.0, null, null, 4000.0)
            .with("/stage", "design")
            .with("/supply/basis", "measured-cold")
            .with("/supply/instrumentUncertaintyPercent", percent)
            .with("/supply/earthing", "TT")
            .with("/supply/earthElectrodeResistanceOhm", 20);
    Scenario read = basis == null ? supply.without("/supply/basis") : supply;
    assertEquals(current, GreatestCurrent.toEarth(read.circuit(), dossier(read)).value(), 1e-9);
  }

  @Test
  void ttWithoutAnElectrodeTakesTheGreatestOfAnyKind() {
    Scenario supply =
        stated(null, null, null, 4000.0).with("/stage", "design").with("/supply/earthing", "TT");
    assertEquals(4000, GreatestCurrent.toEarth(supply.circuit(), dossier(supply)).value());
    Scenario tn =
        stated(null, null, null, 4000.0)
            .with("/stage", "design")
            .with("/supply/earthElectrodeResistanceOhm", 20);
    assertEquals(4000, GreatestCurrent.toEarth(tn.circuit(), dossier(tn)).value());
  }
}
