package circuitverdict.circuit;

import java.util.List;

/**
 * What a circuit feeds.
 *
 * @param kind kind of load
 * @param use lighting or other: decides the limit of voltage drop
 * @param designCurrentA Ib, A
 * @param voltageDropCurrentA by how much the drop counts where the lines are not loaded alike, A
 * @param demandRule by which rule the design current follows from the power; null for all of it
 * @param ratedPowerW power of one, W
 * @param ratedVoltageV voltage at which the power holds, V
 * @param efficiencyPercent of a motor, %
 * @param powerFactor cos φ
 * @param count how many
 * @param diversityFactor share of the whole that runs together
 * @param connection fixed, or by socket-outlet
 * @param ratedCurrentA rated current of the outlet, A
 * @param canOverload whether the load can overload its conductor
 * @param inrush what it draws when it starts
 * @param thirdHarmonicPercent third harmonic of the line current, %
 * @param protectiveConductorCurrentA standing current in the protective conductor, A
 * @param residualWaveform waveform of the residual current that it may cause
 * @param directCurrentDetection whether the charging equipment detects 6 mA of direct current
 * @param parts its parts where it is mixed
 */
public record Load(
    Kind kind,
    Use use,
    Double designCurrentA,
    Double voltageDropCurrentA,
    DemandRule demandRule,
    Double ratedPowerW,
    Double ratedVoltageV,
    Double efficiencyPercent,
    Double powerFactor,
    Integer count,
    Double diversityFactor,
    Connection connection,
    Double ratedCurrentA,
    Boolean canOverload,
    LoadInrush inrush,
    Double thirdHarmonicPercent,
    Double protectiveConductorCurrentA,
    Waveform residualWaveform,
    Boolean directCurrentDetection,
    List<Load> parts) {

  /** Kind of load. */
  public enum Kind {
    RESISTIVE,
    MOTOR,
    TRANSFORMER,
    LED,
    DISCHARGE,
    FILAMENT,
    WELDING,
    X_RAY,
    VEHICLE_CHARGING,
    SOCKET_OUTLETS,
    ELECTRONIC,
    MIXED;

    /**
     * Whether such a load draws power and does nothing else: it charges no vehicle, feeds nothing.
     */
    public boolean onlyDraws() {
      return switch (this) {
        case RESISTIVE, MOTOR, LED, DISCHARGE, FILAMENT, WELDING, X_RAY -> true;
        case TRANSFORMER, VEHICLE_CHARGING, SOCKET_OUTLETS, ELECTRONIC, MIXED -> false;
      };
    }
  }

  /** What it is used for. */
  public enum Use {
    LIGHTING,
    OTHER
  }

  /** Rules of the On-Site Guide, Appendix A. */
  public enum DemandRule {
    HOUSEHOLD_COOKING(false),
    HOUSEHOLD_COOKING_WITH_SOCKET_OUTLET(false),
    HOUSEHOLD_LIGHTING(true),
    HOUSEHOLD_HEATING(true),
    SHOP_LIGHTING(true),
    GUEST_HOUSE_LIGHTING(true);

    private final boolean betweenCircuits;

    DemandRule(boolean betweenCircuits) {
      this.betweenCircuits = betweenCircuits;
    }

    /** The word of the table and of the contract. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** Whether this word is of a rule that holds between final circuits, not for one appliance. */
    public static boolean isBetweenCircuits(String word) {
      for (DemandRule rule : values()) {
        if (rule.betweenCircuits && rule.word().equals(word)) {
          return true;
        }
      }
      return false;
    }
  }

  /** Waveforms of residual current (531.3.3). */
  public enum Waveform {
    SINUSOIDAL("sinusoidal"),
    PULSATING_DIRECT("pulsating-direct"),
    MIXED_FREQUENCY("mixed-frequency"),
    SMOOTH_DIRECT("smooth-direct");

    private final String word;

    Waveform(String word) {
      this.word = word;
    }

    /** The word of tables and of the contract. */
    public String word() {
      return word;
    }
  }

  /** How it is connected. */
  public enum Connection {
    FIXED,
    SOCKET_OUTLET
  }

  /** The same with all of it running together. */
  public Load together() {
    return new Load(
        kind,
        use,
        designCurrentA,
        voltageDropCurrentA,
        demandRule,
        ratedPowerW,
        ratedVoltageV,
        efficiencyPercent,
        powerFactor,
        count,
        null,
        connection,
        ratedCurrentA,
        canOverload,
        inrush,
        thirdHarmonicPercent,
        protectiveConductorCurrentA,
        residualWaveform,
        directCurrentDetection,
        parts);
  }

  /** Whether a socket-outlet is stated anywhere in the load. */
  public boolean hasSocketOutlet() {
    if (connection == Connection.SOCKET_OUTLET || kind == Kind.SOCKET_OUTLETS) {
      return true;
    }
    for (Load part : parts) {
      if (part.hasSocketOutlet()) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is stated that everything is connected without a socket-outlet. */
  public boolean onlyFixed() {
    if (hasSocketOutlet()) {
      return false;
    }
    if (parts.isEmpty()) {
      return connection == Connection.FIXED;
    }
    return connection == Connection.FIXED || parts.stream().allMatch(Load::onlyFixed);
  }

  /** Whether the kind of the load, or of every part of a mixed one, is stated. */
  public boolean kindsKnown() {
    if (parts.isEmpty()) {
      return kind != null && kind != Kind.MIXED;
    }
    return parts.stream().allMatch(Load::kindsKnown);
  }

  /** Whether lighting is stated of the load or of a part. */
  public boolean hasLighting() {
    if (use == Use.LIGHTING) {
      return true;
    }
    for (Load part : parts) {
      if (part.hasLighting()) {
        return true;
      }
    }
    return false;
  }

  /** Whether the load, or a part of it, is of this kind. */
  public boolean has(Kind wanted) {
    if (kind == wanted) {
      return true;
    }
    for (Load part : parts) {
      if (part.has(wanted)) {
        return true;
      }
    }
    return false;
  }
}
