package circuitverdict.check;

import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Poles: every line opened and protected (431.1.1), isolation (462.2), charging (722.531.3.1). */
class SuitablePolesTest {
  private static final CheckName CHECK = CheckName.DEVICE_SUITABILITY;

  /**
   * 431.1.1 (from memory): each line is detected and opened. Of three poles or more to IEC 60898-1
   * three are protected, of two one may be (its clause 4, from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "L1 N, 1, , complies",
    "L1 N, , , complies",
    "L1 N, 2, 1, complies",
    "L1 L2 L3, 1, , fails",
    "L1 L2 L3, 2, , fails",
    "L1 L2 L3, 3, , complies",
    "L1 L2 L3 N, 3, 3, complies",
    "L1 L2 L3 N, 4, 3, complies",
    "L1 L2 L3 N, 4, 2, fails",
    "L1 L2 L3, , , /device/poles",
    "L1 L2, 1, , fails",
    "L1 L2, 2, 2, complies",
    "L1 L2, 2, 1, fails",
    "L1 L2, 2, , /device/protectedPoles"
  })
  void everyLineIsOpenedAndProtected(
      String live, Integer poles, Integer protectedPoles, String verdict) {
    Scenario device = lines(live).with("/device/ratedVoltageV", 400);
    Scenario of =
        poles == null ? device.without("/device/poles") : device.with("/device/poles", poles);
    held(
        verdict,
        (protectedPoles == null ? of : of.with("/device/protectedPoles", protectedPoles))
            .finding(CHECK));
  }

  @Test
  void failingPolesAreToldByTheirNumber() {
    Finding found = fails(lines("L1 L2 L3").with("/device/poles", 1).finding(CHECK));
    limit(3, found);
    assertTrue(Sentences.of(found).contains("p 1 falls short of pL 3"), Sentences.of(found));
  }

  /** Breakers to IEC 60947-2 may leave poles unprotected; each pole of fuses is one. */
  @ParameterizedTest
  @CsvSource({
    "IEC 60947-2, , /device/protectedPoles",
    "IEC 60947-2, 3, complies",
    "IEC 60947-2, 2, fails",
    "BS 88-2, , complies"
  })
  void protectedPolesOfOthersAreAskedFor(String standard, Integer protectedPoles, String verdict) {
    Scenario device =
        lines("L1 L2 L3")
            .with("/premises/operatedBy", "skilled-persons")
            .with("/device/standard", standard)
            .with("/device/isolation", true)
            .with("/device/ratedVoltageV", 400)
            .with("/device/poles", 3);
    held(
        verdict,
        (protectedPoles == null ? device : device.with("/device/protectedPoles", protectedPoles))
            .finding(CHECK));
  }

  /**
   * 461.2, 462.2 (from memory): in TN the earthed neutral may stay, in TT it is isolated too. A
   * single-pole breaker is right behind what opens both.
   */
  @ParameterizedTest
  @CsvSource({
    "TN-S, 1, , , true",
    "TN-C-S, 1, , , true",
    "TT, 2, , , true",
    "TT, 1, , , false",
    "TT, 1, 2, , true",
    "TT, 1, 1, , false",
    "TT, 1, , 2, true",
    "TT, 1, , 1, false",
    "TT, , , , false",
    "TT, , 2, , true",
    ", 2, , , true"
  })
  void allLiveConductorsAreIsolatedInTt(
      String earthing, Integer poles, Integer ofResidual, Integer ofIncomer, boolean holds) {
    Finding found = isolated(earthing, poles, ofResidual, ofIncomer).finding(CHECK);
    assertTrue(clauses(found).contains("462.2"));
    if (holds) {
      complies(found);
    } else {
      open(found, poles == null ? "/device/poles" : "/incomer");
      assertEquals(poles != null, wanted(found).contains(NoteCode.ISOLATION_NEEDED));
    }
  }

  /** Which of TN and TT it is decides for a single pole: that is asked for, nothing else. */
  @Test
  void earthingDecidesWhatASinglePoleIsolates() {
    assertEquals(
        List.of("/supply/earthing"), missing(open(isolated(null, 1, null, null).finding(CHECK))));
  }

  /** Table 537.4 (from memory): IEC 60947-2 and IEC 60947-3 isolate only where they are marked. */
  @ParameterizedTest
  @CsvSource({"true, complies", "false, open", ", open"})
  void industrialDevicesIsolateWhereDeclared(Boolean isolation, String verdict) {
    Scenario breaker =
        Scenario.oven()
            .with("/premises/operatedBy", "skilled-persons")
            .with("/device/standard", "IEC 60947-2")
            .with("/device/ratedVoltageV", 400);
    Scenario marked = isolation == null ? breaker : breaker.with("/device/isolation", isolation);
    Finding found = marked.finding(CHECK);
    if (verdict.equals("open")) {
      assertEquals(isolation == null, missing(open(found)).contains("/device/isolation"));
      complies(marked.withJson("/incomer", switchOf(2, true)).finding(CHECK));
    } else {
      complies(found);
    }
    Scenario tt = isolated("TT", 1, null, null).withJson("/incomer", switchOf(2, isolation));
    Finding behind = tt.finding(CHECK);
    assertEquals(verdict.equals("complies"), behind.verdict() == Verdict.COMPLIES);
    assertEquals(isolation == null, missing(behind).contains("/incomer/isolation"));
  }

