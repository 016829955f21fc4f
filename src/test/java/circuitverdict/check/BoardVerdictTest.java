package circuitverdict.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.explain.Dossier;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** "Does not comply" outranks what is not valid, that what is open, and all of them "complies". */
class BoardVerdictTest {
  private static Result circuit(char verdict) {
    return switch (verdict) {
      case 'c' -> new Result(List.of(), Verdict.COMPLIES, null);
      case 'f' -> new Result(List.of(), Verdict.DOES_NOT_COMPLY, Reason.CHECK_FAILS);
      default -> new Result(List.of(), Verdict.NOT_DETERMINED, Reason.CHECK_NOT_DETERMINED);
    };
  }

  /** A capital letter does not count. */
  private static Finding finding(char letter) {
    boolean counted = Character.isLowerCase(letter);
    Verdict verdict = circuit(Character.toLowerCase(letter)).verdict();
    return new Finding(
        CheckName.BOARD_DEMAND,
        verdict,
        counted,
        null,
        Dossier.Strength.RULE,
        List.of(),
        "/incomer",
        null,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "c, c, 0, COMPLIES, -",
        "c, -, 0, COMPLIES, -",
        "-, c, 0, COMPLIES, -",
        "-, -, 0, NOT_DETERMINED, NOTHING_COUNTED",
        "-, F, 0, NOT_DETERMINED, NOTHING_COUNTED",
        "c, F, 0, COMPLIES, -",
        "c, O, 0, COMPLIES, -",
        "cf, c, 0, DOES_NOT_COMPLY, CHECK_FAILS",
        "co, c, 0, NOT_DETERMINED, CHECK_NOT_DETERMINED",
        "c, f, 0, DOES_NOT_COMPLY, CHECK_FAILS",
        "c, o, 0, NOT_DETERMINED, CHECK_NOT_DETERMINED",
        "of, o, 0, DOES_NOT_COMPLY, CHECK_FAILS",
        "c, c, 1, NOT_DETERMINED, CIRCUIT_NOT_VALID",
        "o, c, 1, NOT_DETERMINED, CIRCUIT_NOT_VALID",
        "f, c, 1, DOES_NOT_COMPLY, CHECK_FAILS",
        "-, -, 1, NOT_DETERMINED, CIRCUIT_NOT_VALID"
      })
  void theWorstOfAllDecides(
      String circuits, String beside, int invalid, Verdict verdict, Reason reason) {
    List<Result> results = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (char letter : circuits == null ? new char[0] : circuits.toCharArray()) {
      results.add(circuit(letter));
    }
    for (char letter : beside == null ? new char[0] : beside.toCharArray()) {
      findings.add(finding(letter));
    }
    assertEquals(new BoardVerdict(verdict, reason), BoardVerdict.of(results, findings, invalid));
  }
}
