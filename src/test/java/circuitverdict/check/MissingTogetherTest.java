package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Several needed inputs removed at once are all named at once, so that nobody has to ask again for
 * each of them. What only another missing input would call for is not named.
 */
class MissingTogetherTest {

  @ParameterizedTest
  @CsvSource({
    "OVERLOAD_PROTECTION, /device /load/designCurrentA /liveConductors /cable/lineCsaMm2"
        + " /cable/construction /cable/insulation /cable/conductor"
        + " /cable/installation/referenceMethod /cable/installation/ambientTemperatureC"
        + " /cable/installation/groupedCircuits",
    "OVERLOAD_PROTECTION, /device/standard /device/ratedCurrentA /load/designCurrentA"
        + " /cable/lineCsaMm2 /cable/installation/referenceMethod",
    "CONDUCTOR_RATING, /device /liveConductors /cable/lineCsaMm2 /cable/construction"
        + " /cable/insulation /cable/conductor /cable/installation/referenceMethod"
        + " /cable/installation/ambientTemperatureC /cable/installation/groupedCircuits",
    "CONDUCTOR_RATING, /device/standard /device/ratedCurrentA /cable/installation/referenceMethod",
    "VOLTAGE_DROP, /liveConductors /load/designCurrentA /load/use /supply/ownership"
        + " /cable/lineCsaMm2 /cable/construction /cable/insulation /cable/conductor"
        + " /cable/lengthM",
    "EARTH_FAULT_DISCONNECTION, /supply/earthing /supply/loopImpedanceOhm"
        + " /supply/instrumentUncertaintyPercent /cable/lengthM /cable/lineCsaMm2"
        + " /cable/protectiveCsaMm2 /cable/conductor /cable/insulation /device",
    "EARTH_FAULT_DISCONNECTION, /supply/earthing /supply/loopImpedanceOhm /device/standard"
        + " /device/ratedCurrentA",
    "EARTH_FAULT_DISCONNECTION, /supply/loopImpedanceOhm /cable/lengthM",
    "EARTH_FAULT_DISCONNECTION, /supply/loopImpedanceOhm /cable/lengthM /device/ratedCurrentA",
    "BREAKING_CAPACITY, /supply/maximumFaultCurrentA /supply/instrumentUncertaintyPercent /device",
    "BREAKING_CAPACITY, /supply/maximumFaultCurrentA /device/standard",
    "LET_THROUGH_ENERGY, /supply/maximumFaultCurrentA /cable/insulation /cable/lineCsaMm2"
        + " /cable/conductor /device",
    "LET_THROUGH_ENERGY, /supply/maximumFaultCurrentA /cable/lineCsaMm2 /device/standard",
    "PROTECTIVE_CONDUCTOR, /supply/loopImpedanceOhm /supply/maximumFaultCurrentA"
        + " /supply/instrumentUncertaintyPercent /cable/insulation /cable/protectiveCsaMm2"
        + " /cable/lengthM /device",
    "INRUSH, /load/kind /device",
    "INRUSH, /load/kind /device/standard",
    "INRUSH, /load/designCurrentA /device/ratedCurrentA /device/characteristic",
    "COMMISSIONING, /supply/earthing /supply/loopImpedanceOhm /cable/lengthM /device",
    "COMMISSIONING, /supply/earthing /supply/loopImpedanceOhm /device/standard"
        + " /device/ratedCurrentA"
  })
  void missingInputsAreNamedTogether(CheckName check, String pointers) {
    Scenario less = Scenario.oven().without("/supply/faultCurrents");
    complies(less.finding(check));
    String[] all = pointers.split(" ");
    for (String pointer : all) {
      less = less.without(pointer);
    }
    Finding found = open(less.finding(check), all);
    assertEquals(Reason.MISSING_INPUT, found.reason());
  }

  /** Where the neutral is not that of a flat twin, it is asked for beside the line. */
  @ParameterizedTest
  @CsvSource({"OVERLOAD_PROTECTION", "CONDUCTOR_RATING", "VOLTAGE_DROP"})
  void lineAndNeutralAreNamedTogether(CheckName check) {
    open(
        Scenario.oven()
            .with("/cable/construction", "multicore")
            .without("/cable/lineCsaMm2")
            .withOpenNeutral()
            .finding(check),
        "/cable/lineCsaMm2",
        "/cable/neutralCsaMm2");
  }

  /** A metal that is not stated is missing; that no table holds it would be another matter. */
  @Test
  void metalThatIsNotStatedIsNotCalledUntabled() {
    Finding found = Scenario.oven().without("/cable/conductor").finding(CheckName.VOLTAGE_DROP);
    open(found, "/cable/conductor");
    assertFalse(wanted(found).contains(NoteCode.NOT_IN_TABLES));
  }

  /** A declared figure needs no uncertainty, so none is asked for with it. */
  @ParameterizedTest
  @CsvSource({
    "EARTH_FAULT_DISCONNECTION, /supply/loopImpedanceOhm",
    "BREAKING_CAPACITY, /supply/maximumFaultCurrentA"
  })
  void declaredFigureIsAskedForAlone(CheckName check, String pointer) {
    Finding found =
        Scenario.oven()
            .without("/supply/faultCurrents")
            .with("/supply/basis", "declared")
            .without("/supply/instrumentUncertaintyPercent")
            .without(pointer)
            .finding(check);
    open(found, pointer);
    assertFalse(missing(found).contains("/supply/instrumentUncertaintyPercent"));
  }

  /** A device that the check does not judge is all it says: other inputs would not help. */
  @ParameterizedTest
  @CsvSource({"OVERLOAD_PROTECTION", "BREAKING_CAPACITY", "LET_THROUGH_ENERGY"})
  void nothingElseIsAskedForBehindADeviceNotJudged(CheckName check) {
    Finding found =
        Scenario.oven()
            .with("/device/standard", "IEC 61008-1")
            .without("/load/designCurrentA")
            .without("/supply/maximumFaultCurrentA")
            .finding(check);
    assertEquals(Reason.DEVICE_NOT_JUDGED, open(found, "/device/standard").reason());
    assertEquals(1, found.missing().size());
  }
}
