package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.Residual;
import circuitverdict.device.Promises;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;

/**
 * Residual currents (536.4.1.4): the upstream function at least three times less sensitive, and of
 * type S before a general one, or with a set delay longer than the latest break time of the other.
 */
final class ResidualSelectivity {
  private static final Formula LEAST = Formula.of("IΔn,min", Unit.AMPERE, "kΔ·IΔn");
  private static final Formula HOLDS = Formula.of("IΔn0", Unit.AMPERE, "kn·IΔn");
  private static final Formula MULTIPLE = Formula.of("mΔ", Unit.ONE, "IΔn0/IΔn");

  private final Circuit circuit;
  private final ProtectiveDevice upstream;
  private final Judgement judgement;
  private final Dossier d;

  ResidualSelectivity(Circuit circuit, Judgement judgement, Dossier d) {
    this.circuit = circuit;
    this.upstream = circuit.upstreamDevice();
    this.judgement = judgement;
    this.d = d;
  }

  void judge() {
    if (!has(upstream)) {
      d.remark(NoteCode.RESIDUAL_ZONE_DOES_NOT_APPLY);
      return;
    }
    judgement.by(Clause.SELECTIVITY_RESIDUAL);
    Figure upper = operating(upstream);
    ProtectiveDevice own = own(upper);
    boolean shown = own == null ? withoutOwn(upper) : inOrder(own, upper);
    d.remark(shown ? NoteCode.RESIDUAL_SELECTIVE : NoteCode.RESIDUAL_NOT_SELECTIVE);
    if (!shown) {
      judgement.undetermined();
      d.missing(NoteCode.SELECTIVITY_DATA_NEEDED, new Pointer(upstream.data().place(), "residual"));
    }
  }

  /**
   * The function that is to open: of two in the circuit one that is in order with the one upstream,
   * since one that opens is enough, else the more sensitive one.
   */
  private ProtectiveDevice own(Figure upper) {
    ProtectiveDevice device = circuit.device();
    ProtectiveDevice before = circuit.residualDevice();
    if (!has(device) || !has(before)) {
      return has(device) ? device : has(before) ? before : null;
    }
    for (ProtectiveDevice each : new ProtectiveDevice[] {device, before}) {
      Dossier trial = d.trial();
      Judgement tried = new Judgement(CheckName.SELECTIVITY, circuit, trial, "");
      if (new ResidualSelectivity(circuit, tried, trial).inOrder(each, upper)) {
        return each;
      }
    }
    Double here = sensitivity(device);
    Double there = sensitivity(before);
    return here == null || there != null && here <= there ? device : before;
  }

  /** Devices to these standards have one, stated or not. */
  private static boolean has(ProtectiveDevice device) {
    return device instanceof Rccb
        || device instanceof Breaker && "IEC 61009-1".equals(device.data().standard())
        || ResidualTime.has(device);
  }

  private static Double sensitivity(ProtectiveDevice device) {
    Residual residual = device.data().residual();
    return residual == null ? null : residual.operatingCurrentA();
  }

  private Figure operating(ProtectiveDevice device) {
    Pointer at = new Pointer(device.data().place() + "/residual", "operatingCurrentA");
    return d.need("IΔn", sensitivity(device), Unit.AMPERE, at);
  }

  /** Without a function of its own the circuit carries what opens the one upstream. */
  private boolean withoutOwn(Figure upper) {
    ProtectiveDevice device = circuit.device();
    if (device.data().standard() == null) {
      d.missing(new Pointer(device.data().place(), "standard"));
    }
    if (!Promises.known(device) || device.data().residual() != null) {
      // It may have one that its standard does not tell of.
      return false;
    }
    Pointer at = new Pointer(device.data().place(), "ratedCurrentA");
    Figure rated = d.need("In", device.data().ratedCurrentA(), Unit.AMPERE, at);
    return failsAbove(rated, upper);
  }

  /** What the downstream device holds above what opens the upstream one fails for certain. */
  private boolean failsAbove(Figure holds, Figure upper) {
    boolean above =
        holds.known() && upper.known() && !Comparator.atMost(holds.value(), upper.value());
    if (above) {
      d.remark(NoteCode.UPSTREAM_OPENS, upper);
      judgement.compare(upstream.data().place(), holds, Comparator.AT_MOST, upper);
    }
    return false;
  }

  private boolean inOrder(ProtectiveDevice own, Figure upper) {
    Figure lower = operating(own);
    Figure ratio = d.constant("kΔ", Constant.SELECTIVITY_RESIDUAL_RATIO);
    Figure least = d.working().step(LEAST, ratio, lower);
    boolean apart = Comparator.AT_LEAST.holds(upper.value(), least.value());
    boolean delayed = delayed(own, lower, upper);
    if (!apart) {
      judgement.open(upstream.data().place(), upper, Comparator.AT_LEAST, least);
      Figure factor = d.constant("kn", Constant.SELECTIVITY_RESIDUAL_NON_OPERATING);
      return failsAbove(d.working().step(HOLDS, factor, lower), upper);
    }
    judgement.compare(upstream.data().place(), upper, Comparator.AT_LEAST, least);
    return delayed;
  }

  /** Whether the upstream function waits until the other has opened. */
  private boolean delayed(ProtectiveDevice own, Figure lower, Figure upper) {
    Residual residual = upstream.data().residual();
    Residual.Delay delay = residual == null ? null : residual.delay();
    String place = upstream.data().place() + "/residual";
    if (delay == null && (residual == null || residual.delayS() == null)) {
      d.missing(new Pointer(place, "delay"));
      return false;
    }
    if (delay == Residual.Delay.GENERAL) {
      return false;
    }
    if (delay == Residual.Delay.S) {
      return general(own);
    }
    Figure set = d.need("ts", residual.delayS(), Unit.SECOND, new Pointer(place, "delayS"));
    if (own.data().residual() == null || !lower.known() || !upper.known()) {
      return false;
    }
    // It may begin to operate above its non-operating current: from there on it must wait.
    Figure factor = d.constant("kn", Constant.SELECTIVITY_RESIDUAL_NON_OPERATING);
    Figure begins = d.working().step(HOLDS, factor, upper.as("IΔn"));
    Figure multiple = d.working().step(MULTIPLE, begins, lower);
    Figure latest = ResidualTime.latest(own, multiple, d);
    Comparison order =
        Comparison.of(upstream.data().place(), latest, Comparator.AT_MOST, set, null);
    if (order.verdict() == Verdict.COMPLIES) {
      judgement.add(order);
      return true;
    }
    judgement.open(order.subject(), latest, Comparator.AT_MOST, set);
    return false;
  }

  private boolean general(ProtectiveDevice own) {
    Residual residual = own.data().residual();
    Residual.Delay delay = residual == null ? null : residual.delay();
    if (delay == null && (residual == null || residual.delayS() == null)) {
      d.missing(new Pointer(own.data().place() + "/residual", "delay"));
    }
    return delay == Residual.Delay.GENERAL;
  }
}
