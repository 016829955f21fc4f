package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.Reading;
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
import circuitverdict.fault.SupplyLoop;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;

/**
 * R1 + R2, or R2 alone, as read with the supply off (643.2.1): with the supply's loop, brought to
 * operating temperature, within Zs,max. Less than the line conductor alone can have is implausible;
 * less than both have is remarked on.
 */
final class ContinuityReading {
  private static final Formula LOOP = Formula.of("Zs", Unit.OHM, "Zdb + Rm·Cθ");
  private static final Formula WITH_LINE = Formula.of("Zs", Unit.OHM, "Zdb + R1 + Rm·Cθ");
  private static final Formula LEAST = Formula.of("R,min", Unit.OHM, "kr·R");

  private final Reading reading;
  private final Circuit circuit;
  private final Judgement judgement;
  private final Dossier d;

  ContinuityReading(Reading reading, Circuit circuit, Judgement judgement, Dossier d) {
    this.reading = reading;
    this.circuit = circuit;
    this.judgement = judgement;
    this.d = d;
  }

  Finding judge() {
    judgement.by(Clause.AUTOMATIC_DISCONNECTION).by(Clause.MEASURED_READINGS);
    Figure read =
        ReadingFigure.greatest(
            "Rm", reading, reading.resistanceOhm(), "resistanceOhm", Unit.OHM, d);
    LiveConductors live = Wiring.live(circuit, d);
    if (circuit.device() == null || live == null) {
      if (circuit.device() == null) {
        d.missing(At.DEVICE_ITSELF);
      }
      return judgement.undetermined().conclude();
    }
    boolean both = reading.kind() == Reading.Kind.R1_PLUS_R2;
    if (both && !reading.lineToProtective()) {
      d.missing(NoteCode.READING_NOT_JUDGED, new Pointer(reading.place(), "between"));
      return judgement.undetermined().conclude();
    }
    if (both && implausible(read, live)) {
      return judgement.undetermined().conclude();
    }
    DisconnectionTime time = DisconnectionTime.of(circuit, d);
    Figure supply = SupplyLoop.earth(circuit, d);
    Figure hot = ReadingTemperature.factor(reading, Temperature.hottest(circuit, d), d);
    Figure zs;
    if (both) {
      zs = d.working().step(LOOP, supply, read, hot);
    } else {
      Figure line = FeederPart.of(circuit, live, true, d).line().as("R1");
      zs = d.working().step(WITH_LINE, supply, line, read, hot);
    }
    MeasuredLoop.judge(reading.place(), zs, circuit, time, judgement, d);
    return judgement.conclude();
  }

  private boolean implausible(Figure read, LiveConductors live) {
    Dossier trial = d.trial();
    FeederPart part = FeederPart.of(circuit, live, false, trial);
    Figure share = trial.constant("kr", Constant.LEAST_RESISTANCE_SHARE);
    Figure line = trial.working().step(LEAST, share, part.line().as("R"));
    if (line.known() && read.value() < line.value()) {
      d.missing(
          NoteCode.READING_IMPLAUSIBLE, new Pointer(reading.place(), "resistanceOhm"), read, line);
      return true;
    }
    Figure both = trial.working().step(LEAST, share, part.earth().as("R"));
    if (both.known() && read.value() < both.value()) {
      d.remark(NoteCode.READING_BETTER, read, both);
    }
    return false;
  }
}
