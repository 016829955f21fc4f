/**
 * How a number is explained: by the evaluation itself.
 *
 * <p>A {@link circuitverdict.explain.Formula} is written once, as the reader sees it, and that text
 * is what is evaluated: shown formula and code cannot drift apart. A {@link
 * circuitverdict.explain.Figure} is a number with symbol, unit and source; {@link
 * circuitverdict.explain.Working} evaluates formulas of figures and records each step, or, as its
 * silent twin, only evaluates. A {@link circuitverdict.explain.Dossier} gathers what one check
 * needs: working, missing inputs, assumptions and remarks. Texts are made when an answer is
 * written, never while a verdict is found.
 *
 * <p>A figure that is not known is NaN. It makes every figure computed from it NaN, and NaN never
 * satisfies a comparison: unknown never passes.
 */
package circuitverdict.explain;
