package circuitverdict.property;

import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Figure.Derived;
import circuitverdict.explain.Step;
import circuitverdict.quantity.Unit;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A working is complete: every number put into a formula is given, cited, or the value of an
 * earlier step (engineering basis, principle 6).
 */
class CompleteWorkingTest {

  @Test
  void everyNumberOfAWorkingHasASourceOrAStep() {
    Property.holds(
        "numbers of workings",
        Circuits.anyStage(),
        (body, random) -> {
          for (Finding finding : explained(body).findings()) {
            String told = unfounded(finding.working());
            if (told != null) {
              return finding.check().word() + " " + told;
            }
          }
          return null;
        });
  }

  private static Result explained(ObjectNode body) {
    return CircuitCheck.explained(Verdicts.circuit(body), Verdicts.edition(body));
  }

  private static String unfounded(List<Step> steps) {
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      for (Figure operand : step.operands()) {
        boolean named = step.formula() == null && step.comparator() == null;
        if (!named && operand.source() == Derived.STEP && !founded(operand, steps.subList(0, i))) {
          return operand.symbol() + " in " + step.formulaText() + "\n  " + step.substitution();
        }
      }
    }
    return null;
  }

  /** A factor of one, also as 100 %, or nothing stands for what is not there. */
  private static boolean founded(Figure operand, List<Step> before) {
    return operand.value() == 0
        || operand.value() == (operand.unit() == Unit.PERCENT ? 100 : 1)
        || before.stream()
            .map(Step::result)
            .anyMatch(r -> r.value() == operand.value() && r.unit() == operand.unit());
  }
}
