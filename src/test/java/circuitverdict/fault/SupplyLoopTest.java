package circuitverdict.fault;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Loop impedances brought to operating temperature; the factor 1.28 is common practice. */
class SupplyLoopTest {
  private static final double EXACT = 1e-12;

  /** Cold at a board: all of it × 1.28; beyond a known Ze only the rest; then the uncertainty. */
  @ParameterizedTest
  @CsvSource({
    "board, , 0, 0.512",
    "board, , 5, 0.5376",
    "board, 0.2, 0, 0.456",
    "board, 0.2, 5, 0.4788",
    "board, 0.4, 0, 0.4",
    ", , 0, 0.512",
    "origin, , 0, 0.4",
    "origin, , 5, 0.42",
    "origin, 0.2, 5, 0.42"
  })
  void coldReadingIsBroughtToOperatingTemperature(
      String point, Double origin, double uncertainty, double hot) {
    Scenario read =
        board("measured-cold").with("/supply/instrumentUncertaintyPercent", uncertainty);
    Scenario at = point == null ? read.without("/supply/point") : read.with("/supply/point", point);
    Scenario known = origin == null ? at : at.with("/supply/originLoopImpedanceOhm", origin);
    assertEquals(hot, earth(known).value(), EXACT);
  }

  /** Declared, or calculated hot: as is, whatever the instrument. */
  @ParameterizedTest
  @CsvSource({"declared", "calculated-hot"})
  void declaredAndCalculatedAreTakenAsTheyAre(String basis) {
    assertEquals(0.4, earth(board(basis)).value());
    assertEquals(0.4, earth(board(basis).with("/supply/instrumentUncertaintyPercent", 5)).value());
  }

  /** A missing basis counts as measured cold, listed. */
  @Test
  void unknownBasisCountsAsMeasuredCold() {
    Scenario unknown =
        board("declared").without("/supply/basis").with("/supply/instrumentUncertaintyPercent", 0);
    Dossier d = dossier(unknown);
    assertEquals(0.512, SupplyLoop.earth(unknown.circuit(), d).value(), EXACT);
    assertTrue(assumed(d, NoteCode.ASSUMED_MEASURED_COLD));
    assertTrue(d.remarks().stream().anyMatch(n -> n.code() == NoteCode.MEASURED_RAISED));
    assertFalse(assumed(d, NoteCode.ASSUMED_BOARD));
  }

  @Test
  void unknownPointOfAReadingCountsAsABoard() {
    Scenario unknown = board("measured-cold").without("/supply/point");
    Dossier d = dossier(unknown);
    SupplyLoop.earth(unknown.circuit(), d);
    assertTrue(assumed(d, NoteCode.ASSUMED_BOARD));
    assertFalse(assumed(d, NoteCode.ASSUMED_MEASURED_COLD));
  }

  /**
   * At sign-off a reading without its uncertainty stands at its best; before that it counts as
   * exact.
   */
  @ParameterizedTest
  @CsvSource({"sign-off, 0.512", "design, 0.512", "quotation, 0.512"})
  void uncertaintyIsNeededAtSignOff(String stage, double hot) {
    Scenario read =
        board("measured-cold")
            .with("/stage", stage)
            .without("/supply/instrumentUncertaintyPercent");
    Dossier d = dossier(read);
    assertEquals(hot, SupplyLoop.earth(read.circuit(), d).value(), EXACT);
    assertEquals(stage.equals("sign-off"), missing(d, "/supply/instrumentUncertaintyPercent"));
    assertEquals(stage.equals("sign-off"), d.standsAtBest());
  }

  /**
   * Typical values of Appendix 2 of the On-Site Guide: 0.35, 0.8 and 21 Ω, for quotations alone.
   */
  @ParameterizedTest
  @CsvSource({"TN-C-S, 0.35", "TN-S, 0.8", "TT, 41"})
  void quotationMayTakeTheTypicalLoop(String earthing, double ohm) {
    Scenario bare =
        board("declared")
            .with("/stage", "quotation")
            .with("/supply/earthing", earthing)
            .with("/supply/earthElectrodeResistanceOhm", 20)
            .without("/supply/point")
            .without("/supply/basis")
            .without("/supply/loopImpedanceOhm");
    Dossier d = dossier(bare);
    assertEquals(ohm, SupplyLoop.earth(bare.circuit(), d).value());
    assertTrue(assumed(d, NoteCode.TYPICAL_LOOP_IMPEDANCE));
    assertTrue(assumed(d, NoteCode.ASSUMED_ORIGIN));
    assertEquals(1, d.typical().size());

    Dossier origin = dossier(bare.with("/supply/point", "origin"));
    assertEquals(
        ohm, SupplyLoop.earth(bare.with("/supply/point", "origin").circuit(), origin).value());
    assertFalse(assumed(origin, NoteCode.ASSUMED_ORIGIN));
  }

