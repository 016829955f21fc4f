package circuitverdict.property;

import static org.junit.jupiter.api.Assertions.assertEquals;

import circuitverdict.check.Comparison;
import circuitverdict.check.Finding;
import circuitverdict.check.Verdict;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Shown;
import circuitverdict.quantity.Unit;
import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is shown never contradicts the verdict (engineering basis, principle 4). */
class ShownTest {
  private static final int TRIES = 10_000;
  private static final long SEED = Long.getLong("property.seed", 20_260_415L);

  @ParameterizedTest
  @EnumSource
  void theDisplayAgreesWithTheComparisonHoweverNearTheLimit(Unit unit) {
    Random random = new Random(SEED);
    for (int i = 0; i < TRIES; i++) {
      double limit = Math.pow(10, random.nextDouble() * 12 - 4);
      // From half of it apart down to the noise of binary arithmetic, and equal.
      double apart = random.nextInt(20) == 0 ? 0 : Math.pow(10, -random.nextDouble() * 16);
      double actual = limit * (1 + (random.nextBoolean() ? apart : -apart) / 2);
      for (Comparator comparator : Comparator.values()) {
        agrees(actual, comparator, limit, unit, "try " + i + " of seed " + SEED);
      }
    }
  }

  private static void agrees(
      double actual, Comparator comparator, double limit, Unit unit, String about) {
    Shown shown = Shown.of(actual, comparator, limit, unit);
    int order = new BigDecimal(shown.actual()).compareTo(new BigDecimal(shown.limit()));
    boolean shownHolds = comparator == Comparator.AT_MOST ? order <= 0 : order >= 0;
    assertEquals(
        comparator.holds(actual, limit),
        shownHolds,
        () -> actual + comparator.symbol() + limit + " shown as " + shown + ", " + about);
  }

  @Test
  void theDisplayAgreesWithEveryFindingOfTheEngine() {
    Property.holds(
        "display of findings",
        Circuits.anyStage(),
        (body, random) -> {
          for (Finding finding : Verdicts.result(body).findings()) {
            for (Comparison each : finding.comparisons()) {
              String told = contradiction(each);
              if (told != null) {
                return finding.check().word() + "\n  " + told;
              }
            }
          }
          return null;
        });
  }

  private static String contradiction(Comparison each) {
    double actual = each.actual().value();
    double limit = each.limit().value();
    boolean open = each.verdict() == Verdict.NOT_DETERMINED;
    if (open || Double.isInfinite(actual) || Double.isInfinite(limit)) {
      return null;
    }
    Shown shown = Shown.of(actual, each.comparator(), limit, each.limit().unit());
    int order = new BigDecimal(shown.actual()).compareTo(new BigDecimal(shown.limit()));
    boolean holds = each.comparator() == Comparator.AT_MOST ? order <= 0 : order >= 0;
    return holds == (each.verdict() == Verdict.COMPLIES) ? null : shown + " is " + each.verdict();
  }
}
