package circuitverdict.device.marking;

import java.util.HashMap;
import java.util.Map;

/**
 * Members of a device that its face can tell, each with the side on which it is safe where a mark
 * and the caller say different things of it.
 */
public enum DeviceMember {
  STANDARD("standard", Safe.NEITHER),
  CHARACTERISTIC("characteristic", Safe.NEITHER),
  RATED_CURRENT("ratedCurrentA", Safe.NEITHER),
  LOWER_MULTIPLE("magneticMultiples/lower", Safe.LESS),
  UPPER_MULTIPLE("magneticMultiples/upper", Safe.MORE),
  BREAKING_CAPACITY("breakingCapacityA", Safe.LESS),
  SERVICE_CAPACITY("serviceBreakingCapacityA", Safe.LESS),
  CONDITIONAL_CAPACITY("conditionalCapacityA", Safe.LESS),
  MAKING_BREAKING("residualMakingBreakingA", Safe.LESS),
  ENERGY_CLASS("energyClass", Safe.LESS),
  POLES("poles", Safe.NEITHER),
  PROTECTED_POLES("protectedPoles", Safe.LESS),
  VOLTAGE("ratedVoltageV", Safe.LESS),
  VOLTAGE_TO_EARTH("ratedLineToEarthVoltageV", Safe.LESS),
  CATEGORY("utilizationCategory", Safe.NEITHER),
  CHARACTERISTIC_CURRENT("characteristicCurrentA", Safe.NEITHER),
  RESIDUAL_CURRENT("residual/operatingCurrentA", Safe.NEITHER),
  RESIDUAL_TYPE("residual/type", Safe.NEITHER),
  RESIDUAL_DELAY("residual/delay", Safe.NEITHER),
  LONG_TIME("settings/longTimeA", Safe.NEITHER),
  LONG_TIME_DELAY("settings/longTimeDelayS", Safe.NEITHER),
  SHORT_TIME("settings/shortTimeA", Safe.NEITHER),
  SHORT_TIME_DELAY("settings/shortTimeDelayS", Safe.NEITHER),
  INSTANTANEOUS("settings/instantaneousA", Safe.NEITHER),
  ISOLATION("isolation", Safe.FALSE),
  ARC_FAULT("arcFaultDetection", Safe.FALSE),
  UNIDIRECTIONAL("unidirectional", Safe.TRUE),
  REFERENCE_TEMPERATURE("referenceTemperatureC", Safe.NEITHER);

  /** The safe side of two values of a member. */
  public enum Safe {
    /** The lesser of the two promises no more than either. */
    LESS,
    /** The greater does. */
    MORE,
    /** The function is not there. */
    FALSE,
    /** The restriction is there. */
    TRUE,
    /** What is worse for one check is better for another: neither counts. */
    NEITHER
  }

  private static final Map<String, DeviceMember> BY_PATH = new HashMap<>();

  static {
    for (DeviceMember member : values()) {
      BY_PATH.put(member.path, member);
    }
  }

  private final String path;
  private final Safe safe;

  DeviceMember(String path, Safe safe) {
    this.path = path;
    this.safe = safe;
  }

  /** Where it stands in the contract's Device, its parts joined by a stroke. */
  public String path() {
    return path;
  }

  /** The safe side of two values of it. */
  public Safe safe() {
    return safe;
  }

  /** The member of that path; null where there is none. */
  public static DeviceMember ofPath(String path) {
    return path == null ? null : BY_PATH.get(path);
  }
}
