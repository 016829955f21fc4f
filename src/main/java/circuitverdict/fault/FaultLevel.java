package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.conductor.FeederPart;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Source;
import java.util.EnumMap;
import java.util.Map;

/**
 * What is known at a point of the paths of every kind of fault: for greatest currents with
 * conductors at 20 °C, for least ones at operating temperature (IEC 60909-0, 5.2 and 7). A kind
 * that cannot flow, or of which nothing is known, is not in it.
 */
final class FaultLevel {
  private final Map<FaultKind, PathImpedance> cold = new EnumMap<>(FaultKind.class);
  private final Map<FaultKind, PathImpedance> hot = new EnumMap<>(FaultKind.class);

  void put(PathImpedance path) {
    (path.cold() ? cold : hot).put(path.kind(), path);
  }

  /** The path of a kind of fault; null where it is not known. */
  PathImpedance path(FaultKind kind, boolean forGreatest) {
    return (forGreatest ? cold : hot).get(kind);
  }

  /** What is known at the far end of a circuit that leaves from here, as from {@code here} on. */
  FaultLevel after(Circuit feeder, LiveConductors live, Source here, Dossier d) {
    FaultLevel next = new FaultLevel();
    add(cold, FeederPart.of(feeder, live, false, d), live, here, next, d);
    add(hot, FeederPart.of(feeder, live, true, d), live, here, next, d);
    return next;
  }

  private static void add(
      Map<FaultKind, PathImpedance> paths,
      FeederPart part,
      LiveConductors live,
      Source here,
      FaultLevel next,
      Dossier d) {
    for (PathImpedance path : paths.values()) {
      PathImpedance before = path.from(here);
      switch (path.kind()) {
        case LINE, ANY -> next.put(before.plus(part.line(), part.lineX(), d));
        case EARTH -> next.put(before.plus(part.earth(), part.earthX(), d));
        case NEUTRAL -> {
          if (live.neutral()) {
            next.put(before.plus(part.neutral(), part.neutralX(), d));
          }
        }
      }
    }
  }

  /** The modulus of a path, or its bound, Ω; unknown where the path is. */
  Figure modulus(FaultKind kind, boolean forGreatest, Dossier d) {
    PathImpedance path = path(kind, forGreatest);
    return path == null
        ? Figure.unknown(kind.path(forGreatest).modulus().symbol(), Unit.OHM)
        : path.modulus(d);
  }
}
