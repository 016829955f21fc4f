package circuitverdict.device;

import circuitverdict.circuit.DeviceData;
import circuitverdict.circuit.DeviceData.LetThroughPoint;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.circuit.ProtectiveDevice.Multiples;
import circuitverdict.circuit.ProtectiveDevice.Other;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.ProtectiveDevice.Settings;
import circuitverdict.circuit.Residual;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Working;
import circuitverdict.standard.Edition;
import circuitverdict.support.Scenario;
import java.util.List;

/** Devices and dossiers for the tests of this package. */
final class Devices {
  static final Edition EDITION = Scenario.editions().inForce();

  private Devices() {}

  static Dossier dossier(Allowance allowance) {
    return new Dossier(EDITION, allowance, Working.recording());
  }

  /** A dossier at design: table defaults, no typical values. */
  static Dossier design() {
    return dossier(Allowance.TABLE_DEFAULTS);
  }

  static Dossier signOff() {
    return dossier(Allowance.NOTHING);
  }

  static DeviceData data(
      String standard,
      Double rated,
      Double capacity,
      Residual residual,
      LetThroughPoint... points) {
    return new DeviceData(
        "/device", "Q1", standard, rated, capacity, null, 1, null, residual, List.of(points));
  }

  /** A breaker to IEC 60898-1 of 6 kA without a declared class. */
  static Breaker breaker(String letter, Double rated) {
    return breaker(letter, rated, 6000.0, null);
  }

  static Breaker breaker(
      String letter, Double rated, Double icn, Integer energyClass, LetThroughPoint... points) {
    return new Breaker(
        data("IEC 60898-1", rated, icn, null, points), letter, energyClass, Multiples.NONE);
  }

  /** A breaker of 6 kA with magnetic limits stated beside its letter. */
  static Breaker stated(String letter, Double rated, Double lower, Double upper) {
    DeviceData data = data("IEC 60898-1", rated, 6000.0, null);
    return new Breaker(data, letter, null, new Multiples(lower, upper));
  }

  static AdjustableBreaker adjustable(Double rated, Double lower, Double upper, Settings settings) {
    return new AdjustableBreaker(
        data("IEC 60947-2", rated, 25000.0, null), null, new Multiples(lower, upper), settings);
  }

  /** An adjustable breaker of 25 kA by its settings Ir, Isd, tsd and Ii alone. */
  static AdjustableBreaker set(Double ir, Double isd, Double tsd, Double ii) {
    return adjustable(null, null, null, new Settings(ir, isd, tsd, ii));
  }

  static Fuse fuse(String standard, Double rated, String category) {
    return new Fuse(data(standard, rated, null, null), category);
  }

  static Rccb rccb(Residual residual, Double makingBreaking) {
    return new Rccb(data("IEC 61008-1", 63.0, null, residual), makingBreaking, null);
  }

  static Other other() {
    return new Other(data(null, 32.0, null, null));
  }

  static LetThroughPoint point(double current, double energy) {
    return new LetThroughPoint(current, energy);
  }

  /** Pointers of what is missing, with the code before it unless it is simply not stated. */
  static List<String> missing(Dossier d) {
    return d.missing().stream()
        .map(
            note ->
                (note.code() == NoteCode.MISSING_INPUT ? "" : note.code().code() + " ")
                    + note.pointer().text())
        .toList();
  }
}
