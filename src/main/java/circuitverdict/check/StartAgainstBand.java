package circuitverdict.check;

import circuitverdict.conductor.LoadStart;
import circuitverdict.conductor.LoadStart.Held;
import circuitverdict.conductor.LoadStart.Kind;
import circuitverdict.device.StartBand;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;

/**
 * Holds a start against what is known of a device: its time in the thermal zone, its peak against
 * √2 times the current up to which the magnetic release stays still.
 */
final class StartAgainstBand {
  private static final Formula PEAK_LIMIT = Formula.of("ip,max", Unit.AMPERE, "√2·Imag");
  private static final String DEVICE = "/device";
  private static final Pointer PEAK = new Pointer("/load/inrush", "peakCurrentA");
  private static final Pointer COUNTS = new Pointer("/load/inrush", "countLimits");

  private final LoadStart start;
  private final StartBand band;
  private final Judgement judgement;
  private final Dossier d;

  StartAgainstBand(LoadStart start, StartBand band, Judgement judgement, Dossier d) {
    this.start = start;
    this.band = band;
    this.judgement = judgement;
    this.d = d;
  }

  void judge() {
    if (tripsForCertain()) {
      return;
    }
    if (start.kind() == Kind.UNKNOWN) {
      judgement.undetermined();
      return;
    }
    if (start.kind() == Kind.STEADY) {
      steady();
      return;
    }
    if (start.kind() == Kind.LASTING) {
      byTime();
    }
    if (band.byPeak()) {
      byPeak();
    } else if (start.kind() == Kind.PULSE) {
      pulseOfFuse();
    }
  }

  /** Above the latest time of what flows for certain it has operated. */
  private boolean tripsForCertain() {
    for (Held held : start.held()) {
      Figure latest = band.latest(held.current());
      if (latest.known() && !Comparator.atMost(held.duration().value(), latest.value())) {
        judgement.tell(held.current());
        judgement.compare(DEVICE, held.duration(), Comparator.AT_MOST, latest);
        return true;
      }
    }
    return false;
  }

  /** Running is no start: above what it surely carries the check of overload speaks, not this. */
  private void steady() {
    Figure still = band.instantaneous(d);
    Figure limit = still.known() ? still : band.carried();
    if (Comparator.atMost(start.current().value(), limit.value())) {
      judgement.compare(DEVICE, start.current(), Comparator.AT_MOST, limit);
    } else {
      d.missing(NoteCode.MAKER_CURVE_NEEDED, At.DEVICE_ITSELF);
      judgement.open(DEVICE, start.current(), Comparator.AT_MOST, limit);
    }
  }

  private void byTime() {
    Figure duration = start.duration();
    Figure earliest = band.earliest(start.current());
    if (earliest.known() && Comparator.atMost(duration.value(), earliest.value())) {
      judgement.compare(DEVICE, duration, Comparator.AT_MOST, earliest);
      return;
    }
    Figure drawn = band.drawn(start.current(), d);
    if (drawn.known() && Comparator.atMost(duration.value(), drawn.value())) {
      d.restsOn(Dossier.Strength.GUIDANCE);
      d.remark(NoteCode.DRAWN_CURVE_HOLDS, drawn);
      judgement.compare(DEVICE, duration, Comparator.AT_MOST, drawn);
      return;
    }
    d.missing(NoteCode.MAKER_CURVE_NEEDED, At.DEVICE_ITSELF);
    judgement.open(DEVICE, duration, Comparator.AT_MOST, drawn.known() ? drawn : earliest);
  }

  private void byPeak() {
    Figure still = band.instantaneous(d);
    if (!still.known()) {
      d.missing(new Pointer("/device/settings", "instantaneousA"));
      judgement.undetermined();
      return;
    }
    Figure limit = d.working().step(PEAK_LIMIT, still);
    if (start.peak().known() && Comparator.atMost(start.peak().value(), limit.value())) {
      judgement.compare(DEVICE, start.peak(), Comparator.AT_MOST, limit);
    } else if (start.kind() == Kind.PULSE && !start.offset()) {
      byEnergy(limit);
    } else {
      byHabit(still, limit);
    }
  }

  /** An offset peak is not stated: common practice takes the symmetrical one, listed. */
  private void byHabit(Figure still, Figure limit) {
    boolean rides = Comparator.atMost(start.guided().value(), still.value());
    if (!start.offset() || !rides) {
      d.missing(NoteCode.MAKER_CURVE_NEEDED, At.DEVICE_ITSELF);
      if (start.offset()) {
        judgement.open(DEVICE, start.guided(), Comparator.AT_MOST, still);
      } else {
        judgement.open(DEVICE, start.peak(), Comparator.AT_MOST, limit);
      }
    } else if (d.allows(Allowance.TABLE_DEFAULTS)) {
      d.restsOn(Dossier.Strength.GUIDANCE);
      d.assume(NoteCode.ASSUMED_SYMMETRIC_START, PEAK, start.guided());
      judgement.compare(DEVICE, start.guided(), Comparator.AT_MOST, still);
    } else {
      d.missing(PEAK);
      judgement.open(DEVICE, start.guided(), Comparator.AT_MOST, still);
    }
  }

  /** Below its gates a fuse does not melt; above them the energy of the pulse is asked. */
  private void pulseOfFuse() {
    Figure earliest = band.earliest(start.current());
    if (earliest.known() && Comparator.atMost(start.duration().value(), earliest.value())) {
      judgement.compare(DEVICE, start.duration(), Comparator.AT_MOST, earliest);
    } else {
      byEnergy(null);
    }
  }

  /** A pulse too short for its peak to say much: its energy decides, by guidance. */
  private void byEnergy(Figure peakLimit) {
    Figure borne = band.pulse(d);
    if (borne.known() && Comparator.atMost(start.energy().value(), borne.value())) {
      d.restsOn(Dossier.Strength.GUIDANCE);
      judgement.compare(DEVICE, start.energy(), Comparator.AT_MOST, borne);
      return;
    }
    d.missing(NoteCode.MAKER_COUNT_NEEDED, COUNTS);
    if (borne.known()) {
      judgement.open(DEVICE, start.energy(), Comparator.AT_MOST, borne);
    } else {
      judgement.undetermined();
    }
    if (peakLimit != null) {
      judgement.open(DEVICE, start.peak(), Comparator.AT_MOST, peakLimit);
    }
  }
}
