package circuitverdict.select;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.support.Scenario;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The greatest length that is solved is where the first check fails, found by brute force. */
class GreatestLengthTest {
  /** What a limit of length is shown in, per metre. */
  private static final double PER_METRE = 10;

  @ParameterizedTest
  @CsvSource({
    "B, 32, 6, 2.5, 26.1, bs7671-2018-a4",
    "B, 20, 4, 1.5, 15, bs7671-2018-a4",
    "C, 16, 2.5, 1.5, 6, bs7671-2018-a4",
    "D, 10, 1.5, 1.0, 4, bs7671-2018-a4",
    "B, 32, 6, 2.5, 26.1, bs7671-2008",
    "C, 20, 4, 1.5, 18, bs7671-2008"
  })
  void isWhereTheFirstCheckFails(
      String letter, double rated, double line, double cpc, double current, String edition) {
    Scenario circuit =
        Scenario.oven()
            .with("/stage", "design")
            .with("/edition", edition)
            .with("/device/characteristic", letter)
            .with("/device/ratedCurrentA", rated)
            .with("/cable/lineCsaMm2", line)
            .with("/cable/protectiveCsaMm2", cpc)
            .with("/load/designCurrentA", current);
    Result at = CircuitCheck.explained(circuit.circuit(), circuit.edition());
    List<Limit> limits =
        new Solver(circuit.circuit(), circuit.edition(), CircuitCheck.all(), at).limits();
    Limit greatest =
        limits.stream()
            .filter(each -> each.pointer().text().equals("/cable/lengthM"))
            .findFirst()
            .orElseThrow();
    List<String> failing = List.of();
    int steps = 0;
    while (failing.isEmpty() && steps < 20_000) {
      steps++;
      failing = failing(circuit.with("/cable/lengthM", steps / PER_METRE));
    }
    double first = steps / PER_METRE;
    double last = (steps - 1) / PER_METRE;
    assertTrue(!failing.isEmpty(), "none fails");
    assertEquals(last, greatest.value(), 1e-9, () -> greatest + " and " + first);
    assertTrue(failing.contains(greatest.governedBy().word()), failing::toString);
  }

  private static List<String> failing(Scenario circuit) {
    Result result = CircuitCheck.verdicts(circuit.circuit(), circuit.edition());
    List<String> failing = new ArrayList<>();
    for (Finding finding : result.findings()) {
      if (finding.counted() && finding.verdict() == Verdict.DOES_NOT_COMPLY) {
        failing.add(finding.check().word());
      }
    }
    return failing;
  }
}
