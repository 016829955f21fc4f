package circuitverdict.service.wire;

import java.util.Map;
import java.util.Set;

/** Members that are read of other devices than a circuit's own, by where the device stands. */
final class ReadOfDevices {
  static final String ITEM = "items";
  static final String UPSTREAM = "upstreamDevice";

  /** Of other devices than the circuit's own little is read; all else of them is told. */
  private static final Map<String, Set<String>> ALL_THAT_IS_READ =
      Map.of(
          "residualDevice",
          Set.of(
              "standard",
              "ratedCurrentA",
              "breakingCapacityA",
              "conditionalCapacityA",
              "residual",
              "residualMakingBreakingA",
              "arcFaultDetection",
              "poles",
              "isolation",
              "unidirectional",
              "markings",
              "features",
              "gtin"),
          "incomer",
          Set.of("standard", "poles", "isolation"),
          "upstreamDevice",
          Set.of(
              "id",
              "standard",
              "characteristic",
              "ratedCurrentA",
              "magneticMultiples",
              "breakingCapacityA",
              "serviceBreakingCapacityA",
              "utilizationCategory",
              "residual",
              "settings",
              "markings",
              "features",
              "gtin"),
          ITEM,
          Set.of(
              "id",
              "standard",
              "characteristic",
              "ratedCurrentA",
              "magneticMultiples",
              "markings",
              "features",
              "gtin",
              "utilizationCategory",
              "residual",
              "settings"),
          ITEM + "/residual",
          Set.of("operatingCurrentA", "delay", "delayS"),
          UPSTREAM + "/residual",
          Set.of("operatingCurrentA", "delay", "delayS"));

  private ReadOfDevices() {}

  /** What is read of the device of this name; null where that is all. */
  static Set<String> of(String device) {
    return ALL_THAT_IS_READ.get(device);
  }
}
