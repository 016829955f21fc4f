package circuitverdict.check;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.judged;
import static circuitverdict.support.Facts.missing;
import static circuitverdict.support.Facts.open;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Voltage drop from the origin (525, Appendix 4 section 6) against its limits. */
class VoltageDropTest {
  private static final CheckName CHECK = CheckName.VOLTAGE_DROP;

  /** 7.3 mV/A/m (Table 4D5) · 25 A · L: 11.5 V, 5 % of 230 V, at 63.0137 m. */
  @ParameterizedTest
  @CsvSource({"63.01, true", "63.013698630136986, true", "63.02, false"})
  void dropDoesNotExceedTheLimit(double length, boolean holds) {
    Finding found = uncorrected().with("/cable/lengthM", length).finding(CHECK);
    judged(holds, found);
    actual(100 * 7.3 * 25 * length / 1000 / 230, found);
    limit(5, found);
    assertEquals(7.3 * 25 * length / 1000, found.comparisons().get(1).actual().value(), 1e-9);
    assertEquals(11.5, found.comparisons().get(1).limit().value(), 1e-9);
  }

  /** Appendix 4, 6.4: public 3 and 5 %, private 6 and 8 %. */
  @ParameterizedTest
  @CsvSource({
    "public, lighting, 3",
    "public, other, 5",
    "private, lighting, 6",
    "private, other, 8"
  })
  void limitFollowsOwnershipAndUse(String ownership, String use, double percent) {
    Scenario circuit =
        uncorrected()
            .with("/supply/ownership", ownership)
            .with("/load/use", use)
            .with("/circuitKind", "distribution");
    double longest = percent * 2.3 / (7.3 * 25 / 1000);
    // Up to 100 m no allowance is added; 8 % is reached at 100.8 m, so it is taken at 50 A·m less.
    Scenario at = percent == 8 ? circuit.with("/load/designCurrentA", 28) : circuit;
    double length = percent == 8 ? longest * 25 / 28 : longest;
    Finding found = complies(at.with("/cable/lengthM", length - 0.01).finding(CHECK));
    limit(percent, found);
    fails(at.with("/cable/lengthM", length + 0.01).finding(CHECK));
  }

  /** The strictest limit passes without asking; between the limits the missing one is named. */
  @ParameterizedTest
  @CsvSource({
    "/load/use, 37, complies",
    "/load/use, 38, open",
    "/load/use, 63, open",
    "/load/use, 64, fails",
    "/supply/ownership, 63, complies",
    "/supply/ownership, 64, open",
    "/supply/ownership, 101, fails"
  })
  void unknownUseOrOwnershipIsAskedForOnlyWhereItDecides(
      String pointer, double length, String verdict) {
    Finding found = uncorrected().without(pointer).with("/cable/lengthM", length).finding(CHECK);
    switch (verdict) {
      case "complies" -> assertTrue(remarks(complies(found)).contains(NoteCode.STRICTEST_LIMIT));
      case "open" -> open(found, pointer);
      default -> fails(found);
    }
    if (verdict.equals("fails")) {
      limit(pointer.endsWith("use") ? 5 : 8.005, found);
    }
  }

  @Test
  void bothUnknownAreBothNamed() {
    Finding found =
        uncorrected()
            .without("/load/use")
            .without("/supply/ownership")
            .with("/cable/lengthM", 50)
            .finding(CHECK);
    open(found, "/load/use", "/supply/ownership");
    assertFalse(remarks(found).contains(NoteCode.STRICTEST_LIMIT));
  }

