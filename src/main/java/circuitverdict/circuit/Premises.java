package circuitverdict.circuit;

import java.util.List;

/**
 * Where the circuit is and who operates it.
 *
 * @param use kind of premises, the contract's word
 * @param operatedBy who operates it, the contract's word
 * @param locations special locations; null where not stated, empty where there are none
 */
public record Premises(String use, String operatedBy, List<String> locations) {}
