package circuitverdict.circuit;

/**
 * The assembly that houses the device.
 *
 * @param described whether the request speaks of it at all
 * @param standard its standard, the contract's word
 * @param conditionalRatingA conditional short-circuit rating, A
 * @param maximumUpstreamFuseA greatest fuse before it, A
 * @param ambientTemperatureC temperature of the air in it, °C
 * @param relativeHumidityPercent relative humidity of that air, %
 * @param deviceDeclared whether its maker declares the device for it
 */
public record Assembly(
    boolean described,
    String standard,
    Double conditionalRatingA,
    Double maximumUpstreamFuseA,
    Double ambientTemperatureC,
    Double relativeHumidityPercent,
    Boolean deviceDeclared) {}
