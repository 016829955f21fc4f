package circuitverdict.device;

import circuitverdict.circuit.Circuit;
import circuitverdict.circuit.ProtectiveDevice;
import circuitverdict.circuit.ProtectiveDevice.AdjustableBreaker;
import circuitverdict.circuit.ProtectiveDevice.Breaker;
import circuitverdict.circuit.ProtectiveDevice.Fuse;
import circuitverdict.explain.Allowance;
import circuitverdict.explain.At;
import circuitverdict.explain.Dossier;
import circuitverdict.explain.Figure;
import circuitverdict.explain.Formula;
import circuitverdict.explain.NoteCode;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Comparator;
import circuitverdict.quantity.Unit;
import circuitverdict.standard.Constant;
import circuitverdict.standard.Edition;
import circuitverdict.standard.Table;
import circuitverdict.standard.TableName;
import circuitverdict.standard.Value;

/** Greatest currents a device breaks: Icn or Icu once, Ics and goes on in service (434.5.1). */
public final class BreakingCapacity {
  private static final Formula ICS = Formula.of("Ics", Unit.AMPERE, "ks·Icn");
  private static final Formula ICS_FLOOR = Formula.of("Ics", Unit.AMPERE, "max(ks·Icn; Ics,min)");

  /** In the lowest band of ratings: one that is not stated shows no greater type of fuse. */
  private static final double UNSTATED = Double.MIN_VALUE;

  private BreakingCapacity() {}

  /**
   * Icn or Icu, A; for fuses the standard's own where the stage allows, else missing. No more
   * counts than the standard knows: it tests for nothing more, and what is tested so would need
   * another standard to say so.
   */
  public static Figure of(ProtectiveDevice device, Dossier d) {
    String symbol = symbol(device);
    Pointer at = new Pointer(device.data().place(), "breakingCapacityA");
    Double stated = device.data().breakingCapacityA();
    if (stated != null) {
      Value most = greatest(device, d);
      if (most != null && !Comparator.atMost(stated, most.number())) {
        d.remark(NoteCode.STANDARD_CAPACITY_COUNTS, Figure.of(symbol, most));
        return Figure.of(symbol, most);
      }
    }
    if (stated == null && device instanceof Fuse) {
      Value own = fuses("value", device, d);
      if (own != null) {
        return d.orAssume(
            symbol, null, at, own, Allowance.TABLE_DEFAULTS, NoteCode.ASSUMED_BREAKING_CAPACITY);
      }
    }
    return d.need(symbol, stated, Unit.AMPERE, at);
  }

  /** The most that the device's standard knows; null where it sets no end. */
  private static Value greatest(ProtectiveDevice device, Dossier d) {
    if (device instanceof Fuse) {
      return fuses("greatest", device, d);
    }
    return device instanceof Breaker
        ? d.edition().constant(Constant.BREAKER_TESTS_GREATEST_CAPACITY)
        : null;
  }

  /**
   * Whether the nominal voltage lies beyond what breakers and household fuses are declared for (IEC
   * 60898-1 clause 1): then nothing stated of the device says what it breaks.
   */
  public static boolean beyondVoltage(Circuit circuit, Dossier d) {
    Double lineToEarth = circuit.supply().lineToEarthVoltageV();
    double greatest = d.edition().constant(Constant.BREAKER_TESTS_GREATEST_VOLTAGE).number();
    boolean beyond = lineToEarth != null && Math.sqrt(3) * lineToEarth > greatest;
    if (beyond) {
      d.missing(NoteCode.NOT_IN_TABLES, At.VOLTAGE);
    }
    return beyond;
  }

  /** Whether this capacity is the device's own as stated, not what a standard stands in with. */
  public static boolean own(ProtectiveDevice device, Figure capacity) {
    Double stated = device.data().breakingCapacityA();
    return stated != null && stated == capacity.value();
  }

  /** What the standard of a fuse promises of one of this rating, A; unknown where it says none. */
  public static double ofStandard(String standard, double ratedA, Edition edition) {
    Value own = edition.table(TableName.FUSE_BREAKING_CAPACITY).at("value", standard, ratedA);
    return own == null ? Double.NaN : own.number();
  }

  private static Value fuses(String column, ProtectiveDevice fuse, Dossier d) {
    Double rated = fuse.data().ratedCurrentA();
    return d.edition()
        .table(TableName.FUSE_BREAKING_CAPACITY)
        .at(column, fuse.data().standard(), rated == null ? UNSTATED : rated);
  }

  /** The device's own breaking capacity, A; unknown, and not called missing, where not stated. */
  public static Figure stated(ProtectiveDevice device, Dossier d) {
    Double stated = device.data().breakingCapacityA();
    if (stated != null || device instanceof Fuse && d.allows(Allowance.TABLE_DEFAULTS)) {
      return of(device, d);
    }
    return d.given(
        symbol(device),
        stated,
        Unit.AMPERE,
        new Pointer(device.data().place(), "breakingCapacityA"));
  }

  /** Ics, A: stated, or for IEC 60898-1 by the standard's rule; unknown where neither says. */
  public static Figure service(ProtectiveDevice device, Figure capacity, Dossier d) {
    Double stated = device.data().serviceBreakingCapacityA();
    Figure given =
        d.given(
            "Ics",
            stated,
            Unit.AMPERE,
            new Pointer(device.data().place(), "serviceBreakingCapacityA"));
    if (stated != null || !(device instanceof Breaker) || !capacity.known()) {
      return given;
    }
    Table rule = d.edition().table(TableName.SERVICE_CAPACITY);
    Figure ratio = Figure.of("ks", rule.at("ratio", capacity.value()));
    Value least = rule.at("least", capacity.value());
    return least == null
        ? d.working().step(ICS, ratio, capacity)
        : d.working().step(ICS_FLOOR, ratio, capacity, Figure.of("Ics,min", least));
  }

  private static String symbol(ProtectiveDevice device) {
    return device instanceof AdjustableBreaker || device instanceof Fuse ? "Icu" : "Icn";
  }
}
