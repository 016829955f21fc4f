package circuitverdict.published;

import static circuitverdict.support.Facts.actual;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.limit;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.explain.Dossier.Strength;
import circuitverdict.support.Scenario;

/** Published rules on inrush. */
class InrushExamplesTest {
  private static final CheckName CHECK = CheckName.INRUSH;

  @WorkedExample(
      id = "H04",
      title = "Discharge lamp fuse: at least 2 x load current; inrush 50-100 x for < 0.5 ms",
      source = "Fuses: time current characteristic",
      standard = "BS 88 gG")
  void fuseOfDischargeLampsHasTwiceTheLoadCurrent() {
    // 4 A of lamps want 8 A at least, of the series 10 A.
    Finding next = complies(lamps(10).finding(CHECK));
    actual(8, next);
    limit(10, next);
    assertEquals(Strength.GUIDANCE, next.strength());
    complies(lamps(8).finding(CHECK));
    open(lamps(6).finding(CHECK), "/load/inrush/durationS");
    open(lamps(10).with("/requirements/evidence", "proved").finding(CHECK));
    open(lamps(10).with("/load/designCurrentA", 5.01).finding(CHECK));
    // At sign-off a start that is left out is never better than one that is stated.
    Scenario signOff =
        lamps(10).with("/stage", "sign-off").with("/requirements/evidence", "guidance");
    open(signOff.finding(CHECK), "/load/inrush/durationS");
  }

  private static Scenario lamps(double rated) {
    return Scenario.oven()
        .with("/stage", "design")
        .with("/load/kind", "discharge")
        .with("/load/use", "lighting")
        .with("/load/designCurrentA", 4)
        .withJson(
            "/device",
            "{\"standard\": \"BS 88-2\", \"ratedCurrentA\": %s, \"utilizationCategory\": \"gG\"}"
                .formatted(rated));
  }
}
