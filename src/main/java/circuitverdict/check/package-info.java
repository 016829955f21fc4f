/**
 * The checks of the wiring rules, one class each, named for the check.
 *
 * <p>A check asks a {@link circuitverdict.explain.Dossier} for what it needs, evaluates, and gives
 * its comparisons to a {@link circuitverdict.check.Judgement}, which alone turns them into a {@link
 * circuitverdict.check.Finding}: a failing comparison fails the check, an unknown one leaves it not
 * determined, and only comparisons that all hold let it comply. No check calls another; what two
 * need lies in the packages below.
 */
package circuitverdict.check;
