package circuitverdict.conductor;

import static circuitverdict.support.Facts.dossier;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a circuit's conductors are where the request leaves it to structure, and at which stage. */
class WiringTest {
  private static final LiveConductors SINGLE = new LiveConductors(1, true);
  private static final LiveConductors FOUR_WIRE = new LiveConductors(3, true);

  @Test
  void liveConductorsOfASinglePhaseSupplyAreLineAndNeutral() {
    Scenario single = Scenario.oven().with("/supply/phases", 1).without("/liveConductors");
    Dossier d = dossier(single);
    assertEquals(SINGLE, Wiring.live(single.circuit(), d));
    assertTrue(assumed(d, NoteCode.ASSUMED_PHASES));
    assertTrue(d.missing().isEmpty());
  }

  @Test
  void liveConductorsOfOthersAreAskedFor() {
    Scenario three = Scenario.oven().without("/liveConductors");
    Dossier d = dossier(three);
    assertNull(Wiring.live(three.circuit(), d));
    assertTrue(missing(d, "/liveConductors"));
    assertTrue(d.assumptions().isEmpty());

    Scenario unknown = three.without("/supply/phases");
    Dossier open = dossier(unknown);
    assertNull(Wiring.live(unknown.circuit(), open));
    assertTrue(missing(open, "/supply/phases"));
  }

