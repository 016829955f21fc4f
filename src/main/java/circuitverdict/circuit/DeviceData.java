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
 * @param letThrough the maker's let-through points, rising in current
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
    List<LetThroughPoint> letThrough,
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
        letThrough,
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

  private DeviceData with(Double rated, Double capacity, Integer count, Nameplate face) {
    return new DeviceData(
        place,
        id,
        standard,
        rated,
        capacity,
        serviceBreakingCapacityA,
        count,
        currentLimiting,
        residual,
        letThrough,
        face);
  }

  /**
   * One point of the maker's let-through curve.
   *
   * @param prospectiveCurrentA prospective current, A
   * @param energyA2s energy let through, A²s
   */
  public record LetThroughPoint(double prospectiveCurrentA, double energyA2s) {}
}
