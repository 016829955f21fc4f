package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.support.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** TT needs its electrode, or the loop that holds it, but for a quotation (411.5). */
class EarthElectrodeTest {
  private static final CheckName CHECK = CheckName.EARTHING_ARRANGEMENT;

  @ParameterizedTest
  @CsvSource({
    "sign-off, 20, , true",
    "sign-off, , 21, true",
    "sign-off, , , false",
    "design, , , false",
    "quotation, , , true"
  })
  void ttNeedsItsElectrode(String stage, Double electrode, Double loop, boolean met) {
    Scenario tt =
        Scenario.oven()
            .with("/stage", stage)
            .with("/supply/earthing", "TT")
            .without("/supply/loopImpedanceOhm")
            .with("/device/standard", "IEC 61009-1")
            .with("/device/residual/operatingCurrentA", 0.03);
    tt = electrode == null ? tt : tt.with("/supply/earthElectrodeResistanceOhm", electrode);
    tt = loop == null ? tt : tt.with("/supply/loopImpedanceOhm", loop);
    Finding found = tt.finding(CHECK);
    if (met) {
      complies(found);
      return;
    }
    open(found, "/supply/earthElectrodeResistanceOhm");
    assertEquals(1, found.missing().size());
    open(
        tt.without("/device/residual").finding(CHECK),
        "/supply/earthElectrodeResistanceOhm",
        "/residualDevice");
  }
}
