package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.device.OperatingCurrent;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.DisconnectionTime;
import circuitverdict.fault.EarthElectrode;
import circuitverdict.fault.FaultLoop;
import circuitverdict.fault.LoopLimit;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;

/**
 * Disconnection by the overcurrent device: Zs ≤ Cmin·Uo/Ia (411.4.4, 411.5.4). Where the connection
 * is not stated the strictest time decides if it is met.
 */
final class OvercurrentDisconnection {
  private final Circuit circuit;
  private final FaultLoop loop;
  private final Dossier d;
  private final LoopLimit strictest;
  private final LoopLimit mildest;
  private final boolean open;
  private boolean guided;

  OvercurrentDisconnection(Circuit circuit, FaultLoop loop, DisconnectionTime time, Dossier d) {
    this.circuit = circuit;
    this.loop = loop;
    this.d = d;
    this.open = time.strictest().value() != time.mildest().value();
    this.strictest = limit(time.strictest());
    this.mildest = open ? limit(time.mildest()) : strictest;
  }

  private LoopLimit limit(Figure time) {
    if (!time.known()) {
      return LoopLimit.unknown();
    }
    OperatingCurrent slower = OperatingCurrent.byGuidance(circuit.device(), time.value(), d);
    LoopLimit own = LoopLimit.within(circuit, time, d);
    double actual = loop.impedance().value();
    if (slower.current().known() && !Comparator.AT_MOST.holds(actual, own.impedance().value())) {
      LoopLimit delayed = LoopLimit.of(slower, NominalVoltage.lineToEarth(circuit, d), d);
      if (Comparator.AT_MOST.holds(actual, delayed.impedance().value())) {
        guided = true;
        return delayed;
      }
    }
    return own;
  }

  boolean holds() {
    return Comparator.AT_MOST.holds(loop.impedance().value(), strictest.impedance().value());
  }

  /** Whether it holds only by guidance: a delayed release. */
  boolean guided() {
    return guided;
  }

  void judge(Judgement judgement) {
    if (guided) {
      d.restsOn(Dossier.Strength.GUIDANCE);
    }
    Figure actual = loop.impedance();
    if (!open || holds()) {
      if (open) {
        d.remark(NoteCode.STRICTEST_LIMIT);
      }
      compare(judgement, actual, strictest);
      return;
    }
    if (Comparator.AT_MOST.holds(actual.value(), mildest.impedance().value())) {
      d.missing(At.CONNECTION);
      judgement.open("/cable", actual, Comparator.AT_MOST, strictest.impedance());
      return;
    }
    compare(judgement, actual, mildest);
  }

  /** The electrode of a TT installation, which its loop cannot do without: at its best as read. */
  private Figure electrode() {
    return circuit.supply().earthing().tn()
        ? Figure.unknown("Re", Unit.OHM)
        : EarthElectrode.asStated(circuit.supply(), d);
  }

  private void compare(Judgement judgement, Figure actual, LoopLimit limit) {
    Verdict verdict =
        judgement.compare("/cable", actual, Comparator.AT_MOST, limit.impedance(), limit.printed());
    if (verdict == Verdict.DOES_NOT_COMPLY
        && limit.printed() != null
        && Comparator.atMost(actual.value(), limit.printed().number())) {
      d.remark(NoteCode.PRINTED_VALUE_ADMITS);
    }
    if (!limit.impedance().known() && !(circuit.device() instanceof AdjustableBreaker)) {
      // Whatever its curve, it carries its rated current for ever.
      Pointer at = new Pointer("/device", "ratedCurrentA");
      Double rated = circuit.device().data().ratedCurrentA();
      Figure carried = d.given("In", rated, Unit.AMPERE, at);
      judgement.atBest("/cable", loop.leastCurrent(circuit, d), Comparator.AT_LEAST, carried);
    }
    if (!actual.known()) {
      judgement.atBest("/supply", loop.supply(), Comparator.AT_MOST, limit.impedance());
      judgement.atBest("/supply", electrode(), Comparator.AT_MOST, limit.impedance());
    }
  }
}
