package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.conductor.Coordination;
import circuitverdict.conductor.CurrentRating;
import circuitverdict.conductor.DesignCurrent;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.AgainstOverload;
import circuitverdict.device.RatedCurrent;
import circuitverdict.explain.At;
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
 * Conductor rating (523, Appendix 4): the tabulated rating against the one required, In/(n·F·Cc),
 * with Cc 0.725 for BS 3036 and 0.9 in the ground; Ib/(n·F) where nothing owes protection against
 * overload (433.3.1); the least sizes of Table 52.3, and that of the neutral (524.2.1).
 */
public final class ConductorRating implements Check {
  private static final Formula REQUIRED = Formula.of("It,req", Unit.AMPERE, "In/(n·F·Cc)");
  private static final Formula CARRIED = Formula.of("It,req", Unit.AMPERE, "Ib/(n·F)");
  private static final Formula LEG = Formula.of("It,req", Unit.AMPERE, "Iz,min/(n·F)");
  private static final Formula BOTH = Formula.of("Cc", Unit.ONE, "cr·cb");

  @Override
  public CheckName name() {
    return CheckName.CONDUCTOR_RATING;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement =
        new Judgement(name(), circuit, d, "/cable").by(Clause.RATING).by(Clause.RATING_APPENDIX);
    LiveConductors live = Wiring.live(circuit, d);
    ProtectiveDevice device = circuit.device();
    Figure rated = device == null ? Figure.unknown("In", Unit.AMPERE) : RatedCurrent.of(device, d);
    if (device == null) {
      d.missing(At.DEVICE_ITSELF);
    }
    boolean described = device != null && device.data().standard() != null;
    boolean limits = described && Boolean.TRUE.equals(AgainstOverload.of(device, d));
    if (limits) {
      AgainstOverload.noted(device, d);
    }
    for (Cable cable : Wiring.cables(circuit)) {
      if (cable.terminalTemperatureC() == null && "thermosetting-90".equals(cable.insulation())) {
        judgement.by(Clause.TERMINALS);
      }
      CurrentRating rating = CurrentRating.of(circuit, cable, live, d);
      if (described && !limits) {
        byLoad(circuit, cable, live, rating, judgement, d);
      } else {
        Figure required =
            described
                ? required(circuit, cable, live, rated, rating, d)
                : Figure.unknown("It,req", Unit.AMPERE);
        judgement.compare(cable.place(), required, Comparator.AT_MOST, rating.tabulated());
      }
      leastSize(circuit, cable, judgement, d);
      neutralSize(cable, live, judgement, d);
    }
    return judgement.conclude();
  }

  private static Figure required(
      Circuit circuit,
      Cable cable,
      LiveConductors live,
      Figure rated,
      CurrentRating rating,
      Dossier d) {
    Figure design = DesignCurrent.of(circuit, live, d);
    Coordination coordination = Coordination.of(circuit, cable, live, design, rated, d);
    return switch (coordination.rule()) {
      case RING, SPUR ->
          d.working().step(LEG, coordination.demanded(), rating.count(), rating.factors());
      case OMITTED -> {
        // The rating that In demands serves whatever the load; only where it lacks does Ib decide.
        Figure whole = byDevice(circuit, cable, rated, rating, d);
        yield Comparator.atMost(whole.value(), rating.tabulated().value())
            ? whole
            : d.working().step(CARRIED, design, rating.count(), rating.factors());
      }
      case RATING -> byDevice(circuit, cable, rated, rating, d);
    };
  }

