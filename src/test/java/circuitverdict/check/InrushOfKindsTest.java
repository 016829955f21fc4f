package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.assumptions;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.openBecause;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Inrush of other loads and on other devices (512, common practice). */
class InrushOfKindsTest {
  private static final CheckName CHECK = CheckName.INRUSH;
  private static final String FUSE =
      "{\"standard\": \"BS 88-2\", \"ratedCurrentA\": %s, \"utilizationCategory\": \"gG\"}";

  /** A resistance draws no more cold than warm: 26.1 A against 3·32 A (table 7, test d). */
  @Test
  void resistanceHasNoStart() {
    Finding found = complies(Scenario.oven().finding(CHECK));
    assertEquals(Strength.RULE, found.strength());
    actual(26.1, found);
    limit(96, found);
    assertEquals(List.of(NoteCode.ASSUMED_NO_INRUSH), assumptions(found));
    assertEquals(List.of(NoteCode.TYPE_B_RIDES_START), remarks(found));
    assertFalse(found.counted());
  }

  /** What a vehicle's filters draw nobody stated: guidance only. */
  @Test
  void chargingPointHasNoStartByGuidance() {
    Scenario point = Scenario.oven().with("/load/kind", "vehicle-charging");
    openBecause(Reason.PROOF_WANTED, point.finding(CHECK));
    complies(point.with("/stage", "design").finding(CHECK));
  }

  /** Overload speaks above what a device carries: running is no start. */
  @Test
  void runningCurrentIsNoTrip() {
    open(Scenario.oven().with("/load/designCurrentA", 97).finding(CHECK));
    complies(Scenario.oven().with("/load/designCurrentA", 96).finding(CHECK));
  }

  /** Not stated at all: every kind that starts asks for it, and a design shows what is typical. */
  @ParameterizedTest
  @CsvSource({
    "motor, starting currentMultiple durationS",
    "transformer, currentMultiple durationS",
    "led, peakCurrentA durationS",
    "electronic, peakCurrentA durationS",
    "discharge, currentMultiple durationS",
    "filament, currentMultiple durationS",
    "welding, currentMultiple durationS",
    "x-ray, currentMultiple durationS",
    "socket-outlets, currentMultiple durationS"
  })
  void startThatIsNotStatedIsMissing(String kind, String members) {
    Finding found =
        open(Scenario.oven().with("/stage", "design").with("/load/kind", kind).finding(CHECK));
    for (String member : members.split(" ")) {
      open(found, "/load/inrush/" + member);
    }
    // Of LED drivers the number of them tells it.
    boolean typical = List.of("motor transformer discharge filament".split(" ")).contains(kind);
    assertEquals(typical, remarks(found).contains(NoteCode.TYPICAL_START));
  }

  @Test
  void kindIsAskedFor() {
    open(Scenario.oven().without("/load/kind").finding(CHECK), "/load/kind");
    open(Scenario.oven().with("/load/kind", "mixed").finding(CHECK), "/load/inrush/durationS");
  }

  /** Typical values (from memory) carry a compliance at quotation, never a failure. */
  @ParameterizedTest
  @CsvSource({
    // A filament lamp 15 times: 15·2 A = 30 A, on B10 just below 3·10 A, on B6 above it.
    "filament, 2, B, 10, true",
    "filament, 2, B, 6, false",
    // A transformer 25 times: 25·4 A = 100 A, D10.
    "transformer, 4, D, 10, true",
    "transformer, 4.1, D, 10, false",
    // A motor 10 times for 10 s: 10·5 A on C16 would ride 50 A for 18 s; 10·10 A not.
    "motor, 5, C, 16, true",
    "motor, 10, C, 16, false",
    // Discharge lamps 100 times for 0.5 ms: (√2·90 A)²·0.0005 s = 8.1 A²s of (3·10 A)²/100 = 9 A²s.
    "discharge, 0.9, B, 10, true",
    "discharge, 1, B, 10, false"
  })
  void typicalValuesStandInAtQuotation(
      String kind, double running, String letter, double rated, boolean holds) {
    Scenario load =
        Scenario.oven()
            .with("/stage", "quotation")
            .with("/load/kind", kind)
            .with("/load/designCurrentA", running)
            .with("/device/characteristic", letter)
            .with("/device/ratedCurrentA", rated);
    Finding found = load.finding(CHECK);
    if (holds) {
      complies(found);
    } else {
      open(found);
    }
    assertTrue(assumptions(found).contains(NoteCode.TYPICAL_INRUSH));
    open(load.with("/stage", "design").finding(CHECK));
  }

  /** A typical motor on B6: 10·11 A for 10 s would trip it for certain; the real one may not. */
  @Test
  void typicalValueFailsNothing() {
    Scenario motor =
        InrushTest.mixer()
            .with("/stage", "quotation")
            .without("/load/inrush")
            .with("/device/characteristic", "B")
            .with("/device/ratedCurrentA", 6);
    openBecause(Reason.STAND_IN_FAILS, motor.finding(CHECK));
  }

