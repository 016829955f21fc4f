package circuitverdict.fault;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which greatest fault current a device meets (434.1, 434.5.1), and what stands in for it. */
class GreatestCurrentTest {
  private static final String CURRENTS = "/supply/faultCurrents/";

  private static final LiveConductors WITHOUT_NEUTRAL = new LiveConductors(3, false);

  /**
   * A way meets the greatest of the kinds that can flow in it, whatever its poles (434.5.1); what
   * is unknown gives way to the greatest of any kind.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 1500, 1800, 1800",
    "1, , 1500, 1800, 1800",
    "1, 1, 1900, 1800, 1900",
    "1, 1, 1800, 1800, 1800",
    "1, 2, 1500, 1800, 1800",
    "1, 2, 1900, 1800, 1900",
    "1, 2, , 1800, 4000",
    "1, 2, 1500, , 4000",
    "1, 1, 1500, , 4000",
    "1, 1, , 1800, 4000",
    "2, 2, 1500, 1800, 4000",
    "3, 3, 1500, 1800, 3000",
    "3, 4, 1500, 1800, 3000",
    "3, 3, 1500, 3600, 3600",
    "3, 4, 3500, 1800, 3500",
    "3, 3, 3500, 3600, 3600",
    "3, 4, , 1800, 4000"
  })
  void currentFollowsThePoles(
      int lines, Integer poles, Double neutral, Double earth, double meets) {
    Scenario supply = stated(neutral, earth, 3000.0, 4000.0);
    assertEquals(meets, ofWay(supply, lines, poles, dossier(supply)));
  }

  @Test
  void unknownLiveConductorsMeetTheGreatestOfAnyKind() {
    Scenario supply = stated(1500.0, 1800.0, 3000.0, 4000.0);
    assertEquals(4000, GreatestCurrent.ofWay(supply.circuit(), null, 1, dossier(supply)).value());
  }

  /**
   * The greatest of any kind is of some kind: where it exceeds every kind of the supply, one of
   * these is stated too small, and it counts itself. A fault between two lines needs no statement:
   * the fault of all three exceeds it.
   */
  @ParameterizedTest
  @CsvSource({
    "1, , 1, 1800, 1900, 1900, 1900, 1900",
    "1, , 1, 1800, 1900, 1901, 1901, 1901",
    "1, , 1, 1800, , 1900, 1900, 1900",
    ", , 1, 1800, 1900, 4000, 1900, 1900",
    "3, , 1, 1800, 1900, 4000, 1900, 1900",
    "3, 3000, 1, 1800, 1900, 3000, 1900, 1900",
    "3, 3000, 1, 1800, 1900, 3001, 3001, 3001",
    "3, 3000, 3, 1800, 1900, 3001, 3001, 3001",
    "3, 3000, 3, 1800, 1900, 3000, 3000, 1900"
  })
  void greatestOfAnyKindBelongsToOne(
      Integer phases,
      Double three,
      int lines,
      Double neutral,
      Double earth,
      Double any,
      double meets,
      double toEarth) {
    Scenario supply = stated(neutral, earth, three, any);
    supply = phases == null ? supply : supply.with("/supply/phases", phases);
    assertEquals(meets, ofWay(supply, lines, null, dossier(supply)));
    assertEquals(toEarth, GreatestCurrent.toEarth(supply.circuit(), dossier(supply)).value());
  }

  @Test
  void faultBetweenTwoLinesMayBeTheGreatestOfAnyKind() {
    Scenario supply =
        stated(1500.0, 1800.0, 3000.0, 3100.0)
            .with("/supply/phases", 3)
            .with(CURRENTS + "twoPhase/maximumA", 3100);
    assertEquals(1800, ofWay(supply, 1, null, dossier(supply)));
  }

