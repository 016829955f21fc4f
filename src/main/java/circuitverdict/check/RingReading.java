package circuitverdict.check;

import circuitverdict.circuit.Cable;
import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Reading;
import circuitverdict.conductor.FeederPart;
import circuitverdict.conductor.ProtectiveConductors;
import circuitverdict.conductor.Temperature;
import circuitverdict.conductor.Wiring;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.DisconnectionTime;
import circuitverdict.fault.SupplyLoop;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import java.util.List;

/**
 * A ring's conductors read end to end (643.2.1, common practice): r1 and rn within 0.05 Ω of each
 * other, r2 within 0.05 Ω of r1 in the ratio of the sections, and none less than its length allows;
 * what does not fit is implausible and leaves the matter open. With r1 and r2 the loop at the
 * ring's worst point, (r1 + r2)/4, is held against Zs,max.
 */
final class RingReading {
  private static final Formula APART = Formula.of("Δr", Unit.OHM, "max(ra − rb; rb − ra)");
  private static final Formula FITTING = Formula.of("r2,fit", Unit.OHM, "r1·S/Sp");
  private static final Formula WHOLE = Formula.of("r,min", Unit.OHM, "4·kr·R");
  private static final Formula DESIGNED = Formula.of("r,most", Unit.OHM, "4·R + Δr,max");
  private static final Formula WITH_SPUR = Formula.of("Zs", Unit.OHM, "Zring + Rsp");
  private static final Formula LOOP = Formula.of("Zs", Unit.OHM, "Zdb + (r1 + r2)/4·Cθ");

  private final Reading reading;
  private final List<Reading> all;
  private final Circuit circuit;
  private final Judgement judgement;
  private final Dossier d;

  RingReading(Reading reading, List<Reading> all, Circuit circuit, Judgement judgement, Dossier d) {
    this.reading = reading;
    this.all = all;
    this.circuit = circuit;
    this.judgement = judgement;
    this.d = d;
  }

  Finding judge() {
    Cable cable = circuit.cable();
    if (cable.arrangement() == null) {
      d.missing(new Pointer("/cable", "arrangement"));
      return judgement.undetermined().conclude();
    }
    if (!cable.ring()) {
      return judgement.notApplicable();
    }
    judgement.by(Clause.RING);
    Figure own = read(reading);
    LiveConductors live = Wiring.live(circuit, d);
    if (!own.known() || live == null) {
      return judgement.undetermined().conclude();
    }
    if (reading.kind() != Reading.Kind.RING_R2 && belowPhysics(own, live)) {
      return judgement.undetermined().conclude();
    }
    if (reading.kind() != Reading.Kind.RING_R2 && aboveDesign(own, live)) {
      return judgement.undetermined().conclude();
    }
    return switch (reading.kind()) {
      case RING_R1 -> beside(own, Reading.Kind.RING_RN);
      case RING_RN -> beside(own, Reading.Kind.RING_R1);
      default -> protective(own, live);
    };
  }

  private Figure read(Reading each) {
    return ReadingFigure.greatest(
        symbol(each), each, each.resistanceOhm(), "resistanceOhm", Unit.OHM, d);
  }

  private static String symbol(Reading each) {
    return switch (each.kind()) {
      case RING_R1 -> "r1";
      case RING_RN -> "rn";
      default -> "r2";
    };
  }

  private Reading other(Reading.Kind kind) {
    for (Reading each : all) {
      if (each.kind() == kind && each.resistanceOhm() != null) {
        return each;
      }
    }
    d.missing(new Pointer("", "readings"));
    return null;
  }

  private boolean belowPhysics(Figure own, LiveConductors live) {
    Dossier trial = d.trial();
    Figure quarter = FeederPart.ofFirst(circuit, live, trial).line().as("R");
    Figure share = trial.constant("kr", Constant.LEAST_RESISTANCE_SHARE);
    Figure least = trial.working().step(WHOLE, share, quarter);
    boolean below = least.known() && own.value() < least.value();
    if (below) {
      d.missing(
          NoteCode.READING_IMPLAUSIBLE, new Pointer(reading.place(), "resistanceOhm"), own, least);
    }
    return below;
  }

  /** Line and neutral are the same length of the same size. */
  private Finding beside(Figure own, Reading.Kind kind) {
    Reading other = other(kind);
    if (other == null) {
      return judgement.undetermined().conclude();
    }
    Figure apart = d.working().step(APART, own.as("ra"), read(other).as("rb"));
    fits(apart);
    return judgement.conclude();
  }

  /**
   * Whether two readings agree; where not, the cause is to be found before anything is concluded.
   */
  private boolean fits(Figure apart) {
    Figure tolerance = d.constant("Δr,max", Constant.READINGS_RING_TOLERANCE);
    if (!apart.known()) {
      judgement.undetermined();
      return false;
    }
    if (Comparator.AT_MOST.holds(apart.value(), tolerance.value())) {
      judgement.compare(reading.place(), apart, Comparator.AT_MOST, tolerance);
      return true;
    }
    d.missing(
        NoteCode.READING_IMPLAUSIBLE,
        new Pointer(reading.place(), "resistanceOhm"),
        apart,
        tolerance);
    judgement.open(reading.place(), apart, Comparator.AT_MOST, tolerance);
    return false;
  }

  private Finding protective(Figure own, LiveConductors live) {
    Reading line = other(Reading.Kind.RING_R1);
    if (line == null) {
      return judgement.undetermined().conclude();
    }
    Figure r1 = read(line);
    Figure section = Wiring.lineCsa(circuit.cable(), d);
    Figure protective = ProtectiveConductors.csa(circuit.cable(), d).as("Sp");
    Figure fitting = d.working().step(FITTING, r1, section, protective);
    Figure apart = d.working().step(APART, own.as("ra"), fitting.as("rb"));
    if (!fits(apart)) {
      return judgement.conclude();
    }
    return loop(r1, own, live);
  }

  /**
   * More than the conductors of the design have, by more than readings differ: longer, or loose.
   */
  private boolean aboveDesign(Figure own, LiveConductors live) {
    Dossier trial = d.trial();
    Figure quarter = FeederPart.ofFirst(circuit, live, trial).line().as("R");
    Figure tolerance = trial.constant("Δr,max", Constant.READINGS_RING_TOLERANCE);
    Figure most = trial.working().step(DESIGNED, quarter, tolerance);
    boolean above = most.known() && own.value() > most.value();
    if (above) {
      d.missing(
          NoteCode.READING_ABOVE_DESIGN, new Pointer(reading.place(), "resistanceOhm"), own, most);
    }
    return above;
  }

  private Finding loop(Figure r1, Figure r2, LiveConductors live) {
    judgement.by(Clause.AUTOMATIC_DISCONNECTION);
    if (circuit.device() == null) {
      d.missing(At.DEVICE_ITSELF);
      return judgement.undetermined().conclude();
    }
    DisconnectionTime time = DisconnectionTime.of(circuit, d);
    Figure hot = Temperature.hottest(circuit, d);
    Figure zs = d.working().step(LOOP, SupplyLoop.earth(circuit, d), r1, r2, hot);
    FeederPart spur = FeederPart.beyondFirst(circuit, live, d);
    zs = spur == null ? zs : d.working().step(WITH_SPUR, zs.as("Zring"), spur.earth().as("Rsp"));
    MeasuredLoop.judge(reading.place(), zs, circuit, time, judgement, d);
    return judgement.conclude();
  }
}