  /** The maker allows 13 drivers on B10 and 22 on C10. */
  @ParameterizedTest
  @CsvSource({
    "B, 10, 13, true",
    "B, 10, 14, false",
    "C, 10, 22, true",
    "C, 10, 23, false",
    "C, 16, 22, true",
    "D, 16, 22, true"
  })
  void makersCountSettlesItBothWays(String letter, double rated, int count, boolean holds) {
    Finding found = drivers(letter, rated, count).finding(CHECK);
    if (holds) {
      complies(found);
    } else {
      fails(found);
    }
    assertEquals(Strength.RULE, found.strength());
    actual(count, found);
  }

  /** How many there are is the question: no number stands in for it. */
  @Test
  void makersCountAsksForTheNumber() {
    open(drivers("B", 10, 13).without("/load/count").finding(CHECK), "/load/count");
  }

  /**
   * Discharge lamps of which no start is stated behind a gG link of twice their current, by
   * guidance (a college hand-out on fuses): 32 A for 16 A. Whatever is stated of their start
   * decides instead.
   */
  @ParameterizedTest
  @CsvSource({
    "16, gG, , true",
    "16.1, gG, , false",
    "16, aM, , false",
    "16, gG, peakCurrentA, false",
    "16, gG, durationS, false"
  })
  void lampsBehindAFuseOfTwiceTheirCurrent(
      double running, String category, String stated, boolean holds) {
    Scenario lamps =
        Scenario.oven()
            .with("/stage", "design")
            .with("/load/kind", "discharge")
            .with("/load/designCurrentA", running)
            .with("/device/standard", "BS 88-2")
            .with("/device/ratedCurrentA", 32)
            .with("/device/utilizationCategory", category);
    Finding found =
        (stated == null ? lamps : lamps.with("/load/inrush/" + stated, 5)).finding(CHECK);
    if (holds) {
      assertEquals(Strength.GUIDANCE, complies(found).strength());
      actual(32, found);
    } else {
      open(found);
    }
  }

  /** A stated peak is that of one: of how many is asked, whatever decides by it. */
  @Test
  void peaksAskForTheNumber() {
    Scenario lamps = drivers("C", 16, 2).with("/stage", "design").without("/load/count");
    open(lamps.without("/load/inrush/countLimits").finding(CHECK), "/load/count");
  }

  /**
   * Beyond what the maker tells of, n peaks of 19 A for 0.28 ms against half a wave at 5·16 A:
   * (25·19)² ·0.00028 = 63.2 A²s of 80²/100 = 64 A²s; 26 drivers 68.3 A²s.
   */
  @ParameterizedTest
  @CsvSource({"25, true", "26, false"})
  void pulseEnergyDecidesByGuidance(int count, boolean holds) {
    Scenario lamps = drivers("C", 16, count).with("/stage", "design");
    Finding found = lamps.finding(CHECK);
    if (holds) {
      complies(found);
      actual(count * 19.0 * count * 19 * 0.00028, found);
      limit(64, found);
      openBecause(
          Reason.PROOF_WANTED, lamps.with("/requirements/evidence", "proved").finding(CHECK));
    } else {
      assertEquals(List.of(NoteCode.MAKER_COUNT_NEEDED), wanted(open(found)));
    }
  }

  /**
   * A pulse told by a multiple has the peak √2·m·Ib and its energy: (√2·126·2)²·0.0005 = 63.5 A²s
   * of 64 A²s on a C16; with 127 times 64.5 A²s.
   */
  @ParameterizedTest
  @CsvSource({"126, true", "127, false"})
  void pulseOfAMultipleHasTheEnergyOfItsPeak(int multiple, boolean holds) {
    Scenario supplies =
        drivers("C", 16, 1)
            .with("/stage", "design")
            .with("/load/kind", "electronic")
            .with("/load/designCurrentA", 2)
            .withJson("/load/inrush", "{\"currentMultiple\": 1, \"durationS\": 0.0005}")
            .with("/load/inrush/currentMultiple", multiple);
    Finding found = supplies.finding(CHECK);
    if (holds) {
      actual(2 * Math.pow(multiple * 2, 2) * 0.0005, complies(found));
      limit(64, found);
    } else {
      open(found);
    }
  }

  /** Peaks below √2·3·10 A cannot trip a B10: two of 19 A proved, three not. */
  @ParameterizedTest
  @CsvSource({"2, RULE", "3, GUIDANCE"})
  void sumOfPeaksBelowTheBandIsProved(int count, Strength strength) {
    Scenario lamps = drivers("B", 10, count).without("/load/inrush/countLimits");
    Finding found = lamps.with("/stage", "design").finding(CHECK);
    assertEquals(strength, complies(found).strength());
  }

