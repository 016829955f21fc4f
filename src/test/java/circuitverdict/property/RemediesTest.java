package circuitverdict.property;

import static org.junit.jupiter.api.Assertions.assertTrue;

import circuitverdict.check.CheckName;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.select.Change;
import circuitverdict.select.Remedies;
import circuitverdict.select.Remedy;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * A remedy is only offered if it turns what it says and breaks nothing (engineering basis, limits);
 * and of a kind of change the smallest.
 */
class RemediesTest {
  private static final int TRIES = 5_000;

  @Test
  void everyRemedyMendsWhatItSaysAndBreaksNothing() {
    Map<String, Integer> kinds = new HashMap<>();
    Property.holds(
        "remedies", TRIES, Circuits.completeAt("design"), (body, random) -> refute(body, kinds));
    assertTrue(
        kinds
            .keySet()
            .containsAll(
                List.of(
                    "Characteristic",
                    "RatedCurrent",
                    "Sizes",
                    "Length",
                    "ClippedDirect",
                    "CombinedChange")),
        () -> "tried on too little: only " + kinds);
  }

  private static String refute(ObjectNode body, Map<String, Integer> kinds) {
    Circuit circuit = Verdicts.circuit(body);
    Edition edition = Verdicts.edition(body);
    Result before = CircuitCheck.verdicts(circuit, edition);
    for (Remedy remedy : new Remedies(circuit, edition, CircuitCheck.all(), before).all()) {
      kinds.merge(remedy.change().getClass().getSimpleName(), 1, Integer::sum);
      String found = refute(body, remedy, before, edition);
      if (found != null) {
        return remedy.change().getClass().getSimpleName() + " " + found + "\n  " + remedy;
      }
    }
    return null;
  }

  private static String refute(ObjectNode body, Remedy remedy, Result before, Edition edition) {
    // Applied as a caller would: by setting the members that the answer names.
    ObjectNode changed = body.deepCopy();
    for (Change.Member member : remedy.change().members()) {
      Bodies.set(changed, member.pointer(), member.value());
    }
    Result after = CircuitCheck.explained(Verdicts.circuit(changed), edition);
    for (Finding finding : before.findings()) {
      Verdict now = after.of(finding.check()).verdict();
      boolean mends = remedy.mends().contains(finding.check());
      if (mends && now != Verdict.COMPLIES) {
        return "does not mend " + finding.check().word();
      }
      boolean complied = finding.verdict() == Verdict.COMPLIES && now != Verdict.COMPLIES;
      boolean worse =
          finding.verdict() != Verdict.DOES_NOT_COMPLY && now == Verdict.DOES_NOT_COMPLY;
      if (finding.counted() && (complied || worse)) {
        return "breaks " + finding.check().word();
      }
    }
    return remedy.mends().isEmpty() ? "mends nothing" : smallest(body, remedy, before, edition);
  }

  /** The next smaller size does not mend what the remedy mends, or breaks something. */
  private static String smallest(ObjectNode body, Remedy remedy, Result before, Edition edition) {
    boolean flat = "flat-twin-and-earth".equals(Bodies.text(body, "/cable/construction"));
    if (!(remedy.change() instanceof Change.Sizes sizes) || !flat) {
      return null;
    }
    List<Double> listed = Cables.sizes("flat-twin-and-earth");
    int at = listed.indexOf(sizes.lineMm2());
    Double now = Bodies.number(body, "/cable/lineCsaMm2");
    if (at < 1 || now == null || listed.get(at - 1) <= now) {
      return null;
    }
    double smaller = listed.get(at - 1);
    ObjectNode less = Bodies.with(body, "/cable/lineCsaMm2", smaller);
    Bodies.set(less, "/cable/protectiveCsaMm2", Cables.flatProtective(smaller));
    Result after = CircuitCheck.verdicts(Verdicts.circuit(less), edition);
    for (Finding finding : before.findings()) {
      Verdict then = after.of(finding.check()).verdict();
      boolean breaks = finding.verdict() == Verdict.COMPLIES && then != Verdict.COMPLIES;
      boolean worse =
          finding.verdict() == Verdict.NOT_DETERMINED && then == Verdict.DOES_NOT_COMPLY;
      if (finding.counted() && (breaks || worse)) {
        return null;
      }
    }
    for (CheckName mended : remedy.mends()) {
      if (after.of(mended).verdict() != Verdict.COMPLIES) {
        return null;
      }
    }
    return "is not the smallest: " + smaller + " mm² does it";
  }
}
