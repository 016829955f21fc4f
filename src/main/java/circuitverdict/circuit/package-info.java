/**
 * What the caller describes: one circuit, from the point that feeds it to its load.
 *
 * <p>A member that was not stated is null (numbers and words) or an empty description (objects):
 * what may stand in for it, if anything, is decided where it is used, by the stage. Nothing here
 * computes or judges. Units are base units as in the contract: A, V, Ω, m, mm², s, °C.
 */
package circuitverdict.circuit;
