package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Reading;
import circuitverdict.circuit.Supply;
import circuitverdict.conductor.Temperature;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.ResidualTime;
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
  private static final Formula HOT_FROM = Formula.of("Zs", Unit.OHM, "Ze + ΔZ·Cθ/Cm");
  private static final Formula MEASURED = Formula.of("Cm", Unit.ONE, "1 + α·(θm − θ0)");
  private static final Formula ALLOWED = Formula.of("Zs,read", Unit.OHM, "c·Zs,max");
  private static final Formula EXPECTED = Formula.of("Zs,20", Unit.OHM, "Zread + kr·R1R2,20");

  private final Reading reading;
  private final Circuit circuit;
  private final Judgement judgement;
  private final Dossier d;

  LoopReading(Reading reading, Circuit circuit, Judgement judgement, Dossier d) {
    this.reading = reading;
    this.circuit = circuit;
    this.judgement = judgement;
    this.d = d;
  }

  Finding judge() {
    if (!reading.between().isEmpty() && !reading.between().contains("PE")) {
      return judgement.notApplicable();
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
    if (cold && Comparator.AT_MOST.holds(read.value(), allowed.value())) {
      better(read);
      judgement.compare(reading.place(), read, Comparator.AT_MOST, allowed);
      return judgement.conclude();
    }
    return byOperatingTemperature(read, limit, cold);
  }

  /** Ze, or Zdb: no greater than the design took it to be. */
  private Finding beforeTheCircuit(Figure read) {
    boolean own = reading.atOrigin() && circuit.supply().originLoopImpedanceOhm() != null;
    Figure designed =
        own
            ? d.given("Ze", circuit.supply().originLoopImpedanceOhm(), Unit.OHM, At.ORIGIN_LOOP)
            : d.need("Zdb", circuit.supply().loopImpedanceOhm(), Unit.OHM, At.LOOP);
    judgement.compare(reading.place(), read, Comparator.AT_MOST, designed);
    return judgement.conclude();
  }

  private Finding byOperatingTemperature(Figure read, LoopLimit limit, boolean cold) {
    Figure outside = outside();
    Figure part = d.working().step(PART, read, outside);
    Figure zs =
        cold
            ? d.working().step(HOT, outside, part, factor())
            : d.working().step(HOT_FROM, outside, part, factor(), measured());
    better(read);
    boolean holds = Comparator.AT_MOST.holds(zs.value(), limit.impedance().value());
    ProtectiveDevice residual = ResidualTime.protecting(circuit);
    if (residual != null && !holds && zs.known()) {
      return byResidual(residual, zs);
    }
    if (cold) {
      d.remark(NoteCode.READING_NOT_FAILURE, read);
    }
    judgement.compare(reading.place(), zs, Comparator.AT_MOST, limit.impedance(), limit.printed());
    return judgement.conclude();
  }

  /**
   * Ze, which no conductor of the installation heats; without it all of the reading is corrected.
   */
  private Figure outside() {
    Supply supply = circuit.supply();
    boolean origin = supply.point() == Supply.Point.ORIGIN;
    Double stated = origin ? supply.loopImpedanceOhm() : supply.originLoopImpedanceOhm();
    return stated == null
        ? Figure.derived("Ze", 0, Unit.OHM)
        : d.given("Ze", stated, Unit.OHM, origin ? At.LOOP : At.ORIGIN_LOOP);
  }

  /** Of the circuit's own cables; of what leads to its board at least that of 90 °C. */
  private Figure factor() {
    Figure own = Temperature.hottest(circuit, d);
    boolean origin = circuit.supply().point() == Supply.Point.ORIGIN;
    return origin || !own.known()
        ? own
        : Figure.greater(own, d.constant("Cθ", Constant.COLD_LOOP_CORRECTION));
  }

  private Finding byResidual(ProtectiveDevice residual, Figure zs) {
    Pointer at = new Pointer(residual.data().place() + "/residual", "operatingCurrentA");
    Figure operating =
        d.need("IΔn", residual.data().residual().operatingCurrentA(), Unit.AMPERE, at);
    LoopLimit limit = LoopLimit.ofResidual(operating, d);
    d.remark(NoteCode.RESIDUAL_GOVERNS);
    judgement.compare(reading.place(), zs, Comparator.AT_MOST, limit.impedance(), limit.printed());
    return judgement.conclude();
  }

  private Figure measured() {
    Pointer at = new Pointer(reading.place(), "conductorTemperatureC");
    Figure temperature = d.given("θm", reading.conductorTemperatureC(), Unit.CELSIUS, at);
    return d.working()
        .step(
            MEASURED,
            d.constant("α", Constant.TEMPERATURE_RESISTANCE_COEFFICIENT),
            temperature,
            d.constant("θ0", Constant.TEMPERATURE_REFERENCE_TEMPERATURE));
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
