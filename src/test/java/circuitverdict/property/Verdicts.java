package circuitverdict.property;

import circuitverdict.check.Check;
import circuitverdict.check.CircuitCheck;
import circuitverdict.check.Finding;
import circuitverdict.check.Result;
import circuitverdict.check.Verdict;
import circuitverdict.circuit.Circuit;
import circuitverdict.service.wire.CircuitMapping;
import circuitverdict.standard.Edition;
import circuitverdict.support.Scenario;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What the engine says of a body, without working. */
final class Verdicts {
  private Verdicts() {}

  static Edition edition(ObjectNode body) {
    String id = Bodies.text(body, "/edition");
    return id == null ? Scenario.editions().inForce() : Scenario.edition(id);
  }

  static Circuit circuit(ObjectNode body) {
    return CircuitMapping.circuit(body);
  }

  static Finding finding(Check check, ObjectNode body) {
    return CircuitCheck.one(check, circuit(body), edition(body), false);
  }

  static Result result(ObjectNode body) {
    return CircuitCheck.verdicts(circuit(body), edition(body));
  }

  /** Whether the check stands in the way of compliance. */
  static boolean stands(Verdict verdict) {
    return verdict == Verdict.DOES_NOT_COMPLY || verdict == Verdict.NOT_DETERMINED;
  }

  /** One line about a finding. */
  static String line(Finding finding) {
    StringBuilder line = new StringBuilder(finding.verdict().word());
    if (finding.reason() != null) {
      line.append(" (").append(finding.reason().word()).append(')');
    }
    finding
        .comparisons()
        .forEach(
            each ->
                line.append("; ")
                    .append(each.actual().symbol())
                    .append(' ')
                    .append(each.actual().value())
                    .append(' ')
                    .append(each.comparator().symbol())
                    .append(' ')
                    .append(each.limit().value()));
    finding
        .missing()
        .forEach(
            note ->
                line.append("; ")
                    .append(note.code().code())
                    .append(' ')
                    .append(note.pointer() == null ? "" : note.pointer().text()));
    return line.toString();
  }
}
