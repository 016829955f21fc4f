package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.LoopPart;
import circuitverdict.device.OperatingCurrent;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.DisconnectionTime;
import circuitverdict.fault.EarthElectrode;
import circuitverdict.fault.FaultLoop;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.fault.LoopLimit;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Value;

/**
 * Disconnection by a residual device: in TT RA·IΔn ≤ 50 V with RA the electrode and the protective
 * conductors at operating temperature (411.5.3), Zs where the electrode is not known; in TN Zs ≤ 50
 * V/IΔn; and its break time at the least residual fault current.
 */
final class ResidualDisconnection {
  private static final Formula EXPOSED = Formula.of("RA", Unit.OHM, "Re + R2");
  private static final Formula MULTIPLE = Formula.of("mΔ", Unit.ONE, "Ief,min/IΔn");

  private final Circuit circuit;
  private final ProtectiveDevice device;
  private final LiveConductors live;
  private final FaultLoop loop;
  private final DisconnectionTime time;
  private final Dossier d;

  ResidualDisconnection(
      Circuit circuit,
      ProtectiveDevice device,
      LiveConductors live,
      FaultLoop loop,
      DisconnectionTime time,
      Dossier d) {
    this.circuit = circuit;
    this.device = device;
    this.live = live;
    this.loop = loop;
    this.time = time;
    this.d = d;
  }

  void judge(Judgement judgement) {
    Pointer at = new Pointer(device.data().place() + "/residual", "operatingCurrentA");
    Figure operating = d.need("IΔn", device.data().residual().operatingCurrentA(), Unit.AMPERE, at);
    LoopLimit limit = LoopLimit.ofResidual(operating, d);
    Figure path = path();
    Verdict verdict =
        judgement.compare(
            "/cable",
            path,
            Comparator.AT_MOST,
            limit.impedance().as(limitSymbol(path)),
            limit.printed());
    if (verdict == Verdict.DOES_NOT_COMPLY && admits(limit.printed(), path)) {
      d.remark(NoteCode.PRINTED_VALUE_ADMITS);
    }
    Figure multiple = multiple(operating);
    judgement.tell(multiple);
    Figure once = Figure.derived("1", 1, Unit.ONE);
    if (multiple.known() && !Comparator.AT_LEAST.holds(multiple.value(), once.value())) {
      judgement.compare(device.data().place(), multiple, Comparator.AT_LEAST, once);
      return;
    }
    Figure breakTime = ResidualTime.latest(device, multiple, d);
    boolean open = time.strictest().value() != time.mildest().value();
    boolean strict = Comparator.AT_MOST.holds(breakTime.value(), time.strictest().value());
    if (open && !strict && Comparator.AT_MOST.holds(breakTime.value(), time.mildest().value())) {
      d.missing(At.CONNECTION);
      judgement.open(device.data().place(), breakTime, Comparator.AT_MOST, time.strictest());
      return;
    }
    Figure allowed = strict ? time.strictest() : time.mildest();
    judgement.compare(device.data().place(), breakTime, Comparator.AT_MOST, allowed);
    withinWhatItBreaks(judgement);
  }

  /**
   * What it breaks must reach up to where the overcurrent device takes over, or to the greatest
   * earth fault current: between the two nothing would be promised.
   */
  private void withinWhatItBreaks(Judgement judgement) {
    Figure breaks = ResidualTime.breaks(device, d);
    Figure takesOver =
        time.strictest().known()
            ? OperatingCurrent.within(circuit.device(), time.strictest().value(), d).current()
            : Figure.unknown("Ia", Unit.AMPERE);
    if (takesOver.known() && Comparator.AT_MOST.holds(takesOver.value(), breaks.value())) {
      judgement.compare(device.data().place(), takesOver, Comparator.AT_MOST, breaks);
      return;
    }
    if (!breaks.known()) {
      d.missing(new Pointer(device.data().place(), "breakingCapacityA"));
    }
    Figure greatest = GreatestCurrent.toEarth(circuit, d);
    if (ResidualTime.breaksAtLeast(device)
        && !Comparator.AT_MOST.holds(greatest.value(), breaks.value())) {
      d.missing(new Pointer(device.data().place(), "residualMakingBreakingA"));
      judgement.open(device.data().place(), greatest, Comparator.AT_MOST, breaks);
      return;
    }
    judgement.compare(device.data().place(), greatest, Comparator.AT_MOST, breaks);
  }

  private static boolean admits(Value printed, Figure path) {
    return printed != null && Comparator.atMost(path.value(), printed.number());
  }

  private String limitSymbol(Figure path) {
    return path.symbol() + ",max";
  }

  /** RA in TT where the electrode is known, else the whole loop. */
  private Figure path() {
    Supply supply = circuit.supply();
    if (supply.earthing().tn() || supply.earthElectrodeResistanceOhm() == null) {
      return loop.impedance();
    }
    Figure earth = EarthElectrode.greatest(supply, d);
    return d.working().step(EXPOSED, earth, LoopPart.protective(circuit, live, d));
  }

  /** The least fault current as a multiple of IΔn. */
  private Figure multiple(Figure operating) {
    return d.working().step(MULTIPLE, loop.leastCurrent(circuit, d), operating);
  }
}
