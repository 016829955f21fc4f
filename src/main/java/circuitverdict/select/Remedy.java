package circuitverdict.select;

import circuitverdict.check.CheckName;
import java.util.List;

/**
 * A change, or several made together, that turns the checks it mends and breaks none; found by
 * running the whole set with the change made.
 *
 * @param change the change
 * @param mends the checks that then comply
 */
public record Remedy(Change change, List<CheckName> mends) {}
