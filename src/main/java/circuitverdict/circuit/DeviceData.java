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
 * @param operatingTimes points of its maker's time–current curve, rising in current
 * @param nameplate what it is made for besides
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
    List<Declared> selectivity,
    List<OperatingTime> operatingTimes,
    Nameplate nameplate) {

  /** A device of which nothing else is stated. */
  public DeviceData(
      String place,
      String id,
      String standard,
      Double ratedCurrentA,
      Double breakingCapacityA,
      Double serviceBreakingCapacityA,
      Integer poles,
      Boolean currentLimiting,
      Residual residual,
      List<LetThroughPoint> letThrough) {
    this(
        place,
        id,
        standard,
        ratedCurrentA,
        breakingCapacityA,
        serviceBreakingCapacityA,
        poles,
        currentLimiting,
        residual,
        null,
        letThrough,
        List.of(),
        List.of(),
        Nameplate.NONE);
  }

  /** The same device of another rated current. */
  public DeviceData withRatedCurrent(double ampere) {
    return with(ampere, breakingCapacityA, poles, nameplate);
  }

  /** The same device of another breaking capacity. */
  public DeviceData withBreakingCapacity(double ampere) {
    return with(ratedCurrentA, ampere, poles, nameplate);
  }

  /** The same device of other poles, and what its face says with them. */
  public DeviceData withPoles(Integer count, Nameplate face) {
    return with(ratedCurrentA, breakingCapacityA, count, face);
  }

  /** The same device with another residual current function. */
  public DeviceData withResidual(Residual other) {
    return with(ratedCurrentA, breakingCapacityA, poles, other, nameplate);
  }

  private DeviceData with(Double rated, Double capacity, Integer count, Nameplate face) {
    return with(rated, capacity, count, residual, face);
  }

  private DeviceData with(
      Double rated, Double capacity, Integer count, Residual function, Nameplate face) {
    return new DeviceData(
        place,
        id,
        standard,
        rated,
        capacity,
        serviceBreakingCapacityA,
        count,
        currentLimiting,
        function,
        arcFaultDetection,
        letThrough,
        selectivity,
        operatingTimes,
        face);
  }

  /**
   * One point of the maker's let-through curve.
   *
   * @param prospectiveCurrentA prospective current, A
   * @param energyA2s energy let through, A²s
   */
  public record LetThroughPoint(double prospectiveCurrentA, double energyA2s) {}

  /**
   * One point of the maker's time–current curve, from cold.
   *
   * @param place JSON pointer of the point
   * @param currentA current, A
   * @param earliestS it does not operate before this time, s; null where not stated
   * @param latestS it has operated by this time, s; null where not stated
   */
  public record OperatingTime(String place, double currentA, Double earliestS, Double latestS) {}

  /**
   * Up to which current its maker declares that only this device opens.
   *
   * @param upstreamId the caller's name for the device upstream
   * @param limitCurrentA up to this current, A
   */
  public record Declared(String upstreamId, double limitCurrentA) {}
}