  /** At most twice the line–neutral current, the neutral being no smaller; never at sign-off. */
  @ParameterizedTest
  @CsvSource({"design, 3000", "quotation, 3000", "sign-off, NaN"})
  void threePhaseCurrentMayBeTakenAsTwice(String stage, double current) {
    Scenario supply = stated(1500.0, null, null, null).with("/stage", stage);
    Dossier d = dossier(supply);
    assertEquals(current, ofWay(supply, 3, 3, d));
    assertEquals(stage.equals("sign-off"), missing(d, "/supply/maximumFaultCurrentA"));
    assertEquals(
        !stage.equals("sign-off"),
        d.assumptions().stream()
            .anyMatch(note -> note.code() == NoteCode.ASSUMED_THREE_PHASE_CURRENT));
  }

  /** Near a transformer an earth fault can exceed it: at sign-off something must say whether. */
  @ParameterizedTest
  @CsvSource({
    "design, , , 3000",
    "design, , 4000, 4000",
    "sign-off, , , NaN",
    "sign-off, , 4000, 4000",
    "sign-off, 2000, , 3000",
    "sign-off, 3500, 4000, 3500"
  })
  void threePhaseCurrentStandsBesideTheEarthFaults(
      String stage, Double earth, Double any, double current) {
    Scenario supply = stated(null, earth, 3000.0, any).with("/stage", stage);
    Dossier d = dossier(supply);
    assertEquals(current, ofWay(supply, WITHOUT_NEUTRAL, 3, d));
    assertEquals(Double.isNaN(current), missing(d, "/supply/maximumFaultCurrentA"));
  }

  /** A line–neutral fault flows where there is a neutral, and there it must be known too. */
  @ParameterizedTest
  @CsvSource({
    "true, design, 9000, , 9000",
    "true, sign-off, 9000, , 9000",
    "false, sign-off, 9000, , 3000",
    "true, design, , , 3000",
    "true, sign-off, , , NaN",
    "true, design, , 9000, 9000",
    "true, sign-off, , 9000, 9000",
    "false, sign-off, , 9000, 3000",
    "true, sign-off, , 2000, 3000"
  })
  void lineNeutralFaultsFlowWhereThereIsANeutral(
      boolean neutral, String stage, Double lineNeutral, Double any, double current) {
    Scenario supply = stated(lineNeutral, 2500.0, 3000.0, any).with("/stage", stage);
    Dossier d = dossier(supply);
    assertEquals(current, ofWay(supply, new LiveConductors(3, neutral), 4, d));
    assertEquals(Double.isNaN(current), missing(d, "/supply/maximumFaultCurrentA"));
  }

  /** A fault between two lines flows where there are two; it need not be known beside three. */
  @ParameterizedTest
  @CsvSource({
    "3, 2600, 3000",
    "3, 3300, 3300",
    "2, 2600, 2600",
    "2, 1200, 1800",
    "2, , 4000",
    "1, 3300, 1800"
  })
  void faultsBetweenTwoLinesFlowWhereThereAreTwo(int lines, Double twoPhase, double current) {
    Scenario supply = stated(1500.0, 1800.0, 3000.0, 4000.0);
    supply = twoPhase == null ? supply : supply.with(CURRENTS + "twoPhase/maximumA", twoPhase);
    assertEquals(current, ofWay(supply, lines, null, dossier(supply)));
  }

  /** Before sign-off two poles may be held by the line–neutral current, where it alone is known. */
  @ParameterizedTest
  @CsvSource({
    "design, 2, , 1500",
    "design, 2, 4000, 4000",
    "design, 1, , NaN",
    "design, , , NaN",
    "sign-off, 2, , NaN"
  })
  void twoPolesMayBeHeldByLineAndNeutral(String stage, Integer poles, Double any, double current) {
    Scenario supply = stated(1500.0, null, null, any).with("/stage", stage);
    Dossier d = dossier(supply);
    assertEquals(current, ofWay(supply, 1, poles, d));
    assertEquals(Double.isNaN(current), missing(d, "/supply/maximumFaultCurrentA"));
  }

  /** Twice the line–neutral current bounds faults between lines, not those to earth. */
  @Test
  void earthFaultMayExceedTwice() {
    Scenario supply = stated(1500.0, 3500.0, null, null).with("/stage", "design");
    assertEquals(3500, ofWay(supply, 3, 3, dossier(supply)));
  }

