package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;

/**
 * Poles (431.1.1): overcurrent is detected in every line conductor, and the line opened. One line
 * is opened by any device. Of household breakers of three poles or more at least three are
 * protected, by their standards' own kinds (IEC 60898-1 and IEC 61009-1, clause 4, from memory),
 * and every pole of fuses; else the protected poles are asked for.
 */
final class SuitablePoles {
  private SuitablePoles() {}

  static void hold(Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    judgement.by(Clause.DEVICE_POLES);
    if (live.lines() == 1) {
      return;
    }
    residual(circuit, live, judgement, d);
    ProtectiveDevice device = circuit.device();
    Figure needed = new Figure("pL", live.lines(), Unit.ONE, At.LIVE);
    Integer poles = device.data().poles();
    Integer protectedPoles = device.data().nameplate().protectedPoles();
    Figure opened = d.need("p", asDouble(poles), Unit.ONE, Suitability.at(device, "poles"));
    judgement.classed("/device", opened, Comparator.AT_LEAST, needed);
    if (protectedPoles != null) {
      judgement.classed(
          "/device",
          new Figure("pp", protectedPoles, Unit.ONE, Suitability.at(device, "protectedPoles")),
          Comparator.AT_LEAST,
          needed);
    } else if (poles != null && poles >= live.lines() && !byStandard(device, live.lines())) {
      d.missing(Suitability.at(device, "protectedPoles"));
      judgement.undetermined();
    }
  }

  /** A residual device sees and opens the lines that pass through it (531.3.1): all of them. */
  private static void residual(
      Circuit circuit, LiveConductors live, Judgement judgement, Dossier d) {
    ProtectiveDevice before = circuit.residualDevice();
    if (before == null) {
      return;
    }
    Integer poles = before.data().poles();
    judgement.classed(
        before.data().place(),
        d.need("p", asDouble(poles), Unit.ONE, Suitability.at(before, "poles")),
        Comparator.AT_LEAST,
        new Figure("pL", live.lines(), Unit.ONE, At.LIVE));
  }

  private static boolean byStandard(ProtectiveDevice device, int lines) {
    if (device instanceof ProtectiveDevice.Fuse) {
      return true;
    }
    return lines > 2 && !(device instanceof AdjustableBreaker);
  }

  private static Double asDouble(Integer count) {
    return count == null ? null : Double.valueOf(count);
  }
}
