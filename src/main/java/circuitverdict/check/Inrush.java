package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.LiveConductors;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Requirements;
import circuitverdict.conductor.LoadStart;
import circuitverdict.conductor.LoadStart.Kind;
import circuitverdict.conductor.Wiring;
import circuitverdict.device.NotJudged;
import circuitverdict.device.StartBand;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Working;
import circuitverdict.standard.Clause;

/**
 * Whether the device trips when the load starts (512, common practice). It does for certain where
 * the starting current outlasts the latest time of the standard; it does not where it ends before
 * the earliest, and its peak stays below the magnetic zone; between, the drawn curve is asked, by
 * guidance. The letter follows from the load alone, never from the premises. Reported, and counted
 * only where that is required.
 */
public final class Inrush implements Check {
  @Override
  public CheckName name() {
    return CheckName.INRUSH;
  }

  @Override
  public Finding evaluate(Circuit circuit, Dossier d) {
    Judgement judgement = new Judgement(name(), circuit, d, "/device").by(Clause.INRUSH);
    if (circuit.requirements().inrush() != Requirements.Inrush.REQUIRED) {
      judgement.informative();
    }
    ProtectiveDevice device = circuit.device();
    boolean told = device != null && device.data().standard() != null;
    if (told
        && (device instanceof ProtectiveDevice.Rccb || device instanceof ProtectiveDevice.Other)) {
      NotJudged.note(device, d);
      return judgement.undetermined().conclude();
    }
    LiveConductors live = Wiring.live(circuit, d);
    if (!told) {
      NotJudged.note(device, d);
      LoadStart.of(circuit, live, d);
      return judgement.undetermined().conclude();
    }
    if (MakersCount.decides(circuit, judgement, d)
        || LampFuse.decides(circuit, live, judgement, d)) {
      return judgement.conclude();
    }
    LoadStart start = LoadStart.of(circuit, live, d);
    StartBand band = StartBand.of(device, d);
    if (band == null) {
      return judgement.undetermined().conclude();
    }
    new StartAgainstBand(start, band, judgement, d).judge();
    if (start.kind() == Kind.UNKNOWN) {
      orient(circuit, live, d);
    } else {
      judgement.tell(start.current());
      tell(start, d);
      LeastType.remark(circuit, start, d);
    }
    return judgement.conclude();
  }

  /** What such starts are like, where the stage admits no typical value in the verdict itself. */
  private static void orient(Circuit circuit, LiveConductors live, Dossier d) {
    Dossier quoted = new Dossier(d.edition(), Allowance.TYPICAL_VALUES, Working.silent());
    LoadStart typical = LoadStart.of(circuit, live, quoted);
    if (typical.kind() != Kind.UNKNOWN) {
      d.remark(NoteCode.TYPICAL_START, typical.current(), typical.duration());
    }
  }

  private static void tell(LoadStart start, Dossier d) {
    if (start.kind() == Kind.STEADY) {
      return;
    }
    if (start.peak().known()) {
      d.remark(NoteCode.LOAD_STARTS, start.current(), start.duration(), start.peak());
    } else {
      d.remark(NoteCode.LOAD_STARTS, start.current(), start.duration());
    }
  }
}
