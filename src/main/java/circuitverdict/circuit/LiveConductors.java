package circuitverdict.circuit;

/**
 * The live conductors of a circuit.
 *
 * @param lines one, two or three line conductors
 * @param neutral whether there is a neutral
 */
public record LiveConductors(int lines, boolean neutral) {

  /** Those of a circuit: as stated, line and neutral on a single-phase supply; else null. */
  public static LiveConductors of(Circuit circuit) {
    Integer phases = circuit.supply().phases();
    boolean single = phases != null && phases == 1;
    return circuit.live() == null && single ? new LiveConductors(1, true) : circuit.live();
  }

  /** Whether the circuit is three-phase. */
  public boolean threePhase() {
    return lines == 3;
  }

  /** Loaded conductors by which the rating tables are read: two or three. */
  public int loaded() {
    return lines + (neutral ? 1 : 0) >= 3 ? 3 : 2;
  }

  /** All live conductors. */
  public int count() {
    return lines + (neutral ? 1 : 0);
  }
}