  /** Nothing stated tells that no switch isolates: it is never failed. */
  @Test
  void poorIsolationIsNeverCertain() {
    Scenario tt = isolated("TT", 1, 1, 1);
    assertEquals(Verdict.NOT_DETERMINED, tt.verdict(CHECK));
  }

  /** 722.531.3.1 (from memory): the residual device opens all live conductors. */
  @ParameterizedTest
  @CsvSource({
    "L1 N, 1, fails",
    "L1 N, 2, complies",
    "L1 N, , /residualDevice/poles",
    "L1 L2 L3 N, 3, fails",
    "L1 L2 L3 N, 4, complies"
  })
  void residualDeviceOfAChargingPointOpensAll(String live, Integer poles, String verdict) {
    Scenario point = charging(live);
    Finding found =
        (poles == null ? point : point.with("/residualDevice/poles", poles)).finding(CHECK);
    assertTrue(clauses(found).contains("722.531.3.1"));
    held(verdict, found);
  }

  /** One of two that opens all is enough; without any, that of the point itself may do. */
  @Test
  void anyResidualDeviceMayOpenAll() {
    Scenario own =
        charging("L1 N")
            .with("/residualDevice/poles", 1)
            .with("/device/standard", "IEC 61009-1")
            .with("/device/residual/operatingCurrentA", 0.03);
    fails(own.with("/device/poles", 1).finding(CHECK));
    complies(own.with("/device/poles", 2).finding(CHECK));
    open(own.without("/device/poles").finding(CHECK), "/device/poles");
    open(charging("L1 N").without("/residualDevice").finding(CHECK), "/residualDevice");
  }

  /**
   * Whatever may be a charging point is held to it, until its kind and place say that it is not.
   */
  @Test
  void whatMayBeAChargingPointIsAskedFor() {
    Scenario sockets =
        Scenario.oven()
            .with("/load/kind", "socket-outlets")
            .with("/load/connection", "socket-outlet");
    complies(sockets.finding(CHECK));
    Scenario unplaced = sockets.without("/premises/locations");
    List<String> wanted = missing(open(unplaced.finding(CHECK)));
    assertTrue(wanted.contains("/premises/locations"), wanted::toString);
    complies(
        unplaced
            .with("/supply/localGeneration", false)
            .with("/residualDevice/standard", "IEC 61008-1")
            .with("/residualDevice/ratedCurrentA", 63)
            .with("/residualDevice/conditionalCapacityA", 6000)
            .with("/residualDevice/poles", 2)
            .with("/residualDevice/residual/operatingCurrentA", 0.03)
            .finding(CHECK));
    assertFalse(clauses(sockets.finding(CHECK)).contains("722.531.3.1"));
  }

  private static Scenario charging(String live) {
    return lines(live)
        .with("/device/poles", live.length() > 4 ? 4 : 2)
        .with("/load/kind", "vehicle-charging")
        .with("/supply/localGeneration", false)
        .with("/residualDevice/standard", "IEC 61008-1")
        .with("/residualDevice/ratedCurrentA", 63)
        .with("/residualDevice/conditionalCapacityA", 6000)
        .with("/residualDevice/residual/operatingCurrentA", 0.03);
  }

  private static Scenario isolated(
      String earthing, Integer poles, Integer ofResidual, Integer ofIncomer) {
    Scenario oven = Scenario.oven();
    Scenario at =
        earthing == null
            ? oven.without("/supply/earthing")
            : oven.with("/supply/earthing", earthing);
    Scenario device = poles == null ? at.without("/device/poles") : at.with("/device/poles", poles);
    Scenario before =
        ofResidual == null
            ? device
            : device
                .with("/residualDevice/standard", "IEC 61008-1")
                .with("/residualDevice/ratedCurrentA", 63)
                .with("/residualDevice/conditionalCapacityA", 6000)
                .with("/residualDevice/poles", ofResidual);
    return ofIncomer == null ? before : before.withJson("/incomer", switchOf(ofIncomer, true));
  }

  private static String switchOf(int poles, Boolean isolation) {
    String marked = isolation == null ? "" : ", \"isolation\": " + isolation;
    return "{\"standard\": \"IEC 60947-3\", \"poles\": " + poles + marked + "}";
  }

  private static Scenario lines(String live) {
    return Scenario.oven().with("/liveConductors", Arrays.asList(live.split(" ")));
  }

  private static void held(String verdict, Finding found) {
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> fails(found);
      default -> assertEquals(List.of(verdict), missing(open(found)));
    }
  }
}
