package circuitverdict.circuit;

/**
 * The point that feeds the circuit.
 *
 * @param point whether it is the origin or a board
 * @param earthing system of earthing
 * @param phases phases of the supply, 1 or 3
 * @param lineToEarthVoltageV nominal line–earth voltage Uo, V
 * @param frequencyHz frequency, Hz
 * @param ownership public or private supply
 * @param basis what the loop impedance rests on
 * @param loopImpedanceOhm earth fault loop impedance here (Zdb, or Ze at the origin), Ω
 * @param loopReactanceOhm its reactance, Ω
 * @param originLoopImpedanceOhm Ze, Ω
 * @param lineToNeutralLoopImpedanceOhm line–neutral loop impedance here, Ω
 * @param lineToNeutralLoopReactanceOhm its reactance, Ω
 * @param maximumFaultCurrentA greatest fault current of any kind here, A
 * @param faultCurrents greatest fault currents by kind
 * @param instrumentUncertaintyPercent uncertainty of measured figures, %
 * @param voltageDropPercent voltage drop from the origin to here, %
 * @param earthElectrodeResistanceOhm resistance of the installation's electrode, Ω
 * @param openPenProtection whether a permitted measure against a broken PEN conductor is fitted
 * @param localGeneration whether a generator, storage or photovoltaic system feeds the installation
 * @param source what feeds it, in place of figures
 */
public record Supply(
    Point point,
    Earthing earthing,
    Integer phases,
    Double lineToEarthVoltageV,
    Double frequencyHz,
    Ownership ownership,
    Basis basis,
    Double loopImpedanceOhm,
    Double loopReactanceOhm,
    Double originLoopImpedanceOhm,
    Double lineToNeutralLoopImpedanceOhm,
    Double lineToNeutralLoopReactanceOhm,
    Double maximumFaultCurrentA,
    FaultCurrents faultCurrents,
    Double instrumentUncertaintyPercent,
    Double voltageDropPercent,
    Double earthElectrodeResistanceOhm,
    Boolean openPenProtection,
    Boolean localGeneration,
    Source source) {

  /** Where the supply point is. */
  public enum Point {
    ORIGIN,
    BOARD
  }

  /** System of earthing. */
  public enum Earthing {
    TN_S("TN-S"),
    TN_C_S("TN-C-S"),
    TT("TT");

    private final String word;

    Earthing(String word) {
      this.word = word;
    }

    /** The trade's word. */
    public String word() {
      return word;
    }

    /** Whether an earth fault returns by metal all the way. */
    public boolean tn() {
      return this != TT;
    }
  }

  /** Who owns the supply: decides the limits of voltage drop. */
  public enum Ownership {
    PUBLIC,
    PRIVATE
  }

  /** What a loop impedance rests on. */
  public enum Basis {
    DECLARED,
    MEASURED_COLD,
    CALCULATED_HOT,
    /** Computed with figures that stand in for ones not stated. */
    ESTIMATED,
    TYPICAL
  }

  /**
   * Greatest fault currents by kind of fault, A; null where not stated.
   *
   * @param threePhaseA between three lines
   * @param twoPhaseA between two lines
   * @param lineToNeutralA between line and neutral
   * @param lineToEarthA between line and earth
   */
  public record FaultCurrents(
      Double threePhaseA, Double twoPhaseA, Double lineToNeutralA, Double lineToEarthA) {}

  /**
   * A transformer and what is before it.
   *
   * @param transformer the transformer; null where none is stated
   * @param grid the network before it; null where it is not stated
   * @param voltageTolerancePercent greatest deviation of the voltage from its nominal value, %
   */
  public record Source(Transformer transformer, Grid grid, Double voltageTolerancePercent) {}

  /** The same supply with other loop impedance; what depends on none of the rest stays. */
  public Supply withLoopImpedance(double ohm) {
    return new Supply(
        point,
        earthing,
        phases,
        lineToEarthVoltageV,
        frequencyHz,
        ownership,
        basis,
        ohm,
        loopReactanceOhm,
        originLoopImpedanceOhm,
        lineToNeutralLoopImpedanceOhm,
        lineToNeutralLoopReactanceOhm,
        maximumFaultCurrentA,
        faultCurrents,
        instrumentUncertaintyPercent,
        voltageDropPercent,
        earthElectrodeResistanceOhm,
        openPenProtection,
        localGeneration,
        source);
  }

  /** The same supply with another greatest fault current of any kind. */
  public Supply withMaximumFaultCurrent(double ampere) {
    return new Supply(
        point,
        earthing,
        phases,
        lineToEarthVoltageV,
        frequencyHz,
        ownership,
        basis,
        loopImpedanceOhm,
        loopReactanceOhm,
        originLoopImpedanceOhm,
        lineToNeutralLoopImpedanceOhm,
        lineToNeutralLoopReactanceOhm,
        ampere,
        faultCurrents,
        instrumentUncertaintyPercent,
        voltageDropPercent,
        earthElectrodeResistanceOhm,
        openPenProtection,
        localGeneration,
        source);
  }

  /** The same supply with its loop impedance resting on something else. */
  public Supply withBasis(Basis other) {
    return new Supply(
        point,
        earthing,
        phases,
        lineToEarthVoltageV,
        frequencyHz,
        ownership,
        other,
        loopImpedanceOhm,
        loopReactanceOhm,
        originLoopImpedanceOhm,
        lineToNeutralLoopImpedanceOhm,
        lineToNeutralLoopReactanceOhm,
        maximumFaultCurrentA,
        faultCurrents,
        instrumentUncertaintyPercent,
        voltageDropPercent,
        earthElectrodeResistanceOhm,
        openPenProtection,
        localGeneration,
        source);
  }

  /** The same supply with a permitted measure against a broken PEN conductor. */
  public Supply withOpenPenProtection() {
    return new Supply(
        point,
        earthing,
        phases,
        lineToEarthVoltageV,
        frequencyHz,
        ownership,
        basis,
        loopImpedanceOhm,
        loopReactanceOhm,
        originLoopImpedanceOhm,
        lineToNeutralLoopImpedanceOhm,
        lineToNeutralLoopReactanceOhm,
        maximumFaultCurrentA,
        faultCurrents,
        instrumentUncertaintyPercent,
        voltageDropPercent,
        earthElectrodeResistanceOhm,
        true,
        localGeneration,
        source);
  }
}
