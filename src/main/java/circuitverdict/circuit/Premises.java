package circuitverdict.circuit;

import java.util.List;

/**
 * Where the circuit is and who operates it.
 *
 * @param use kind of premises, the contract's word
 * @param operatedBy who operates it, the contract's word
 * @param locations special locations; null where not stated, empty where there are none
 * @param pollutionDegree pollution degree at the place of the device, 1 to 4
 */
public record Premises(
    String use, String operatedBy, List<String> locations, Integer pollutionDegree) {}
