package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import circuitverdict.explain.Dossier.Strength;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The overall verdict of findings: what fails outranks what is open, which outranks compliance. */
class ResultTest {
  /** Contract, verdict of a circuit; a leading - stands for a finding that is not counted. */
  @ParameterizedTest
  @CsvSource({
    "COMPLIES, COMPLIES, ",
    "COMPLIES COMPLIES, COMPLIES, ",
    "COMPLIES NOT_DETERMINED, NOT_DETERMINED, CHECK_NOT_DETERMINED",
    "NOT_DETERMINED COMPLIES, NOT_DETERMINED, CHECK_NOT_DETERMINED",
    "COMPLIES DOES_NOT_COMPLY, DOES_NOT_COMPLY, CHECK_FAILS",
    "NOT_DETERMINED DOES_NOT_COMPLY, DOES_NOT_COMPLY, CHECK_FAILS",
    "DOES_NOT_COMPLY NOT_DETERMINED COMPLIES, DOES_NOT_COMPLY, CHECK_FAILS",
    "COMPLIES -NOT_APPLICABLE, COMPLIES, ",
    "COMPLIES -DOES_NOT_COMPLY, COMPLIES, ",
    "COMPLIES -NOT_DETERMINED, COMPLIES, ",
    "-NOT_APPLICABLE, NOT_DETERMINED, NOTHING_COUNTED",
    "-COMPLIES, NOT_DETERMINED, NOTHING_COUNTED",
    "-DOES_NOT_COMPLY, NOT_DETERMINED, NOTHING_COUNTED",
    "'', NOT_DETERMINED, NOTHING_COUNTED"
  })
  void worstCountedFindingDecides(String findings, Verdict verdict, Reason reason) {
    Result result =
        Result.of(
            Stream.of(findings.split(" "))
                .filter(word -> !word.isEmpty())
                .map(ResultTest::finding)
                .toList());
    assertEquals(verdict, result.verdict());
    assertEquals(reason, result.reason());
  }

  @Test
  void findingsKeepTheirOrderAndAreFoundByTheirCheck() {
    Finding first = finding("COMPLIES");
    Result result = Result.of(List.of(first));
    assertEquals(List.of(first), result.findings());
    assertEquals(first, result.of(CheckName.VOLTAGE_DROP));
    assertThrows(IllegalArgumentException.class, () -> result.of(CheckName.BREAKING_CAPACITY));
  }

  private static Finding finding(String word) {
    boolean counted = !word.startsWith("-");
    Verdict verdict = Verdict.valueOf(counted ? word : word.substring(1));
    return new Finding(
        CheckName.VOLTAGE_DROP,
        verdict,
        counted,
        null,
        Strength.RULE,
        List.of(),
        "/cable",
        null,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
