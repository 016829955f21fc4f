package circuitverdict.check;

import static circuitverdict.support.Facts.clauses;
import static circuitverdict.support.Facts.complies;
import static circuitverdict.support.Facts.fails;
import static circuitverdict.support.Facts.open;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.explain.NoteCode;
import circuitverdict.support.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An RCCB before the circuit's B32 is itself protected (536.4.3.2, from memory). */
class ResidualDeviceProtectionTest {
  private static final CheckName CHECK = CheckName.DEVICE_SUITABILITY;
  private static final String AT = "/residualDevice/";

  private static Scenario behind(String upstream) {
    Scenario oven =
        Scenario.oven()
            .with("/residualDevice/standard", "IEC 61008-1")
            .with("/residualDevice/ratedCurrentA", 63)
            .with("/residualDevice/poles", 2)
            .with("/residualDevice/conditionalCapacityA", 6000)
            .with("/residualDevice/residual/operatingCurrentA", 0.03)
            .with("/supply/basis", "declared")
            .without("/supply/instrumentUncertaintyPercent")
            .with("/supply/phases", 1)
            .without("/supply/faultCurrents")
            .with("/supply/maximumFaultCurrentA", 1550)
            .without("/upstreamDevice");
    return upstream == null
        ? oven
        : oven.with("/upstreamDevice/standard", "BS 88-3")
            .with("/upstreamDevice/ratedCurrentA", Integer.parseInt(upstream));
  }

  private static Comparison of(Finding finding, String symbol) {
    List<Comparison> found =
        finding.comparisons().stream()
            .filter(each -> each.limit().symbol().equals(symbol))
            .toList();
    assertEquals(1, found.size(), found::toString);
    return found.get(0);
  }

  /** By its own circuit's device, or by the one upstream; below, at and above the limit. */
  @ParameterizedTest
  @CsvSource({
    "63, , complies",
    "32, , complies",
    "31.9, , /upstreamDevice",
    "31.9, 80, fails",
    "25, 25, complies",
    "25, 26, fails"
  })
  void overloadIsBrokenByADeviceInSeries(double rated, String upstream, String verdict) {
    Finding found = behind(upstream).with(AT + "ratedCurrentA", rated).finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> fails(found);
      default -> open(found, verdict);
    }
    assertEquals(rated, of(found, "In,RCCB").limit().value());
    assertTrue(clauses(found).contains("536.4.3.2"), clauses(found)::toString);
  }

  /** The lesser of two that are both too large is what it misses by. */
  @Test
  void theNearerOfTheTwoIsTold() {
    Finding found = fails(behind("80").with(AT + "ratedCurrentA", 25).finding(CHECK));
    assertEquals(32, of(found, "In,RCCB").actual().value());
  }

  @Test
  void whatCannotBeOverloadedIsForItsMaker() {
    Scenario small = behind("80").with(AT + "ratedCurrentA", 25);
    fails(small.with("/load/canOverload", true).finding(CHECK));
    open(small.with("/load/canOverload", false).finding(CHECK), AT + "ratedCurrentA");
  }

  @Test
  void itsRatedCurrentIsAskedFor() {
    open(behind("80").without(AT + "ratedCurrentA").finding(CHECK), AT + "ratedCurrentA");
  }

  /** Greatest current of the oven's way: 1 550 A. IΔm at least 500 A (IEC 61008-1, from memory). */
  @ParameterizedTest
  @CsvSource({
    "1549, , fails",
    "1550, , complies",
    ", , open",
    ", 1549, open",
    ", 1550, complies",
    "1000, 1550, complies",
    "1000, 1549, fails"
  })
  void aShortCircuitIsStoodWithinItsCapacities(Double conditional, Double breaks, String verdict) {
    Scenario rccb = behind(null).without(AT + "conditionalCapacityA");
    Scenario conditioned =
        conditional == null ? rccb : rccb.with(AT + "conditionalCapacityA", conditional);
    Finding found =
        (breaks == null ? conditioned : conditioned.with(AT + "residualMakingBreakingA", breaks))
            .finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> fails(found);
      default -> open(found, AT + "conditionalCapacityA");
    }
  }

  /** What its standard makes every one stand needs no figure of the maker. */
  @ParameterizedTest
  @ValueSource(ints = {500, 501})
  void smallCurrentsNeedNoConditionalRating(int greatest) {
    Scenario small =
        behind(null)
            .without(AT + "conditionalCapacityA")
            .with("/supply/maximumFaultCurrentA", greatest)
            .with("/supply/loopImpedanceOhm", 0.9)
            .with("/supply/lineToNeutralLoopImpedanceOhm", 0.9);
    Finding found = small.finding(CHECK);
    if (greatest == 500) {
      complies(found);
    } else {
      open(found, AT + "conditionalCapacityA");
    }
  }

  /** The greatest of any kind may be that of three lines, which this way does not have. */
  @Test
  void onlyWhatFlowsForCertainFails() {
    Scenario low =
        behind(null)
            .with(AT + "conditionalCapacityA", 2000)
            .with("/supply/phases", 3)
            .with("/supply/faultCurrents/threePhase/maximumA", 3100)
            .with("/supply/maximumFaultCurrentA", 3100);
    open(low.with("/supply/faultCurrents/lineToNeutral/maximumA", 2000).finding(CHECK));
    fails(low.with("/supply/faultCurrents/lineToNeutral/maximumA", 2100).finding(CHECK));
  }

  /** Stated loops let more flow than the stated greatest current: nothing is shown by that. */
  @Test
  void contradictedCurrentsShowNothing() {
    open(behind(null).with("/supply/maximumFaultCurrentA", 700).finding(CHECK));
  }

  @Test
  void whatIsNotJudgedIsTold() {
    Finding found = complies(behind("80").finding(CHECK));
    assertTrue(remarks(found).contains(NoteCode.RESIDUAL_DEVICE_FEEDS_OTHERS));
    assertTrue(remarks(found).contains(NoteCode.CONDITIONAL_WITH_NAMED_DEVICE));
    Finding without = complies(Scenario.oven().finding(CHECK));
    assertFalse(remarks(without).contains(NoteCode.RESIDUAL_DEVICE_FEEDS_OTHERS));
    assertFalse(clauses(without).contains("536.4.3.2"));
  }

  private static List<NoteCode> remarks(Finding finding) {
    return finding.remarks().stream().map(note -> note.code()).toList();
  }

  /** What it is decides whether others must protect it. */
  @Test
  void itsStandardIsAskedFor() {
    open(behind("80").without(AT + "standard").finding(CHECK), AT + "standard");
  }

  /** An RCBO breaks overload and short circuit by itself. */
  @Test
  void anRcboNeedsNone() {
    Finding found =
        behind("80")
            .with("/residualDevice/standard", "IEC 61009-1")
            .without(AT + "ratedCurrentA")
            .without(AT + "conditionalCapacityA")
            .finding(CHECK);
    complies(found);
  }
}
