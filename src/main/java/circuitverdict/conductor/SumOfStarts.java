package circuitverdict.conductor;

import circuitverdict.circuit.Load;
import circuitverdict.conductor.LoadStart.Held;
import circuitverdict.conductor.LoadStart.Kind;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * The start of a mixed load: all parts at once, as when the supply returns, for as long as the
 * longest of them. Beside longer starts a pulse counts with its running current in the thermal
 * zone, and with its peak in the magnetic one.
 */
final class SumOfStarts {
  private static final Formula CURRENTS = Formula.of("Ist", Unit.AMPERE, "Isum + Ipart");
  private static final Formula PEAKS = Formula.of("ip", Unit.AMPERE, "isum + ipart");
  private static final Formula ENERGY = Formula.of("I²t", Unit.AMPERE_SQUARED_SECOND, "ip²·tst");

  private final Dossier d;
  private final List<Held> held = new ArrayList<>();
  private Kind kind = Kind.STEADY;
  private boolean offset;
  private Figure duration = Figure.unknown("tst", Unit.SECOND);

  SumOfStarts(Dossier d) {
    this.d = d;
  }

  LoadStart of(List<Load> parts, String place, StartOfLoad each) {
    List<LoadStart> starts = new ArrayList<>();
    boolean known = true;
    for (int i = 0; i < parts.size(); i++) {
      LoadStart start = each.of(parts.get(i), place + "/parts/" + i);
      starts.add(start);
      held.addAll(start.held());
      known &= start.kind() != Kind.UNKNOWN;
      offset |= start.offset();
      kind = longer(kind, start.kind());
      if (start.duration().known()) {
        duration = Figure.greater(start.duration(), duration);
      }
    }
    return known ? sum(starts, parts, place, each) : unknown();
  }

  private LoadStart unknown() {
    LoadStart none = LoadStart.UNKNOWN;
    return new LoadStart(
        none.kind(),
        none.current(),
        none.duration(),
        none.peak(),
        none.guided(),
        offset,
        none.energy(),
        held);
  }

  private LoadStart sum(List<LoadStart> starts, List<Load> parts, String place, StartOfLoad each) {
    Figure current = Figure.derived("Ist", 0, Unit.AMPERE);
    Figure peak = Figure.derived("ip", 0, Unit.AMPERE);
    Figure guided = current;
    for (int i = 0; i < starts.size(); i++) {
      LoadStart start = starts.get(i);
      boolean beside = start.kind() == Kind.PULSE && kind == Kind.LASTING;
      Figure own = beside ? each.running(parts.get(i), place + "/parts/" + i) : start.current();
      current = plus(CURRENTS, current.as("Isum"), own.as("Ipart"));
      peak = plus(PEAKS, peak.as("isum"), start.peak().as("ipart"));
      guided = plus(CURRENTS, guided.as("Isum"), start.guided().as("Ipart"));
    }
    Figure energy =
        kind == Kind.PULSE ? d.working().step(ENERGY, peak, duration) : LoadStart.UNKNOWN.energy();
    return new LoadStart(kind, current, duration, peak, guided, offset, energy, held);
  }

  private Figure plus(Formula sum, Figure first, Figure second) {
    return d.working().step(sum, first, second);
  }

  private static Kind longer(Kind a, Kind b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
