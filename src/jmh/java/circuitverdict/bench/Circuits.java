package circuitverdict.bench;

import circuitverdict.support.Scenario;

/** The circuits that are measured. */
final class Circuits {
  private static final String MOTOR =
      """
      {
        "edition": "bs7671-2018-a4",
        "stage": "design",
        "reference": "MCC/3 spiral mixer",
        "supply": {
          "point": "board", "earthing": "TN-S", "phases": 3, "lineToEarthVoltageV": 230,
          "ownership": "public", "basis": "calculated-hot",
          "loopImpedanceOhm": 0.35, "lineToNeutralLoopImpedanceOhm": 0.2,
          "maximumFaultCurrentA": 6200,
          "faultCurrents": {
            "threePhase": {"maximumA": 6200},
            "lineToNeutral": {"maximumA": 3400},
            "lineToEarth": {"maximumA": 1900}
          },
          "voltageDropPercent": 0.6
        },
        "liveConductors": ["L1", "L2", "L3"],
        "load": {
          "kind": "motor", "use": "other", "designCurrentA": 15.2, "powerFactor": 0.82,
          "connection": "fixed"
        },
        "cable": {
          "construction": "armoured-multicore", "conductor": "copper",
          "insulation": "thermosetting-90", "lineCsaMm2": 2.5,
          "protectiveMeans": "armour", "protectiveConductor": "steel",
          "armourAreaMm2": 20, "armourResistanceOhmPerKm": 8.2,
          "lengthM": 35, "arrangement": "radial",
          "installation": {
            "referenceMethod": "E", "ambientTemperatureC": 35,
            "groupedCircuits": 2, "groupArrangement": "touching"
          }
        },
        "device": {
          "standard": "IEC 60898-1", "characteristic": "C", "ratedCurrentA": 20,
          "breakingCapacityA": 10000, "energyClass": 3, "poles": 3
        },
        "premises": {"locations": []}
      }
      """;

  private Circuits() {}

  /** A single-phase cooking circuit on flat twin and earth; it complies. */
  static Scenario oven() {
    return Scenario.oven();
  }

  /** The same much too long, at a poor loop: two checks fail and remedies are looked for. */
  static Scenario failingOven() {
    return oven().with("/cable/lengthM", 70).with("/supply/loopImpedanceOhm", 0.8);
  }

  /** A three-phase motor on armoured cable, the armour its protective conductor. */
  static Scenario motor() {
    return Scenario.of(MOTOR);
  }

  /** The same on a type D breaker with a loop that is too great. */
  static Scenario failingMotor() {
    return motor().with("/device/characteristic", "D").with("/supply/loopImpedanceOhm", 0.6);
  }

  /** The circuit with this name. */
  static Scenario named(String name) {
    return switch (name) {
      case "oven" -> oven();
      case "failing-oven" -> failingOven();
      case "motor" -> motor();
      case "failing-motor" -> failingMotor();
      default -> throw new IllegalArgumentException("no circuit is called " + name);
    };
  }
}
