package circuitverdict.device;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Rccb;
import circuitverdict.circuit.Residual;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Row;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;
import java.util.List;

/** Break times of residual current functions, and the greatest current they break (IEC 61008-1). */
public final class ResidualTime {
  private ResidualTime() {}

  /** Whether the device has a residual function that its product standard knows. */
  public static boolean has(ProtectiveDevice device) {
    if (device == null || device.data().residual() == null) {
      return false;
    }
    return device instanceof Rccb
        || device instanceof AdjustableBreaker
        || device instanceof Breaker && "IEC 61009-1".equals(device.data().standard());
  }

  /**
   * The residual function that sees a circuit: its own device's, or the one before it; else null.
   */
  public static ProtectiveDevice protecting(Circuit circuit) {
    ProtectiveDevice own = has(circuit.device()) ? circuit.device() : null;
    ProtectiveDevice before = has(circuit.residualDevice()) ? circuit.residualDevice() : null;
    boolean ownComplete = own != null && own.data().residual().operatingCurrentA() != null;
    return ownComplete || before == null ? own : before;
  }

  /** Every residual function in the way of the earth fault, the circuit's own first. */
  public static List<ProtectiveDevice> all(Circuit circuit) {
    boolean own = has(circuit.device());
    if (!has(circuit.residualDevice())) {
      return own ? List.of(circuit.device()) : List.of();
    }
    return own
        ? List.of(circuit.device(), circuit.residualDevice())
        : List.of(circuit.residualDevice());
  }

  /**
   * The latest break time at a multiple of IΔn, s: of the greatest tabled multiple that the fault
   * reaches. Unknown below 1 and for adjustable delays, whose maker alone knows their latest time.
   * A missing delay counts as S, of a breaker to IEC 60947-2 it is unknown.
   */
  public static Figure latest(ProtectiveDevice device, Figure multiple, Dossier d) {
    Residual residual = device.data().residual();
    if (adjustable(residual)) {
      d.missing(NoteCode.MAKER_TIME_NEEDED, new Pointer(device.data().place(), "residual"));
      return Figure.unknown("tr", Unit.SECOND);
    }
    if (open(device)) {
      d.missing(new Pointer(device.data().place() + "/residual", "delay"));
      return Figure.unknown("tr", Unit.SECOND);
    }
    String delay = residual.delay() == Residual.Delay.GENERAL ? "general" : "S";
    Table times = d.edition().table(TableName.RESIDUAL_BREAK_TIMES);
    Value best = null;
    for (Row row : times.rows()) {
      double reached = row.keys().get(1).to();
      if (row.keys().get(0).text().equals(delay)
          && Comparator.AT_LEAST.holds(multiple.value(), reached)) {
        Value time = times.at("latest", delay, reached);
        best = best == null || time.number() < best.number() ? time : best;
      }
    }
    return best == null
        ? Figure.unknown("tr", Unit.SECOND)
        : d.working().look(Figure.of("tr", best));
  }

  /** Whether the delay is an adjustable one: so called, or set in seconds and not named at all. */
  private static boolean adjustable(Residual residual) {
    return residual.delay() == Residual.Delay.ADJUSTABLE
        || residual.delay() == null && residual.delayS() != null;
  }

  /** Whether the delay may be an adjustable one: IEC 60947-2 knows such, the others do not. */
  private static boolean open(ProtectiveDevice device) {
    return device instanceof AdjustableBreaker && device.data().residual().delay() == null;
  }

  /**
   * The least tabled multiple of IΔn at which the break time does not exceed a time in seconds;
   * unknown where none does, and for adjustable delays. Why it is unknown is noted.
   */
  public static Figure leastMultipleWithin(ProtectiveDevice device, double timeS, Dossier d) {
    Residual residual = device.data().residual();
    Figure least = Figure.unknown("mΔ", Unit.ONE);
    if (!adjustable(residual) && !open(device)) {
      least = leastWithin(residual.delay() == Residual.Delay.GENERAL ? "general" : "S", timeS, d);
    }
    if (!least.known()) {
      boolean byDelay =
          residual.delay() == null
              && !adjustable(residual)
              && leastWithin("general", timeS, d).known();
      if (byDelay) {
        d.missing(new Pointer(device.data().place() + "/residual", "delay"));
      } else {
        d.missing(NoteCode.MAKER_TIME_NEEDED, new Pointer(device.data().place(), "residual"));
      }
    }
    return least;
  }

  private static Figure leastWithin(String delay, double timeS, Dossier d) {
    Figure least = Figure.unknown("mΔ", Unit.ONE);
    Table times = d.edition().table(TableName.RESIDUAL_BREAK_TIMES);
    for (Row row : times.rows()) {
      double multiple = row.keys().get(1).to();
      boolean fits =
          row.keys().get(0).text().equals(delay)
              && Comparator.atMost(times.at("latest", delay, multiple).number(), timeS);
      if (fits && !(least.value() <= multiple)) {
        least = Figure.derived("mΔ", multiple, Unit.ONE);
      }
    }
    return least;
  }

  /**
   * The greatest current that the residual function itself breaks, A: Icn or Icu of a breaker with
   * one, IΔm of an RCCB.
   */
  public static Figure breaks(ProtectiveDevice device, Dossier d) {
    if (device instanceof Breaker || device instanceof AdjustableBreaker) {
      return BreakingCapacity.stated(device, d);
    }
    if (device instanceof Rccb rccb) {
      Pointer at = new Pointer(device.data().place(), "residualMakingBreakingA");
      if (rccb.makingBreakingA() != null) {
        return d.given("IΔm", rccb.makingBreakingA(), Unit.AMPERE, at);
      }
      Figure least = d.constant("IΔm", Constant.RESIDUAL_CAPACITY_LEAST_MAKING_BREAKING);
      d.assume(NoteCode.ASSUMED_RESIDUAL_CAPACITY, at, least);
      return least;
    }
    return Figure.unknown("IΔm", Unit.AMPERE);
  }

  /** Whether what it breaks is the standard's least, which its maker's own figure may exceed. */
  public static boolean breaksAtLeast(ProtectiveDevice device) {
    return device instanceof Rccb rccb && rccb.makingBreakingA() == null;
  }
}
