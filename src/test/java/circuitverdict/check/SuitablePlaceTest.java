package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The air and the dust around the device (512.2.1), and the direction of power (530.3.201). */
class SuitablePlaceTest {
  private static final CheckName CHECK = CheckName.DEVICE_SUITABILITY;

  /**
   * 30 °C of IEC 60898-1 (printed) and IEC 60947-2 (where no other is marked), 40 °C of BS 88 (IEC
   * 60269-1, from memory), else what is stated.
   */
  @ParameterizedTest
  @CsvSource({
    "IEC 60898-1, , 29, true",
    "IEC 60898-1, , 30, true",
    "IEC 60898-1, , 31, false",
    "IEC 60898-1, 40, 40, true",
    "IEC 60898-1, 40, 41, false",
    "IEC 60947-2, , 30, true",
    "IEC 60947-2, , 31, false",
    "IEC 60947-2, 40, 40, true",
    "BS 88-3, , 40, true",
    "BS 88-3, , 41, false",
    "BS 3036, , 20, false",
    "BS 3036, 30, 30, true"
  })
  void upToItsReferenceADeviceCarriesItsRating(
      String standard, Double reference, double ambient, boolean holds) {
    Scenario device =
        at(ambient)
            .with("/premises/operatedBy", "skilled-persons")
            .with("/device/standard", standard)
            .with("/device/isolation", true)
            .with("/device/ratedVoltageV", 400);
    Finding found =
        (reference == null ? device : device.with("/device/referenceTemperatureC", reference))
            .finding(CHECK);
    assertTrue(clauses(found).contains("512.2.1"));
    if (holds) {
      complies(found);
    } else {
      assertEquals(List.of(NoteCode.DERATING_NEEDED), wanted(open(found, "/device/derating")));
    }
  }

  /**
   * By hand, for a B32 and a load of 26.1 A: 0.816·32 = 26.112 A carries it, 0.815·32 = 26.08 A
   * does not. The point at 40 °C counts from just above 35 °C on.
   */
  @ParameterizedTest
  @CsvSource({
    "35, 0.9, 0.8, 28.8, true",
    "35.1, 0.9, 0.816, 26.112, true",
    "40, 0.9, 0.816, 26.112, true",
    "40, 0.9, 0.815, 26.08, false",
    "36, 0.8, 0.9, 25.6, false"
  })
  void aboveItTheMakersDeratingCounts(
      double ambient, double at35, double at40, double carries, boolean holds) {
    Finding found = at(ambient).withJson("/device/derating", derating(at35, at40)).finding(CHECK);
    assertEquals(holds ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY, found.verdict());
    actual(26.1, found);
    limit(carries, found);
  }

  /** Nothing is extrapolated, and Ib := In fails nothing. */
  @Test
  void beyondTheHottestPointNothingIsPromised() {
    Scenario derated = at(41).withJson("/device/derating", derating(0.95, 0.9));
    open(derated.finding(CHECK), "/device/derating");
    Scenario sockets =
        at(40)
            .withJson("/device/derating", derating(0.95, 0.9))
            .with("/load/kind", "socket-outlets")
            .without("/load/designCurrentA");
    openBecause(Reason.STAND_IN_FAILS, sockets.finding(CHECK));
    // What fails for certain still does.
    fails(sockets.with("/premises/pollutionDegree", 4).finding(CHECK));
  }

  /**
   * 50 % at 40 °C, 90 % at 20 °C (normal service conditions of IEC 60898-1, IEC 60947-1 and IEC
   * 60269-1, from memory). A temperature that is not stated counts as the warm one.
   */
  @ParameterizedTest
  @CsvSource({
    "IEC 60898-1, 20, 90, ",
    "IEC 60898-1, 20, 90.1, /assembly/relativeHumidityPercent",
    "IEC 60898-1, 20.1, 50, ",
    "IEC 60898-1, 20.1, 50.1, /assembly/relativeHumidityPercent",
    "IEC 60898-1, , 50, ",
    "IEC 60898-1, , 51, /assembly/ambientTemperatureC",
    "IEC 60898-1, , 91, /assembly/relativeHumidityPercent",
    "BS 88-3, 40, 50, ",
    "BS 88-3, 20, 91, /assembly/relativeHumidityPercent",
    "BS 3036, 20, 10, /assembly/relativeHumidityPercent"
  })
  void moistAirIsForTheMaker(String standard, Double ambient, double humidity, String missing) {
    Scenario device =
        Scenario.oven()
            .with("/device/standard", standard)
            .with("/device/referenceTemperatureC", 40)
            .with("/assembly/deviceDeclared", true)
            .with("/assembly/relativeHumidityPercent", humidity);
    Finding found =
        (ambient == null ? device : device.with("/assembly/ambientTemperatureC", ambient))
            .finding(CHECK);
    if (missing == null) {
      complies(found);
    } else {
      open(found, missing);
    }
  }

