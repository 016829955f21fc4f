package circuitverdict.select;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;

/**
 * What a caller says that conductors and devices cost, in a measure of the caller's own: a choice
 * among candidates that all comply, never a reason to call one compliant.
 *
 * @param live of each live conductor, for each mm² and metre
 * @param protective of the protective conductor, likewise
 * @param device of the device, for each ampere of its rated current
 */
public record CostWeights(double live, double protective, double device) {

  /** Cost of a cable in a circuit, with its device; of a length that is free that of one metre. */
  double of(Circuit circuit, Cable cable, boolean lengthSolved, ProtectiveDevice device) {
    LiveConductors wires = LiveConductors.of(circuit);
    int lines = wires == null ? 1 : wires.lines();
    boolean neutral = wires == null || wires.neutral();
    double neutralMm2 = cable.neutralCsaMm2() == null ? cable.lineCsaMm2() : cable.neutralCsaMm2();
    double mm2 = lines * cable.lineCsaMm2() + (neutral ? neutralMm2 : 0);
    double length = lengthSolved || cable.lengthM() == null ? 1 : cable.lengthM();
    double back = cable.protectiveCsaMm2() == null ? 0 : cable.protectiveCsaMm2();
    ProtectiveDevice fitted = device == null ? circuit.device() : device;
    Double rated = fitted == null ? null : fitted.data().ratedCurrentA();
    return length * cable.parallel() * (live * mm2 + protective * back)
        + this.device * (rated == null ? 0 : rated);
  }
}
