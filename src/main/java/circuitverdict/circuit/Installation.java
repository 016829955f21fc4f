package circuitverdict.circuit;

/**
 * How a cable is installed.
 *
 * @param place JSON pointer of the installation in the request
 * @param referenceMethod reference method of Appendix 4: A, B, C, D1, E, F, G, 100 to 103; of IEC
 *     60364-5-52: A1, A2, B1, B2, C, D1, D2, E, F, G
 * @param ambientTemperatureC of the air, or of the ground for D1 and D2, °C
 * @param groupedCircuits circuits run together, this one included
 * @param lightlyLoadedCircuits of these the others that carry no more than 30 % of what they may
 * @param mixedSizes whether their cables are of different sizes
 * @param simultaneousOverload whether they may all be overloaded at once; null where not stated
 * @param groupArrangement how they lie
 * @param insulationLengthM length totally surrounded by thermal insulation, m
 * @param soilThermalResistivityKMPerW thermal resistivity of the soil, K·m/W
 * @param burialDepthM depth of laying, m
 * @param concealment how it is hidden in walls and partitions; null where not stated
 */
public record Installation(
    String place,
    String referenceMethod,
    Double ambientTemperatureC,
    Integer groupedCircuits,
    Integer lightlyLoadedCircuits,
    Boolean mixedSizes,
    Boolean simultaneousOverload,
    Group groupArrangement,
    Double insulationLengthM,
    Double soilThermalResistivityKMPerW,
    Double burialDepthM,
    Concealment concealment) {

  /** How a cable is hidden in walls and partitions (522.6.201 to .204). */
  public enum Concealment {
    NONE,
    WITHIN_50_MM,
    DEEPER,
    PROTECTED,
    METALLIC_PARTITION
  }

  /** How grouped cables lie. */
  public enum Group {
    BUNCHED,
    TOUCHING,
    SPACED
  }

  /** The same by another reference method. */
  public Installation withMethod(String method) {
    return new Installation(
        place,
        method,
        ambientTemperatureC,
        groupedCircuits,
        lightlyLoadedCircuits,
        mixedSizes,
        simultaneousOverload,
        groupArrangement,
        insulationLengthM,
        soilThermalResistivityKMPerW,
        burialDepthM,
        concealment);
  }

  /** Whether the cable lies in the ground. */
  public boolean buried() {
    return "D1".equals(referenceMethod) || direct();
  }

  /** Whether it runs in conduit or trunking: methods A and B, and A1 to B2. */
  public boolean enclosed() {
    return referenceMethod != null
        && (referenceMethod.startsWith("A") || referenceMethod.startsWith("B"));
  }

  /** Whether it lies in the ground without a duct. */
  public boolean direct() {
    return "D2".equals(referenceMethod);
  }
}
