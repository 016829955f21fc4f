/**
 * Editions of the wiring rules and their tables.
 *
 * <p>An {@link circuitverdict.standard.Edition} is data: one YAML file per table, every value with
 * its unit, citation and {@link circuitverdict.standard.Confidence}. {@link
 * circuitverdict.standard.EditionLoader} reads them once and refuses whatever is incomplete: a
 * value without citation or unit, an unknown member, bands with gaps or overlaps. A look-up that
 * finds nothing returns null, and the caller must answer "not determined": nothing is extrapolated.
 */
package circuitverdict.standard;
