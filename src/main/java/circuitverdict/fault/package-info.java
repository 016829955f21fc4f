/**
 * Fault loops and fault currents, from the point that feeds the circuit to its far end.
 *
 * <p>Least currents take the far end, conductors hot and Cmin; impedances known only as moduli are
 * added arithmetically, which makes the loop no smaller than it is. Greatest currents take the near
 * end and are used as stated.
 */
package circuitverdict.fault;
