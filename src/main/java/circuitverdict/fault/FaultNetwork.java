package circuitverdict.fault;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Feeder;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.NominalVoltage;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.explain.Working;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Fault currents and loops at every point of a tree of circuits, from the source to the far ends
 * (IEC 60909-0). What is found at a point is what the circuits that leave from it start with.
 */
public final class FaultNetwork {
  /**
   * A point and what is known there.
   *
   * @param at the member of the request at whose end it lies: the supply, or a cable
   * @param reference the caller's name for the circuit that ends there; null where there is none
   * @param live live conductors there
   * @param currents fault currents and loops
   * @param dossier working, assumptions and what is missing, since the point before
   */
  public record Point(
      Pointer at, String reference, LiveConductors live, PointCurrents currents, Dossier dossier) {}

  private final Circuit root;
  private final Edition edition;
  private final Allowance allowance;
  private final boolean explain;
  private final List<Point> points = new ArrayList<>();

  private FaultNetwork(Circuit root, Edition edition, Allowance allowance, boolean explain) {
    this.root = root;
    this.edition = edition;
    this.allowance = allowance;
    this.explain = explain;
  }

  /** Every point, the source first, each circuit before those that it feeds. */
  public static List<Point> points(
      Circuit root, List<Feeder> feeders, Edition edition, Allowance allowance, boolean explain) {
    FaultNetwork network = new FaultNetwork(root, edition, allowance, explain);
    network.follow(feeders);
    return network.points;
  }

  private void follow(List<Feeder> feeders) {
    Dossier d = dossier();
    VoltageFactors factors = VoltageFactors.of(root.supply(), d);
    Integer phases = root.supply().phases();
    if (phases == null) {
      d.missing(At.PHASES);
    }
    Double frequency = root.supply().frequencyHz();
    if (frequency != null && frequency != edition.constant(Constant.FREQUENCY).number()) {
      d.missing(NoteCode.NOT_IN_TABLES, new Pointer(At.SUPPLY, "frequencyHz"));
    }
    if (Boolean.TRUE.equals(root.supply().localGeneration())) {
      d.missing(NoteCode.GENERATION_NOT_COUNTED, At.LOCAL_GENERATION);
    }
    boolean single = phases != null && phases == 1;
    LiveConductors live = new LiveConductors(single ? 1 : 3, true);
    FaultLevel level = FaultSource.of(root, factors, d);
    Pointer here = new Pointer("", "supply");
    points.add(new Point(here, null, live, currents(level, live, factors, d), d));
    for (Feeder feeder : feeders) {
      follow(feeder, level, live, here);
    }
  }

  private void follow(Feeder feeder, FaultLevel before, LiveConductors fed, Pointer from) {
    Dossier d = dossier();
    Circuit circuit = feeder.circuit();
    LiveConductors live = circuit.live();
    if (live == null) {
      d.assume(NoteCode.ASSUMED_LIVE_AS_FED, new Pointer(feeder.place(), "liveConductors"));
      live = fed;
    }
    FaultLevel level = before.after(circuit, live, from, d);
    Pointer here = new Pointer(feeder.place(), "cable");
    VoltageFactors factors = VoltageFactors.of(root.supply(), d);
    PointCurrents currents = currents(level, live, factors, d);
    points.add(new Point(here, feeder.reference(), live, currents, d));
    for (Feeder next : feeder.feeds()) {
      follow(next, level, live, here);
    }
  }

  private PointCurrents currents(
      FaultLevel level, LiveConductors live, VoltageFactors factors, Dossier d) {
    Supply supply = root.supply();
    boolean tn = supply.earthing() != null && supply.earthing().tn();
    Figure lineToEarth = NominalVoltage.lineToEarth(root, d);
    Figure betweenLines = NominalVoltage.betweenLines(lineToEarth, d);
    return PointCurrents.of(
        level, live, tn, accounted(supply), factors, lineToEarth, betweenLines, d);
  }

  /** Whether the stated greatest current of any kind is that of a kind that is stated too. */
  private static boolean accounted(Supply supply) {
    Double any = supply.maximumFaultCurrentA();
    Supply.FaultCurrents kinds = supply.faultCurrents();
    return any != null
        && Stream.of(
                kinds.threePhaseA(),
                kinds.twoPhaseA(),
                kinds.lineToNeutralA(),
                kinds.lineToEarthA())
            .anyMatch(kind -> kind != null && kind >= any);
  }

  private Dossier dossier() {
    return new Dossier(edition, allowance, explain ? Working.recording() : Working.silent());
  }
}
