package circuitverdict.check;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.Load;
import circuitverdict.circuit.Load.Waveform;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.Residual;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.standard.Clause;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.TableName;

/**
 * Type of a residual current device by the waveform that the load may cause (531.3.3): it detects
 * at least that one; type AC serves fixed equipment only, known to cause no direct current;
 * charging points ask for type B, or for what detects 6 mA of direct current beside type A or F,
 * whatever the waveform (722.531.3.101).
 */
public final class ResidualTypeRule {
  private ResidualTypeRule() {}

  /** Whether it suits; null where what is not stated decides, which is noted. */
  static Boolean suits(Circuit circuit, ProtectiveDevice device, Judgement judgement, Dossier d) {
    judgement.by(Clause.RESIDUAL_TYPE);
    Residual.Type type = device.data().residual().type();
    if (type == null) {
      d.missing(new Pointer(device.data().place() + "/residual", "type"));
      askWaveform(circuit.load(), d);
      return null;
    }
    if (type == Residual.Type.B) {
      return true;
    }
    if (type == Residual.Type.AC && !plain(circuit.load(), d.edition())) {
      return alternatingOnly(circuit.load(), d);
    }
    Boolean charging = ChargingPoint.supplied(circuit);
    if (Boolean.TRUE.equals(charging)) {
      return charging(type, circuit.load(), judgement, d);
    }
    Waveform waveform = waveform(circuit.load());
    if (waveform != null && !detects(type, waveform, d.edition())) {
      return false;
    }
    askWaveform(circuit.load(), d);
    if (charging == null) {
      ChargingDuty.of(circuit).wanted().forEach(d::missing);
    }
    return waveform == null || charging == null ? null : Boolean.TRUE;
  }

  /** The least type that suits, from type A on: that is what is offered where nothing is known. */
  public static Residual.Type least(Circuit circuit, Edition edition) {
    Waveform waveform = waveform(circuit.load());
    boolean charging = Boolean.TRUE.equals(ChargingPoint.supplied(circuit));
    if (charging) {
      boolean detection = Boolean.TRUE.equals(detectsDirect(circuit.load()));
      return detection ? Residual.Type.A : Residual.Type.B;
    }
    for (Residual.Type type : Residual.Type.values()) {
      boolean offered = type != Residual.Type.AC;
      if (offered && (waveform == null || detects(type, waveform, edition))) {
        return type;
      }
    }
    return Residual.Type.B;
  }

  private static boolean detects(Residual.Type type, Waveform waveform, Edition edition) {
    return edition.table(TableName.RESIDUAL_TYPES).at(waveform.word(), type.name()).number() > 0;
  }

  private static Boolean charging(Residual.Type type, Load load, Judgement judgement, Dossier d) {
    judgement.by(Clause.CHARGING_RESIDUAL);
    if (type == Residual.Type.AC) {
      return false;
    }
    Boolean detection = detectsDirect(load);
    if (detection == null) {
      d.missing(NoteCode.DIRECT_CURRENT_DETECTION, At.DIRECT_CURRENT_DETECTION);
      return null;
    }
    return detection;
  }

  /** Whether all that charges detects direct current itself; null where that is not stated. */
  private static Boolean detectsDirect(Load load) {
    if (load.directCurrentDetection() != null || load.parts().isEmpty()) {
      return load.directCurrentDetection();
    }
    Boolean all = true;
    for (Load part : load.parts()) {
      boolean draws = part.kind() != null && part.kind().onlyDraws() && !part.hasSocketOutlet();
      Boolean one = draws ? Boolean.TRUE : detectsDirect(part);
      if (Boolean.FALSE.equals(one)) {
        return false;
      }
      all = one == null ? null : all;
    }
    return all;
  }

  /** Whether type AC may serve at all: where everything is fixed, or the edition does not ask. */
  private static boolean plain(Load load, Edition edition) {
    boolean fixedOnly =
        edition.constant(Constant.ADDITIONAL_PROTECTION_ALTERNATING_FIXED_ONLY).number() > 0;
    return !fixedOnly || load.onlyFixed();
  }

  private static Boolean alternatingOnly(Load load, Dossier d) {
    if (load.hasSocketOutlet()) {
      return false;
    }
    d.missing(At.CONNECTION);
    return null;
  }

  private static void askWaveform(Load load, Dossier d) {
    if (waveform(load) == null) {
      d.missing(At.RESIDUAL_WAVEFORM);
    }
  }

  /** The waveform that asks most, of the load and all its parts; null where one is not known. */
  private static Waveform waveform(Load load) {
    if (load.parts().isEmpty()) {
      return ofOne(load);
    }
    boolean whole = load.residualWaveform() != null;
    Waveform most = whole ? load.residualWaveform() : Waveform.SINUSOIDAL;
    for (Load part : load.parts()) {
      Waveform each = waveform(part);
      if (each == null && !whole) {
        return null;
      }
      most = each != null && each.compareTo(most) > 0 ? each : most;
    }
    return most;
  }

  /** Fixed heaters and filament lamps cause sinusoidal residual currents (531.3.3). */
  private static Waveform ofOne(Load load) {
    boolean heats = load.kind() == Load.Kind.RESISTIVE || load.kind() == Load.Kind.FILAMENT;
    return load.residualWaveform() == null && heats && load.onlyFixed()
        ? Waveform.SINUSOIDAL
        : load.residualWaveform();
  }
}
