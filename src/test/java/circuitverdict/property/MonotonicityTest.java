package circuitverdict.property;

import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Safe-side monotonicity (engineering basis, principle 7): making one thing worse never turns a
 * check that does not comply, or is not determined, into one that complies.
 */
class MonotonicityTest {
  @ParameterizedTest
  @EnumSource
  void worseNeverTurnsACheckIntoCompliance(Worsening worsening) {
    Map<CheckName, Integer> crossed = new EnumMap<>(CheckName.class);
    Property.holds(
        worsening.name(),
        Circuits.anyStage(),
        (body, random) -> refute(worsening, body, random, crossed));
    assertTrue(
        crossed.keySet().containsAll(worsening.turns()),
        () -> "tried on too little: only " + crossed + " were ever turned");
  }

  /** Where two stated inputs contradict each other nothing was found, and mending them may find. */
  private static boolean contradicted(Finding before) {
    return before.verdict() == Verdict.NOT_DETERMINED
        && before.remarks().stream().anyMatch(each -> each.code() == NoteCode.CURRENTS_CONTRADICT);
  }

  private static String refute(
      Worsening worsening, ObjectNode body, Random random, Map<CheckName, Integer> crossed) {
    Steps steps = new Steps(body, new Draw(random));
    worsening.worsen(steps);
    List<ObjectNode> bodies = steps.all();
    List<Circuit> circuits = bodies.stream().map(Verdicts::circuit).toList();
    Edition edition = Verdicts.edition(body);
    for (Check check : CircuitCheck.all()) {
      Finding before = null;
      for (int i = 0; i < bodies.size(); i++) {
        if (!worsening.speaksOf(check.name().word(), bodies.get(i))) {
          break;
        }
        Finding now = CircuitCheck.one(check, circuits.get(i), edition, false);
        if (before != null
            && turned(before, now)
            && !worsening.excuses(before)
            && !contradicted(before)) {
          return check.name().word() + tell(before, bodies.get(i - 1)) + tell(now, bodies.get(i));
        }
        boolean complied = before != null && before.verdict() == Verdict.COMPLIES;
        if (complied && Verdicts.stands(now.verdict())) {
          crossed.merge(check.name(), 1, Integer::sum);
        }
        before = now;
      }
    }
    return null;
  }

  private static boolean turned(Finding before, Finding now) {
    return Verdicts.stands(before.verdict()) && !Verdicts.stands(now.verdict());
  }

  private static String tell(Finding finding, ObjectNode body) {
    return "\n  " + Verdicts.line(finding) + "\n    of " + body;
  }
}
