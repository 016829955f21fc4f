package circuitverdict.conductor;

import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.step;
import static circuitverdict.support.Facts.wanted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratings and factors of annex B of IEC 60364-5-52, from memory where IecTablesTest says so. */
class AnnexRatingsTest {
  private static final CheckName CHECK = CheckName.CONDUCTOR_RATING;

  /** Tables B.52.2 to B.52.5, B.52.10 and B.52.12, one of each method. */
  @ParameterizedTest
  @CsvSource({
    "singles, thermoplastic-70, A1, 2, 2.5, 19.5",
    "multicore, thermoplastic-70, A2, 2, 2.5, 18.5",
    "singles, thermoplastic-70, B1, 2, 2.5, 24",
    "multicore, thermoplastic-70, B2, 2, 2.5, 23",
    "multicore, thermoplastic-70, C, 2, 2.5, 27",
    "flat-twin-and-earth, thermoplastic-70, C, 2, 4, 36",
    "singles, thermoplastic-70, C, 2, 4, 36",
    "multicore, thermoplastic-70, D1, 2, 2.5, 29",
    "multicore, thermoplastic-70, D2, 2, 10, 64",
    "multicore, thermoplastic-70, E, 2, 2.5, 30",
    "singles, thermoplastic-70, F, 2, 25, 131",
    "singles, thermoplastic-70, F, 3, 25, 110",
    "singles, thermoplastic-70, G, 3, 25, 130",
    "multicore, thermoplastic-70, C, 3, 6, 41",
    "armoured-multicore, thermoplastic-70, D2, 3, 16, 70",
    "armoured-multicore, thermosetting-90, D1, 3, 6, 44",
    "multicore, thermosetting-90, B2, 2, 16, 91",
    "multicore, thermosetting-90, E, 3, 16, 100",
    "singles, thermosetting-90, A1, 3, 25, 95",
    "singles, thermosetting-90, F, 3, 25, 135"
  })
  void ratingFollowsMethodInsulationAndLoadedConductors(
      String construction, String insulation, String method, int loaded, double size, double it) {
    Finding found = laid(construction, insulation, method, loaded, size).finding(CHECK);
    assertEquals(it, step("It", found));
  }

  /** Methods of Appendix 4 of BS 7671, and what annex B rates by no column of its own. */
  @ParameterizedTest
  @CsvSource({
    "flat-twin-and-earth, thermoplastic-70, 100, 2, 6, /cable/installation/referenceMethod",
    "flat-twin-and-earth, thermoplastic-70, 101, 2, 6, /cable/installation/referenceMethod",
    "flat-twin-and-earth, thermoplastic-70, 102, 2, 6, /cable/installation/referenceMethod",
    "flat-twin-and-earth, thermoplastic-70, 103, 2, 6, /cable/installation/referenceMethod",
    "multicore, thermoplastic-70, A, 2, 6, /cable/installation/referenceMethod",
    "singles, thermoplastic-70, B, 2, 6, /cable/installation/referenceMethod",
    "multicore, thermoplastic-70, C, 2, 400, /cable/installation/referenceMethod",
    "multicore, thermoplastic-70, F, 2, 25, /cable/installation/referenceMethod",
    "multicore, thermoplastic-70, G, 3, 25, /cable/installation/referenceMethod",
    "singles, thermoplastic-70, E, 2, 25, /cable/installation/referenceMethod",
    "singles, thermoplastic-70, F, 3, 6, /cable/installation/referenceMethod",
    "armoured-multicore, thermosetting-90, C, 3, 16, /cable/installation/referenceMethod",
    "armoured-multicore, thermosetting-90, E, 3, 16, /cable/installation/referenceMethod",
    "mineral, thermoplastic-70, C, 2, 6, /cable/insulation",
    "flexible, thermoplastic-70, C, 2, 6, /cable/insulation",
    "multicore, thermoplastic-90, C, 2, 6, /cable/insulation"
  })
  void whatAnnexBHasNotIsNotDetermined(
      String construction, String insulation, String method, int loaded, double size, String at) {
    Finding found = laid(construction, insulation, method, loaded, size).finding(CHECK);
    open(found, at);
    assertTrue(wanted(found).contains(NoteCode.NOT_IN_TABLES));
  }

