package circuitverdict.device;

import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * Conventional currents and gates of fuses (IEC 60269-1). Only of gG fuse-links to BS 88-2 is it
 * known how long they hold at least.
 */
final class FusePromises {
  private static final Formula AT_ONCE = Formula.of("Ia", Unit.AMPERE, "√(Ip²·tp/t)");
  private static final String BS_88_2 = "BS 88-2";

  private FusePromises() {}

  static Promises of(Fuse fuse, boolean upstream, Dossier d) {
    Figure rated = RatedCurrent.of(fuse, d);
    boolean general = Boolean.TRUE.equals(GeneralPurpose.noted(fuse, d));
    Figure unknown = Figure.unknown("I", Unit.AMPERE);
    double atOnceS = d.edition().constant(Constant.BREAKER_TESTS_INSTANTANEOUS).number();
    if (!general || !rated.known()) {
      return new Promises(
          unknown, unknown, unknown, null, new Promise(unknown, atOnceS), List.of(), List.of());
    }
    Figure carried = ConventionalCurrent.carried(fuse, rated, d);
    Figure operated = ConventionalCurrent.of(fuse, rated, d);
    List<Promise> opens = new ArrayList<>(4);
    for (FuseTimes.Point point : FuseTimes.points(fuse, rated.value(), d.edition())) {
      opens.add(new Promise(point.current(), point.timeS()));
    }
    opens.sort((a, b) -> Double.compare(b.timeS(), a.timeS()));
    List<Promise> holds = upstream || carried.known() ? holds(fuse, carried, rated, d) : List.of();
    if (upstream && holds.isEmpty()) {
      boolean listed = BS_88_2.equals(fuse.data().standard());
      d.missing(
          NoteCode.NOT_IN_TABLES,
          new Pointer(fuse.data().place(), listed ? "ratedCurrentA" : "standard"));
    }
    Figure atOnce = atOnce(fuse, opens, atOnceS, d);
    return new Promises(
        carried, operated, unknown, null, new Promise(atOnce, atOnceS), opens, holds);
  }

  private static List<Promise> holds(Fuse fuse, Figure carried, Figure rated, Dossier d) {
    List<Promise> holds = new ArrayList<>(3);
    if (!BS_88_2.equals(fuse.data().standard())) {
      return holds;
    }
    Table gates = d.edition().table(TableName.FUSE_GATES);
    add(holds, gates.at("least-10", rated.value()), FuseTimes.GATE_LONG);
    add(holds, gates.at("least-0.1", rated.value()), FuseTimes.GATE_SHORT);
    if (!holds.isEmpty() && carried.known()) {
      holds.add(0, new Promise(carried, Double.POSITIVE_INFINITY));
    }
    return holds;
  }

  private static void add(List<Promise> holds, Value current, double timeS) {
    if (current != null) {
      holds.add(new Promise(Figure.of("Ih", current), timeS));
    }
  }

  /** The gate of this time, else the current at which the energy of a known point takes as long. */
  private static Figure atOnce(Fuse fuse, List<Promise> opens, double withinS, Dossier d) {
    Figure least = Figure.unknown("Ia", Unit.AMPERE);
    if ("BS 3036".equals(fuse.data().standard())) {
      return least;
    }
    for (Promise each : opens) {
      Figure found = each.current().as("Ia");
      if (each.timeS() > withinS) {
        Figure point = new Figure("tp", each.timeS(), Unit.SECOND, each.current().source());
        Figure time = d.constant("t", Constant.BREAKER_TESTS_INSTANTANEOUS);
        found = d.working().step(AT_ONCE, each.current().as("Ip"), point, time);
      }
      least = Figure.lesser(found, least);
    }
    return least;
  }
}
