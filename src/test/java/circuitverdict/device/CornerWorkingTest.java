package circuitverdict.device;

import static circuitverdict.device.Devices.breaker;
import static circuitverdict.device.Devices.design;
import static circuitverdict.device.LetThroughBreakerTest.ampere;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Step;
import circuitverdict.explain.Working;
import circuitverdict.standard.Citation;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The current at which an energy is taken is found before the reader, and so is its time. */
class CornerWorkingTest {

  private static List<Step> working(ProtectiveDevice device, double from, double to) {
    Dossier d = design();
    LetThrough.of(device, d).over(ampere(from), ampere(to));
    return d.working().steps();
  }

  private static Citation citation(Step step, int operand) {
    return (Citation) step.operands().get(operand).source();
  }

  /** B16 by tests a to e of IEC 60898-1 table 7: 1.45, 2.55, 3 and 5 In. */
  @ParameterizedTest
  @CsvSource({
    "30, 41, 2.55·16, 40.8²·3600, 'Table 7, test c'",
    "50, 400, 5·16, 80²·60, 'Table 7, tests d and e'"
  })
  void aCornerOfABreakerIsItsTestTimesIts(
      double from, double to, String found, String taken, String test) {
    List<Step> steps = working(breaker("B", 16.0, 6000.0, null), from, to);
    assertEquals("m·In", steps.get(0).formulaText());
    assertEquals(found, steps.get(0).substitution());
    assertEquals("I", steps.get(0).result().symbol());
    assertEquals(test, citation(steps.get(0), 0).reference());
    assertEquals(new Pointer("/device", "ratedCurrentA"), steps.get(0).operands().get(1).source());
    assertEquals(taken, steps.get(1).substitution());
    assertEquals("IEC 60898-1:2015", citation(steps.get(1), 1).standard());
  }

  /** The least energy is certain by the earliest time: 1 s between tests b and c. */
  @Test
  void theEarliestTimeIsCitedToo() {
    List<Step> steps = working(breaker("B", 16.0, 6000.0, null), 20, 41);
    Step least = steps.get(steps.size() - 1);
    assertEquals("40.8²·1", least.substitution());
    assertEquals("Table 7, test c", citation(least, 1).reference());
  }

  /** A stated limit is told by its member: 7 In of a breaker of another letter. */
  @Test
  void aStatedLimitIsToldByItsMember() {
    List<Step> steps = working(Devices.stated("K", 16.0, 5.0, 7.0), 50, 400);
    assertEquals("7·16", steps.get(0).substitution());
    assertEquals(
        new Pointer("/device/magneticMultiples", "upper"), steps.get(0).operands().get(0).source());
  }

  /** Releases of an adjustable breaker: Ii plus its tolerance; 1.3 Ir (IEC 60947-2). */
  @Test
  void aSettingIsShownWithItsTolerance() {
    List<Step> steps = working(Devices.set(100.0, 500.0, 0.3, 1000.0), 700, 2000);
    assertEquals("(1 + δ)·Iset", steps.get(0).formulaText());
    assertEquals("(1 + 0.2)·1000", steps.get(0).substitution());
    assertEquals("1200²·7200", steps.get(1).substitution());
  }

  /** The operating point of a fuse has the time of the column that its current stands in. */
  @Test
  void theTimeOfAFusesPointIsThatOfItsColumn() {
    List<Step> steps = working(Devices.fuse("BS 88-2", 32.0, "gG"), 1000, 1000);
    Step point = steps.get(1);
    assertEquals("350²·0.1", point.substitution());
    assertEquals(citation(point, 0), citation(point, 1));
  }

  /** Without working nothing is looked for, and the energy is the same. */
  @Test
  void silentlyItIsTheSameCurrent() {
    Dossier told = design();
    Dossier silent =
        new Dossier(
            told.edition(), circuitverdict.explain.Allowance.TABLE_DEFAULTS, Working.silent());
    ProtectiveDevice device = breaker("B", 16.0, 6000.0, null);
    Figure shown = LetThrough.of(device, told).over(ampere(30), ampere(41)).greatest();
    Figure same = LetThrough.of(device, silent).over(ampere(30), ampere(41)).greatest();
    assertEquals(shown.value(), same.value());
    assertTrue(silent.working().steps().isEmpty());
  }
}
