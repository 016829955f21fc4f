package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Reading;
import circuitverdict.circuit.Residual;
import circuitverdict.conductor.LoopPart;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.LoopLimit;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/** Readings that one limit decides (643.3 to 643.8). */
final class PlainReading {
  private static final Formula WITH_CONDUCTOR = Formula.of("RA", Unit.OHM, "Rm + R2");
  private static final Formula THREE = Formula.of("If,max", Unit.AMPERE, "k3·Im");

  private PlainReading() {}

  /** Insulation resistance, no less than Table 64 asks for up to 500 V and above it. */
  static Finding insulation(Reading reading, Judgement judgement, Dossier d) {
    Figure read =
        ReadingFigure.least("Riso", reading, reading.resistanceOhm(), "resistanceOhm", Unit.OHM, d);
    Figure least = d.constant("Riso,min", Constant.READINGS_INSULATION_LEAST);
    judgement.compare(reading.place(), read, Comparator.AT_LEAST, least);
    return judgement.conclude();
  }

  /**
   * Prospective fault current, within what the device breaks. Of three lines one is read, and a
   * fault of all three draws at most twice as much.
   */
  static Finding faultCurrent(Reading reading, Circuit circuit, Judgement judgement, Dossier d) {
    judgement.by(Clause.BREAKING_CAPACITY);
    Figure read =
        ReadingFigure.greatest("If,max", reading, reading.currentA(), "currentA", Unit.AMPERE, d);
    if (circuit.device() == null) {
      d.missing(At.DEVICE_ITSELF);
      return judgement.undetermined().conclude();
    }
    boolean here = reading.where() == null || reading.atBoard() || reading.atOrigin();
    if (!here) {
      // Elsewhere it is less than where the device sits.
      d.missing(NoteCode.READING_NOT_JUDGED, new Pointer(reading.place(), "place"));
      return judgement.undetermined().conclude();
    }
    LiveConductors live = LiveConductors.of(circuit);
    if (live == null) {
      d.missing(At.LIVE);
      return judgement.undetermined().conclude();
    }
    Figure greatest = read;
    if (live.lines() > 1) {
      Figure multiple = d.constant("k3", Constant.THREE_PHASE_FROM_LINE_NEUTRAL);
      greatest = d.working().step(THREE, multiple, read.as("Im"));
    }
    Figure capacity = BreakingCapacity.of(circuit.device(), d);
    boolean covered = circuit.backUp().evidence() != null || circuit.assembly().described();
    boolean beyond =
        greatest.known()
            && capacity.known()
            && !Comparator.AT_MOST.holds(greatest.value(), capacity.value());
    // What was read of one line fails for certain; twice as much is a bound.
    boolean certain = read.known() && !Comparator.AT_MOST.holds(read.value(), capacity.value());
    if (beyond && (covered || !certain)) {
      judgement.open(reading.place(), greatest, Comparator.AT_MOST, capacity);
      d.missing(covered ? new Pointer("", "backUp") : At.THREE_PHASE_CURRENT);
      return judgement.conclude();
    }
    judgement.compare(reading.place(), beyond ? read : greatest, Comparator.AT_MOST, capacity);
    Double designed = circuit.supply().maximumFaultCurrentA();
    if (designed != null && read.known() && !Comparator.atMost(read.value(), designed)) {
      Figure design = d.given("If,d", designed, Unit.AMPERE, At.MAXIMUM_CURRENT);
      d.missing(NoteCode.READING_ABOVE_DESIGN, At.MAXIMUM_CURRENT, design);
      judgement.open(reading.place(), read, Comparator.AT_MOST, design);
    }
    return judgement.conclude();
  }

  /** Trip time of the residual function at its test current. */
  static Finding tripTime(Reading reading, Circuit circuit, Judgement judgement, Dossier d) {
    judgement.by(Clause.ADDITIONAL_PROTECTION);
    Figure read = ReadingFigure.greatest("t", reading, reading.timeS(), "timeS", Unit.SECOND, d);
    Pointer at = new Pointer(reading.place(), "testMultiple");
    Figure multiple = d.need("mΔ", reading.testMultiple(), Unit.ONE, at);
    ProtectiveDevice device = ResidualTime.protecting(circuit);
    if (device == null) {
      d.missing(At.RESIDUAL_DEVICE);
      return judgement.undetermined().conclude();
    }
    if (multiple.value() < 1) {
      // Below IΔn it need not trip: no time tells anything.
      d.missing(NoteCode.READING_NOT_JUDGED, at);
      return judgement.undetermined().conclude();
    }
    Residual residual = device.data().residual();
    if (residual.delay() == null) {
      // The strictest of what it may be is not known to be met, nor the mildest to be broken.
      d.missing(new Pointer(device.data().place() + "/residual", "delay"));
      return judgement.undetermined().conclude();
    }
    if (residual.delay() == Residual.Delay.S && multiple.known()) {
      Value earliest =
          d.edition().table(TableName.RESIDUAL_BREAK_TIMES).at("earliest", "S", multiple.value());
      Figure least =
          d.tabled("te", earliest, Unit.SECOND, new Pointer(reading.place(), "testMultiple"));
      Figure soonest = ReadingFigure.least("t", reading, reading.timeS(), "timeS", Unit.SECOND, d);
      judgement.compare(reading.place(), soonest, Comparator.AT_LEAST, least);
    }
    Figure latest = multiple.known() ? ResidualTime.latest(device, multiple, d) : multiple;
    judgement.compare(reading.place(), read, Comparator.AT_MOST, latest);
    return judgement.conclude();
  }

  static Finding polarity(Reading reading, Judgement judgement, Dossier d) {
    if (reading.satisfactory() == null) {
      d.missing(new Pointer(reading.place(), "satisfactory"));
      return judgement.undetermined().conclude();
    }
    return reading.satisfactory() ? judgement.concludeMet() : judgement.concludeBroken();
  }

  /** The electrode's resistance, with the residual function's IΔn within 50 V (411.5.3). */
  static Finding electrode(Reading reading, Circuit circuit, Judgement judgement, Dossier d) {
    judgement.by(Clause.DISCONNECTION_TT);
    Figure read =
        ReadingFigure.greatest(
            "RA", reading, reading.resistanceOhm(), "resistanceOhm", Unit.OHM, d);
    ProtectiveDevice device = ResidualTime.protecting(circuit);
    if (device == null) {
      d.missing(At.RESIDUAL_DEVICE);
      return judgement.undetermined().conclude();
    }
    Pointer at = new Pointer(device.data().place() + "/residual", "operatingCurrentA");
    Figure operating = d.need("IΔn", device.data().residual().operatingCurrentA(), Unit.AMPERE, at);
    LoopLimit limit = LoopLimit.ofResidual(operating, d);
    Figure back = LoopPart.protective(circuit, Wiring.live(circuit, d), d).as("R2");
    Figure whole = d.working().step(WITH_CONDUCTOR, read.as("Rm"), back);
    judgement.compare(
        reading.place(),
        whole,
        Comparator.AT_MOST,
        limit.impedance().as("RA,max"),
        limit.printed());
    return judgement.conclude();
  }
}
