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

  /**
   * Greatest current of the oven's way: 1 550 A. Im at least 500 A (IEC 61008-1, from memory); what
   * it breaks of residual currents, IΔm, says nothing of those between lines and neutral.
   */
  @ParameterizedTest
  @CsvSource({"1549, , fails", "1550, , complies", ", , open", ", 1550, open", "1000, 1550, fails"})
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

  /** aM and gM links break short circuits only (IEC 60269-1); the category is asked for. */
  @ParameterizedTest
  @CsvSource({"gG, complies", "aM, open", "gM, open", ", open"})
  void onlyAGeneralPurposeFuseBreaksOverload(String category, String verdict) {
    Scenario fuse =
        behind("25").with(AT + "ratedCurrentA", 25).with("/upstreamDevice/standard", "BS 88-2");
    Finding found =
        (category == null ? fuse : fuse.with("/upstreamDevice/utilizationCategory", category))
            .finding(CHECK);
    if (verdict.equals("complies")) {
      complies(found);
    } else {
      open(found, "/upstreamDevice/utilizationCategory");
    }
  }

  /** An assembly's conditional rating holds for what is in it (536.4.201): 16 kA behind 100 A. */
  @ParameterizedTest
  @CsvSource({"16000, complies", "10000, fails"})
  void theAssemblyMayCoverIt(int rating, String verdict) {
    Scenario unit =
        behind("100")
            .with("/supply/maximumFaultCurrentA", 15_000)
            .with("/assembly/standard", "IEC 61439-3")
            .with("/assembly/conditionalRatingA", rating)
            .with("/assembly/maximumUpstreamFuseA", 100)
            .with("/upstreamDevice/breakingCapacityA", 33_000)
            .with("/assembly/deviceDeclared", true);
    Finding found = unit.finding(CHECK);
    if (verdict.equals("complies")) {
      complies(found);
    } else {
      fails(found);
    }
  }

  /** A breaker with a residual function carries the load, 26.1 A, and breaks 1 550 A itself. */
  @ParameterizedTest
  @CsvSource({
    "26.1, 1550, complies",
    "26, 1550, fails",
    "32, 1549, fails",
    ", 6000, /residualDevice/ratedCurrentA",
    "32, , /residualDevice/breakingCapacityA"
  })
  void anRcboBreaksByItself(Double rated, Double capacity, String verdict) {
    Scenario rcbo =
        behind("80")
            .with(AT + "standard", "IEC 61009-1")
            .without(AT + "ratedCurrentA")
            .without(AT + "conditionalCapacityA");
    rcbo = rated == null ? rcbo : rcbo.with(AT + "ratedCurrentA", rated);
    Finding found =
        (capacity == null ? rcbo : rcbo.with(AT + "breakingCapacityA", capacity)).finding(CHECK);
    switch (verdict) {
      case "complies" -> complies(found);
      case "fails" -> fails(found);
      default -> open(found, verdict);
    }
  }
}
