/**
 * How protective devices behave, as far as their standards or their makers promise it.
 *
 * <p>What is known is mostly a bound: {@link circuitverdict.device.TripBand} gives the earliest and
 * the latest operating time promised for a current, {@link circuitverdict.device.LetThrough} the
 * least and the greatest energy over a range of currents. Infinity stands where nothing is
 * promised. Monotone step functions decide; the smooth curve is only drawn.
 */
package circuitverdict.device;