  /** Counted from the origin: 22 m drop 1.7457 % more than what is lost before the board. */
  @ParameterizedTest
  @CsvSource({"3.25, true", "3.254347826086957, true", "3.26, false"})
  void dropBeforeTheBoardCounts(double before, boolean holds) {
    Finding found = board().with("/supply/voltageDropPercent", before).finding(CHECK);
    judged(holds, found);
    actual(before + 100 * 7.3 * 25 * 22 / 1000 / 230, found);
    assertEquals(
        before * 2.3 + 7.3 * 25 * 22 / 1000, found.comparisons().get(1).actual().value(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"sign-off", "design", "quotation"})
  void dropBeforeTheBoardMustBeStated(String stage) {
    open(board().with("/stage", stage).finding(CHECK), "/supply/voltageDropPercent");
  }

  /** No drop before the board could cure what the circuit alone loses. */
  @ParameterizedTest
  @CsvSource({"63.0, false", "63.1, true"})
  void circuitThatFailsAloneFailsWithoutIt(double length, boolean fails) {
    Finding found = board().with("/cable/lengthM", length).finding(CHECK);
    if (fails) {
      fails(found);
      limit(5, found);
    } else {
      open(found, "/supply/voltageDropPercent");
    }
  }

  /** Unknown use: alone above the strictest limit but not the mildest, nothing is decided. */
  @Test
  void mildestLimitDecidesWhatNothingCouldCure() {
    Scenario circuit = board().without("/load/use");
    open(circuit.with("/cable/lengthM", 40).finding(CHECK), "/supply/voltageDropPercent");
    fails(circuit.with("/cable/lengthM", 64).finding(CHECK));
  }

  @Test
  void statedDropAtTheOriginCountsToo() {
    Finding found = uncorrected().with("/supply/voltageDropPercent", 1).finding(CHECK);
    actual(1 + 100 * 7.3 * 25 * 22 / 1000 / 230, found);
  }

  /** A quotation without a supply starts at the origin, listed. */
  @Test
  void quotationWithoutSupplyStartsAtTheOrigin() {
    Scenario bare = uncorrected().without("/supply/point").without("/supply/loopImpedanceOhm");
    Finding quoted = complies(bare.with("/stage", "quotation").finding(CHECK));
    assertEquals(NoteCode.ASSUMED_ORIGIN, quoted.assumptions().get(0).code());
    open(bare.with("/stage", "design").finding(CHECK), "/supply/voltageDropPercent");
    open(
        uncorrected().without("/supply/point").with("/stage", "quotation").finding(CHECK),
        "/supply/voltageDropPercent");
  }

  /** Appendix 4, 6.4: 0.005 % a metre beyond 100 m, 0.5 % at most. */
  @ParameterizedTest
  @CsvSource({
    "99, 5",
    "100, 5",
    "100.00000000000001, 5",
    "101, 5.005",
    "150, 5.25",
    "200, 5.5",
    "300, 5.5"
  })
  void longCircuitIsAllowedMore(double length, double percent) {
    Finding found =
        uncorrected().with("/load/designCurrentA", 1).with("/cable/lengthM", length).finding(CHECK);
    limit(percent, complies(found));
    assertEquals(length > 100.5, remarks(found).contains(NoteCode.LENGTH_ALLOWANCE));
    assertEquals(percent * 2.3, found.comparisons().get(1).limit().value(), 1e-9);
  }

  /** A ring drops a quarter of its whole loop; half the loop counts for the allowance. */
  @ParameterizedTest
  @CsvSource({"60, 5", "200, 5", "220, 5.05"})
  void ringHasAQuarterOfItsLoop(double loop, double percent) {
    Finding found =
        uncorrected()
            .with("/cable/arrangement", "ring")
            .with("/load/designCurrentA", 1)
            .with("/cable/lengthM", loop)
            .finding(CHECK);
    limit(percent, complies(found));
    actual(100 * 7.3 * loop / 4000 / 230, found);
  }

  /** Cables in series: their drops and lengths are added. */
  @Test
  void cablesInSeriesAreAdded() {
    Finding found =
        uncorrected()
            .with("/load/designCurrentA", 1)
            .with("/cable/lengthM", 90)
            .withJson(
                "/furtherCables",
                """
                [{"construction": "flat-twin-and-earth", "conductor": "copper",
                  "insulation": "thermoplastic-70", "lineCsaMm2": 2.5, "lengthM": 20}]
                """)
            .finding(CHECK);
    limit(5.05, complies(found));
    actual(100 * (7.3 * 90 + 18 * 20) / 1000 / 230, found);
  }

  /** The length is missing: nothing is decided, and it is named. */
  @Test
  void lengthIsNeeded() {
    Finding found = uncorrected().without("/cable/lengthM").finding(CHECK);
    open(found, "/cable/lengthM");
    assertEquals(1, missing(found).size());
  }

  /** Ct·7.3·26.1·64 = 11.07 V where 12.19 V uncorrected would exceed 11.5 V. */
  @ParameterizedTest
  @CsvSource({"60, 1, false", "66.4, 0.9077844, true", "66.6, 1, false"})
  void coolerConductorsMayBeCounted(double length, double factor, boolean remarked) {
    Finding found = Scenario.oven().with("/cable/lengthM", length).finding(CHECK);
    judged(length < 66.5, found);
    assertEquals(100 * factor * 7.3 * 26.1 * length / 1000 / 230, step("Δu", found), 1e-5);
    assertEquals(remarked, remarks(found).contains(NoteCode.TEMPERATURE_CORRECTED));
  }

  /** The correction is not wasted on what the strictest limit admits, nor below the mildest one. */
  @Test
  void correctionIsTriedAgainstTheMildestLimitOnly() {
    Finding open = Scenario.oven().without("/load/use").with("/cable/lengthM", 38).finding(CHECK);
    open(open, "/load/use");
    assertFalse(remarks(open).contains(NoteCode.TEMPERATURE_CORRECTED));
    Finding corrected =
        Scenario.oven().without("/load/use").with("/cable/lengthM", 64).finding(CHECK);
    open(corrected, "/load/use");
    assertTrue(remarks(corrected).contains(NoteCode.TEMPERATURE_CORRECTED));
  }

  /** The drop in percent is compared first, the same in volts beside it. */
  private static void actual(double percent, Finding found) {
    assertEquals(percent, found.comparisons().get(0).actual().value(), 1e-9);
  }

  private static void limit(double percent, Finding found) {
    assertEquals(percent, found.comparisons().get(0).limit().value(), 1e-9);
  }

  /** Not behind BS 3036 does a correction apply, so the printed drop decides. */
  private static Scenario uncorrected() {
    return Scenario.oven().with("/device/standard", "BS 3036").with("/load/designCurrentA", 25);
  }

  private static Scenario board() {
    return uncorrected().with("/supply/point", "board");
  }
}
