package circuitverdict.conductor;

import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.remarks;
import static circuitverdict.support.Facts.step;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.Finding;
import circuitverdict.check.Verdict;
import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Groups that are not what the tables take them for (Appendix 4, notes of Table 4C1, 2.3.3.1 and
 * 5.1.2): the deck oven's 6 mm², method C, Table 4D5: 47 A.
 */
class GroupRulesTest {
  private static final CheckName CHECK = CheckName.CONDUCTOR_RATING;
  private static final String AT = "/cable/installation/";

  private static Scenario grouped(int circuits) {
    return Scenario.oven().with(AT + "groupedCircuits", circuits);
  }

  /** Of five circuits so many that carry little: Cg of Table 4C1 for the rest. */
  @ParameterizedTest
  @CsvSource({"0, 0.60", "1, 0.65", "2, 0.70", "3, 0.80"})
  void lightlyLoadedCircuitsAreNotCounted(int light, double factor) {
    Finding found = grouped(5).with(AT + "lightlyLoadedCircuits", light).finding(CHECK);
    assertEquals(32 / factor, step("It,req", found), 1e-9);
    assertEquals(light > 0, remarks(found).contains(NoteCode.LIGHTLY_LOADED));
  }

  @Test
  void allOthersLightlyLoadedLeaveNoGroup() {
    Finding found = grouped(5).with(AT + "lightlyLoadedCircuits", 4).finding(CHECK);
    assertEquals(32, step("It,req", found), 1e-9);
  }

  /** 1/√n, whatever the arrangement that still touches. */
  @ParameterizedTest
  @CsvSource({"1, bunched", "2, bunched", "4, bunched", "9, touching"})
  void cablesOfDifferentSizes(int circuits, String arrangement) {
    Finding found =
        grouped(circuits)
            .with(AT + "groupArrangement", arrangement)
            .with(AT + "mixedSizes", true)
            .finding(CHECK);
    assertEquals(32 * Math.sqrt(circuits), step("It,req", found), 1e-9);
  }

  /**
   * Four circuits, Cg 0.65: 32/0.65 = 49.2 A exceeds 47 A. Never all overloaded: √(32² +
   * 0.48·26.1²·(1 − 0.65²)/0.65²) = 38.4 A and 26.1/0.65 = 40.2 A do not.
   */
  @Test
  void circuitsThatAreNeverAllOverloaded() {
    fails(grouped(4).finding(CHECK));
    fails(grouped(4).with(AT + "simultaneousOverload", true).finding(CHECK));
    Scenario never = grouped(4).with(AT + "simultaneousOverload", false);
    Finding found = complies(never.finding(CHECK));
    assertTrue(remarks(found).contains(NoteCode.GROUP_NOT_OVERLOADED_TOGETHER));
    complies(never.finding(CheckName.OVERLOAD_PROTECTION));
    // The load itself is carried by the group's rating: 30.55 A.
    complies(never.with("/load/designCurrentA", 30.55).finding(CHECK));
    fails(never.with("/load/designCurrentA", 30.56).finding(CHECK));
  }

  /** Whatever the figures: as the two conditions of 5.1.2 have it, or as those of the table. */
  @Test
  void theRatingServesExactlyWhereTheFormulaSaysSo() {
    long seed = 512;
    Random random = new Random(seed);
    double[] factors = {1, 0.80, 0.70, 0.65, 0.60, 0.57, 0.54, 0.52, 0.50};
    for (int i = 0; i < 2_000; i++) {
      int circuits = 1 + random.nextInt(9);
      double rated = 10 + random.nextInt(40);
      double design = rated * (0.2 + 0.8 * random.nextDouble());
      double cg = factors[circuits - 1];
      double together =
          Math.sqrt(rated * rated + 0.48 * design * design * (1 - cg * cg) / (cg * cg));
      boolean serves = Math.max(together, design / cg) <= 47 || rated / cg <= 47;
      Verdict found =
          grouped(circuits)
              .with(AT + "simultaneousOverload", false)
              .with("/device/ratedCurrentA", rated)
              .with("/load/designCurrentA", design)
              .verdict(CHECK);
      assertEquals(
          serves ? Verdict.COMPLIES : Verdict.DOES_NOT_COMPLY,
          found,
          "seed " + seed + ", " + circuits + " circuits, " + rated + " A, " + design + " A");
    }
  }

  /** Not of rewireable fuses, nor where the edition has no such rule. */
  @Test
  void whereTheRuleDoesNotSpeakTheTableDecides() {
    Scenario never = grouped(4).with(AT + "simultaneousOverload", false);
    Finding fuse =
        never.with("/device/standard", "BS 3036").with("/device/ratedCurrentA", 30).finding(CHECK);
    assertFalse(remarks(fuse).contains(NoteCode.GROUP_NOT_OVERLOADED_TOGETHER));
    Finding iec =
        never.with("/edition", "iec60364").with("/cable/construction", "multicore").finding(CHECK);
    assertFalse(remarks(iec).contains(NoteCode.GROUP_NOT_OVERLOADED_TOGETHER));
  }
}