  /** Where it is not stated nothing rests on it, and the answer says so. */
  @ParameterizedTest
  @CsvSource({"sign-off", "design", "quotation"})
  void temperatureNotStatedIsARemark(String stage) {
    Finding found = complies(Scenario.oven().with("/stage", stage).finding(CHECK));
    assertTrue(remarks(found).contains(NoteCode.ASSEMBLY_AMBIENT_NOT_STATED));
  }

  /** IEC 60898-1: degree 2 (from memory); IEC 60947-2: 3 (printed); BS 88: 3 (from memory). */
  @ParameterizedTest
  @CsvSource({
    "IEC 60898-1, 1, complies",
    "IEC 60898-1, 2, complies",
    "IEC 60898-1, 3, fails",
    "IEC 60947-2, 3, complies",
    "IEC 60947-2, 4, fails",
    "BS 88-3, 3, complies",
    "BS 88-3, 4, fails",
    "BS 3036, 1, open"
  })
  void noMorePollutionThanTheStandardIsFor(String standard, int degree, String verdict) {
    Finding found =
        Scenario.oven()
            .with("/premises/operatedBy", "skilled-persons")
            .with("/premises/pollutionDegree", degree)
            .with("/device/standard", standard)
            .with("/device/isolation", true)
            .with("/device/ratedVoltageV", 400)
            .finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> {
        actual(degree, fails(found));
        limit(degree - 1, found);
      }
      default -> assertEquals(List.of(NoteCode.NOT_IN_TABLES), wanted(open(found)));
    }
  }

  /** 530.3.201: for what could feed the circuit back; a vehicle does, electronics may. */
  @ParameterizedTest
  @CsvSource({
    "electronic, true, true, fails",
    "electronic, true, false, complies",
    "electronic, true, , /device/unidirectional",
    "electronic, false, true, complies",
    "electronic, false, , complies",
    "electronic, , false, complies",
    "electronic, , true, /supply/localGeneration",
    "transformer, true, true, fails",
    "mixed, true, true, /load/kind",
    "resistive, true, true, complies",
    "motor, true, , complies",
    "led, , , complies",
    "socket-outlets, true, true, complies"
  })
  void powerThatMayFlowBothWaysNeedsADeviceForBoth(
      String kind, Boolean generation, Boolean oneWay, String verdict) {
    Scenario load = Scenario.oven().with("/load/kind", kind);
    Scenario supply = generation == null ? load : load.with("/supply/localGeneration", generation);
    Finding found =
        (oneWay == null ? supply : supply.with("/device/unidirectional", oneWay)).finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> assertEquals(NoteCode.ONE_DIRECTION, remarks(fails(found)).get(0));
      default -> assertTrue(missing(open(found)).contains(verdict), found::toString);
    }
  }

  /** So do its parts, and the residual device before it; a fuse has no direction. */
  @Test
  void everyDeviceInItsWayIsForBoth() {
    Scenario feeding =
        Scenario.oven().with("/load/kind", "electronic").with("/supply/localGeneration", true);
    Scenario both = feeding.with("/device/unidirectional", false);
    complies(both.finding(CHECK));
    Scenario behind =
        both.with("/residualDevice/standard", "IEC 61008-1")
            .with("/residualDevice/ratedCurrentA", 63)
            .with("/residualDevice/conditionalCapacityA", 6000);
    open(behind.finding(CHECK), "/residualDevice/unidirectional");
    fails(behind.with("/residualDevice/unidirectional", true).finding(CHECK));
    complies(behind.with("/residualDevice/unidirectional", false).finding(CHECK));
    complies(feeding.with("/device/standard", "BS 88-3").finding(CHECK));
    Scenario parts =
        feeding
            .with("/load/kind", "mixed")
            .withJson("/load/parts", "[{\"kind\": \"led\"}, {\"kind\": \"motor\"}]");
    complies(parts.finding(CHECK));
    open(
        parts
            .withJson("/load/parts", "[{\"kind\": \"led\"}, {\"kind\": \"electronic\"}]")
            .finding(CHECK),
        "/device/unidirectional");
  }

  /** The clause is named as far as the edition has it. */
  @ParameterizedTest
  @CsvSource({"bs7671-2018-a4, 530.3.201", "bs7671-2018-a2, 134.1.1", "bs7671-2008, 134.1.1"})
  void editionsNameTheirOwnClause(String edition, String clause) {
    Finding found =
        Scenario.oven()
            .with("/edition", edition)
            .with("/load/kind", "electronic")
            .with("/device/unidirectional", false)
            .finding(CHECK);
    assertTrue(clauses(found).stream().anyMatch(each -> each.startsWith(clause)), found::toString);
  }

  private static Scenario at(double ambient) {
    return Scenario.oven()
        .with("/assembly/deviceDeclared", true)
        .with("/assembly/ambientTemperatureC", ambient);
  }

  private static String derating(double at35, double at40) {
    return "[{\"ambientTemperatureC\": 40, \"factor\": %s}, {\"ambientTemperatureC\": 35, \"factor\": %s}]"
        .formatted(at40, at35);
  }
}
