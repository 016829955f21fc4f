package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.DrawnOrder;
import circuitverdict.device.Promises;
import circuitverdict.device.SelectivityLimit;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Note;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.GreatestCurrent;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;

/**
 * Overload and short circuit (536.4.1). Promised times and energies of the two standards prove
 * selectivity up to a current, a limit declared by the maker likewise. Usual practice, guidance,
 * goes further: the conventional currents in order, and the upstream device's lowest threshold.
 * Nothing shown is no failure: that needs a current at which the upstream device opens for certain.
 */
final class OvercurrentSelectivity {
  private static final Pointer COMBINATION = new Pointer("/backUp", "combinationRatingA");

  private final Circuit circuit;
  private final ProtectiveDevice device;
  private final ProtectiveDevice upstream;
  private final LiveConductors live;
  private final Judgement judgement;
  private final Dossier d;

  OvercurrentSelectivity(Circuit circuit, Judgement judgement, Dossier d) {
    this.circuit = circuit;
    this.device = circuit.device();
    this.upstream = circuit.upstreamDevice();
    this.live = LiveConductors.of(circuit);
    this.judgement = judgement;
    this.d = d;
  }

  void judge() {
    Promises opening = Promises.ofDownstream(device, d);
    Promises holding = Promises.ofUpstream(upstream, d);
    boolean stated = nothingAsked();
    Figure current = GreatestCurrent.ofWay(circuit, live, device.data().poles(), d);
    if (BreakingCapacity.beyondVoltage(circuit, d)
        || ContradictedCurrent.byLoops(circuit, live, current, d)) {
      judgement.undetermined();
      return;
    }
    Figure flows = flows(current);
    if (new UpstreamOpens(device, upstream, judgement, d).certainly(opening, holding, flows)) {
      return;
    }
    Figure declared = SelectivityLimit.declared(device, upstream);
    Figure capacity = BreakingCapacity.of(device, d);
    SelectivityLimit limit = new SelectivityLimit(device, upstream, opening, holding, capacity, d);
    Figure proved = limit.proved();
    if (declared.known()) {
      byMaker(declared, proved, current, capacity, stated);
    } else if (Comparator.AT_MOST.holds(current.value(), proved.value())) {
      energies(limit.energies(current, true));
      shown(opening, holding);
      conclude(current, proved, true);
    } else {
      byPractice(limit, opening, holding, proved, current);
    }
  }

  /** A current that can flow in this way for certain; unknown where only others are stated. */
  private Figure flows(Figure current) {
    return GreatestCurrent.heldByAnyKind(circuit, live).isEmpty()
        ? current
        : GreatestCurrent.stated(circuit, live, d);
  }

  /**
   * Whether all that is needed of the two devices is stated; what tables lack is another matter.
   */
  private boolean nothingAsked() {
    for (Note note : d.missing()) {
      if (note.code() == NoteCode.MISSING_INPUT) {
        return false;
      }
    }
    return true;
  }

  /**
   * What the maker declares of the pair; where it is more, what is proved besides. It is declared
   * of the two as rated and set, so that must be stated: else they may be another pair, and one
   * that fails. Above its own breaking capacity only a declared combination lets the device be the
   * one that opens.
   */
  private void byMaker(
      Figure declared, Figure proved, Figure current, Figure capacity, boolean stated) {
    d.remark(NoteCode.DECLARED_SELECTIVITY, declared);
    Figure breaks = Figure.greater(capacity, combination());
    Figure within = Figure.lesser(declared, breaks);
    conclude(current, Figure.greater(within, proved), true);
    if (!stated || !breaks.known()) {
      judgement.undetermined();
    }
  }

  private Figure combination() {
    return circuit.backUp().evidence() == null
        ? Figure.unknown("Is", Unit.AMPERE)
        : d.given("Is", circuit.backUp().combinationRatingA(), Unit.AMPERE, COMBINATION);
  }

  /** The conventional currents, for the record: what is proved does not rest on them. */
  private void shown(Promises opening, Promises holding) {
    judgement.show(of(opening.operated(), holding.carried()));
  }

  private void byPractice(
      SelectivityLimit limit, Promises opening, Promises holding, Figure proved, Figure current) {
    boolean carried = inOrder(of(opening.operated(), holding.carried()));
    Figure threshold = holding.thresholdFor(opening.atOnce());
    boolean held =
        inOrder(of(opening.atOnce().current(), threshold)) && drawnInOrder(opening, holding);
    Figure best = carried && held ? Figure.greater(limit.byGuidance(), proved) : proved;
    if (Comparator.AT_MOST.holds(current.value(), best.value())) {
      d.restsOn(Dossier.Strength.GUIDANCE);
      energies(limit.energies(current, false));
    }
    conclude(current, best, carried && held);
  }

  /** In the thermal zone before a fuse; a breaker to IEC 60947-2 has no drawn curve. */
  private boolean drawnInOrder(Promises opening, Promises holding) {
    if (!(upstream instanceof Fuse) || device instanceof Fuse) {
      return true;
    }
    DrawnOrder closest =
        device instanceof Breaker breaker ? DrawnOrder.closest(breaker, opening, holding, d) : null;
    return closest != null && inOrder(of(closest.opens(), closest.holds()));
  }

  private Comparison of(Figure actual, Figure limit) {
    return Comparison.of(upstream.data().place(), actual, Comparator.AT_MOST, limit, null);
  }

  /** Keeps what holds; what does not leaves the matter open, since neither need open there. */
  private boolean inOrder(Comparison order) {
    if (order.verdict() == Verdict.COMPLIES) {
      judgement.add(order);
      return true;
    }
    judgement.open(order.subject(), order.actual(), order.comparator(), order.limit());
    return false;
  }

  private void energies(SelectivityLimit.Energies energies) {
    if (energies != null) {
      judgement.compare(
          upstream.data().place(), energies.greatest(), Comparator.AT_MOST, energies.least());
    }
  }

  private void conclude(Figure current, Figure limit, boolean onOverload) {
    boolean holds = Comparator.AT_MOST.holds(current.value(), limit.value());
    Figure shown = limit.as("Is");
    judgement.lead(device.data().place(), current, Comparator.AT_MOST, shown, holds);
    if (!holds) {
      d.missing(
          NoteCode.SELECTIVITY_DATA_NEEDED, new Pointer(device.data().place(), "selectivity"));
    }
    d.remark(onOverload ? NoteCode.SELECTIVE_ON_OVERLOAD : NoteCode.NOT_SELECTIVE_ON_OVERLOAD);
    if (holds) {
      d.remark(NoteCode.FULL_SELECTIVITY, shown);
    } else if (limit.value() > 0) {
      d.remark(NoteCode.PARTIAL_SELECTIVITY, shown);
    } else {
      d.remark(NoteCode.NO_SELECTIVITY);
    }
  }
}
