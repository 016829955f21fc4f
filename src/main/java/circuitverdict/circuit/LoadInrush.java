package circuitverdict.circuit;

import java.util.List;

/**
 * What a load draws when it starts or is switched on.
 *
 * @param starting how a motor is started
 * @param currentMultiple starting current of one over its rated current, both r.m.s.; of loads that
 *     do not hold it the greatest peak over √2
 * @param peakCurrentA greatest peak of one, A
 * @param durationS how long the starting current flows, or the half-value time of a pulse, s
 * @param countLimits the maker's greatest number of items on one device
 */
public record LoadInrush(
    Starting starting,
    Double currentMultiple,
    Double peakCurrentA,
    Double durationS,
    List<CountLimit> countLimits) {

  /** How a motor is started. */
  public enum Starting {
    DIRECT_ON_LINE,
    STAR_DELTA,
    SOFT_STARTER,
    CONVERTER
  }

  /**
   * The maker's greatest number of items on one device.
   *
   * @param characteristic letter of the device
   * @param ratedCurrentA its rated current, A
   * @param count greatest number
   */
  public record CountLimit(String characteristic, double ratedCurrentA, int count) {}

  /** Whether anything is stated of the current itself. */
  public boolean stated() {
    return starting != null || currentMultiple != null || peakCurrentA != null || durationS != null;
  }
}
