package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Value;

/**
 * Pollution (512.2.1 and the product standards): no more at the place of the device than its
 * standard is for. Examined only where it is stated.
 */
final class SuitablePollution {
  private SuitablePollution() {}

  static void hold(Circuit circuit, Judgement judgement, Dossier d) {
    Integer degree = circuit.premises().pollutionDegree();
    if (degree == null) {
      return;
    }
    judgement.by(Clause.DEVICE_SURROUNDINGS);
    Value greatest = Suitability.of(circuit.device(), "pollution-degree", d);
    if (greatest == null) {
      d.missing(NoteCode.NOT_IN_TABLES, At.POLLUTION);
      judgement.undetermined();
      return;
    }
    judgement.classed(
        "/device",
        new Figure("PD", degree, Unit.ONE, At.POLLUTION),
        Comparator.AT_MOST,
        Figure.of("PD,max", greatest));
  }
}
