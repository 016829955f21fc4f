package circuitverdict.circuit;

import java.util.List;

/**
 * What every protective device may say of itself.
 *
 * @param place JSON pointer of the device in the request
 * @param id the caller's name for it
 * @param standard product standard, the contract's word
 * @param ratedCurrentA In, A
 * @param breakingCapacityA Icn or Icu, A
 * @param serviceBreakingCapacityA Ics, A
 * @param poles poles
 * @param currentLimiting whether its maker declares it current-limiting
 * @param residual its residual current function, or null
 * @param arcFaultDetection whether it detects arc faults; null where not stated
 * @param letThrough the maker's let-through points, rising in current
 * @param selectivity up to which currents its maker declares that it opens alone
 */
public record DeviceData(
    String place,
    String id,
    String standard,
    Double ratedCurrentA,
    Double breakingCapacityA,
    Double serviceBreakingCapacityA,
    Integer poles,
    Boolean currentLimiting,
    Residual residual,
    Boolean arcFaultDetection,
    List<LetThroughPoint> letThrough,
    List<Declared> selectivity) {

  /**
   * One point of the maker's let-through curve.
   *
   * @param prospectiveCurrentA prospective current, A
   * @param energyA2s energy let through, A²s
   */
  public record LetThroughPoint(double prospectiveCurrentA, double energyA2s) {}

  /**
   * Up to which current its maker declares that only this device opens.
   *
   * @param upstreamId the caller's name for the device upstream
   * @param limitCurrentA up to this current, A
   */
  public record Declared(String upstreamId, double limitCurrentA) {}
}
