package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.Figure;
import circuitverdict.explain.Figure.Derived;
import circuitverdict.explain.Step;
import circuitverdict.support.Scenario;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The working of every check ends with the comparison it is judged by, and rests on nothing unsaid.
 */
class ClosingStepTest {
  private static final String GENERAL_FUSE =
      "{\"standard\": \"BS 88-2\", \"ratedCurrentA\": 25, \"utilizationCategory\": \"gG\"}";

  /** Circuits that between them bring every check to each verdict it can give by figures. */
  private static final List<Scenario> CIRCUITS =
      List.of(
          Scenario.oven(),
          Scenario.oven().with("/cable/lengthM", 150),
          Scenario.oven().with("/load/designCurrentA", 90),
          Scenario.oven().with("/load/designCurrentA", 33),
          Scenario.oven().with("/cable/installation/groupedCircuits", 9),
          Scenario.oven().without("/device/energyClass"),
          Scenario.oven().with("/device/breakingCapacityA", 3000),
          Scenario.oven().with("/cable/protectiveCsaMm2", 6),
          Scenario.oven().with("/supply/loopImpedanceOhm", 1.5),
          Scenario.oven().without("/supply/loopImpedanceOhm"),
          Scenario.oven().without("/load/use"),
          Scenario.oven().without("/supply/basis").with("/supply/loopImpedanceOhm", 1.3),
          Scenario.oven().withJson("/device/letThrough", flat(90000)),
          Scenario.oven().withJson("/device/letThrough", flat(500000)),
          Scenario.oven().with("/load/kind", "vehicle-charging"),
          Scenario.oven()
              .with("/supply/earthing", "TT")
              .with("/supply/loopImpedanceOhm", 100)
              .with("/device/standard", "IEC 61009-1")
              .with("/device/residual/operatingCurrentA", 0.3),
          Scenario.oven()
              .with("/device/standard", "BS 88-2")
              .with("/device/utilizationCategory", "gG")
              .with("/device/breakingCapacityA", 80000),
          Scenario.oven().with("/stage", "design").without("/device/breakingCapacityA"),
          lateByEarth(),
          InrushTest.mixer(),
          InrushTest.mixer().with("/device/characteristic", "D"),
          InrushTest.mixer().with("/device/characteristic", "B"),
          InrushTest.mixer().with("/device/ratedCurrentA", 6),
          InrushTest.mixer().with("/load/inrush/starting", "star-delta"),
          InrushTest.mixer().withJson("/device", GENERAL_FUSE),
          ofSockets(),
          ofSockets().with("/device/residual/operatingCurrentA", 0.1),
          upstream("'BS 88-2', 'utilizationCategory': 'gG', 'ratedCurrentA': 160"),
          upstream("'BS 88-2', 'utilizationCategory': 'gG', 'ratedCurrentA': 100"),
          upstream("'BS 88-2', 'utilizationCategory': 'gG', 'ratedCurrentA': 100")
              .withJson("/device/letThrough", flat(20000)),
          upstream("'IEC 60898-1', 'characteristic': 'C', 'ratedCurrentA': 100"),
          upstream("'IEC 60898-1', 'characteristic': 'B', 'ratedCurrentA': 16"),
          upstream(
                  "'IEC 60947-2', 'ratedCurrentA': 100, 'settings': {'longTimeA': 90,"
                      + " 'shortTimeA': 500, 'shortTimeDelayS': 0.2, 'instantaneousA': 9000}")
              .with("/stage", "design"),
          upstream("'IEC 61008-1', 'residual': {'operatingCurrentA': 0.3, 'delay': 'S'}"),
          upstream("'IEC 61008-1', 'residual': {'operatingCurrentA': 0.3, 'delay': 'S'}")
              .with("/device/standard", "IEC 61009-1")
              .withJson(
                  "/device/residual", "{\"operatingCurrentA\": 0.03, \"delay\": \"general\"}"),
          Scenario.oven().with("/premises/pollutionDegree", 3),
          derated(0.9),
          derated(0.8),
          Scenario.oven().with("/supply/frequencyHz", 60));

  @ParameterizedTest
  @MethodSource("circuitverdict.check.CheckName#ofCircuits")
  void lastValueIsTheOneCompared(CheckName check) {
    for (Scenario circuit : CIRCUITS) {
      Finding found = circuit.finding(check);
      Comparison governing = found.governing();
      if (governing == null) {
        assertTrue(found.working().stream().noneMatch(step -> step.comparator() != null));
        continue;
      }
      Step last = found.working().get(found.working().size() - 1);
      Figure compared =
          Double.isInfinite(governing.actual().value()) ? governing.least() : governing.actual();
      assertEquals(compared, last.result(), circuit::toString);
      assertEquals(List.of(compared, governing.limit()), last.operands());
      assertEquals(governing.comparator(), last.comparator());
      assertTrue(found.comparisons().contains(governing));
      assertEquals(1, found.working().stream().filter(step -> step.comparator() != null).count());
    }
  }

