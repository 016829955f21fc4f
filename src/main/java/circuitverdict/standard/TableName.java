package circuitverdict.standard;

/**
 * The tables that rules read, each named once. Every edition must hold them all, under this id or
 * one that it names for it, or say that it is without them: one that does neither stops the start
 * of the service. Only the tables of annexes B and G of IEC 60364-5-52 are of some editions alone.
 */
public enum TableName {
  ADJUSTABLE_TEST_TIMES("adjustable-test-times"),
  ARMOUR_RESISTANCE("armour-resistance"),
  BREAKER_TEST_TIMES("breaker-test-times"),
  CONDUCTOR_RESISTANCE("conductor-resistance"),
  CONVENTIONAL_CURRENTS("conventional-currents"),
  DEVICE_SUITABILITY("device-suitability"),
  ENERGY_GUIDANCE("energy-guidance"),
  ENERGY_LIMITS("energy-limits"),
  FLAT_TWIN_SIZES("flat-twin-sizes"),
  FUSE_BREAKING_CAPACITY("fuse-breaking-capacity"),
  FUSE_GATES("fuse-gates"),
  FUSE_OPERATING_CURRENTS("fuse-operating-currents"),
  FUSE_PRE_ARCING("fuse-pre-arcing"),
  FUSE_SELECTIVITY_POINTS("fuse-selectivity-points"),
  GUIDE_DEMAND("guide-demand"),
  INRUSH_TYPICAL("inrush-typical"),
  K_LIVE("k-live"),
  K_PROTECTIVE("k-protective"),
  MAGNETIC_BANDS("magnetic-bands"),
  MARKED_CAPACITIES("marked-capacities"),
  MARKETED_RATINGS("marketed-ratings"),
  OLD_BREAKER_CAPACITIES("old-breaker-capacities"),
  OVERLOAD_DEEMED("overload-deemed"),
  RESIDUAL_BREAK_TIMES("residual-break-times"),
  RESIDUAL_RATINGS("residual-ratings"),
  RESIDUAL_TYPES("residual-types"),
  SERVICE_CAPACITY("service-capacity"),
  STANDARD_CAPACITIES("standard-capacities"),
  STANDARD_RATINGS("standard-ratings"),
  SUPPLY_TYPICAL("supply-typical"),
  TABLE_41_1("41.1"),
  TABLE_41_3("41.3"),
  TABLE_41_5("41.5"),
  TABLE_4B1("4B1"),
  TABLE_4B2("4B2"),
  TABLE_4B3("4B3"),
  TABLE_4C1("4C1"),
  TABLE_4C2("4C2"),
  TABLE_4C3("4C3"),
  TABLE_4D1A("4D1A"),
  TABLE_4D1B("4D1B"),
  TABLE_4D2A("4D2A"),
  TABLE_4D2B("4D2B"),
  TABLE_4D4A("4D4A"),
  TABLE_4D5("4D5"),
  TABLE_4E1A("4E1A"),
  TABLE_4E1B("4E1B"),
  TABLE_4E2A("4E2A"),
  TABLE_4E4A("4E4A"),
  TABLE_4E4B("4E4B"),
  TABLE_52_2("52.2"),
  TABLE_54_7("54.7"),
  TABLE_B_52_2("B.52.2", Held.BY_SOME),
  TABLE_B_52_3("B.52.3", Held.BY_SOME),
  TABLE_B_52_4("B.52.4", Held.BY_SOME),
  TABLE_B_52_5("B.52.5", Held.BY_SOME),
  TABLE_B_52_10("B.52.10", Held.BY_SOME),
  TABLE_B_52_12("B.52.12", Held.BY_SOME),
  TEMPERATURE("temperature"),
  THIRD_HARMONIC("third-harmonic"),
  VOLTAGE_DROP_FORMULA("voltage-drop-formula", Held.BY_SOME),
  VOLTAGE_DROP_LIMITS("voltage-drop-limits"),
  VOLTAGE_FACTORS("voltage-factors");

  private enum Held {
    BY_ALL,
    BY_SOME
  }

  private final String id;
  private final Held held;

  TableName(String id) {
    this(id, Held.BY_ALL);
  }

  TableName(String id, Held held) {
    this.id = id;
    this.held = held;
  }

  /** Whether an edition that does not hold it must say so. */
  boolean heldByAll() {
    return held == Held.BY_ALL;
  }

  /** The name by which rules know the table, for instance {@code 41.1}. */
  public String id() {
    return id;
  }
}