  /** The electrode on top of the typical part is a reading: 21 + 20·1.05 Ω. */
  @Test
  void electrodeOfAQuotationIsWidened() {
    Scenario bare =
        board("measured-cold")
            .with("/stage", "quotation")
            .with("/supply/point", "origin")
            .with("/supply/earthing", "TT")
            .with("/supply/instrumentUncertaintyPercent", 5)
            .with("/supply/earthElectrodeResistanceOhm", 20)
            .without("/supply/loopImpedanceOhm");
    assertEquals(42, SupplyLoop.earth(bare.circuit(), dossier(bare)).value(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"quotation, board", "design, origin", "sign-off, origin"})
  void nobodyElseMay(String stage, String point) {
    Scenario bare =
        board("declared")
            .with("/stage", stage)
            .with("/supply/point", point)
            .without("/supply/loopImpedanceOhm");
    Dossier d = dossier(bare);
    assertFalse(SupplyLoop.earth(bare.circuit(), d).known());
    assertTrue(missing(d, "/supply/loopImpedanceOhm"));
  }

  /** Only at the origin can a typical loop stand in; beyond it the loop itself is asked for. */
  @Test
  void typicalLoopNeedsTheEarthing() {
    Scenario bare =
        board("declared")
            .with("/stage", "quotation")
            .with("/supply/point", "origin")
            .without("/supply/earthing")
            .without("/supply/loopImpedanceOhm");
    Dossier d = dossier(bare);
    assertFalse(SupplyLoop.earth(bare.circuit(), d).known());
    assertTrue(missing(d, "/supply/earthing"));
    Scenario board = bare.with("/supply/point", "board");
    Dossier beyond = dossier(board);
    assertFalse(SupplyLoop.earth(board.circuit(), beyond).known());
    assertTrue(missing(beyond, "/supply/loopImpedanceOhm"));
  }

  /** A value said to be typical serves a quotation, and carries no failure there. */
  @ParameterizedTest
  @CsvSource({"quotation, 0.4, 1", "design, NaN, 0", "sign-off, NaN, 0"})
  void statedTypicalValueServesAQuotation(String stage, double ohm, int typical) {
    Scenario stated = board("typical").with("/stage", stage);
    Dossier d = dossier(stated);
    assertEquals(ohm, SupplyLoop.earth(stated.circuit(), d).value());
    assertEquals(typical, d.typical().size());
    assertEquals(!stage.equals("quotation"), missing(d, "/supply/basis"));
  }

  /** The line–neutral loop likewise; its own origin part is not known. */
  @ParameterizedTest
  @CsvSource({"board, 0.384", "origin, 0.3"})
  void neutralLoopIsBroughtToOperatingTemperatureToo(String point, double hot) {
    Scenario read =
        board("measured-cold")
            .with("/supply/point", point)
            .with("/supply/originLoopImpedanceOhm", 0.2)
            .with("/supply/instrumentUncertaintyPercent", 0)
            .with("/supply/lineToNeutralLoopImpedanceOhm", 0.3);
    assertEquals(hot, neutral(read, dossier(read)).value(), EXACT);
  }

  /** In TN at the origin the earth loop may stand for it in a design, listed. */
  @ParameterizedTest
  @CsvSource({
    "TN-C-S, origin, design, true",
    "TN-S, origin, quotation, true",
    "TN-C-S, origin, sign-off, false",
    "TN-C-S, board, design, false",
    "TT, origin, design, false"
  })
  void earthLoopStandsInOnlyAtTheOriginOfATnDesign(
      String earthing, String point, String stage, boolean stands) {
    Scenario unknown =
        board("declared")
            .with("/supply/earthing", earthing)
            .with("/supply/point", point)
            .with("/stage", stage)
            .without("/supply/lineToNeutralLoopImpedanceOhm");
    Dossier d = dossier(unknown);
    Figure loop = neutral(unknown, d);
    assertEquals(stands ? 0.4 : Double.NaN, loop.value());
    assertEquals(stands, assumed(d, NoteCode.EARTH_LOOP_STANDS_IN));
    assertEquals(!stands, missing(d, "/supply/lineToNeutralLoopImpedanceOhm"));
  }

  @Test
  void unknownEarthingLetsNothingStandIn() {
    Scenario unknown =
        board("declared")
            .with("/stage", "design")
            .with("/supply/point", "origin")
            .without("/supply/earthing")
            .without("/supply/lineToNeutralLoopImpedanceOhm");
    Dossier d = dossier(unknown);
    assertFalse(neutral(unknown, d).known());
    assertTrue(missing(d, "/supply/lineToNeutralLoopImpedanceOhm"));
  }

  private static Scenario board(String basis) {
    return Scenario.oven()
        .with("/supply/point", "board")
        .with("/supply/basis", basis)
        .with("/supply/loopImpedanceOhm", 0.4)
        .with("/supply/instrumentUncertaintyPercent", 0);
  }

  private static Figure earth(Scenario scenario) {
    return SupplyLoop.earth(scenario.circuit(), dossier(scenario));
  }

  private static Figure neutral(Scenario scenario, Dossier d) {
    return SupplyLoop.neutral(scenario.circuit(), d);
  }

  private static boolean assumed(Dossier d, NoteCode code) {
    return d.assumptions().stream().anyMatch(note -> note.code() == code);
  }

  private static boolean missing(Dossier d, String pointer) {
    return d.missing().stream()
        .map(note -> note.pointer())
        .map(Pointer::text)
        .anyMatch(pointer::equals);
  }
}
