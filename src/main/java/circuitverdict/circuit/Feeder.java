package circuitverdict.circuit;

import java.util.List;

/**
 * A circuit of a tree, from the point that feeds it to its far end, and what is fed from there.
 *
 * @param place JSON pointer of the circuit in the request, empty for the request itself
 * @param reference the caller's name for it; null where there is none
 * @param circuit its conductors
 * @param feeds the circuits that leave from its far end
 */
public record Feeder(String place, String reference, Circuit circuit, List<Feeder> feeds) {}
