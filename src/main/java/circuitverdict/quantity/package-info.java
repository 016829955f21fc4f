/**
 * Symbols, units and the one way a number becomes text.
 *
 * <p>Every quantity is a {@code double} in its base unit (amperes, ohms, metres). {@code NaN}
 * stands for "not known" and is never compared as true. Shown text is rounded to the safe side by
 * {@link circuitverdict.quantity.Shown}: what must not exceed is rounded up, its limit down.
 * Figures within 1e-12 of each other, relative, are equal: that is the rounding of binary
 * arithmetic, not a tolerance of the trade.
 */
package circuitverdict.quantity;
