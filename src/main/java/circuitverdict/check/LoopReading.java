package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Reading;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.FeederPart;
import circuitverdict.conductor.Temperature;
import circuitverdict.conductor.Wiring;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.DisconnectionTime;
import circuitverdict.fault.FaultLoop;
import circuitverdict.fault.LoopLimit;
import circuitverdict.fault.SupplyLoop;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import java.util.List;

/**
 * An earth fault loop impedance as read (411.4.4, Appendix 3). At the origin against what the
 * design rests on. At the far end: with the conductors' temperature stated, brought to operating
 * temperature and held against Zs,max; without it, complying within 0.8 of that, and above it
 * decided by Ze and the rest brought to operating temperature. Never both, and never a failure on
 * 0.8 alone.
 */
final class LoopReading {
  private static final String RESISTANCE = "resistanceOhm";
  private static final Formula PART = Formula.of("ΔZ", Unit.OHM, "max(Zm − Ze; 0)");
  private static final Formula HOT = Formula.of("Zs", Unit.OHM, "Ze + ΔZ·Cθ");
  private static final Formula ALL = Formula.of("Zs", Unit.OHM, "Zm·Cθ");
  private static final Formula BY_PARTS = Formula.of("Zs", Unit.OHM, "Zdb + Rm·Cθ");
  private static final Formula ALLOWED = Formula.of("Zs,read", Unit.OHM, "c·Zs,max");
  private static final Formula LEAST_OUTSIDE = Formula.of("Ze", Unit.OHM, "Zm·(1 − u/100)");
  private static final Formula LEAST_LINE = Formula.of("R1,min", Unit.OHM, "kr·R1");
  private static final Formula BOARD_HOT = Formula.of("Zdb", Unit.OHM, "Zm·Chot");
  private static final Formula EXPECTED = Formula.of("Zs,20", Unit.OHM, "Zread + kr·R1R2,20");

  private final Reading reading;
  private final List<Reading> all;
  private final Circuit circuit;
  private final Judgement judgement;
  private final Dossier d;

  LoopReading(Reading reading, List<Reading> all, Circuit circuit, Judgement judgement, Dossier d) {
    this.reading = reading;
    this.all = all;
    this.circuit = circuit;
    this.judgement = judgement;
    this.d = d;
  }

  Finding judge() {
    if (!reading.lineToProtective()) {
      d.missing(NoteCode.READING_NOT_JUDGED, new Pointer(reading.place(), "between"));
      return judgement.undetermined().conclude();
    }
    Figure read =
        ReadingFigure.greatest("Zm", reading, reading.resistanceOhm(), RESISTANCE, Unit.OHM, d);
    judgement.by(Clause.AUTOMATIC_DISCONNECTION);
    if (reading.atOrigin() || reading.atBoard()) {
      return beforeTheCircuit(read);
    }
    judgement.by(Clause.MEASURED_READINGS);
    if (circuit.device() == null) {
      d.missing(At.DEVICE_ITSELF);
      return judgement.undetermined().conclude();
    }
    DisconnectionTime time = DisconnectionTime.of(circuit, d);
    LoopLimit limit = LoopLimit.within(circuit, time.strictest(), d);
    Figure allowed =
        d.working().step(ALLOWED, d.constant("c", Constant.COLD_READING), limit.impedance());
    boolean cold = reading.conductorTemperatureC() == null;
    if (implausible(read)) {
      return judgement.undetermined().conclude();
    }
    if (cold && coveredByShare() && Comparator.AT_MOST.holds(read.value(), allowed.value())) {
      better(read);
      judgement.compare(reading.place(), read, Comparator.AT_MOST, allowed);
      return judgement.conclude();
    }
    return byOperatingTemperature(read, time, cold);
  }

  /** Whether 0.8 leaves room for the conductors' heating: of 90 °C, 1.28 times, it does not. */
  private boolean coveredByShare() {
    Figure factor = Temperature.hottest(circuit, d);
    double share = d.edition().constant(Constant.COLD_READING).number();
    return factor.known() && Comparator.atMost(share * factor.value(), 1);
  }

  /**
   * Ze, or Zdb: no greater than the design took it to be. A design's loop at a board is that of hot
   * conductors, unless it is a reading too.
   */
  private Finding beforeTheCircuit(Figure read) {
    Supply supply = circuit.supply();
    boolean fedAtOrigin = supply.point() == Supply.Point.ORIGIN;
    if (reading.atOrigin()) {
      Figure designed =
          fedAtOrigin
              ? d.need("Ze", supply.loopImpedanceOhm(), Unit.OHM, At.LOOP)
              : d.need("Ze", supply.originLoopImpedanceOhm(), Unit.OHM, At.ORIGIN_LOOP);
      judgement.compare(reading.place(), read, Comparator.AT_MOST, designed);
      return judgement.conclude();
    }
    Figure designed = d.need("Zdb,d", supply.loopImpedanceOhm(), Unit.OHM, At.LOOP);
    boolean both = fedAtOrigin || supply.basis() == Supply.Basis.MEASURED_COLD;
    Figure actual =
        both
            ? read
            : d.working().step(BOARD_HOT, read, d.constant("Chot", Constant.COLD_LOOP_CORRECTION));
    judgement.compare(reading.place(), actual, Comparator.AT_MOST, designed);
    return judgement.conclude();
  }

