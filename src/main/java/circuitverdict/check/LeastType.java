package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.conductor.LoadStart;
import circuitverdict.device.StartBand;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.standard.Row;
import circuitverdict.standard.TableName;
import java.util.Map;

/**
 * The least letter of a breaker of the same rating that rides a start, in terms of the load: least
 * sensitive enough, B before C before D.
 */
final class LeastType {
  private static final Map<String, NoteCode> RIDES =
      Map.of(
          "B", NoteCode.TYPE_B_RIDES_START,
          "C", NoteCode.TYPE_C_RIDES_START,
          "D", NoteCode.TYPE_D_RIDES_START);

  private LeastType() {}

  /** Remarks the least letter, with the current up to which the next lesser one stays still. */
  static void remark(Circuit circuit, LoadStart start, Dossier d) {
    if (!(circuit.device() instanceof Breaker breaker)
        || d.edition().table(TableName.MAGNETIC_BANDS).at("lower", breaker.characteristic())
            == null) {
      return;
    }
    Figure lesser = null;
    for (Row row : d.edition().table(TableName.MAGNETIC_BANDS).rows()) {
      String letter = row.keys().get(0).text();
      Breaker other = new Breaker(breaker.data(), letter, breaker.energyClass(), Multiples.NONE);
      Dossier trial = d.trial();
      if (rides(circuit.with(other), start, trial)) {
        if (lesser == null) {
          d.remark(RIDES.get(letter));
        } else {
          d.remark(RIDES.get(letter), lesser);
        }
        return;
      }
      lesser = StartBand.of(other, trial).instantaneous(trial);
    }
    d.remark(NoteCode.NO_TYPE_RIDES_START, lesser);
  }

  private static boolean rides(Circuit circuit, LoadStart start, Dossier trial) {
    Judgement tried = new Judgement(CheckName.INRUSH, circuit, trial, "/device");
    if (!MakersCount.decides(circuit, tried, trial)) {
      StartBand band = StartBand.of(circuit.device(), trial);
      new StartAgainstBand(start, band, tried, trial).judge();
    }
    Finding found = tried.conclude();
    return found.verdict() == Verdict.COMPLIES || found.reason() == Reason.PROOF_WANTED;
  }
}
