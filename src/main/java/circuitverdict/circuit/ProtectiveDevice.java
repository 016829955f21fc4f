package circuitverdict.circuit;

/** A protective device as described; how it behaves is told by the package {@code device}. */
public sealed interface ProtectiveDevice {

  /** What every device may say of itself. */
  DeviceData data();

  /**
   * Circuit-breaker to IEC 60898-1, or RCBO to IEC 61009-1 where it has a residual function.
   *
   * @param data common data
   * @param characteristic B, C or D, or a letter whose limits are stated; null where not stated
   * @param energyClass energy limiting class 1 to 3; null where not stated
   * @param multiples magnetic limits stated with the device; null where not stated
   */
  record Breaker(DeviceData data, String characteristic, Integer energyClass, Multiples multiples)
      implements ProtectiveDevice {}

  /**
   * Magnetic limits as multiples of In, tolerance included.
   *
   * @param lower lower limit; null where not stated
   * @param upper upper limit; null where not stated
   */
  record Multiples(Double lower, Double upper) {
    /** No limits stated. */
    public static final Multiples NONE = new Multiples(null, null);
  }

  /**
   * Circuit-breaker to IEC 60947-2.
   *
   * @param data common data
   * @param characteristic its letter, told for the record; its magnetic limits are never assumed
   * @param multiples magnetic limits stated with the device
   * @param settings its settings
   */
  record AdjustableBreaker(
      DeviceData data, String characteristic, Multiples multiples, Settings settings)
      implements ProtectiveDevice {}

  /**
   * Fuse to BS 88-2, BS 88-3, BS 1361, BS 1362 or BS 3036.
   *
   * @param data common data
   * @param utilizationCategory gG, gM or aM; null where not stated
   */
  record Fuse(DeviceData data, String utilizationCategory) implements ProtectiveDevice {}

  /**
   * RCCB to IEC 61008-1: breaks residual currents only.
   *
   * @param data common data
   * @param makingBreakingA residual making and breaking capacity IΔm, A; null where not stated
   * @param conditionalA rated conditional short-circuit current Inc, A; null where not stated
   */
  record Rccb(DeviceData data, Double makingBreakingA, Double conditionalA)
      implements ProtectiveDevice {}

  /**
   * A device whose standard is not stated, or that this version does not judge.
   *
   * @param data common data
   */
  record Other(DeviceData data) implements ProtectiveDevice {}

  /**
   * Settings of an adjustable breaker.
   *
   * @param longTimeA Ir, A
   * @param shortTimeA Isd, A
   * @param shortTimeDelayS tsd, s
   * @param instantaneousA Ii, A
   */
  record Settings(
      Double longTimeA, Double shortTimeA, Double shortTimeDelayS, Double instantaneousA) {}
}
