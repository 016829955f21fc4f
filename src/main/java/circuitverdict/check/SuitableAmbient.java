package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Nameplate;
import circuitverdict.circuit.Nameplate.DeratingPoint;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Value;

/**
 * Temperature of the air around the device (512.2.1 and the product standards): up to its reference
 * temperature it carries In, above only what its maker's derating says, taken at the next hotter
 * point that is given. Examined only where it is stated.
 */
final class SuitableAmbient {
  private static final Formula DERATED = Formula.of("Inθ", Unit.AMPERE, "kθ·In");

  private SuitableAmbient() {}

  static void hold(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    Double stated = circuit.assembly().ambientTemperatureC();
    if (stated == null) {
      d.remark(NoteCode.ASSEMBLY_AMBIENT_NOT_STATED);
      return;
    }
    judgement.by(Clause.DEVICE_SURROUNDINGS);
    Figure ambient = new Figure("θa", stated, Unit.CELSIUS, At.ASSEMBLY_AMBIENT);
    ProtectiveDevice device = circuit.device();
    Figure reference = reference(device, d);
    if (reference.known() && Comparator.atMost(stated, reference.value())) {
      judgement.classed("/device", ambient, Comparator.AT_MOST, reference);
      return;
    }
    Figure factor = factor(device, stated);
    if (!factor.known()) {
      d.missing(NoteCode.DERATING_NEEDED, Suitability.at(device, "derating"), ambient);
      judgement.undetermined();
      return;
    }
    Figure rated =
        d.need(
            "In",
            device.data().ratedCurrentA(),
            Unit.AMPERE,
            Suitability.at(device, "ratedCurrentA"));
    if (DesignCurrent.isRating(circuit)) {
      // What stands for the load may be more than it draws.
      d.curable(At.DESIGN_CURRENT);
    }
    judgement.compare(
        "/device",
        DesignCurrent.of(circuit, live, d),
        Comparator.AT_MOST,
        d.working().step(DERATED, factor, rated));
  }

  private static Figure reference(ProtectiveDevice device, Dossier d) {
    Double stated = device.data().nameplate().referenceTemperatureC();
    if (stated != null) {
      return new Figure(
          "θr", stated, Unit.CELSIUS, Suitability.at(device, "referenceTemperatureC"));
    }
    Value own = Suitability.of(device, "reference-temperature", d);
    return own == null ? Figure.unknown("θr", Unit.CELSIUS) : Figure.of("θr", own);
  }

  /** The least factor up to the next hotter point; unknown beyond the hottest. */
  private static Figure factor(ProtectiveDevice device, double ambient) {
    Nameplate face = device.data().nameplate();
    double least = Double.POSITIVE_INFINITY;
    for (DeratingPoint point : face.derating()) {
      least = Math.min(least, point.factor());
      if (point.ambientTemperatureC() >= ambient) {
        return new Figure("kθ", least, Unit.ONE, Suitability.at(device, "derating"));
      }
    }
    return Figure.unknown("kθ", Unit.ONE);
  }
}
