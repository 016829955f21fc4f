package circuitverdict.property;

import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Comparison;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.explain.At;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Edition;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a result says of itself is consistent, whatever the circuit (engineering basis, principle
 * 2).
 */
class ConsistencyTest {
  /** A default of quotations alone: a design that fails elsewhere did not get by without it. */
  private static final String QUOTED = "groupedCircuits";

  /** Checks and inputs they cannot do without, for which an earlier stage has a default. */
  private static final Set<String> DEFAULTED =
      Set.of(
          "overload-protection ambientTemperatureC",
          "overload-protection groupedCircuits",
          "overload-protection soilThermalResistivityKMPerW",
          "overload-protection burialDepthM",
          "conductor-rating ambientTemperatureC",
          "conductor-rating groupedCircuits",
          "conductor-rating soilThermalResistivityKMPerW",
          "conductor-rating burialDepthM",
          "voltage-drop lineToEarthVoltageV",
          "earth-fault-disconnection lineToEarthVoltageV",
          "earth-fault-disconnection loopImpedanceOhm");

  @Test
  void nothingCompliesWhileACountedCheckIsOpen() {
    Property.holds(
        "overall verdict", Circuits.anyStage(), (body, random) -> overall(Verdicts.result(body)));
  }

  private static String overall(Result result) {
    boolean all = true;
    boolean any = false;
    for (Finding finding : result.findings()) {
      all &= !finding.counted() || finding.verdict() == Verdict.COMPLIES;
      any |= finding.counted();
    }
    boolean complies = result.verdict() == Verdict.COMPLIES;
    return complies == (all && any) ? null : "overall " + result.verdict().word();
  }

  @Test
  void aCompliantCheckHasNoComparisonThatFailsAndNothingMissing() {
    Property.holds(
        "comparisons of a compliant check",
        Circuits.anyStage(),
        (body, random) -> {
          for (Finding finding : Verdicts.result(body).findings()) {
            boolean clean =
                finding.missing().isEmpty()
                    && finding.comparisons().stream()
                        .allMatch(each -> each.verdict() == Verdict.COMPLIES);
            if (finding.verdict() == Verdict.COMPLIES && !clean) {
              return finding.check().word() + "\n  " + Verdicts.line(finding);
            }
          }
          return null;
        });
  }

  @Test
  void everyReasonIsGivenUnlessACheckComplies() {
    Property.holds(
        "reasons",
        Circuits.anyStage(),
        (body, random) -> {
          for (Finding finding : Verdicts.result(body).findings()) {
            boolean complies = finding.verdict() == Verdict.COMPLIES;
            boolean open = finding.verdict() == Verdict.NOT_DETERMINED;
            if (complies == (finding.reason() != null) || open && finding.missing().isEmpty()) {
              return finding.check().word() + "\n  " + Verdicts.line(finding);
            }
          }
          return null;
        });
  }

  @Test
  void silentAndExplainedRunsSayTheSame() {
    Property.holds("silent and explained", 4_000, Circuits.anyStage(), ConsistencyTest::sameTwice);
  }

  @Test
  void aCheckSaysTheSameAloneAsAmongTheOthers() {
    Property.holds("alone and among others", 4_000, Circuits.anyStage(), ConsistencyTest::alone);
  }

  private static String alone(ObjectNode body, Random random) {
    Circuit circuit = Verdicts.circuit(body);
    Edition edition = Verdicts.edition(body);
    for (boolean explain : new boolean[] {false, true}) {
      Result all = CircuitCheck.run(CircuitCheck.all(), circuit, edition, explain);
      for (Check check : CircuitCheck.all()) {
        Finding alone = CircuitCheck.one(check, circuit, edition, explain);
        boolean same = figures(alone).equals(figures(all.of(check.name())));
        boolean steps = alone.working().size() == all.of(check.name()).working().size();
        if (!same || !steps) {
          return check.name().word()
              + (explain ? " explained" : " silent")
              + "\n  "
              + figures(alone)
              + "\n  "
              + figures(all.of(check.name()));
        }
      }
    }
    return null;
  }

  private static String sameTwice(ObjectNode body, Random random) {
    Circuit circuit = Verdicts.circuit(body);
    Edition edition = Verdicts.edition(body);
    for (Check check : CircuitCheck.all()) {
      List<Object> silent = figures(CircuitCheck.one(check, circuit, edition, false));
      List<Object> explained = figures(CircuitCheck.one(check, circuit, edition, true));
      if (!silent.equals(explained)) {
        return check.name().word() + "\n  " + silent + "\n  " + explained;
      }
    }
    return null;
  }

  private static List<Object> figures(Finding finding) {
    List<Object> all = new ArrayList<>();
    all.add(finding.verdict());
    all.add(String.valueOf(finding.reason()));
    all.add(finding.strength());
    all.add(finding.counted());
    for (Comparison each : finding.comparisons()) {
      all.add(List.of(each.subject(), each.actual().value(), each.limit().value(), each.verdict()));
    }
    for (List<Note> notes : List.of(finding.missing(), finding.assumptions(), finding.remarks())) {
      for (Note note : notes) {
        all.add(note.code());
        all.add(note.pointer() == null ? "" : note.pointer().text());
        note.figures().stream().map(Figure::value).forEach(all::add);
      }
    }
    return all;
  }

  @ParameterizedTest
  @ValueSource(strings = {"design", "quotation"})
  void whatSignOffWouldAskForIsListedAsAssumed(String stage) {
    Property.holds(stage, Circuits.at(stage), ConsistencyTest::listed);
  }

  /** The electrode's resistance alone fails what its whole loop, greater still, would fail too. */
  private static boolean failsByElectrode(Finding finding, Note missing) {
    return finding.verdict() == Verdict.DOES_NOT_COMPLY
        && missing.pointer().equals(At.LOOP)
        && finding.comparisons().stream().anyMatch(each -> each.actual().symbol().equals("Re"));
  }

  /** What sign-off misses and an earlier stage gets by without, stands in its assumptions. */
  private static String listed(ObjectNode body, Random random) {
    ObjectNode equal = Bodies.with(body, "/requirements/evidence", "guidance");
    Result now = Verdicts.result(equal);
    Result later = Verdicts.result(Bodies.with(equal, "/stage", "sign-off"));
    boolean design = "design".equals(Bodies.text(body, "/stage"));
    for (Finding finding : now.findings()) {
      if (finding.verdict() == Verdict.NOT_DETERMINED) {
        continue;
      }
      for (Note missing : later.of(finding.check()).missing()) {
        boolean asked =
            missing.code() == NoteCode.MISSING_INPUT
                && DEFAULTED.contains(finding.check().word() + " " + missing.pointer().member())
                && !(design && missing.pointer().member().equals(QUOTED))
                && !failsByElectrode(finding, missing);
        if (asked && !assumed(finding, missing)) {
          return finding.check().word()
              + " "
              + missing.pointer().text()
              + "\n  "
              + Verdicts.line(finding)
              + "\n  "
              + Verdicts.line(later.of(finding.check()));
        }
      }
    }
    return null;
  }

  private static boolean assumed(Finding finding, Note missing) {
    for (Note each : finding.assumptions()) {
      if (each.pointer() != null && each.pointer().text().equals(missing.pointer().text())) {
        return true;
      }
    }
    return false;
  }
}
