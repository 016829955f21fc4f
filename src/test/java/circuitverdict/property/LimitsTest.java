package circuitverdict.property;

import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.Check;
import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.select.Limit;
import circuitverdict.select.Solver;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Limits solved backwards: the value complies and the next step does not. */
class LimitsTest {
  private static final int TRIES = 5_000;

  @Test
  void theGreatestLengthCompliesAndTheNextTenthOfAMetreDoesNot() {
    Map<CheckName, Integer> found = new EnumMap<>(CheckName.class);
    Property.holds(
        "greatest length", TRIES, Circuits.anyStage(), (body, random) -> length(body, found));
    assertTrue(
        found.containsKey(CheckName.VOLTAGE_DROP)
            && found.containsKey(CheckName.EARTH_FAULT_DISCONNECTION)
            && found.containsKey(CheckName.LET_THROUGH_ENERGY)
            && found.containsKey(CheckName.PROTECTIVE_CONDUCTOR),
        () -> "tried on too little: only " + found);
  }

  private static String length(ObjectNode body, Map<CheckName, Integer> found) {
    Circuit circuit = Verdicts.circuit(body);
    Edition edition = Verdicts.edition(body);
    Solver solver = new Solver(circuit, edition, CircuitCheck.all());
    for (Check check : CircuitCheck.all()) {
      Optional<Limit> limit = solver.greatestLength(check.name());
      if (limit.isPresent()) {
        found.merge(check.name(), 1, Integer::sum);
        double metres = limit.get().value();
        boolean holds = complies(check, circuit, metres, edition);
        boolean next = complies(check, circuit, (Math.rint(metres * 10) + 1) / 10, edition);
        if (!holds || next) {
          return check.name().word() + " at " + metres + " m: " + holds + ", then " + next;
        }
      }
    }
    return null;
  }

  private static boolean complies(Check check, Circuit circuit, double metres, Edition edition) {
    Circuit varied = circuit.with(circuit.cable().withLength(metres));
    return CircuitCheck.one(check, varied, edition, false).verdict() == Verdict.COMPLIES;
  }

  @Test
  void everyLimitOfACircuitIsKeptByItsOwnCheckAndTheLeastGoverns() {
    Property.holds("limits", TRIES, Circuits.anyStage(), LimitsTest::limits);
  }

  private static String limits(ObjectNode body, Random random) {
    Circuit circuit = Verdicts.circuit(body);
    Edition edition = Verdicts.edition(body);
    List<Limit> limits = new Solver(circuit, edition, CircuitCheck.all()).limits();
    Result found = CircuitCheck.explained(circuit, edition);
    List<Limit> same = new Solver(circuit, edition, CircuitCheck.all(), found).limits();
    if (!limits.equals(same)) {
      return limits + " but " + same + " from what was found";
    }
    for (Limit limit : limits) {
      String at = limit.pointer().text();
      ObjectNode kept = Bodies.with(body, at, limit.value());
      for (Check check : CircuitCheck.all()) {
        boolean own = check.name() == limit.governedBy();
        Verdict verdict = Verdicts.finding(check, kept).verdict();
        if (own && verdict != Verdict.COMPLIES) {
          return at + " by " + check.name().word() + " " + limit.value() + " " + verdict;
        }
      }
    }
    return null;
  }
}