  /** What a step puts in was read somewhere, or a step before it found the value. */
  @ParameterizedTest
  @MethodSource("circuitverdict.check.CheckName#ofCircuits")
  void whatIsComparedWasWorkedOutBefore(CheckName check) {
    for (Scenario circuit : CIRCUITS) {
      Finding found = circuit.finding(check);
      Comparison governing = found.governing();
      if (governing == null || Double.isInfinite(governing.actual().value())) {
        continue;
      }
      List<Step> before = found.working().subList(0, found.working().size() - 1);
      for (Figure figure : List.of(governing.actual(), governing.limit())) {
        boolean said =
            figure.source() != Derived.STEP
                || before.stream()
                    .anyMatch(
                        step ->
                            step.result().value() == figure.value()
                                && step.result().unit() == figure.unit());
        assertTrue(said, () -> figure + " in " + found.working());
      }
    }
  }

  /** The silent twin tells nothing and decides the same. */
  @Test
  void withoutWorkingTheVerdictIsTheSame() {
    for (Scenario circuit : CIRCUITS) {
      for (Check check : CircuitCheck.all()) {
        Finding silent = CircuitCheck.one(check, circuit.circuit(), circuit.edition(), false);
        Finding told = circuit.finding(check.name());
        assertTrue(silent.working().isEmpty());
        assertEquals(told.verdict(), silent.verdict());
        assertEquals(told.reason(), silent.reason());
        assertEquals(told.governing(), silent.governing());
        assertEquals(told.comparisons(), silent.comparisons());
      }
    }
  }

  /** The circuits above try what they promise: no check is only ever of one verdict. */
  @Test
  void everyCheckIsTriedBothWays() {
    Map<CheckName, Set<Verdict>> seen = new EnumMap<>(CheckName.class);
    for (Scenario circuit : CIRCUITS) {
      for (Finding found : circuit.result().findings()) {
        Set<Verdict> verdicts =
            seen.computeIfAbsent(found.check(), name -> EnumSet.noneOf(Verdict.class));
        if (found.governing() != null || found.check() == CheckName.EARTHING_ARRANGEMENT) {
          verdicts.add(found.verdict());
        }
      }
    }
    for (CheckName check : CheckName.ofCircuits()) {
      assertTrue(seen.get(check).size() >= 2, () -> check + " " + seen.get(check));
    }
  }

  /**
   * 872 A between line and neutral trip a B100 at once, the earth fault's current does not: at 2.55
   * In it takes 1 s at least, 255²·1 = 65 025 A²s.
   */
  @Test
  void endThatDecidesTheEnergyIsTold() {
    Finding found = lateByEarth().finding(CheckName.LET_THROUGH_ENERGY);
    assertEquals(65025, found.governing().actual().value(), 1e-6);
    List<String> told = found.working().stream().map(step -> step.result().symbol()).toList();
    assertTrue(told.containsAll(List.of("Iln,min", "Ief,min", "I²t")), told::toString);
  }

  private static Scenario ofSockets() {
    return Scenario.oven()
        .with("/load/kind", "socket-outlets")
        .with("/load/connection", "socket-outlet")
        .with("/load/ratedCurrentA", 13)
        .with("/load/residualWaveform", "pulsating-direct")
        .with("/device/standard", "IEC 61009-1")
        .with("/device/residual/operatingCurrentA", 0.03)
        .with("/device/residual/type", "A")
        .with("/device/residual/delay", "general");
  }

  private static Scenario lateByEarth() {
    return Scenario.oven()
        .with("/cable/lineCsaMm2", 1.5)
        .with("/cable/protectiveCsaMm2", 1)
        .with("/cable/lengthM", 1)
        .with("/supply/basis", "declared")
        .with("/supply/loopImpedanceOhm", 1)
        .with("/supply/lineToNeutralLoopImpedanceOhm", 0.2)
        .with("/device/ratedCurrentA", 100)
        .without("/device/energyClass");
  }

  private static Scenario upstream(String members) {
    String json = "{'standard': " + members + "}";
    return Scenario.oven().withJson("/upstreamDevice", json.replace('\'', '"'));
  }

  /** 0.9·32 A and 0.8·32 A for a load of 26.1 A at 40 °C. */
  private static Scenario derated(double factor) {
    String point = "[{\"ambientTemperatureC\": 40, \"factor\": %s}]".formatted(factor);
    return Scenario.oven()
        .with("/assembly/deviceDeclared", true)
        .with("/assembly/ambientTemperatureC", 40)
        .withJson("/device/derating", point);
  }

  private static String flat(double energy) {
    return ("[{\"prospectiveCurrentA\": 20, \"energyA2s\": %s},"
            + " {\"prospectiveCurrentA\": 20000, \"energyA2s\": %s}]")
        .formatted(energy, energy);
  }
}