  /**
   * Beyond Ze it is brought to operating temperature. Ze as read tells how much that is; a stated
   * one may be more than there is, so that without a reading all of it is corrected, and only what
   * fails whatever Ze is fails. R1 + R2 as read may show less.
   */
  private Finding byOperatingTemperature(Figure read, DisconnectionTime time, boolean cold) {
    better(read);
    LoopLimit known = LoopLimit.within(circuit, time.strictest(), d);
    if (cold && known.impedance().known()) {
      d.remark(NoteCode.READING_NOT_FAILURE, read);
    }
    Figure factor = ReadingTemperature.factor(reading, factor(), d);
    Figure outside = outside();
    if (outside.known()) {
      Figure part = d.working().step(PART, read, outside);
      Figure zs = d.working().step(HOT, outside, part, factor);
      MeasuredLoop.judge(reading.place(), zs, circuit, time, judgement, d);
      return judgement.conclude();
    }
    Figure all = d.working().step(ALL, read, factor);
    Figure stated = stated(d);
    Figure least =
        stated.known()
            ? d.working().step(HOT, stated, d.working().step(PART, read, stated), factor)
            : read.as("Zs");
    Figure parts = byContinuity();
    // Parts that come to less than the loop as read are of another circuit, or wrong.
    boolean fits = parts.known() && parts.value() >= least.value();
    Figure most = fits ? Figure.lesser(all, parts) : all;
    MeasuredLoop.judge(reading.place(), least, most, circuit, time, judgement, d);
    return judgement.conclude();
  }

  /** Ze and R1 + R2, where that was read: another way to the same loop. */
  private Figure byContinuity() {
    for (Reading each : all) {
      boolean both = each.kind() == Reading.Kind.R1_PLUS_R2 && each.lineToProtective();
      if (both && each.resistanceOhm() != null) {
        Figure read =
            ReadingFigure.greatest("Rm", each, each.resistanceOhm(), RESISTANCE, Unit.OHM, d);
        Figure factor = ReadingTemperature.factor(each, factor(), d);
        return d.working().step(BY_PARTS, SupplyLoop.earth(circuit, d), read, factor);
      }
    }
    return Figure.unknown("Zs", Unit.OHM);
  }

  /** Ze as read: among the readings, or as the supply's own figure; unknown where none is. */
  private Figure outside() {
    for (Reading each : all) {
      boolean loop = each.kind() == Reading.Kind.LOOP_IMPEDANCE && each.resistanceOhm() != null;
      if (loop && each.atOrigin()) {
        return ReadingFigure.least("Ze", each, each.resistanceOhm(), RESISTANCE, Unit.OHM, d);
      }
    }
    Supply supply = circuit.supply();
    Figure stated = stated(d);
    if (supply.basis() != Supply.Basis.MEASURED_COLD || !stated.known()) {
      return Figure.unknown("Ze", Unit.OHM);
    }
    // Without its uncertainty it is a bound like any other.
    Figure uncertainty =
        d.given("u", supply.instrumentUncertaintyPercent(), Unit.PERCENT, At.UNCERTAINTY);
    return d.working().step(LEAST_OUTSIDE, stated.as("Zm"), uncertainty);
  }

  private Figure stated(Dossier told) {
    Supply supply = circuit.supply();
    boolean origin = supply.point() == Supply.Point.ORIGIN;
    Double stated = origin ? supply.loopImpedanceOhm() : supply.originLoopImpedanceOhm();
    return told.given("Ze", stated, Unit.OHM, origin ? At.LOOP : At.ORIGIN_LOOP);
  }

  /** Of the circuit's own cables; of what leads to its board at least that of 90 °C. */
  private Figure factor() {
    Figure own = Temperature.hottest(circuit, d);
    boolean origin = circuit.supply().point() == Supply.Point.ORIGIN;
    return origin || !own.known()
        ? own
        : Figure.greater(own, d.constant("Cθ", Constant.COLD_LOOP_CORRECTION));
  }

  /** Less than the line conductor alone: no parallel earth path takes that away. */
  private boolean implausible(Figure read) {
    Dossier trial = d.trial();
    LiveConductors live = Wiring.live(circuit, trial);
    if (live == null) {
      return false;
    }
    Figure line = FeederPart.of(circuit, live, false, trial).line();
    Figure share = trial.constant("kr", Constant.LEAST_RESISTANCE_SHARE);
    Figure least = trial.working().step(LEAST_LINE, share, line.as("R1"));
    boolean below = least.known() && read.value() < least.value();
    if (below) {
      d.missing(
          NoteCode.READING_IMPLAUSIBLE, new Pointer(reading.place(), RESISTANCE), read, least);
    }
    return below;
  }

  /** Better than the circuit's own conductors allow: parallel earth paths are the usual cause. */
  private void better(Figure read) {
    Dossier trial = d.trial();
    LiveConductors live = Wiring.live(circuit, trial);
    FaultLoop loop = FaultLoop.earth(circuit, live, trial);
    Figure least =
        trial
            .working()
            .step(
                EXPECTED,
                SupplyLoop.asRead(circuit, loop.supply(), trial),
                trial.constant("kr", Constant.LEAST_RESISTANCE_SHARE),
                loop.part().cold());
    if (least.known() && read.value() < least.value()) {
      d.remark(NoteCode.READING_BETTER, read, least);
    }
  }
}
