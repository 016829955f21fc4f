package circuitverdict.circuit;

import java.util.List;

/**
 * Where the circuit is and who operates it.
 *
 * @param use kind of premises; null where not stated
 * @param operatedBy who operates it, the contract's word
 * @param locations special locations; null where not stated, empty where there are none
 * @param higherRiskResidential whether it is a building of 421.1.7: a higher-risk residential one,
 *     a house in multiple occupation, student accommodation or a care home
 * @param pollutionDegree pollution degree at the place of the device, 1 to 4
 */
public record Premises(
    Use use,
    String operatedBy,
    List<String> locations,
    Boolean higherRiskResidential,
    Integer pollutionDegree) {

  /** Kind of premises. */
  public enum Use {
    DOMESTIC,
    COMMERCIAL,
    INDUSTRIAL,
    AGRICULTURAL,
    PUBLIC
  }
}