  /**
   * Behind a device that knows no overload In says nothing of what the conductor carries. Ib it
   * must carry in any case, but for the leg of a ring, which carries a part of it; where the load
   * can overload, how much more is set by a device that is not described.
   */
  private static void byLoad(
      Circuit circuit,
      Cable cable,
      LiveConductors live,
      CurrentRating rating,
      Judgement judgement,
      Dossier d) {
    Figure design = DesignCurrent.of(circuit, live, d);
    Figure carried = d.working().step(CARRIED, design, rating.count(), rating.factors());
    if (Coordination.byLoadAlone(circuit, AgainstOverload.of(circuit.device(), d))) {
      judgement.by(Clause.OVERLOAD_OMISSION);
      d.remark(NoteCode.OVERLOAD_OMITTED);
      judgement.compare(cable.place(), carried, Comparator.AT_MOST, rating.tabulated());
      return;
    }
    AgainstOverload.noted(circuit.device(), d);
    if (!circuit.cable().ring()) {
      judgement.atBest(cable.place(), carried, Comparator.AT_MOST, rating.tabulated());
    }
    judgement.undetermined();
  }

  private static Figure byDevice(
      Circuit circuit, Cable cable, Figure rated, CurrentRating rating, Dossier d) {
    Figure factor = deviceFactor(circuit, cable, d);
    return d.working().step(REQUIRED, rated, rating.count(), rating.factors(), factor);
  }

  /** Cc: by the device, and by the ground. */
  private static Figure deviceFactor(Circuit circuit, Cable cable, Dossier d) {
    boolean rewireable = "BS 3036".equals(circuit.device().data().standard());
    boolean buried = cable.installation().buried();
    if (rewireable && buried) {
      return d.working()
          .step(
              BOTH,
              d.constant("cr", Constant.OVERLOAD_FACTORS_REWIREABLE),
              d.constant("cb", Constant.OVERLOAD_FACTORS_BURIED));
    }
    if (rewireable || buried) {
      return d.working()
          .look(
              d.constant(
                  "Cc",
                  rewireable
                      ? Constant.OVERLOAD_FACTORS_REWIREABLE
                      : Constant.OVERLOAD_FACTORS_BURIED));
    }
    return Figure.derived("Cc", 1, Unit.ONE);
  }

  /** On one line the neutral carries all that the line does: it is no smaller (524.2.1). */
  private static void neutralSize(
      Cable cable, LiveConductors live, Judgement judgement, Dossier d) {
    Figure neutral =
        d.given(
            "Sn",
            cable.neutralCsaMm2(),
            Unit.SQUARE_MM,
            new Pointer(cable.place(), "neutralCsaMm2"));
    boolean oneLine = live != null && live.lines() == 1;
    if (!oneLine || !neutral.known() || cable.lineCsaMm2() == null) {
      return;
    }
    Figure line = Wiring.lineCsa(cable, d);
    if (!Comparator.atMost(line.value(), neutral.value())) {
      judgement.by(Clause.NEUTRAL_SIZE);
      judgement.compare(cable.place(), neutral, Comparator.AT_LEAST, line);
      judgement.certain();
    }
  }

  /** Table 52.3; where the use is not stated the stricter size decides if it is met. */
  private static void leastSize(Circuit circuit, Cable cable, Judgement judgement, Dossier d) {
    if (cable.construction() == Cable.Construction.FLEXIBLE) {
      // Table 52.3 leaves flexible cables to the standard of what they feed.
      return;
    }
    judgement.by(Clause.LEAST_SIZE);
    Figure size = Wiring.lineCsa(cable, d);
    Figure power = d.constant("S,min", Constant.LEAST_LINE_SIZE_POWER);
    Figure lighting = d.constant("S,min", Constant.LEAST_LINE_SIZE_LIGHTING);
    Load.Use use = circuit.load().use();
    if (use == null && size.known() && !Comparator.atMost(power.value(), size.value())) {
      judgement.atBest(cable.place(), size, Comparator.AT_LEAST, lighting);
      d.missing(At.LOAD_USE);
      judgement.open(cable.place(), size, Comparator.AT_LEAST, power);
      return;
    }
    judgement.compare(
        cable.place(), size, Comparator.AT_LEAST, use == Load.Use.LIGHTING ? lighting : power);
  }
}