  /** Of parts all start at once: 8·5 A and 20 A on a C16 are 60 A, on a B16 too much. */
  @Test
  void partsStartTogether() {
    Scenario mixed =
        Scenario.oven()
            .with("/stage", "design")
            .with("/load/kind", "mixed")
            .without("/load/designCurrentA")
            .with("/device/characteristic", "C")
            .with("/device/ratedCurrentA", 16)
            .withJson(
                "/load/parts",
                "[{\"kind\": \"motor\", \"designCurrentA\": 5, \"inrush\": {\"starting\":"
                    + " \"direct-on-line\", \"currentMultiple\": 8, \"durationS\": 0.4}},"
                    + " {\"kind\": \"resistive\", \"designCurrentA\": 20}]");
    Finding found = complies(mixed.finding(CHECK));
    actual(60, found);
    limit(80, found);
    open(mixed.with("/device/characteristic", "B").finding(CHECK));
    open(
        mixed
            .withJson("/load/parts", "[{\"kind\": \"motor\", \"designCurrentA\": 5}]")
            .finding(CHECK),
        "/load/parts/0/inrush/starting");
  }

  /** A part that trips the device alone trips it with the others too. */
  @Test
  void partThatTripsAloneFails() {
    fails(
        Scenario.oven()
            .with("/load/kind", "mixed")
            .with("/device/ratedCurrentA", 16)
            .withJson(
                "/load/parts",
                "[{\"kind\": \"motor\", \"designCurrentA\": 10, \"inrush\": {\"starting\":"
                    + " \"direct-on-line\", \"currentMultiple\": 8, \"durationS\": 0.4}},"
                    + " {\"kind\": \"led\", \"designCurrentA\": 1}]")
            .finding(CHECK));
  }

  /** IEC 60269-1 table 3 (from memory): gG 32 A does not melt within 10 s at 75 A. */
  @ParameterizedTest
  @CsvSource({
    "32, 10.7, 10, RULE",
    "32, 10.8, 9, GUIDANCE",
    "32, 10.8, 10, ",
    "32, 28.5, 0.1, RULE",
    "32, 28.6, 0.1, ",
    "16, 11, 1.5, "
  })
  void fuseIsHeldAgainstItsGates(double rated, double running, double seconds, Strength strength) {
    Finding found = fused(rated, running, seconds).finding(CHECK);
    if (strength == null) {
      assertTrue(wanted(open(found)).contains(NoteCode.MAKER_CURVE_NEEDED));
    } else {
      assertEquals(strength, complies(found).strength());
    }
  }

  /** IEC 60269-1 table 3: a gG 16 A has operated within 5 s at 65 A. */
  @ParameterizedTest
  @CsvSource({"5, false", "5.1, true"})
  void fuseOperatesForCertainAtItsPoints(double seconds, boolean fails) {
    Finding found = fused(16, 65.0 / 7, seconds).finding(CHECK);
    assertEquals(fails, found.verdict() == Verdict.DOES_NOT_COMPLY);
    Scenario other = fused(16, 65, seconds).with("/device/standard", "BS 3036");
    fails(other.with("/device/ratedCurrentA", 15).finding(CHECK));
  }

  /** Of a BS 88-3 fuse only operating points are known: nothing says that it rides a start. */
  @Test
  void otherFusesPromiseNothing() {
    Scenario cartridge = fused(20, 5, 1).with("/device/standard", "BS 88-3");
    assertTrue(
        wanted(open(cartridge.without("/device/utilizationCategory").finding(CHECK)))
            .contains(NoteCode.MAKER_CURVE_NEEDED));
    open(fused(20, 5, 1).with("/device/utilizationCategory", "aM").finding(CHECK));
  }

  /** IEC 60947-2: 0.8·Ii stays still and 1.05·Ir for two hours; its thermal zone is the maker's. */
  @Test
  void adjustableBreakerAsksForTheMakersCurve() {
    Scenario breaker =
        InrushTest.mixer()
            .withJson(
                "/device",
                "{\"standard\": \"IEC 60947-2\", \"ratedCurrentA\": 100, \"poles\": 3,"
                    + " \"breakingCapacityA\": 36000, \"settings\": {\"longTimeA\": 80,"
                    + " \"instantaneousA\": 800}}");
    complies(breaker.finding(CHECK));
    assertTrue(
        wanted(open(breaker.with("/device/settings/longTimeA", 63).finding(CHECK)))
            .contains(NoteCode.MAKER_CURVE_NEEDED));
    open(
        breaker.without("/device/settings/instantaneousA").finding(CHECK),
        "/device/settings/instantaneousA");
  }

  private static Scenario fused(double rated, double running, double seconds) {
    return InrushTest.mixer()
        .without("/load/ratedPowerW")
        .with("/load/designCurrentA", running)
        .with("/load/inrush/durationS", seconds)
        .withJson("/device", FUSE.formatted(rated));
  }

  private static Scenario drivers(String letter, double rated, int count) {
    return Scenario.oven()
        .with("/device/characteristic", letter)
        .with("/device/ratedCurrentA", rated)
        .withJson(
            "/load",
            "{\"kind\": \"led\", \"use\": \"lighting\", \"ratedPowerW\": 38, \"powerFactor\": 0.95,"
                + " \"count\": %s, \"inrush\": {\"peakCurrentA\": 19, \"durationS\": 0.00028,"
                    .formatted(count)
                + " \"countLimits\": [{\"characteristic\": \"B\", \"ratedCurrentA\": 10,"
                + " \"count\": 13}, {\"characteristic\": \"C\", \"ratedCurrentA\": 10,"
                + " \"count\": 22}]}}");
  }
}
