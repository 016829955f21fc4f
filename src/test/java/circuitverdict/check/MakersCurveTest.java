package circuitverdict.check;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.explain.Dossier.Strength;
import circuitverdict.support.Scenario;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A motor's start against the maker's time–current curve, which settles what the standard leaves
 * open (512). The points are invented: what is tested is how they are read, for both edges of every
 * curve fall with the current.
 */
class MakersCurveTest {
  /** 10 A, six times for 1.5 s, behind a C20: within its thermal zone, 60 A of 100 A. */
  private static final Scenario START =
      Scenario.oven()
          .with("/stage", "sign-off")
          .withJson(
              "/load",
              """
              {"kind": "motor", "use": "other", "designCurrentA": 10, "connection": "fixed",
               "inrush": {"starting": "direct-on-line", "currentMultiple": 6, "durationS": 1.5,
                          "peakCurrentA": 120}}
              """)
          .with("/device/characteristic", "C")
          .with("/device/ratedCurrentA", 20)
          .with("/requirements/inrush", "required");

  private static Finding with(String points) {
    return START
        .withJson("/device/operatingTimes", points.replace('\'', '"'))
        .finding(CheckName.INRUSH);
  }

  @Test
  void theStandardAloneLeavesItOpen() {
    open(START.finding(CheckName.INRUSH), "/requirements/evidence");
  }

  /** The earliest time of a point holds at every lesser current, and at none above. */
  @ParameterizedTest
  @CsvSource({"60, 1.5, true", "60, 1.49, false", "80, 1.6, true", "59.9, 9, false"})
  void theEarliestTimeOfTheNextPointAboveProvesIt(double current, double time, boolean holds) {
    Finding found = with("[{'currentA': %s, 'earliestS': %s}]".formatted(current, time));
    if (holds) {
      assertEquals(Strength.RULE, complies(found).strength());
    } else {
      open(found, "/device");
    }
  }

  /** The latest time of a point holds at every greater current. */
  @ParameterizedTest
  @CsvSource({"60, 1.4, true", "50, 1.4, true", "60, 1.5, false", "60.1, 1.4, false"})
  void theLatestTimeOfThePointBeforeFailsIt(double current, double time, boolean trips) {
    Finding found = with("[{'currentA': %s, 'latestS': %s}]".formatted(current, time));
    if (trips) {
      actual(1.5, fails(found));
      limit(1.4, found);
    } else {
      // Where the maker's own curve is known, a typical one says nothing.
      open(found, "/device");
    }
  }

  /** Of several points the one that says most counts, in whatever order they are sent. */
  @Test
  void thePointThatSaysMostCounts() {
    Finding found =
        with("[{'currentA': 90, 'earliestS': 0.4}, {'currentA': 62, 'earliestS': 1.6}]");
    limit(1.6, complies(found));
  }

  /** A peak above the magnetic zone is another question. */
  @Test
  void thePeakIsHeldAgainstTheMagneticZoneAllTheSame() {
    Finding found =
        START
            .withJson("/device/operatingTimes", "[{\"currentA\": 60, \"earliestS\": 9}]")
            .with("/load/inrush/peakCurrentA", 160)
            .finding(CheckName.INRUSH);
    assertEquals(Verdict.NOT_DETERMINED, found.verdict());
  }
}
