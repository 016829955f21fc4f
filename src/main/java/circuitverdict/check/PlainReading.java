package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Reading;
import circuitverdict.device.BreakingCapacity;
import circuitverdict.device.ResidualTime;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.Pointer;
import circuitverdict.fault.LoopLimit;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;

/** Readings that one limit decides (643.3 to 643.8). */
final class PlainReading {
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
      d.missing(at);
      return judgement.undetermined().conclude();
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
    judgement.compare(
        reading.place(), read, Comparator.AT_MOST, limit.impedance().as("RA,max"), limit.printed());
    return judgement.conclude();
  }
}
