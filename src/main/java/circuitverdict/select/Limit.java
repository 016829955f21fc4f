package circuitverdict.select;

import circuitverdict.check.CheckName;
import circuitverdict.explain.Pointer;
import circuitverdict.quantity.Unit;

/**
 * The greatest value of one input with which a check still complies, everything else as stated.
 *
 * @param pointer the input
 * @param value its greatest value, in steps that a reader can use
 * @param unit its unit
 * @param governedBy the check that sets it
 */
public record Limit(Pointer pointer, double value, Unit unit, CheckName governedBy) {}
