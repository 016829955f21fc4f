package circuitverdict.conductor;

import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.step;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which table of Appendix 4 rates a cable, and what none of them rates. */
class RatingTablesTest {
  private static final CheckName CHECK = CheckName.CONDUCTOR_RATING;

  /**
   * Values of Tables 4D1A to 4E4A; where the request does not tell arrangements apart, the least.
   */
  @ParameterizedTest
  @CsvSource({
    "flat-twin-and-earth, thermoplastic-70, C, 2, 6, 47",
    "flat-twin-and-earth, thermoplastic-70, 100, 2, 6, 34",
    "multicore, thermoplastic-70, C, 2, 6, 46",
    "multicore, thermoplastic-70, C, 3, 6, 41",
    "multicore, thermoplastic-70, E, 3, 6, 43",
    "multicore, thermosetting-90, C, 2, 6, 58",
    "multicore, thermosetting-90, B, 3, 6, 44",
    "armoured-multicore, thermoplastic-70, C, 2, 6, 49",
    "armoured-multicore, thermosetting-90, C, 3, 6, 53",
    "singles, thermoplastic-70, B, 2, 6, 41",
    "singles, thermoplastic-70, B, 3, 6, 36",
    "singles, thermoplastic-70, F, 2, 25, 131",
    "singles, thermoplastic-70, F, 3, 25, 110",
    "singles, thermoplastic-70, G, 3, 25, 130"
  })
  void ratingIsReadFromTheCablesOwnTable(
      String construction, String insulation, String method, int loaded, double size, double it) {
    Finding found = laid(construction, insulation, method, loaded, size).finding(CHECK);
    assertEquals(it, step("It", found));
  }

  /** A method, size, insulation or metal without a row is not known, never extrapolated. */
  @ParameterizedTest
  @CsvSource({
    "flat-twin-and-earth, thermoplastic-70, E, 2, 6, /cable/installation/referenceMethod",
    "flat-twin-and-earth, thermoplastic-70, C, 3, 6, /cable/installation/referenceMethod",
    "flat-twin-and-earth, thermoplastic-70, C, 2, 25, /cable/installation/referenceMethod",
    "flat-twin-and-earth, thermosetting-90, C, 2, 6, /cable/insulation",
    "multicore, thermoplastic-90, C, 2, 6, /cable/insulation",
    "mineral, thermoplastic-70, C, 2, 6, /cable/insulation",
    "flexible, thermoplastic-70, C, 2, 6, /cable/insulation",
    "singles, thermoplastic-70, F, 3, 6, /cable/installation/referenceMethod",
    "multicore, thermoplastic-70, F, 3, 25, /cable/installation/referenceMethod",
    "multicore, thermoplastic-70, G, 3, 25, /cable/installation/referenceMethod"
  })
  void whatIsNotTabledIsNotKnown(
      String construction, String insulation, String method, int loaded, double size, String at) {
    Finding found = laid(construction, insulation, method, loaded, size).finding(CHECK);
    open(found, at);
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
  }

  @ParameterizedTest
  @CsvSource({
    "/cable/construction",
    "/cable/insulation",
    "/cable/lineCsaMm2",
    "/cable/conductor",
    "/cable/installation/referenceMethod",
    "/liveConductors"
  })
  void whatTheTableNeedsIsAskedFor(String pointer) {
    open(Scenario.oven().without(pointer).finding(CHECK), pointer);
  }

  @ParameterizedTest
  @CsvSource({"aluminium", "steel"})
  void otherMetalsHaveNoTable(String metal) {
    Finding found = Scenario.oven().with("/cable/conductor", metal).finding(CHECK);
    open(found, "/cable/conductor");
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
  }

  private static Scenario laid(
      String construction, String insulation, String method, int loaded, double size) {
    return Scenario.oven()
        .withJson("/liveConductors", loaded == 3 ? "[\"L1\",\"L2\",\"L3\"]" : "[\"L1\",\"N\"]")
        .with("/cable/construction", construction)
        .with("/cable/insulation", insulation)
        .with("/cable/terminalTemperatureC", 90)
        .with("/cable/lineCsaMm2", size)
        .with("/cable/installation/referenceMethod", method);
  }
}
