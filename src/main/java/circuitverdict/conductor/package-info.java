/**
 * Conductors: resistance cold and hot, heat limit, rating as installed, voltage drop.
 *
 * <p>Resistances are those of IEC 60228 at 20 °C, or the caller's, brought to operating temperature
 * by the factor the wiring rules use. A size, method or insulation that the tables lack is not
 * known and is never extrapolated.
 */
package circuitverdict.conductor;
