package circuitverdict.check;

import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.device.LetThrough;
import circuitverdict.device.Promise;
import circuitverdict.device.Promises;
import circuitverdict.device.SelectivityLimit;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;

/**
 * A current that can flow and opens the upstream device for certain (536.4.1): within a time for
 * which the downstream one certainly holds, or because that lets more energy through than melts a
 * fuse. A breaker's magnetic threshold alone is none: the downstream device may break sooner.
 */
final class UpstreamOpens {
  /** From here on a fuse melts within the time to which its pre-arcing energy belongs. */
  private static final Formula ADIABATIC = Formula.of("Io", Unit.AMPERE, "√(W/tp)");

  private final ProtectiveDevice device;
  private final ProtectiveDevice upstream;
  private final Judgement judgement;
  private final Dossier d;

  UpstreamOpens(
      ProtectiveDevice device, ProtectiveDevice upstream, Judgement judgement, Dossier d) {
    this.device = device;
    this.upstream = upstream;
    this.judgement = judgement;
    this.d = d;
  }

  /**
   * Whether it certainly opens.
   *
   * @param flows a current that can flow; unknown where none is known
   */
  boolean certainly(Promises opening, Promises holding, Figure flows) {
    for (Promise each : holding.opens()) {
      Figure held = opening.heldFor(each.timeS());
      Figure opens = each.current();
      if (exceeds(held, opens) && Comparator.AT_MOST.holds(opens.value(), flows.value())) {
        return fails(held, opens);
      }
    }
    return byEnergy(flows);
  }

  private boolean byEnergy(Figure flows) {
    Figure melts = SelectivityLimit.greatestPreArcing(upstream, d);
    if (!melts.known() || !flows.known()) {
      return false;
    }
    Figure time = d.constant("tp", Constant.SELECTIVITY_PRE_ARCING_TIME);
    Figure from = d.working().step(ADIABATIC, melts.as("W"), time);
    if (!Comparator.atMost(from.value(), flows.value())) {
      return false;
    }
    Figure least = LetThrough.of(device, d).over(from, flows).least();
    return exceeds(least, melts) && fails(least, melts);
  }

  private static boolean exceeds(Figure actual, Figure limit) {
    return actual.known() && limit.known() && !Comparator.atMost(actual.value(), limit.value());
  }

  private boolean fails(Figure actual, Figure limit) {
    d.remark(NoteCode.UPSTREAM_OPENS, limit);
    judgement.compare(upstream.data().place(), actual, Comparator.AT_MOST, limit);
    return true;
  }
}
