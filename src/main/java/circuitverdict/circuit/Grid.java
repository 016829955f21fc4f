package circuitverdict.circuit;

/**
 * The network before the transformer (IEC 60909-0, 6.2); null where not stated.
 *
 * @param nominalVoltageV nominal voltage, line to line, V
 * @param maximumShortCircuitPowerVA greatest short-circuit power, VA
 * @param minimumShortCircuitPowerVA least short-circuit power, VA
 * @param resistanceToReactanceRatio R/X
 */
public record Grid(
    Double nominalVoltageV,
    Double maximumShortCircuitPowerVA,
    Double minimumShortCircuitPowerVA,
    Double resistanceToReactanceRatio) {}