  /** Table 52.2: 1.5 mm² for lighting too, where BS 7671 has 1.0 mm². */
  @Test
  void oneSquareMillimetreIsTooSmall() {
    Scenario lighting =
        laid("multicore", "thermoplastic-70", "C", 2, 1).with("/load/use", "lighting");
    assertEquals(1.5, fails(lighting.finding(CHECK)).governing().limit().value());
  }

  /** And the other way round: Appendix 4 has no A1 to B2, and no D2. */
  @ParameterizedTest
  @CsvSource({"A1", "A2", "B1", "B2", "D2"})
  void methodsOfAnnexBAreNotThoseOfAppendixFour(String method) {
    for (String edition : new String[] {"bs7671-2018-a4", "bs7671-2018-a2", "bs7671-2008"}) {
      Scenario circuit = laid("multicore", "thermoplastic-70", method, 2, 6);
      open(circuit.with("/edition", edition).finding(CHECK), "/cable/installation/referenceMethod");
    }
  }

  /** B.52.14 at 25 °C: 1.06 where Table 4B1 of BS 7671 has 1.03; B.52.17, three bunched: 0.70. */
  @Test
  void factorsAreThoseOfAnnexB() {
    Scenario warm =
        laid("multicore", "thermoplastic-70", "C", 2, 6)
            .with("/cable/installation/ambientTemperatureC", 25);
    assertEquals(1.06, step("Ca", warm.finding(CHECK)));
    assertEquals(1.03, step("Ca", warm.with("/edition", "bs7671-2018-a4").finding(CHECK)));
    Scenario bunched =
        laid("multicore", "thermoplastic-70", "C", 2, 6)
            .with("/cable/installation/groupedCircuits", 3);
    assertEquals(0.70, step("Cg", bunched.finding(CHECK)));
  }

  /** B.52.16 at 3 K·m/W, and three cables that touch by B.52.19 in ducts and B.52.18 without. */
  @ParameterizedTest
  @CsvSource({"D1, 0.96, 0.75", "D2, 0.90, 0.65"})
  void inTheGroundDuctsAreToldFromNone(String method, double soil, double group) {
    Finding found =
        laid("multicore", "thermoplastic-70", method, 2, 10)
            .with("/cable/installation/soilThermalResistivityKMPerW", 3)
            .with("/cable/installation/groupedCircuits", 3)
            .finding(CHECK);
    assertEquals(group, step("Cg", found));
    assertEquals(soil * group, step("F", found), 1e-9);
  }

  /** The series has no factors for lengths in insulation: a cable in it is not determined. */
  @ParameterizedTest
  @CsvSource({"0.1", "2"})
  void lengthInInsulationIsNotDetermined(double length) {
    Finding found =
        laid("multicore", "thermoplastic-70", "C", 2, 6)
            .with("/cable/installation/insulationLengthM", length)
            .finding(CHECK);
    open(found, "/cable/installation/insulationLengthM");
  }

  private static Scenario laid(
      String construction, String insulation, String method, int loaded, double size) {
    boolean ground = method.startsWith("D");
    Scenario circuit =
        Scenario.oven()
            .with("/edition", "iec60364")
            .with("/cable/construction", construction)
            .with("/cable/insulation", insulation)
            .with("/cable/terminalTemperatureC", 90)
            .with("/cable/lineCsaMm2", size)
            .with("/cable/installation/referenceMethod", method)
            .with("/cable/installation/ambientTemperatureC", ground ? 20 : 30);
    Scenario buried =
        ground
            ? circuit
                .with("/cable/installation/soilThermalResistivityKMPerW", 2.5)
                .with("/cable/installation/burialDepthM", 0.7)
            : circuit;
    return loaded == 3 ? buried.withJson("/liveConductors", "[\"L1\", \"L2\", \"L3\"]") : buried;
  }
}
