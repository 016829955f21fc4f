package circuitverdict.check;

import java.util.List;
import java.util.Locale;

/** The checks, in the order in which their findings stand. */
public enum CheckName {
  OVERLOAD_PROTECTION(
      "Overload protection", "The device carries the load and protects the conductors."),
  CONDUCTOR_RATING("Conductor rating", "The conductors carry the device's current as installed."),
  VOLTAGE_DROP("Voltage drop", "The voltage drop from the origin stays within the limit."),
  EARTH_FAULT_DISCONNECTION(
      "Earth fault disconnection", "An earth fault is disconnected in the time allowed."),
  BREAKING_CAPACITY(
      "Breaking capacity", "The device can break the greatest fault current where it sits."),
  LET_THROUGH_ENERGY(
      "Let-through energy", "The live conductors stand what the device lets through."),
  PROTECTIVE_CONDUCTOR(
      "Protective conductor",
      "The protective conductor stands an earth fault and is large enough."),
  SELECTIVITY("Selectivity", "Only this device opens on a fault beyond it, not the one upstream."),
  INRUSH("Inrush", "The device does not trip when the load starts; reported."),
  ADDITIONAL_PROTECTION(
      "Additional protection",
      "Residual current and arc fault devices are fitted where they are owed, of the right type."),
  EARTHING_ARRANGEMENT("Earthing arrangement", "The earthing arrangement suits what is supplied."),
  DEVICE_SUITABILITY(
      "Device suitability", "The device suits the users, the voltage, the place and the circuit."),
  COMMISSIONING("Commissioning", "What the tester should read; informative."),
  BOARD_DEMAND(
      "Demand of the board",
      "What stands before the circuits of a board, or shared by some, carries what they draw."),
  ASSEMBLY_RATING(
      "Rating of the assembly",
      "The fault current and the fuse before an assembly are within its conditional rating."),
  RESIDUAL_GROUPING(
      "Residual current grouping",
      "Standing currents behind a shared residual current device stay well below its operating"
          + " current.");

  private final String title;
  private final String question;

  CheckName(String title, String question) {
    this.title = title;
    this.question = question;
  }

  /** Those of a circuit: the rest are of a board. */
  public static List<CheckName> ofCircuits() {
    return List.of(values()).subList(0, BOARD_DEMAND.ordinal());
  }

  /** The contract's word. */
  public String word() {
    return WORDS[ordinal()];
  }

  /** Title for sentences. */
  public String title() {
    return title;
  }

  /** What the check shows. */
  public String question() {
    return question;
  }

  private static final String[] WORDS = new String[values().length];

  static {
    for (CheckName name : values()) {
      WORDS[name.ordinal()] = name.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
