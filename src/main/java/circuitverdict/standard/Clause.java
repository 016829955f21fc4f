package circuitverdict.standard;

/**
 * Rules by name; each edition says which of its clauses holds them. Every edition must name them
 * all: one that does not stops the start of the service.
 */
public enum Clause {
  ADDITIONAL_PROTECTION("additional-protection"),
  ARC_FAULT("arc-fault"),
  AUTOMATIC_DISCONNECTION("automatic-disconnection"),
  BATH_OR_SHOWER("bath-or-shower"),
  BOAT_EARTHING("boat-earthing"),
  BREAKING_CAPACITY("breaking-capacity"),
  CARAVAN_EARTHING("caravan-earthing"),
  CHARGING_EARTHING("charging-earthing"),
  CHARGING_POLES("charging-poles"),
  CHARGING_RESIDUAL("charging-residual"),
  COMBINED_DEVICE("combined-device"),
  CONCEALED_CABLES("concealed-cables"),
  CONDITIONAL_RATING("conditional-rating"),
  CONSTRUCTION_EARTHING("construction-earthing"),
  DEVICE_IN_ASSEMBLY("device-in-assembly"),
  DEVICE_POLES("device-poles"),
  DEVICE_SURROUNDINGS("device-surroundings"),
  DEVICE_USERS("device-users"),
  DEVICE_VOLTAGE("device-voltage"),
  DISCONNECTION_TIMES("disconnection-times"),
  DISCONNECTION_TT("disconnection-tt"),
  DISCONNECTION_TT_OVERCURRENT("disconnection-tt-overcurrent"),
  EARTHING("earthing"),
  EARTHING_TT("earthing-tt"),
  INRUSH("inrush"),
  INSPECTION("inspection"),
  ISOLATING_DEVICES("isolating-devices"),
  ISOLATION("isolation"),
  LEAST_SIZE("least-size"),
  LET_THROUGH("let-through"),
  LUMINAIRES("luminaires"),
  MAXIMUM_DEMAND("maximum-demand"),
  MEASURED_READINGS("measured-readings"),
  METALLIC_PARTITIONS("metallic-partitions"),
  MOTOR("motor"),
  NEUTRAL_SIZE("neutral-size"),
  OVERLOAD("overload"),
  OVERLOAD_BURIED("overload-buried"),
  OVERLOAD_DEEMED("overload-deemed"),
  OVERLOAD_OMISSION("overload-omission"),
  OVERLOAD_REWIREABLE("overload-rewireable"),
  POWER_DIRECTION("power-direction"),
  PROTECTIVE_CONDUCTOR("protective-conductor"),
  PROTECTIVE_LEAST("protective-least"),
  PROTECTIVE_TABLE("protective-table"),
  RATING("rating"),
  RATING_APPENDIX("rating-appendix"),
  RESIDUAL_DEVICE_PROTECTION("residual-device-protection"),
  RESIDUAL_TYPE("residual-type"),
  RING("ring"),
  SAUNA("sauna"),
  SELECTIVITY("selectivity"),
  SELECTIVITY_RESIDUAL("selectivity-residual"),
  SOCKET_OUTLETS("socket-outlets"),
  STANDING_CURRENT("standing-current"),
  STANDING_RESIDUAL("standing-residual"),
  SWIMMING_POOL("swimming-pool"),
  TERMINALS("terminals"),
  VOLTAGE_DROP("voltage-drop"),
  VOLTAGE_DROP_APPENDIX("voltage-drop-appendix");

  private final String rule;

  Clause(String rule) {
    this.rule = rule;
  }

  String rule() {
    return rule;
  }
}
