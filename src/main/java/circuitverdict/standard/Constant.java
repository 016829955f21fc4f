package circuitverdict.standard;

/**
 * Single values that rules cannot do without, each named by its table and key. Every edition must
 * hold them all, or say that it is without their table: one that does neither stops the start of
 * the service.
 */
public enum Constant {
  ADDITIONAL_PROTECTION_ALTERNATING_FIXED_ONLY("additional-protection", "alternating-fixed-only"),
  ADDITIONAL_PROTECTION_ARC_FAULT("additional-protection", "arc-fault"),
  ADDITIONAL_PROTECTION_LONGEST_TIME("additional-protection", "longest-time"),
  ADDITIONAL_PROTECTION_LUMINAIRES_DOMESTIC("additional-protection", "luminaires-domestic"),
  ADDITIONAL_PROTECTION_MOBILE_OUTDOORS_GREATEST_CURRENT(
      "additional-protection", "mobile-outdoors-greatest-current"),
  ADDITIONAL_PROTECTION_RESIDUAL_OPERATING_CURRENT(
      "additional-protection", "residual-operating-current"),
  ADDITIONAL_PROTECTION_SOCKET_GREATEST_CURRENT("additional-protection", "socket-greatest-current"),
  ADDITIONAL_PROTECTION_STANDING_SHARE("additional-protection", "standing-share"),
  ADDITIONAL_PROTECTION_TEST_MULTIPLE("additional-protection", "test-multiple"),
  ADIABATIC_LONGEST("adiabatic", "longest"),
  ADJUSTABLE_TESTS_CONVENTIONAL_NON_TRIPPING("adjustable-tests", "conventional-non-tripping"),
  ADJUSTABLE_TESTS_CONVENTIONAL_TRIPPING("adjustable-tests", "conventional-tripping"),
  ADJUSTABLE_TESTS_INSTANTANEOUS("adjustable-tests", "instantaneous"),
  ADJUSTABLE_TESTS_MAGNETIC_TOLERANCE("adjustable-tests", "magnetic-tolerance"),
  ASSEMBLY_CONDITIONAL_GREATEST_CURRENT("assembly-conditional", "greatest-current"),
  ASSEMBLY_CONDITIONAL_GREATEST_FUSE("assembly-conditional", "greatest-fuse"),
  ASSEMBLY_UNTRIED_CURRENT("assembly-untried", "current"),
  BREAKER_TESTS_CONVENTIONAL_NON_TRIPPING("breaker-tests", "conventional-non-tripping"),
  BREAKER_TESTS_CONVENTIONAL_TRIPPING("breaker-tests", "conventional-tripping"),
  BREAKER_TESTS_DRAWN_ASYMPTOTE("breaker-tests", "drawn-asymptote"),
  BREAKER_TESTS_GREATEST_CAPACITY("breaker-tests", "greatest-capacity"),
  BREAKER_TESTS_GREATEST_RATED_CURRENT("breaker-tests", "greatest-rated-current"),
  BREAKER_TESTS_GREATEST_VOLTAGE("breaker-tests", "greatest-voltage-between-phases"),
  BREAKER_TESTS_INSTANTANEOUS("breaker-tests", "instantaneous"),
  BREAKER_TESTS_THERMAL_EARLIEST("breaker-tests", "thermal-earliest"),
  BREAKER_TESTS_THERMAL_TEST("breaker-tests", "thermal-test"),
  DISCONNECTION_SCOPE_FINAL_FIXED_ONLY("disconnection-scope", "final-fixed-only"),
  DISCONNECTION_SCOPE_FINAL_WITH_SOCKET_OUTLET("disconnection-scope", "final-with-socket-outlet"),
  DISCONNECTION_SCOPE_OTHER_TN("disconnection-scope", "other/TN"),
  DISCONNECTION_SCOPE_OTHER_TT("disconnection-scope", "other/TT"),
  GROUP_NOTES_LIGHT_LOAD("group-notes", "light-load"),
  GROUP_OVERLOAD_LOAD_SHARE("group-overload", "load-share"),
  INRUSH_DISCHARGE_FUSE("inrush-guidance", "discharge-fuse"),
  LAMP_INPUT_DISCHARGE("lamp-input", "discharge"),
  INSULATION_RANGE_LARGEST_CSA("insulation-range", "largest-csa"),
  INSULATION_RANGE_LONGEST("insulation-range", "longest"),
  LEAST_LINE_SIZE_LIGHTING("least-line-size", "lighting"),
  LEAST_LINE_SIZE_POWER("least-line-size", "power"),
  LEAST_PROTECTIVE_SIZE_PROTECTED("least-protective-size", "protected"),
  LEAST_PROTECTIVE_SIZE_UNPROTECTED("least-protective-size", "unprotected"),
  LEAST_REACTANCE("reactance", "least-per-conductor"),
  LEAST_RESISTANCE_SHARE("least-of-conductor", "share"),
  LENGTH_ALLOWANCE_GREATEST("length-allowance", "greatest"),
  LENGTH_ALLOWANCE_PER_METRE("length-allowance", "per-metre"),
  LENGTH_ALLOWANCE_THRESHOLD("length-allowance", "threshold"),
  OVERLOAD_FACTORS_BURIED("overload-factors", "buried"),
  OVERLOAD_FACTORS_CONVENTIONAL("overload-factors", "conventional"),
  OVERLOAD_FACTORS_REWIREABLE("overload-factors", "rewireable"),
  REACTANCE_PER_CONDUCTOR("reactance", "per-conductor"),
  REACTANCE_RESISTIVE_UP_TO("reactance", "resistive-up-to"),
  READINGS_INSULATION_LEAST("readings", "insulation-least"),
  READINGS_RING_TOLERANCE("readings", "ring-tolerance"),
  RESIDUAL_CAPACITY_LEAST_MAKING_BREAKING("residual-capacity", "least-making-breaking"),
  RESISTIVITY_ALUMINIUM("least-of-conductor", "resistivity/aluminium"),
  RESISTIVITY_COPPER("least-of-conductor", "resistivity/copper"),
  RESISTIVITY_LEAD("least-of-conductor", "resistivity/lead"),
  RESISTIVITY_STEEL("least-of-conductor", "resistivity/steel"),
  RING_CIRCUIT_ACCESSORY_RATING("ring-circuit", "accessory-rating"),
  RING_CIRCUIT_LEAST_CSA("ring-circuit", "least-csa"),
  RING_CIRCUIT_LEAST_CSA_MINERAL("ring-circuit", "least-csa-mineral"),
  RING_CIRCUIT_LEAST_RATING("ring-circuit", "least-rating"),
  RING_CIRCUIT_RATING_30("ring-circuit", "rating-30"),
  RING_CIRCUIT_RATING_32("ring-circuit", "rating-32"),
  SELECTIVITY_PRE_ARCING_TIME("selectivity", "pre-arcing-time"),
  SELECTIVITY_RESIDUAL_NON_OPERATING("selectivity", "residual-non-operating"),
  SELECTIVITY_RESIDUAL_RATIO("selectivity", "residual-ratio"),
  SHORT_CIRCUIT_GRID_RATIO("short-circuit", "grid-ratio"),
  SHORT_CIRCUIT_MEDIUM_VOLTAGE_FROM("short-circuit", "medium-voltage-from"),
  SHORT_CIRCUIT_MEDIUM_VOLTAGE_GREATEST("short-circuit", "medium-voltage-greatest"),
  SHORT_CIRCUIT_MEDIUM_VOLTAGE_LEAST("short-circuit", "medium-voltage-least"),
  SHORT_CIRCUIT_PEAK_CONSTANT("short-circuit", "peak-constant"),
  SHORT_CIRCUIT_PEAK_DECAY("short-circuit", "peak-decay"),
  SHORT_CIRCUIT_PEAK_EXPONENTIAL("short-circuit", "peak-exponential"),
  SHORT_CIRCUIT_TOLERANCE("short-circuit", "tolerance"),
  SHORT_CIRCUIT_TRANSFORMER_LEAST("short-circuit", "transformer-least"),
  SHORT_CIRCUIT_TRANSFORMER_REACTANCE("short-circuit", "transformer-reactance"),
  SHORT_CIRCUIT_TRANSFORMER_SHARE("short-circuit", "transformer-share"),
  STANDING_CURRENT_HIGH("standing-current", "high"),
  STANDING_CURRENT_HIGH_CSA("standing-current", "high-csa"),
  STANDING_CURRENT_MODERATE("standing-current", "moderate"),
  SUPPLY_TYPICAL_FAULT_CURRENT_SINGLE_PHASE("supply-typical", "fault-current/single-phase"),
  TEMPERATURE_OPERATING_TEMPERATURE_THERMOSETTING_90(
      "temperature", "operating-temperature/thermosetting-90"),
  TEMPERATURE_REFERENCE_AMBIENT_AIR("temperature", "reference-ambient-air"),
  TEMPERATURE_REFERENCE_AMBIENT_GROUND("temperature", "reference-ambient-ground"),
  TEMPERATURE_REFERENCE_DEPTH("temperature", "reference-depth"),
  TEMPERATURE_REFERENCE_SOIL_RESISTIVITY("temperature", "reference-soil-resistivity"),
  TEMPERATURE_REFERENCE_TEMPERATURE("temperature", "reference-temperature"),
  TEMPERATURE_RESISTANCE_COEFFICIENT("temperature", "resistance-coefficient"),
  TEMPERATURE_SEPARATE_PROTECTIVE_CONDUCTOR("temperature", "separate-protective-conductor"),
  THIRD_HARMONIC_ASSUMED_QUOTATION("third-harmonic-assumed", "quotation"),
  CMAX("voltage", "cmax"),
  CMIN("voltage", "cmin"),
  COLD_LOOP_CORRECTION("voltage", "cold-loop-correction"),
  COLD_READING("voltage", "cold-reading"),
  FREQUENCY("voltage", "frequency"),
  NOMINAL_LINE_TO_EARTH("voltage", "nominal-line-to-earth"),
  NOMINAL_LINE_TO_LINE("voltage", "nominal-line-to-line"),
  THREE_PHASE_FROM_LINE_NEUTRAL("voltage", "three-phase-from-line-neutral"),
  TOUCH_VOLTAGE("voltage", "touch-voltage"),
  VOLTAGE_DROP_CORRECTION_BASE("voltage-drop-correction", "base"),
  VOLTAGE_DROP_CORRECTION_REFERENCE("voltage-drop-correction", "reference");

  private final String table;
  private final String key;

  Constant(String table, String key) {
    this.table = table;
    this.key = key;
  }

  String table() {
    return table;
  }

  String key() {
    return key;
  }
}
