package circuitverdict.circuit;

/**
 * The transformer that feeds the point, or several equal ones in parallel (IEC 60909-0, 6.3); null
 * where not stated.
 *
 * @param ratedPowerVA rated apparent power Sr of one, VA
 * @param primaryVoltageV rated primary voltage, line to line, V
 * @param secondaryVoltageV rated secondary voltage, line to line, V
 * @param impedanceVoltagePercent rated short-circuit voltage uk, %
 * @param loadLossW load loss at rated current, W
 * @param resistanceToReactanceRatio its R/X, in place of the loss
 * @param zeroSequenceImpedancePercent zero-sequence impedance, % on its own base
 * @param count how many in parallel
 */
public record Transformer(
    Double ratedPowerVA,
    Double primaryVoltageV,
    Double secondaryVoltageV,
    Double impedanceVoltagePercent,
    Double loadLossW,
    Double resistanceToReactanceRatio,
    Double zeroSequenceImpedancePercent,
    Integer count) {}
