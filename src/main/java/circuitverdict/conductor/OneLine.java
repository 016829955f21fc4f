package circuitverdict.conductor;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.explain.Dossier;

/**
 * Loads of a three-phase way that stand on one line: one rated for the voltage of a line to neutral
 * draws all of its current from that line, and back through the neutral (IEC 60364-5-52 annex G,
 * note 3).
 */
public final class OneLine {
  private OneLine() {}

  /** Whether the load, or a part of it, stands on one line of three. */
  public static boolean stands(Circuit circuit, LiveConductors live, Dossier d) {
    return live != null
        && live.threePhase()
        && live.neutral()
        && stands(circuit, circuit.load(), d);
  }

  private static boolean stands(Circuit circuit, Load load, Dossier d) {
    for (Load part : load.parts()) {
      if (stands(circuit, part, d)) {
        return true;
      }
    }
    // Several items share the lines, as the stated current has it.
    boolean one = load.count() == null || load.count() == 1;
    return one && load.parts().isEmpty() && Boolean.FALSE.equals(acrossLines(circuit, load, d));
  }

  /**
   * Whether a load of a three-phase way draws from all lines. Null where the nominal voltage that
   * tells is not known.
   */
  static Boolean acrossLines(Circuit circuit, Load load, Dossier d) {
    if (load.ratedVoltageV() == null) {
      return true;
    }
    double lineToEarth = NominalVoltage.lineToEarth(circuit, d).value();
    if (Double.isNaN(lineToEarth)) {
      return null;
    }
    double betweenLines = Math.sqrt(3) * lineToEarth;
    double rated = load.ratedVoltageV();
    return Math.abs(rated - betweenLines) <= Math.abs(rated - lineToEarth);
  }
}
