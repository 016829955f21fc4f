package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.support.Scenario;
import java.util.List;

/** The deck oven at the origin, and what is found of readings of it. */
final class OvenReadings {

  static final Scenario OVEN =
      Scenario.oven()
          .with("/stage", "design")
          .with("/supply/point", "origin")
          .with("/supply/basis", "declared")
          .with("/supply/phases", 1)
          .with("/supply/loopImpedanceOhm", 0.35)
          .without("/supply/originLoopImpedanceOhm")
          .without("/supply/instrumentUncertaintyPercent");

  static Finding of(Scenario circuit, String readings) {
    Scenario read = circuit.withJson("/readings", readings.replace('\'', '"'));
    List<Finding> findings =
        ReadingCheck.of(
                read.circuit(),
                CircuitMapping.readings(read.json()),
                Scenario.edition("bs7671-2018-a4"),
                true)
            .findings();
    Finding first = findings.get(0);
    assertEquals("/readings/0", first.subject());
    assertEquals(CheckName.COMMISSIONING, first.check());
    return first;
  }

  static Finding loop(String rest) {
    return of(OVEN, "[{'kind': 'loop-impedance'" + rest + "}]");
  }

  /** The same with Ze read as 0.35 Ω. */
  static Finding withOrigin(String rest) {
    String origin = "{'kind': 'loop-impedance', 'place': 'origin', 'resistanceOhm': 0.35}";
    return of(OVEN, "[{'kind': 'loop-impedance'" + rest + "}, " + origin + "]");
  }

  private OvenReadings() {}
}