  @Test
  void greatestOfAnyKindIsBetterThanTwice() {
    Scenario supply = stated(1500.0, null, null, 2500.0).with("/stage", "design");
    assertEquals(2500, ofWay(supply, 3, 3, dossier(supply)));
  }

  /**
   * A reading is widened by its uncertainty, a declared figure is not; unknown basis is a reading.
   */
  @ParameterizedTest
  @CsvSource({
    "measured-cold, 5, 4200",
    "measured-cold, 0, 4000",
    ", 5, 4200",
    "declared, 5, 4000",
    "calculated-hot, 5, 4000"
  })
  void readingIsWidened(String basis, double uncertainty, double current) {
    Scenario supply =
        stated(null, null, null, 4000.0).with("/supply/instrumentUncertaintyPercent", uncertainty);
    Scenario read =
        basis == null ? supply.without("/supply/basis") : supply.with("/supply/basis", basis);
    assertEquals(current, ofWay(read, 1, 1, dossier(read)), 1e-9);
  }

  /** A missing basis counts as a reading, with or without a loop. */
  @Test
  void withoutBasisItCountsAsRead() {
    Scenario supply =
        stated(null, null, null, 4000.0)
            .with("/supply/instrumentUncertaintyPercent", 5)
            .without("/supply/basis")
            .without("/supply/loopImpedanceOhm");
    assertEquals(4200, ofWay(supply, 1, 1, dossier(supply)));
  }

  /** Typical 16 kA of a single-phase service at the origin, for a quotation alone. */
  @ParameterizedTest
  @CsvSource({
    "quotation, 1, origin, 16000",
    "quotation, 3, origin, NaN",
    "quotation, 1, board, NaN",
    "design, 1, origin, NaN",
    "sign-off, 1, origin, NaN"
  })
  void quotationMayTakeTheTypicalCurrent(String stage, int phases, String point, double current) {
    Scenario supply =
        stated(null, null, null, null)
            .with("/stage", stage)
            .with("/supply/phases", phases)
            .with("/supply/point", point);
    Dossier d = dossier(supply);
    assertEquals(current, ofWay(supply, 1, 1, d));
    boolean typical = current > 0;
    assertEquals(typical ? 1 : 0, d.typical().size());
    assertEquals(!typical, missing(d, "/supply/maximumFaultCurrentA"));
  }

  @Test
  void unknownNumberOfPhasesHasNoTypicalCurrent() {
    Scenario supply =
        stated(null, null, null, null).with("/stage", "quotation").without("/supply/phases");
    assertEquals(Double.NaN, ofWay(supply, 1, 1, dossier(supply)));
  }

  @Test
  void missingCurrentIsNamed() {
    Scenario supply = stated(null, null, null, null);
    Dossier d = dossier(supply);
    ofWay(supply, 1, 1, d);
    assertTrue(missing(d, "/supply/maximumFaultCurrentA"));
  }

  private static double ofWay(Scenario supply, int lines, Integer poles, Dossier d) {
    return ofWay(supply, new LiveConductors(lines, true), poles, d);
  }

  private static double ofWay(Scenario supply, LiveConductors live, Integer poles, Dossier d) {
    return GreatestCurrent.ofWay(supply.circuit(), live, poles, d).value();
  }

  static Scenario stated(Double neutral, Double earth, Double three, Double any) {
    Scenario supply =
        Scenario.oven()
            .with("/supply/basis", "declared")
            .without("/supply/phases")
            .without("/supply/faultCurrents")
            .without("/supply/maximumFaultCurrentA");
    supply = neutral == null ? supply : supply.with(CURRENTS + "lineToNeutral/maximumA", neutral);
    supply = earth == null ? supply : supply.with(CURRENTS + "lineToEarth/maximumA", earth);
    supply = three == null ? supply : supply.with(CURRENTS + "threePhase/maximumA", three);
    return any == null ? supply : supply.with("/supply/maximumFaultCurrentA", any);
  }

  private static boolean missing(Dossier d, String pointer) {
    return d.missing().stream().anyMatch(note -> note.pointer().text().equals(pointer));
  }
}