  @Test
  void statedLiveConductorsAreTaken() {
    Scenario stated =
        Scenario.oven().withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\", \"N\"]");
    Dossier d = dossier(stated);
    assertEquals(FOUR_WIRE, Wiring.live(stated.circuit(), d));
    assertTrue(d.assumptions().isEmpty());
  }

  /** Copper is taken for a quotation alone, listed. */
  @ParameterizedTest
  @CsvSource({"quotation, true", "design, false", "sign-off, false"})
  void copperIsTakenForAQuotation(String stage, boolean taken) {
    Scenario unknown = Scenario.oven().with("/stage", stage).without("/cable/conductor");
    Dossier d = dossier(unknown);
    assertEquals(taken ? Cable.Metal.COPPER : null, Wiring.metal(cable(unknown), d));
    assertEquals(taken, assumed(d, NoteCode.ASSUMED_COPPER));
    assertEquals(!taken, missing(d, "/cable/conductor"));
    Scenario stated = Scenario.oven().with("/stage", stage).with("/cable/conductor", "aluminium");
    assertEquals(Cable.Metal.ALUMINIUM, Wiring.metal(cable(stated), dossier(stated)));
  }

  /** The neutral of a flat twin is its line; elsewhere it is stated at sign-off. */
  @ParameterizedTest
  @CsvSource({
    "flat-twin-and-earth, sign-off, , 6, false",
    "multicore, sign-off, , NaN, false",
    "multicore, design, , 6, true",
    "multicore, sign-off, 2.5, 2.5, false"
  })
  void neutralFollowsTheConstruction(
      String construction, String stage, Double stated, double size, boolean assumed) {
    Scenario plain =
        Scenario.oven().with("/cable/construction", construction).with("/stage", stage);
    Scenario cable =
        stated == null ? plain.withOpenNeutral() : plain.with("/cable/neutralCsaMm2", stated);
    Dossier d = dossier(cable);
    assertEquals(size, Wiring.neutralCsa(cable(cable), d).value());
    assertEquals(assumed, assumed(d, NoteCode.ASSUMED_NEUTRAL_SIZE));
    assertEquals(Double.isNaN(size), missing(d, "/cable/neutralCsaMm2"));
  }

  /**
   * On one phase the smaller of the two is rated, whatever the other; without a neutral the line.
   */
  @ParameterizedTest
  @CsvSource({"4, 4", "6, 6", "10, 6"})
  void smallerOfLineAndNeutralIsRatedOnOnePhase(double neutral, double rated) {
    Scenario cable = multicore(neutral);
    assertEquals(rated, Wiring.ratedCsa(cable(cable), SINGLE, dossier(cable)).value());
    assertEquals(
        6, Wiring.ratedCsa(cable(cable), new LiveConductors(2, false), dossier(cable)).value());
    assertEquals(6, Wiring.ratedCsa(cable(cable), null, dossier(cable)).value());
  }

  /** A neutral smaller than the lines of three phases is not judged. */
  @ParameterizedTest
  @CsvSource({"5.9, true", "6, false", "10, false"})
  void reducedNeutralOfThreePhasesIsNotJudged(double neutral, boolean reduced) {
    Scenario cable = multicore(neutral);
    Dossier d = dossier(cable);
    assertEquals(reduced ? Double.NaN : 6, Wiring.ratedCsa(cable(cable), FOUR_WIRE, d).value());
    assertEquals(reduced, d.missing().stream().anyMatch(n -> n.code() == NoteCode.REDUCED_NEUTRAL));
  }

  @Test
  void unknownNeutralLeavesTheRatingOpen() {
    Scenario cable = Scenario.oven().with("/cable/construction", "multicore").withOpenNeutral();
    Dossier d = dossier(cable);
    assertFalse(Wiring.ratedCsa(cable(cable), SINGLE, d).known());
    assertFalse(Wiring.ratedCsa(cable(cable), FOUR_WIRE, d).known());
    assertTrue(missing(d, "/cable/neutralCsaMm2"));
    assertFalse(d.missing().stream().anyMatch(n -> n.code() == NoteCode.REDUCED_NEUTRAL));
  }

  /** The neutral's size says nothing of a line that may be smaller. */
  @Test
  void unknownLineLeavesTheRatingOpenWhateverTheNeutral() {
    Scenario line = multicore(4).without("/cable/lineCsaMm2");
    Dossier d = dossier(line);
    assertFalse(Wiring.ratedCsa(cable(line), SINGLE, d).known());
    assertTrue(missing(d, "/cable/lineCsaMm2"));
  }

  /** Flat twin: the usual protective core beside the line (BS 6004), in a design, listed. */
  @ParameterizedTest
  @CsvSource({
    "design, flat-twin-and-earth, 6, 2.5, true",
    "design, flat-twin-and-earth, 2.5, 1.5, true",
    "sign-off, flat-twin-and-earth, 6, NaN, false",
    "design, multicore, 6, NaN, false",
    "design, flat-twin-and-earth, 25, NaN, false"
  })
  void usualCoreOfAFlatTwinIsTakenInADesign(
      String stage, String construction, double line, double size, boolean assumed) {
    Scenario unknown =
        Scenario.oven()
            .with("/stage", stage)
            .with("/cable/construction", construction)
            .with("/cable/lineCsaMm2", line)
            .without("/cable/protectiveCsaMm2");
    Dossier d = dossier(unknown);
    assertEquals(size, ProtectiveConductors.csa(cable(unknown), d).value());
    assertEquals(assumed, assumed(d, NoteCode.ASSUMED_PROTECTIVE_SIZE));
    assertEquals(!assumed, missing(d, "/cable/protectiveCsaMm2"));
  }

  /**
   * 543.1.1: alone is what no cable, conduit or trunking (methods A and B with singles) encloses.
   */
  @ParameterizedTest
  @CsvSource({
    "separate, multicore, C, true",
    "separate, multicore, B, true",
    "separate, singles, C, true",
    "separate, singles, A, false",
    "separate, singles, B, false",
    "core, multicore, C, false"
  })
  void conductorOutsideAnyEnclosureIsAlone(
      String means, String construction, String method, boolean alone) {
    Scenario laid =
        Scenario.oven()
            .with("/cable/protectiveMeans", means)
            .with("/cable/construction", construction)
            .with("/cable/installation/referenceMethod", method);
    assertEquals(alone, ProtectiveConductors.alone(cable(laid)));
  }

  private static Scenario multicore(double neutral) {
    return Scenario.oven()
        .with("/cable/construction", "multicore")
        .with("/cable/neutralCsaMm2", neutral);
  }

  private static Cable cable(Scenario scenario) {
    return scenario.circuit().cable();
  }

  private static boolean assumed(Dossier d, NoteCode code) {
    return d.assumptions().stream().anyMatch(note -> note.code() == code);
  }

  private static boolean missing(Dossier d, String pointer) {
    return d.missing().stream().anyMatch(note -> note.pointer().text().equals(pointer));
  }
}
