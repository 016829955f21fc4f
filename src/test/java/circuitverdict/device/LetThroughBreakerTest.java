package circuitverdict.device;

import static circuitverdict.device.Devices.breaker;
import static circuitverdict.device.Devices.design;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Energy of breakers without the maker's data: class at their own Icn, promised times, no more. */
class LetThroughBreakerTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;
  private static final Breaker B16 = breaker("B", 16.0, 6000.0, 3);

  static Figure ampere(double value) {
    return Figure.derived("I", value, Unit.AMPERE);
  }

  private static LetThrough.Energy over(Breaker breaker, double from, double to) {
    return LetThrough.of(breaker, design()).over(ampere(from), ampere(to));
  }

  private static void is(double least, double greatest, LetThrough.Energy energy) {
    assertEquals(least, energy.least().value(), least * 1e-9);
    if (Double.isInfinite(greatest)) {
      assertEquals(greatest, energy.greatest().value());
    } else {
      assertEquals(greatest, energy.greatest().value(), greatest * 1e-9);
    }
    assertEquals("I²t", energy.greatest().symbol());
  }

  @ParameterizedTest
  @CsvSource({
    // Type, In, Icn, class, limit: EN 60898-1 annex ZA.
    "B, 16, 6000, 3, 35000", "C, 16, 6000, 3, 42000", "B, 6, 3000, 3, 15000",
    "B, 32, 10000, 3, 90000", "C, 20, 4500, 2, 100000", "B, 16, 10000, 2, 240000"
  })
  void theClassPromisesTheRowOfItsOwnCapacity(
      String letter, double in, double icn, int energyClass, double limit) {
    Breaker device = breaker(letter, in, icn, energyClass);
    is(0, limit, over(device, icn, icn));
    is(0, limit, over(device, icn / 2, icn));
  }

  @Test
  void theLesserOfClassAndPromisedTimeIsTheGreatest() {
    // 500 A for 0.1 s: 25 000 A²s, below the class limit of 35 000.
    is(0, 25_000, over(B16, 100, 500));
    // At 3 kA, 900 000 A²s: the class counts (the lighting circuit of the engineering basis).
    is(0, 35_000, over(breaker("B", 6.0, 6000.0, 3), 3000, 3000));
    is(0, 900_000, over(breaker("B", 16.0, 6000.0, null), 3000, 3000));
  }

  @Test
  void aboveItsOwnCapacityNothingIsPromised() {
    is(0, NEVER, over(B16, 100, 6001));
    is(0, NEVER, over(B16, 6001, 6001));
    is(0, 35_000, over(B16, 100, 6000));
    is(0, NEVER, over(breaker("B", 16.0, null, 3), 3000, 3000));
  }

  /** Equality keeps within the capacity, and figures within 1e-12 of each other are equal. */
  @Test
  void atItsOwnCapacityItsPromiseHolds() {
    Breaker unclassed = breaker("B", 16.0, 6000.0, null);
    for (double at : new double[] {6000 * (1 - 1e-9), 6000, Math.nextUp(6000.0)}) {
      is(0, 35_000, over(B16, at, at));
      is(0, 35_000, over(B16, 100, at));
      is(0, at * at * 0.1, over(unclassed, at, at));
      is(0, 35_000, LetThrough.byGuidance(B16, at, design()).over(ampere(100), ampere(at)));
    }
    is(0, NEVER, over(B16, 6000 * (1 + 1e-9), 6000 * (1 + 1e-9)));
    is(0, NEVER, over(B16, 100, 6000 * (1 + 1e-9)));
    is(0, NEVER, over(unclassed, 100, 6000 * (1 + 1e-9)));
  }

  /** 5 In of B16 is 80 A: from there on 0.1 s and the class count, below it 60 s. */
  @Test
  void theMagneticLimitIsReachedWhereOnlyBinaryRoundingLacks() {
    is(0, 640, over(B16, Math.nextDown(80.0), Math.nextDown(80.0)));
    is(0, 35_000, over(B16, Math.nextDown(80.0), 6000));
    is(0, 384_000, over(B16, 80 * (1 - 1e-11), 6000));
  }

  @ParameterizedTest
  @CsvSource({"1", "4"})
  void classOneAndUnknownClassesHaveNoLimit(int energyClass) {
    is(0, 900_000, over(breaker("B", 16.0, 6000.0, energyClass), 3000, 3000));
  }

  @Test
  void aClassClaimedWithoutAFigureLimitsNothing() {
    // Type D, and ratings above 32 A: not in annex ZA as read.
    is(0, 900_000, over(breaker("D", 16.0, 6000.0, 3), 3000, 3000));
    is(0, 900_000, over(breaker("B", 40.0, 6000.0, 3), 3000, 3000));
    assertNull(LetThrough.classLimit(breaker("D", 16.0, 6000.0, 3), 6000, design()));
    assertNull(LetThrough.classLimit(breaker("B", 40.0, 6000.0, 3), 6000, design()));
    assertNull(LetThrough.classLimit(breaker("B", 16.0, 5000.0, 3), 5000, design()));
    assertNull(LetThrough.classLimit(breaker(null, 16.0, 6000.0, 3), 6000, design()));
    assertNull(LetThrough.classLimit(breaker("B", null, 6000.0, 3), 6000, design()));
    assertNull(LetThrough.classLimit(breaker("B", 16.0, 6000.0, null), 6000, design()));
    assertEquals(35_000, LetThrough.classLimit(B16, 6000, design()).number());
  }

  @ParameterizedTest
  @CsvSource({
    // B16: current, least and greatest by tests a to e: earliest and latest times of each zone.
    "17, 0, Infinity", // below 1.13 In: an hour at least, beyond 5 s no failure is stated
    "20, 400, Infinity", // 1.13 to 1.45 In: 1 s at the earliest, nothing at the latest
    "40, 1600, 5760000", // 1.45 to 2.55 In: 1 s, 1 h
    "45, 202.5, 121500", // 2.55 to 3 In: 0.1 s, 60 s
    "60, 0, 216000", // 3 to 5 In: 0 s, 60 s
    "100, 0, 1000" // above 5 In: 0.1 s
  })
  void belowTheMagneticLimitTheTestsBoundBothSides(double current, double least, double greatest) {
    is(least, greatest, over(B16, current, current));
  }

  @Test
  void aRangeTakesTheWorstOfEverySide() {
    // Corners of B16: 2.55 In = 40.8 A, 3 In = 48 A, 5 In = 80 A.
    LetThrough.Energy energy = over(B16, 40, 100);
    is(40.8 * 40.8, 40.8 * 40.8 * 3600, energy);
    assertEquals(40.8, energy.decidingA(), 1e-9);
    LetThrough.Energy upper = over(B16, 50, 400);
    is(0, 80 * 80 * 60, upper);
    assertEquals(80, upper.decidingA());
  }

  @Test
  void crossedEndsCountAtTheLowerOne() {
    LetThrough.Energy energy = over(B16, 500, 300);
    is(0, 25_000, energy);
    assertEquals(500, energy.decidingA());
  }

  @Test
  void theWorkingShowsTheDecidingCurrentAndTime() {
    Dossier d = design();
    LetThrough.of(B16, d).over(ampere(100), new Figure("Ik,max", 500, Unit.AMPERE, null));
    assertEquals("I²·t", d.working().steps().get(0).formulaText());
    assertEquals("500²·0.1", d.working().steps().get(0).substitution());
    Dossier limit = design();
    Figure greatest = LetThrough.of(B16, limit).over(ampere(3000), ampere(3000)).greatest();
    assertEquals("Table ZA.1", ((circuitverdict.standard.Citation) greatest.source()).reference());
    assertEquals("35000", limit.working().steps().get(0).substitution());
  }

  @Test
  void guidanceTakesTheRowOfTheSmallestCapacityThatReachesTheCurrent() {
    Dossier d = design();
    is(0, 15_000, LetThrough.byGuidance(B16, 2500, d).over(ampere(2000), ampere(2500)));
    is(0, 15_000, LetThrough.byGuidance(B16, 3000, d).over(ampere(3000), ampere(3000)));
    // 3 kA but for binary rounding: a reading of 2857.14… A widened by 5 %.
    double widened = Math.nextUp(3000.0);
    is(0, 15_000, LetThrough.byGuidance(B16, widened, d).over(ampere(2000), ampere(widened)));
    is(0, 25_000, LetThrough.byGuidance(B16, 3001, d).over(ampere(3001), ampere(3001)));
    is(0, 35_000, LetThrough.byGuidance(B16, 4501, d).over(ampere(4501), ampere(4501)));
    is(0, 35_000, LetThrough.byGuidance(B16, 6000, d).over(ampere(6000), ampere(6000)));
  }

  @Test
  void guidanceEndsAtTheDevicesOwnCapacity() {
    Dossier d = design();
    is(0, NEVER, LetThrough.byGuidance(B16, 6500, d).over(ampere(6500), ampere(6500)));
    // A row serves up to its own capacity only: beyond it the own row counts again.
    is(0, 35_000, LetThrough.byGuidance(B16, 2500, d).over(ampere(2500), ampere(3500)));
    is(
        0,
        NEVER,
        LetThrough.byGuidance(breaker("B", 16.0, null, 3), 2500, d)
            .over(ampere(2500), ampere(2500)));
  }

  @Test
  void adjustableBreakersAreBoundByTheirReleases() {
    LetThrough delayed = LetThrough.of(Devices.set(100.0, 500.0, 0.3, 1000.0), design());
    // 1.2 Ii = 1200 A: 0.2 s from there; below it the conventional time of 2 h alone.
    is(0, 2000 * 2000 * 0.2, delayed.over(ampere(2000), ampere(2000)));
    is(0, 1000.0 * 1000 * 7200, delayed.over(ampere(700), ampere(1000)));
    is(0, NEVER, delayed.over(ampere(2000), ampere(25001)));
  }
}
