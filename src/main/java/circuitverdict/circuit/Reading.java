package circuitverdict.circuit;

import java.util.List;

/**
 * What the tester wrote down (BS 7671 part 6); null where not stated.
 *
 * @param place JSON pointer of the reading
 * @param kind what was measured
 * @param between the conductors between which it was measured
 * @param where where it was measured
 * @param resistanceOhm resistance or impedance, Ω
 * @param currentA prospective fault current, A
 * @param timeS trip time, s
 * @param satisfactory result of a test without a figure
 * @param testMultiple test current over IΔn
 * @param conductorTemperatureC temperature of the conductors during the test, °C
 * @param uncertaintyPercent uncertainty of the instrument, %
 */
public record Reading(
    String place,
    Kind kind,
    List<String> between,
    String where,
    Double resistanceOhm,
    Double currentA,
    Double timeS,
    Boolean satisfactory,
    Double testMultiple,
    Double conductorTemperatureC,
    Double uncertaintyPercent) {

  /** What was measured. */
  public enum Kind {
    LOOP_IMPEDANCE,
    R1_PLUS_R2,
    R2,
    RING_R1,
    RING_RN,
    RING_R2,
    INSULATION,
    FAULT_CURRENT,
    RESIDUAL_TRIP_TIME,
    POLARITY,
    EARTH_ELECTRODE
  }

  /** Whether it was taken from a line conductor to the protective one, as far as is stated. */
  public boolean lineToProtective() {
    return between.isEmpty()
        || between.size() == 2
            && between.contains("PE")
            && between.stream().anyMatch(name -> name.startsWith("L"));
  }

  /** Whether it was taken where the installation begins: Ze. */
  public boolean atOrigin() {
    return "origin".equalsIgnoreCase(where);
  }

  /** Whether it was taken at the board that feeds the circuit. */
  public boolean atBoard() {
    return "board".equalsIgnoreCase(where);
  }
}
