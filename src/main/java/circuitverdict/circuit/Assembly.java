package circuitverdict.circuit;

/**
 * The assembly that houses the device.
 *
 * @param standard its standard, the contract's word
 * @param conditionalRatingA conditional short-circuit rating, A
 * @param maximumUpstreamFuseA greatest fuse before it, A
 * @param deviceDeclared whether its maker declares the device for it
 */
public record Assembly(
    String standard,
    Double conditionalRatingA,
    Double maximumUpstreamFuseA,
    Boolean deviceDeclared) {}
