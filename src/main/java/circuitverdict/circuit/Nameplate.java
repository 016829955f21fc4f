package circuitverdict.circuit;

import java.util.List;

/**
 * What a device is made for besides its currents, as its face and its maker say. Whether it suits
 * the place and the people is judged by it.
 *
 * @param ratedVoltageV rated voltage Ue, between lines where it names two, V
 * @param ratedLineToEarthVoltageV the lesser of two rated voltages, line to earth, V
 * @param protectedPoles poles with an overcurrent release
 * @param isolation whether it is suitable for isolation
 * @param unidirectional whether it may be supplied from one side only
 * @param referenceTemperatureC ambient temperature at which it carries In, °C
 * @param derating the maker's derating, rising in temperature
 */
public record Nameplate(
    Double ratedVoltageV,
    Double ratedLineToEarthVoltageV,
    Integer protectedPoles,
    Boolean isolation,
    Boolean unidirectional,
    Double referenceTemperatureC,
    List<DeratingPoint> derating) {

  /** Nothing stated. */
  public static final Nameplate NONE = new Nameplate(null, null, null, null, null, null, List.of());

  /** The same with other protected poles. */
  public Nameplate withProtectedPoles(Integer count) {
    return new Nameplate(
        ratedVoltageV,
        ratedLineToEarthVoltageV,
        count,
        isolation,
        unidirectional,
        referenceTemperatureC,
        derating);
  }

  /**
   * One point of the maker's derating.
   *
   * @param ambientTemperatureC ambient temperature, °C
   * @param factor part of In that the device carries there
   */
  public record DeratingPoint(double ambientTemperatureC, double factor) {}
}
